package solve

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The bypass terminal of a starter hangs, but for 10 Mohm of a blocked diode
// and 1 Mohm to the block: 12.65 V / 11 is no reading. While it cranks there
// is one; and what hangs on the way back of a lamp reads 0 V.
func TestLeakageIsNoReading(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		keyswitch S1
		  run B IGN
		  crank B IGN ST
		starter M1 grounds-to frame
		diode V1 3A
		lamp P1 21W grounds-to frame
		splice J1
		wire 1 G1.+ S1.B
		wire 2 G1.+ M1.B
		wire 3 S1.ST M1.S
		wire 4 M1.R V1.A
		wire 5 V1.K G1.+
		wire 6 P1.1 J1
	`)
	h := playCase(t, m, alike(m, 0.01), hot)
	at := func(name string) (plain, shown Reading, cranking Reading) {
		term, ok := m.TerminalByName(name)
		require.True(t, ok)
		return h.Step("off").Reading(term), h.Step("off").Shown(term), h.Step("crank").Shown(term)
	}
	plain, shown, cranking := at("M1.R")
	require.True(t, plain.OK)
	require.InDelta(t, 12.65/11, plain.Volts, 0.02)
	require.Equal(t, Reading{Reason: ghostReason}, shown)
	require.True(t, cranking.OK)
	require.Greater(t, cranking.Volts, 8.0)
	for _, name := range []string{"P1.1", "J1", "G1.+", "M1.S"} {
		plain, shown, _ := at(name)
		require.True(t, shown.OK, name)
		require.InDelta(t, plain.Volts, shown.Volts, 0, name)
	}
}

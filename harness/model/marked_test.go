package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
)

// A relay whose numbers are its maker's own (invented), and one of the usual
// kind beside it: a contact is never taken from a number.
const markedRelays = `metal frame
part relay five-pin coil 85ohm change-over marked COM 3 NO 5 NC 4 COIL+ 1 COIL- 2
relay K1 part five-pin
relay K2 coil 85ohm
relay K3 coil 85ohm marked 30 87 87 30
fuse F1 10A
connector X1 4way cavities A1, A2, B1, B2
  half cab
  half rear
wire 1 F1.2 K1.3
wire 2 F1.2 K2.30
wire 3 F1.2 K3.87
wire 4 X1.cab.B1 K1.5
`

func TestMarkedTerminals(t *testing.T) {
	m, found := model.Build(parse(t, markedRelays))
	require.Empty(t, found)
	for wire, want := range map[string][2]string{"1": {"30", "K1.3"}, "2": {"30", "K2.30"}, "3": {"30", "K3.87"}} {
		w, _ := m.WireByNumber(wire)
		require.Equal(t, want[0], w.To.Name, "what the terminal does")
		require.Equal(t, want[1], w.To.Shown, "what it is called")
	}
	k1, _ := m.DeviceByName("K1")
	require.Equal(t, "K1.4", k1.Terminal("87a").Shown, "named so even where nobody used it")
	_, ok := m.TerminalByName("K1.87")
	require.False(t, ok)
	no, ok := m.TerminalByName("K1.5")
	require.True(t, ok)
	require.Equal(t, "87", no.Name)

	x, _ := m.TerminalByName("X1.cab.B1")
	require.Equal(t, "cab.B1", x.Name)
	mate, _ := m.TerminalByName("X1.rear.B1")
	require.Equal(t, m.Nets().Of[x.ID], m.Nets().Of[mate.ID], "mated by the same name")
}

package solve

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/part"
)

// TestNominalCountsConnectorPairs: a 6.3 mm pair is 1.5 mohm, a low figure,
// so that it shows among nominal figures alone.
func TestNominalCountsConnectorPairs(t *testing.T) {
	m := build(t, pumpDraft)
	wires := pumpWires(m, 19.42)
	pair := func(g part.Grade) float64 {
		h := playCase(t, m, wires, Case{Grade: g})
		return volts(t, h, "prime", "X2.cab.1") - volts(t, h, "prime", "X2.rear.1")
	}
	require.Zero(t, pair(part.Sure))
	require.InDelta(t, 8.5*0.0015, pair(part.Nominal), 1e-6)
}

// TestMetalWithResistance: between any two points of a body of 2 mohm lie
// 2 mohm; studs have a ring joint of 0.3 mohm for each wire.
func TestMetalWithResistance(t *testing.T) {
	for _, ohm := range []string{"", "2mohm"} {
		m := build(t, `
			draft 1
			metal frame `+ohm+`
			stud E1 on frame M8
			stud E2 on frame M8
			battery G1
			motor M1 draws 10A
			wire 1 G1.- E1
			wire 2 G1.+ M1.+
			wire 3 M1.- E2
		`)
		h := playCase(t, m, alike(m, 0.01), hot)
		want := 0.0
		if ohm != "" {
			want = 10 * 0.002
		}
		require.InDelta(t, want, volts(t, h, "off", "E2")-volts(t, h, "off", "E1"), 1e-6)
		require.InDelta(t, 10*(0.01+2*0.0003), volts(t, h, "off", "E1"), 1e-6)
	}
}

// TestAskedFollowsDiodes: two feeds joined through diodes ask the lamp's
// relay from either, but neither asks what hangs on the other.
func TestAskedFollowsDiodes(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		switch S1 closed when koeo
		switch S2 closed when running
		splice J1
		splice J2
		splice J3
		diode D1
		diode D2
		relay K1
		relay K2
		relay K3
		wire 1 G1.+ S1.1
		wire 2 G1.+ S2.1
		wire 3 S1.2 J1
		wire 4 S2.2 J2
		wire 5 J1 D1.A
		wire 6 J2 D2.A
		wire 7 D1.K J3
		wire 8 D2.K J3
		wire 11 J1 K1.86
		wire 12 J2 K2.86
		wire 13 J3 K3.86
		wire 14 K1.85 G1.-
		wire 15 K2.85 G1.-
		wire 16 K3.85 G1.-
	`)
	h := playCase(t, m, alike(m, 0.01), hot)
	for step, asked := range map[string][3]bool{"off": {}, "koeo": {true, false, true}, "running": {false, true, true}} {
		for i, want := range asked {
			k := relay(t, h, step, fmt.Sprintf("K%d", i+1))
			require.Equal(t, want, k.Asked, "K%d in %s", i+1, step)
			require.Equal(t, want, k.On, "K%d in %s", i+1, step)
		}
	}
}

// TestStartsFollowsTheWholeWay: what feeds the coil of the start relay has to
// be in as well.
func TestStartsFollowsTheWholeWay(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		starter M1 grounds-to frame draws 160A stall 420A pull-in 38A hold 9A
		switch S1 closed when crank
		switch S2 closed when run, crank
		relay K1
		relay K2
		relay K3
		lamp P1 5W grounds-to frame
		wire 1 G1.+ M1.B
		wire 2 G1.+ K1.30
		wire 3 K1.87 M1.S
		wire 4 G1.+ K2.30
		wire 5 K2.87 K1.86
		wire 6 K1.85 G1.-
		wire 7 G1.+ S1.1
		wire 8 S1.2 K2.86
		wire 9 K2.85 G1.-
		wire 10 G1.+ S2.1
		wire 11 S2.2 K3.86
		wire 12 K3.85 G1.-
		wire 13 G1.+ K3.30
		wire 14 K3.87 P1.1
	`)
	h := playCase(t, m, alike(m, 0.001), hot)
	for name, starts := range map[string]bool{"M1": true, "K1": true, "K2": true, "K3": false} {
		require.Equal(t, starts, h.Relays[h.RelayOf(name)].Starts, name)
	}
	require.True(t, relay(t, h, "engage", "M1").On)
}

// TestOverloadedVehicleEnds: hundreds of relays on a feed that their own
// loads pull down come to an end, and are named.
func TestOverloadedVehicleEnds(t *testing.T) {
	text := strings.NewReplacer("draws 0.1A", "draws 9A", "pull-in 6.5V 8V", "pull-in 6.5V 8V release 5V").Replace(bigDraft(2000))
	m := build(t, text)
	h := playCase(t, m, alike(m, 0.02), hot)
	require.NotEmpty(t, h.Step("koeo").Chatter)
	require.Empty(t, h.Step("rest").Chatter)
}

package solve

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestTiredBatteryClicks: the starter's own current takes the volts from its
// solenoid, which lets go, which brings the volts back.
func TestTiredBatteryClicks(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 cca 150A grounds-to frame
		starter M1 grounds-to frame draws 160A stall 280A pull-in 38A 7V hold 9A 5V
		switch S1 closed when crank
		wire 1 G1.+ M1.B
		wire 2 G1.+ S1.1
		wire 3 S1.2 M1.S
	`)
	wires := alike(m, 0.002)
	h := playCase(t, m, wires, hot)
	s := h.Step("engage")
	require.Equal(t, []string{"M1"}, names(h, s.Chatter))
	require.Len(t, s.Cycles, 1)
	c := s.Cycles[0]
	require.Equal(t, "S", c.Node.Name)
	require.Equal(t, "M1", c.Node.Device.Name)
	require.InDelta(t, 0.017, c.PeriodS, 1e-9, "10 ms to operate, 7 ms to release")
	require.Greater(t, c.PullV[0], 7.0)
	require.Less(t, c.DropV[0], 5.0)
	require.False(t, relay(t, h, "engage", "M1").On, "left out, so that the rest can be judged")
	require.Empty(t, h.Step("running").Chatter)
}

// TestOwnLoadTakesTheCoilsVolts: coil and load hang on one thin wire; with
// the contact closed 12.65 V over 1.5 ohm of wire and about 1 ohm of lamps
// leave under 6 V, where this relay surely lets go.
func TestOwnLoadTakesTheCoilsVolts(t *testing.T) {
	text := `
		draft 1
		metal frame
		battery G1 grounds-to frame
		switch S1 closed when koeo
		splice J1
		relay K1 pull-in 7V 8V release 6V
		heater R1 draws 13.5A 13.5V grounds-to frame
		wire 1 G1.+ S1.1
		wire 2 S1.2 J1
		wire 3 J1 K1.86
		wire 4 K1.85 G1.-
		wire 5 J1 K1.30
		wire 6 K1.87 R1.1
	`
	m := build(t, text)
	wires := alike(m, 0.01)
	w, _ := m.WireByNumber("2")
	wires[w.ID].Ohm = 1.5
	h := playCase(t, m, wires, hot)
	require.Equal(t, []string{"K1"}, names(h, h.Step("koeo").Chatter))
	require.Equal(t, "86", h.Step("koeo").Cycles[0].Node.Name)
	require.Empty(t, h.Step("prime").Chatter)
	// A relay that holds down to 4 V stays in: works, though badly.
	m = build(t, strings.Replace(text, "release 6V", "release 4V", 1))
	h = playCase(t, m, wires, hot)
	require.Empty(t, h.Step("koeo").Chatter)
	require.True(t, relay(t, h, "koeo", "K1").On)
}

// TestTwoCyclesAreBothFound: two such relays on wires of their own.
func TestTwoCyclesAreBothFound(t *testing.T) {
	var text strings.Builder
	text.WriteString("draft 1\nmetal frame\nbattery G1 grounds-to frame\nswitch S1 closed when koeo\nsplice J0\nwire 1 G1.+ S1.1\nwire 2 S1.2 J0\n")
	for _, n := range []string{"1", "2"} {
		text.WriteString(strings.ReplaceAll(strings.ReplaceAll(dedent(`
			splice J#
			relay K# pull-in 7V 8V release 6V moves 8ms ~ms
			heater R# draws 13.5A 13.5V grounds-to frame
			wire 3# J0 J#
			wire 4# J# K#.86
			wire 5# K#.85 G1.-
			wire 6# J# K#.30
			wire 7# K#.87 R#.1
		`), "#", n), "~", map[string]string{"1": "5", "2": "6"}[n]))
	}
	m := build(t, text.String())
	wires := alike(m, 0.001)
	for _, n := range []string{"31", "32"} {
		w, _ := m.WireByNumber(n)
		wires[w.ID].Ohm = 1.5
	}
	h := playCase(t, m, wires, hot)
	require.Equal(t, []string{"K1", "K2"}, names(h, h.Step("koeo").Chatter))
}

// interlock is two relays, each fed through the other's rest contact: who is
// first keeps the other out.
const interlock = `
	draft 1
	metal frame
	battery G1 grounds-to frame
	switch S1 closed when koeo
	splice J1
	splice J2
	relay K1 change-over #1
	relay K2 change-over #2
	wire 1 G1.+ S1.1
	wire 2 S1.2 J1
	wire 3 J1 K1.30
	wire 4 J1 K2.30
	wire 5 K2.87a K1.86
	wire 6 K1.87a K2.86
	wire 7 K1.85 J2
	wire 8 K2.85 J2
	wire 9 J2 G1.-
`

func TestRaceIsSettledByTimes(t *testing.T) {
	for _, row := range []struct {
		first, second string
		in            string
		races         []string
	}{
		{"moves 6ms 5ms", "moves 9ms 5ms", "K1", nil},
		{"moves 9ms 5ms", "moves 6ms 5ms", "K2", nil},
		{"moves 9ms 5ms", "moves 9ms 5ms", "K1", []string{"K1", "K2"}},
	} {
		m := build(t, strings.NewReplacer("#1", row.first, "#2", row.second).Replace(interlock))
		h := playCase(t, m, alike(m, 0.01), hot)
		s := h.Step("koeo")
		require.Empty(t, s.Chatter)
		require.Equal(t, row.races, names(h, s.Races), "%s against %s", row.first, row.second)
		require.Equal(t, row.in == "K1", relay(t, h, "koeo", "K1").On)
		require.Equal(t, row.in == "K2", relay(t, h, "koeo", "K2").On)
	}
}

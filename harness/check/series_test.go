package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// chargeLamp is the usual way to a second battery's relay (invented): the coil
// lies at the alternator's D+, which the charge lamp feeds at first.
const chargeLamp = `battery G1 cca 540A grounds-to frame
alternator G2 60A grounds-to frame
fuse F1 80A bolt-down from G1 6in
keyswitch S1
  off
  run B IGN
lamp P1 2W
relay K2 suppress resistor
stud E1 on frame M6
splice J1
wire 1 G1.+ F1.1 6in
wire 2 F1.2 G2.B+ 2ft
wire 3 F1.2 S1.B 6AWG 2ft
wire 4 S1.IGN P1.1 6AWG 2ft
wire 5 P1.2 J1 2ft
wire 6 J1 G2.D+ 2ft
wire 7 J1 K2.86 2ft
wire 8 K2.85 E1 2ft
`

// A lamp before a coil: each is the other's feed or return, and what the coil
// takes is no loss of the wiring.
const lampBeforeCoil = `battery G1 grounds-to frame
fuse F1 10A from G1 6in
lamp P1 2W
relay K1 suppress resistor
stud E1 on frame M6
wire 1 G1.+ F1.1 6in
wire 2 F1.2 P1.1 2ft
wire 3 P1.2 K1.86 2ft
wire 4 K1.85 E1 2ft
`

func TestLoadsInSeries(t *testing.T) {
	for name, src := range map[string]string{
		"lamp, coil":      lampBeforeCoil,
		"three in series": strings.NewReplacer("P1.2 K1.86", "P1.2 P2.1", "stud", "lamp P2 2W\nwire 9 P2.2 K1.86 2ft\nstud").Replace(lampBeforeCoil),
		"a switch between": strings.NewReplacer("P1.2 K1.86", "P1.2 S1.1", "stud",
			"switch S1 closed\nwire 9 S1.2 K1.86 2ft\nstud").Replace(lampBeforeCoil),
	} {
		require.Empty(t, checked(t, "x.draft", src).Findings, name)
	}
	for _, f := range checked(t, "x.draft", chargeLamp).Findings {
		require.NotContains(t, []string{"load-without-feed", "load-without-return", "drop-over-limit"}, f.Rule, "%s", f)
	}
	// Without the lamp D+ still feeds the coil while the engine runs.
	bare := strings.NewReplacer("lamp P1 2W\n", "", "wire 4 S1.IGN P1.1 6AWG 2ft\n", "", "wire 5 P1.2 J1 2ft\n", "").Replace(chargeLamp)
	require.Empty(t, only(checked(t, "x.draft", bare).Findings, "load-without-feed"))
	// Without D+ and without the lamp's feed nothing does.
	dead := strings.Replace(bare, "wire 6 J1 G2.D+ 2ft\n", "", 1)
	require.Len(t, only(checked(t, "x.draft", dead).Findings, "load-without-feed"), 1)
}

// A ground that is missing is no series circuit: the way back through a lamp
// of another circuit is what the rule warns of.
func TestMissingGroundIsNoSeries(t *testing.T) {
	src := `battery G1 grounds-to frame
fuse F1 10A from G1 6in
switch S1 closed
lamp P1 5W
lamp P2 5W
lamp P3 5W grounds-to frame
splice J1
splice J2
wire 1 G1.+ F1.1 6in
wire 2 F1.2 P1.1 2ft
wire 3 F1.2 S1.1 2ft
wire 4 S1.2 J2 2ft
wire 5 J2 P2.1 2ft
wire 6 J2 P3.1 2ft
wire 7 P1.2 J1 2ft
wire 8 P2.2 J1 2ft
`
	found := only(checked(t, "x.draft", src).Findings, "load-without-return")
	require.Len(t, found, 2, "P1 and P2: %v", found)
	// The coil's other ground is cut: its feed is no way back.
	cut := strings.Replace(lampBeforeCoil, "wire 4 K1.85 E1 2ft\n", "", 1)
	require.NotEmpty(t, only(checked(t, "x.draft", cut).Findings, "load-without-return"))
}

// A two-speed blower: 8 A in 0.6 ohm are 4.8 V, which the resistor is there to
// take. The wires are judged as ever: 60 ft of 18 AWG lose more than 1.2 V.
func TestResistorInTheLineIsNoWiring(t *testing.T) {
	const src = `battery G1 cca 540A grounds-to frame
fuse F1 15A from G1 6in
resistor R1 0.6ohm
motor M1 draws 8A 13.5V grounds-to frame
wire 1 G1.+ F1.1 14AWG 6in
wire 2 F1.2 R1.1 14AWG 3ft
wire 3 R1.2 M1.+ SIZE
`
	require.Empty(t, checked(t, "x.draft", strings.Replace(src, "SIZE", "14AWG 3ft", 1)).Findings)
	found := only(checked(t, "x.draft", strings.Replace(src, "SIZE", "18AWG 60ft", 1)).Findings, "drop-over-limit")
	require.Len(t, found, 1)
	require.Contains(t, found[0].Detail, "Wire 3, 18 AWG, takes the most of it")
	require.Less(t, found[0].Values[0].Got, 4.8, "the resistor is not counted")
}

// A relay that is in the vehicle, its coil not drawn: it may pull in.
func TestLoadBehindARelayOfTheVehicle(t *testing.T) {
	const src = `battery G1 grounds-to frame
fuse F1 10A from G1 6in
relay K1 existing
lamp P1 5W grounds-to frame
wire 1 G1.+ F1.1 6in
wire 2 F1.2 K1.30 2ft
wire 3 K1.87 P1.1 2ft
`
	require.Empty(t, checked(t, "x.draft", src).Findings)
}

// One loaded conductor is no bundle.
func TestOneConductorIsNamedAsOne(t *testing.T) {
	found := only(checked(t, "x.draft", `battery G1 grounds-to frame
fuse F1 30A from G1 6in
heater R1 draws 25A 13.5V grounds-to frame
place bay 120C
wire 1 G1.+ F1.1 6AWG 6in
wire 2 F1.2 R1.1 18AWG 2ft via bay
`).Findings, "wire-above-ampacity")
	require.NotEmpty(t, found)
	require.NotContains(t, found[0].Detail, "1 loaded")
	require.Contains(t, found[0].Detail, "with no other loaded conductor beside it")
}

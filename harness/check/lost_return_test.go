package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// A pump relay and a fan relay worked by a controller (invented).
const controlled = `battery G1 cca 600A grounds-to frame
starter M1 grounds-to frame draws 140A
fuse F1 30A from G1 6in
keyswitch S1
  off
  run B IGN
  gap B IGN
  crank B IGN ST
relay K1 coil 85ohm contact 30A suppress resistor
relay K2 coil 85ohm contact 30A suppress resistor
motor M2 fuel draws 6A 13.5V grounds-to frame
motor M3 draws 10A 13.5V grounds-to frame
stud E1 on frame M6
module A1
  IGN feed 1A holds 50ms when run, crank
  PUMP low-side 0.5A when prime, crank, running
  FAN low-side 0.5A when running
  GND ground
splice J1
splice J2
wire 1 G1.+ F1.1 10AWG 6in
wire 2 F1.2 J1 10AWG 1ft
wire 3 J1 S1.B 1ft
wire 4 S1.IGN J2 1ft
wire 5 J2 A1.IGN 1ft
wire 6 J2 K1.86 1ft
wire 7 J2 K2.86 1ft
wire 8 K1.85 A1.PUMP 1ft
wire 9 K2.85 A1.FAN 1ft
wire 10 J1 K1.30 1ft
wire 11 J1 K2.30 1ft
wire 12 K1.87 M2.+ 1ft
wire 13 K2.87 M3.+ 1ft
wire 14 G1.+ M1.B 2AWG 2ft
wire 15 S1.ST M1.S 8AWG 2ft
wire 16 A1.GND E1 1ft
`

// One missing wire is one fault, at the ground, with all that it takes along.
func TestMissingControllerGroundIsOneFault(t *testing.T) {
	require.Less(t, checked(t, "good.draft", controlled).Findings.Worst(), diag.Warning)
	bad := strings.Replace(controlled, "wire 16 A1.GND E1 1ft\n", "", 1)
	bad = strings.Replace(bad, "stud E1 on frame M6\n", "", 1)
	found := checked(t, "bad.draft", bad).Findings
	require.Len(t, found, 1, "%v", found)
	require.Equal(t, diag.Fault, found[0].Severity)
	require.Equal(t, "A1.GND has no wire: A1 has no way back to the battery, nor have K1, K2", found[0].Msg)
	require.Equal(t, strings.Count(bad[:strings.Index(bad, "  GND")], "\n")+1, found[0].At.Line)
}

// Without its strap the engine is told once; what the controller on it no
// longer does says nothing about contacts of the key.
func TestMissingStrapIsOneFault(t *testing.T) {
	src := "metal block\nmetal frame\n" + strings.NewReplacer("starter M1 grounds-to frame", "starter M1 grounds-to block", "stud E1 on frame", "stud E1 on block").Replace(controlled)
	found := checked(t, "bad.draft", src).Findings
	require.Len(t, found, 1, "%v", found)
	require.Equal(t, "engine-not-bonded", found[0].Rule)
	strapped := src + "stud E2 on block M8\nstud E3 on frame M8\nstrap 90 E2 E3 2AWG 1ft\n"
	require.Less(t, checked(t, "good.draft", strapped).Findings.Worst(), diag.Warning)
}

// A starter that is in the vehicle already, of which a new draft only takes
// the feed; either word is enough.
func TestWhatIsInTheVehicleNeedsNoWires(t *testing.T) {
	const src = `place front
battery G1 existing cca 600A grounds-to frame
starter M9 KEPTat front grounds-to frame draws 250A
fuse F1 10A from G1 6in
lamp P1 21W grounds-to frame
switch S1 closed when running
wire 1 G1.+ F1.1 6in
wire 2 F1.2 S1.1 2ft
wire 3 S1.2 P1.1 2ft
wire 4 G1.+ M9.B 2AWG 2ft
`
	require.NotEmpty(t, checked(t, "x.draft", strings.Replace(src, "KEPT", "", 1)).Findings)
	for _, c := range [][2]string{{"existing ", ""}, {"", "spare M9.S\n"}, {"existing ", "spare M9.S\n"}} {
		require.Empty(t, checked(t, "x.draft", strings.Replace(src, "KEPT", c[0], 1)+c[1]).Findings, c)
	}
}

// A strap that is in the vehicle already, its size unknown, is taken as 18 AWG:
// a guess makes no danger.
func TestStrapOfUnknownSize(t *testing.T) {
	const src = `metal block
metal frame
battery G1 cca 600A grounds-to frame
starter M1 draws 150A grounds-to block
fuse F1 30A from G1 6in
stud E2 on block M8
stud E3 on frame M8
strap 90 E2 E3 SIZE 14in
switch S1 closed when crank
wire 1 G1.+ M1.B 2/0AWG 3ft
wire 2 G1.+ F1.1 10AWG 6in
wire 3 F1.2 S1.1 8AWG 2ft
wire 4 S1.2 M1.S 8AWG 2ft
`
	for size, want := range map[string]diag.Severity{"existing": diag.Warning, "18AWG": diag.Danger, "6AWG": diag.Warning, "existing 2/0AWG": 0} {
		found := checked(t, "x.draft", strings.Replace(src, "SIZE", size, 1)).Findings
		require.Equal(t, want, found.Worst(), "%s: %v", size, found)
	}
}

// One controller without a ground says nothing of the cranking of another.
func TestOneMissingGroundLeavesTheOthersJudged(t *testing.T) {
	src := strings.NewReplacer("stud E1", "splice J3\nmodule A2\n  PWR feed 0.5A when run, crank\n  GND ground\nstud E1",
		"wire 5 J2 A1.IGN 1ft", "wire 5 J2 A1.IGN 1ft\nwire 20 J2 A2.PWR 1ft",
		"run B IGN", "run B ACC", "crank B IGN ST", "crank B ST", "S1.IGN", "S1.ACC").Replace(controlled)
	rules := func(src string) map[string]int {
		n := map[string]int{}
		for _, f := range checked(t, "x.draft", src).Findings {
			if f.Severity >= diag.Fault {
				n[f.Rule]++
			}
		}
		return n
	}
	found := rules(src)
	require.Equal(t, 1, found["load-without-return"], "A2: %v", found)
	require.Equal(t, 1, found["feed-dead-while-cranking"], "A1: %v", found)
	// With its ground in place A2 is told with A1, and nothing else is new.
	whole := rules(src + "wire 21 A2.GND E1 1ft\n")
	require.Equal(t, found["feed-dead-while-cranking"], whole["feed-dead-while-cranking"])
	require.Zero(t, whole["load-without-return"])
}

package check_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// A lamp relay with a diode across its coil, one wire on each end of the coil
// (invented). With the ends exchanged, 90 A once sized five wires of 8 AWG and
// asked for a larger fuse.
const coilOf = `harness system 12V profile road
battery G1 cca 600A grounds-to frame
fuse F1 15A from G1 6in
switch S1 closed when running
relay K1 suppress diode coil 85ohm pull-in 6.5V 7.5V contact 30A
lamp P1 21W grounds-to frame
stud E1 on frame M6
splice J1
wire 1 G1.+ F1.1 6in
wire 2 F1.2 J1 1ft
wire 3 J1 S1.1 1ft
wire 4 S1.2 K1.%s 1ft
wire 5 K1.%s E1 1ft
wire 6 J1 K1.30 1ft
wire 7 K1.87 P1.1 1ft
`

// The cathode belongs to 86 (suppress-polarity), so 86 is the fed side. The
// other way round there is one fault, at the relay, and the rest of the report
// is that of the draft put right.
func TestDiodeTheWrongWayRound(t *testing.T) {
	o, ok := gauge.OrientationOf("diode")
	require.True(t, ok)
	cathode, anode := o.Positive, o.Negative
	good := checked(t, "good.draft", fmt.Sprintf(coilOf, cathode, anode))
	require.Empty(t, good.Findings)
	bad := checked(t, "bad.draft", fmt.Sprintf(coilOf, anode, cathode))
	require.Len(t, bad.Findings, 1, "%v", bad.Findings)
	f := bad.Findings[0]
	require.Equal(t, "supply-shorted", f.Rule)
	require.Equal(t, diag.Fault, f.Severity)
	require.Equal(t, 5, f.At.Line, "it points at the relay")
	require.Contains(t, f.Msg, "K1's diode conducts")
	require.Contains(t, f.Msg, "86 must be the positive side")
	require.Contains(t, f.Detail, "4 to K1.86, 5 to K1.85")
	const leakA = 15 / gauge.DiodeLeakOhm // of the diode that blocks
	for i, w := range bad.Sizes.Wires {
		require.Equal(t, good.Sizes.Wires[i].Conductor.Size.Name, w.Conductor.Size.Name, w.Wire.Number)
		require.InDelta(t, good.Sizes.Wires[i].DesignA, w.DesignA, leakA, w.Wire.Number)
	}
	require.InDelta(t, good.Sizes.Fuses[0].LoadA, bad.Sizes.Fuses[0].LoadA, leakA)
}

// The other polarities of suppression: a resistor has none.
func TestResistorHasNoWrongWay(t *testing.T) {
	src := strings.Replace(fmt.Sprintf(coilOf, "85", "86"), "suppress diode", "suppress resistor", 1)
	require.Empty(t, checked(t, "x.draft", src).Findings)
}

// Behind a controller's low-side output the driver limits the current: it is
// as wrong, and nothing else is told.
func TestDiodeTheWrongWayRoundBehindADriver(t *testing.T) {
	good := `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1  suppress diode
module  A1
  BAT   feed 0.4A  asleep 2mA
  PUMP  low-side 0.5A  when running, crank
  GND   ground
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1     6in
wire 2  F1.2    J1       1ft
wire 3  J1      A1.BAT   1ft
wire 4  J1      K1.86    1ft
wire 5  K1.85   A1.PUMP  1ft
wire 6  A1.GND  E1       1ft
`
	require.Empty(t, checked(t, "good.draft", good).Findings)
	bad := strings.NewReplacer("K1.86", "K1.85", "K1.85", "K1.86").Replace(good)
	found := checked(t, "bad.draft", bad).Findings
	require.Len(t, found, 1, "%v", found)
	require.Contains(t, found[0].Msg, "86 must be the positive side")
}

// A switch that joins feed and ground: one fault, and no advice that would
// feed the short. Without a fuse on the way it burns.
func TestContactAcrossTheSupply(t *testing.T) {
	src := `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
switch  S1  closed when running
lamp    P1  21W  grounds-to frame
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.1  1ft
wire 3  S1.2  E1    1ft
wire 4  F1.2  P1.1  1ft
`
	found := only(checked(t, "x.draft", src).Findings, "supply-shorted")
	require.Len(t, found, 1)
	require.Equal(t, diag.Fault, found[0].Severity)
	require.Contains(t, found[0].Msg, "F1, S1 lead to ground in running")
	for _, f := range checked(t, "x.draft", src).Findings {
		require.NotContains(t, f.Detail, "Fit a larger fuse")
		require.NotEqual(t, "wire-above-ampacity", f.Rule)
	}
	bare := strings.NewReplacer("wire 1  G1.+  F1.1  6in\n", "", "F1.2", "G1.+", "fuse    F1  10A  from G1 6in\n", "").Replace(src)
	found = only(checked(t, "y.draft", bare).Findings, "supply-shorted")
	require.Len(t, found, 1)
	require.Equal(t, diag.Danger, found[0].Severity)
}

// With every step a short nothing else can be judged, and that is said.
func TestNothingButAShort(t *testing.T) {
	r := checked(t, "x.draft", `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  E1    1ft
`)
	require.Equal(t, "supply-shorted", r.Findings[0].Rule)
	require.Contains(t, r.Findings[0].Msg, "F1 leads to ground in off")
	rule, _ := check.RuleOf("wire-above-ampacity")
	require.Equal(t, check.States, rule.Needs)
	require.Contains(t, fmt.Sprint(r.Skipped), "every step is a short")
}

func only(l diag.List, rule string) (list diag.List) {
	for _, f := range l {
		if f.Rule == rule {
			list.Add(f)
		}
	}
	return list
}

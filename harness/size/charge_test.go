package size_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/diag"
	"legwork/harness/size"
)

// checked checks a draft that has to be read without a fault.
func checked(t *testing.T, src string) *harness.Result {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	return r
}

func wireOf(t *testing.T, r *harness.Result, number string) size.Wire {
	t.Helper()
	w, ok := r.Wire(number)
	require.True(t, ok, "wire %s", number)
	return w
}

func worstOf(r *harness.Result) map[string]diag.Severity {
	worst := map[string]diag.Severity{}
	for _, f := range r.Findings {
		worst[f.Rule] = max(worst[f.Rule], f.Severity)
	}
	return worst
}

// A 100 A machine on 5 ft at 50 C. 33 CFR 183.425 table 5, 125 C column: 8 AWG
// 90 A, 6 AWG 125 A; x sqrt(75/95) is 80.0 and 111.1 A. So 6 AWG. A bolt-down
// fuse is 100/0.75 = 133 A, next 150 A, for which 6 AWG is too thin: 4 AWG,
// 170 x 0.8885 = 151 A.
func TestChargeCableCarriesTheRatedOutput(t *testing.T) {
	bare := checked(t, "battery G1 cca 600A grounds-to frame\nalternator G2 100A setpoint 14.3V grounds-to frame\nwire 2 G1.+ G2.B+ 5ft\n")
	w := wireOf(t, bare, "2")
	require.Equal(t, "6 AWG", w.Conductor.Size.Name)
	require.InDelta(t, 100, w.HeatA, 1e-6)
	require.Equal(t, size.Charging, w.At)

	fused := checked(t, `battery G1 cca 600A grounds-to frame
alternator G2 100A setpoint 14.3V grounds-to frame
fuse F1 bolt-down from G1 6in
wire 1 G1.+ F1.1 6in
wire 2 F1.2 G2.B+ 5ft
`)
	require.InDelta(t, 150, fused.Sizes.Fuses[0].RatedA, 1e-9)
	require.InDelta(t, 100, fused.Sizes.Fuses[0].LoadA, 1e-6)
	require.Equal(t, "4 AWG", wireOf(t, fused, "2").Conductor.Size.Name)
	require.Less(t, fused.Findings.Worst(), diag.Warning)
}

// What the draft states and is too little for the machine is told: a fuse
// below the rated output opens, a thin wire burns.
func TestStatedChargePathBelowTheOutput(t *testing.T) {
	draft := func(fuse, wire string) string {
		return fmt.Sprintf(`battery G1 cca 600A grounds-to frame
alternator G2 100A setpoint 14.3V grounds-to frame
fuse F1 %s bolt-down from G1 6in
wire 1 G1.+ F1.1 6in
wire 2 F1.2 G2.B+ %s 5ft
`, fuse, wire)
	}
	require.Equal(t, diag.Fault, worstOf(checked(t, draft("60A", "")))["fuse-heavily-loaded"])
	require.Equal(t, diag.Warning, worstOf(checked(t, draft("110A", "")))["fuse-heavily-loaded"])
	require.NotContains(t, worstOf(checked(t, draft("150A", ""))), "fuse-heavily-loaded")
	require.Equal(t, diag.Danger, worstOf(checked(t, draft("150A", "10AWG")))["wire-above-ampacity"])
	require.NotContains(t, worstOf(checked(t, draft("150A", "4AWG"))), "wire-above-ampacity")
}

// Two machines on one stud: each lead carries its own, the cable from the stud
// to the battery both.
func TestOutputsAddUpBehindTheirStud(t *testing.T) {
	r := checked(t, `battery G1 cca 600A grounds-to frame
alternator G2 60A setpoint 14.3V grounds-to frame
alternator G3 40A setpoint 14.3V grounds-to frame
splice J1
wire 1 G2.B+ J1 3ft
wire 2 G3.B+ J1 3ft
wire 3 J1 G1.+ 3ft
`)
	for number, amps := range map[string]float64{"1": 60, "2": 40, "3": 100} {
		require.InDelta(t, amps, wireOf(t, r, number).HeatA, 1e-6, "wire %s", number)
	}
}

// Two like cables side by side halve the current; a lead that only branches
// off to a load carries none of it; a return by wire carries it all.
func TestChargeGoesWhereTheBatteryIs(t *testing.T) {
	r := checked(t, `battery G1 cca 600A
alternator G2 100A setpoint 14.3V
splice J1
fuse F1 10A
lamp P1 21W grounds-to frame
stud E1 on frame M8
wire 1 G2.B+ J1 4AWG 3ft
wire 2 J1 G1.+ 4AWG 3ft
wire 3 J1 G1.+ 4AWG 3ft
wire 4 J1 F1.1 1ft
wire 5 F1.2 P1.1 5ft
wire 6 G2.- E1 3ft
wire 7 E1 G1.- 2AWG 2ft
`)
	for number, amps := range map[string]float64{"1": 100, "2": 50, "3": 50, "6": 100, "7": 100} {
		require.InDelta(t, amps, wireOf(t, r, number).HeatA, 1e-6, "wire %s", number)
	}
	require.Less(t, wireOf(t, r, "4").HeatA, 3.0)
	require.GreaterOrEqual(t, wireOf(t, r, "6").Conductor.Size.AreaMM2, gauge.AWGAreaMM2(6)*0.9)
}

// The lead may lose 0.4 V at the rated output (workshop journal, tables of
// permissible drops: charging cable B+ to battery, 12 V). 10 m at 60 A:
// 10 mm2 carries it but loses 60 x 10 x 2.1 mohm = 1.3 V.

func TestChargeDropGovernsALongLead(t *testing.T) {
	r := checked(t, "harness units metric\nbattery G1 cca 600A grounds-to frame\nalternator G2 60A setpoint 14.3V grounds-to frame\nwire 2 G1.+ G2.B+ 10m\n")
	w := wireOf(t, r, "2")
	require.Equal(t, "drop", w.Governs)
	x := r.Sizes.Charges[0]
	require.LessOrEqual(t, x.DropV, 0.4)
	require.InDelta(t, w.DropV+60*2*gauge.RingJointOhm, x.DropV, 1e-3)
	l, ok := w.Judgement.Limit(gauge.FloorDrop)
	require.True(t, ok)
	require.True(t, l.OK)
	require.False(t, math.IsNaN(x.DropV))
}

// The drop of a charge lead at its rating warms no step: currents of the steps
// alone set the copper of the states.
func TestStatesKeepTheirOwnCopper(t *testing.T) {
	r := checked(t, "battery G1 cca 600A grounds-to frame\nalternator G2 100A setpoint 14.3V grounds-to frame\nwire 2 G1.+ G2.B+ 5ft\n")
	require.InDelta(t, 50, wireOf(t, r, "2").Conductor.TempC, 0.1)
}

// A fuse larger than blades are made ends on a stud or on leads of its own:
// the wire may be as thick as the fuse asks for, and legwork's own choice
// keeps its own rule. 80 A at 50 C: 8 AWG carries 79.97 A.
func TestOwnChoiceKeepsTheFuseRule(t *testing.T) {
	for _, rating := range []int{30, 40, 50, 60, 80, 100, 150} {
		r := checked(t, fmt.Sprintf(`place bay 50C
battery G1 cca 600A at bay grounds-to frame
alternator G2 20A setpoint 14.3V at bay grounds-to frame
fuse F2 %dA at bay from G1 6in
wire 1 G1.+ F2.1 6in
wire 2 F2.2 G2.B+ 10ft
`, rating))
		require.NotContains(t, worstOf(r), "fuse-above-wire", "%d A", rating)
		l, ok := wireOf(t, r, "2").Judgement.Limit(gauge.FloorProtection)
		require.True(t, ok)
		require.True(t, l.OK, "%d A", rating)
	}
}

package size_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
)

// starting is a starter worked straight by the key (invented); its S wire runs
// there and back over %s.
const starting = `metal block
metal frame
place bay 85C
place dash 50C
leg bay dash %s
stud E1 on block at bay M8
stud E2 on frame at bay M8
strap 91 E1 E2 2AWG 1ft
battery G1 cca 600A at bay
starter M1 at bay grounds-to block draws 150A stall 400A pull-in 38A 8V hold 9A
fuse F1 30A at bay bolt-down from G1 6in
keyswitch S1 at dash
  off
  run    B IGN
  crank  B IGN ST
wire 1 G1.+ M1.B 2AWG 24in
wire 2 G1.+ F1.1 6in
wire 3 F1.2 S1.B %s
wire 4 S1.ST M1.S %s
wire 5 G1.- E1 2AWG 12in
`

// The pull-in current is told, and governs: 38 A at 12 V is 31.6 A at 10 V. It
// may last as long as a start is tried, 10 s: k from 85 to 125 C by IEC 60949,
// 226 sqrt(ln(359.5/319.5)) = 77.6; 14 AWG, 1.876 mm2, takes 21200 A2s, 16 AWG
// 8440 A2s.
func TestPullInAsksForCopper(t *testing.T) {
	r := checked(t, fmt.Sprintf(starting, "3ft", "", ""))
	require.Less(t, r.Findings.Worst(), diag.Warning, "%v", r.Findings)
	w := wireOf(t, r, "4")
	require.Greater(t, w.PullA, 30.0)
	require.InDelta(t, 38*r.Sizes.Pulls[0].Volts/12, w.PullA, 1e-6)
	l, ok := w.Judgement.Limit(gauge.FloorStart)
	require.True(t, ok)
	require.InDelta(t, 10*w.PullA*w.PullA, l.Asked, 1e-6)
	k := 77.6 * w.Conductor.Size.AreaMM2
	require.InEpsilon(t, k*k, l.Got, 0.01)

	thin := checked(t, fmt.Sprintf(starting, "3ft", "10AWG", "18AWG"))
	l, _ = wireOf(t, thin, "4").Judgement.Limit(gauge.FloorStart)
	require.False(t, l.OK)
}

// A long way to the key: the solenoid needs 8.0 V at 20 C, at 85 C that is
// 8 x 319.5/254.5 = 10.04 V; the wires grow until it has that.
func TestSWireGrowsUntilTheSolenoidCloses(t *testing.T) {
	last := 0.0
	for _, way := range []string{"3ft", "12ft", "20ft"} {
		r := checked(t, fmt.Sprintf(starting, way, "", ""))
		require.Len(t, r.Sizes.Pulls, 1)
		p := r.Sizes.Pulls[0]
		require.InDelta(t, 8*319.5/254.5, p.LeastV, 1e-6)
		require.GreaterOrEqual(t, p.Volts, p.LeastV, way)
		area := wireOf(t, r, "4").Conductor.Size.AreaMM2
		require.GreaterOrEqual(t, area, last)
		last = area
	}
	short := wireOf(t, checked(t, fmt.Sprintf(starting, "3ft", "", "")), "4").Conductor.Size.AreaMM2
	require.Greater(t, last, short, "the drop makes it thicker")
	thin := checked(t, fmt.Sprintf(starting, "20ft", "14AWG", "14AWG")).Sizes.Pulls[0]
	require.Less(t, thin.Volts, thin.LeastV)
}

// The fuses of a start (invented draft). A solenoid draws some 39 A to pull in
// and holds with 10 A (usual figures): a blade, which holds 1.1 x its rating
// for 10 s, has to have 40 A, both where it feeds the solenoid alone and where
// a lamp of 0.35 A is all that it feeds otherwise.
const startFuses = `battery G1  cca 600A  grounds-to frame
starter M1  draws 160A  grounds-to frame
keyswitch S1
  off
  run    B IGN
  crank  B IGN ST
lamp P1  5W  grounds-to frame
fuse F1  from G1 6in
fuse F2  5A
fuse F3%s
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.B  4ft
wire 3  S1.ST  F3.1  3ft
wire 4  F3.2  M1.S  3ft
wire 5  G1.+  M1.B  2/0AWG  3ft
wire 6  S1.IGN  F2.1  3ft
wire 7  F2.2  P1.1  3ft
`

func TestAFuseOfASolenoidIsRatedForItsPull(t *testing.T) {
	for style, want := range map[string]float64{"": 40, "  maxi": 40, "  mini": 20} {
		_, s := chosen(t, fmt.Sprintf(startFuses, style))
		rated := map[string]float64{}
		for _, f := range s.Fuses {
			rated[f.Device.Name] = f.RatedA
		}
		require.InDelta(t, want, rated["F3"], 0, "F3%s", style)
		require.InDelta(t, 40, rated["F1"], 0)
		require.Empty(t, failures(s))
	}
}

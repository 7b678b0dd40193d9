package size_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// rhythmic is two lamps of 120 W at the far end of one 14 AWG feed (invented).
const rhythmic = `battery G1  grounds-to frame
fuse    F1  40A  from G1 6in
splice  J1
lamp    P1  draws 10A 12V  grounds-to frame  %s
motor   M1  draws 10A 12V  %s
stud    E1  on frame  M6
wire 1  G1.+  F1.1  8AWG  6in
wire 2  F1.2  J1    8AWG  10ft
wire 3  J1    P1.1  10AWG  5ft
wire 4  J1    M1.+  10AWG  5ft
wire 5  M1.-  E1    10AWG  1ft
`

func rhythm(t *testing.T, lamp, motor string) *harness.Result {
	t.Helper()
	d := harness.Parse("x.draft", fmt.Appendf(nil, rhythmic, lamp, motor))
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	return r
}

func heatA(t *testing.T, r *harness.Result, wire string) (heat, on float64) {
	t.Helper()
	w, ok := r.Wire(wire)
	require.True(t, ok)
	return w.HeatA, w.DesignA
}

// Heat takes the root of the mean square: a quarter of the time on is half the
// current. Two loads on one wire are taken to be on at the same moments:
// sqrt((m1 + m2)^2 + (s1 + s2)^2), m = d I, s = I sqrt(d (1 - d)).
func TestHeatIsOverDuty(t *testing.T) {
	plain := rhythm(t, "", "")
	heat, on := heatA(t, plain, "3")
	require.InDelta(t, on, heat, 1e-9)

	r := rhythm(t, "duty 25%", "")
	heat, on = heatA(t, r, "3")
	require.InDelta(t, on/2, heat, 1e-6)
	alone, steady := heatA(t, r, "4")
	require.InDelta(t, steady, alone, 1e-9)
	lampA := on
	heat, on = heatA(t, r, "2")
	require.InDelta(t, math.Hypot(on-lampA+0.25*lampA, lampA*math.Sqrt(0.25*0.75)), heat, 1e-3)

	both := rhythm(t, "duty 25%", "cycle 2s 8s")
	heat, on = heatA(t, both, "2")
	require.InDelta(t, on/2, heat, 1e-3, "in step with each other they are one load of 20 A")
}

// On for longer than copper takes to get warm is on.
func TestLongTimesOnAreNotEvenedOut(t *testing.T) {
	heat, on := heatA(t, rhythm(t, "cycle 3min 10min", ""), "3")
	require.InDelta(t, on, heat, 1e-9)
}

// A controller's output hands its duty to what it switches.
func TestOutputDuty(t *testing.T) {
	src := `battery G1  grounds-to frame
fuse   F1  20A  from G1 6in
module A1
  BAT  feed 0.1A  always
  INJ  low-side 8A  clamps  duty 25%  pwm 100Hz  when running
  GND  ground
stud   E1  on frame  M6
splice J1
heater R1  draws 6A 12V
wire 1  G1.+   F1.1    6in
wire 2  F1.2   J1      1ft
wire 3  J1     A1.BAT  1ft
wire 4  J1     R1.1    3ft
wire 5  R1.2   A1.INJ  3ft
wire 6  A1.GND E1      1ft
`
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	heat, on := heatA(t, r, "4")
	require.Greater(t, on, 4.0)
	require.InDelta(t, on/2, heat, 1e-6)
}

// The peak of a start counts for drop and for the fuse, not for heat: the
// extra 20 A through the resistance of the way, I R by hand from the steady
// state.
func TestPeakCountsForDropAndFuse(t *testing.T) {
	plain, peak := rhythm(t, "", ""), rhythm(t, "", "peak 30A 2s")
	m1, _ := plain.Model.DeviceByName("M1")
	was, _ := plain.Sizes.WorstDrop(m1, 0)
	m1, _ = peak.Model.DeviceByName("M1")
	is, ok := peak.Sizes.WorstDrop(m1, 0)
	require.True(t, ok)
	require.InDelta(t, 20, is.ExtraA, 1e-3)
	ohm := 0.0
	for _, number := range []string{"1", "2", "4", "5"} {
		w, _ := peak.Wire(number)
		ohm += w.Conductor.Ohm
	}
	ohm += 2*0.0003 + fuseOhm(plain) // post of G1, E1
	require.InDelta(t, was.DropV+20*ohm, is.DropV, 0.002)
	require.InDelta(t, plain.Sizes.Fuses[0].LoadA+20, peak.Sizes.Fuses[0].LoadA, 1e-3)
	before, _ := heatA(t, plain, "4")
	after, _ := heatA(t, peak, "4")
	require.InDelta(t, before, after, 1e-9)
}

// fuseOhm reads the fuse's resistance out of the volts across it.
func fuseOhm(r *harness.Result) float64 {
	s := r.Sizes.Hot.Step("running")
	in, _ := r.Model.TerminalByName("F1.1")
	out, _ := r.Model.TerminalByName("F1.2")
	w, _ := r.Model.WireByNumber("2")
	return (s.Volts[in.ID] - s.Volts[out.ID]) / math.Abs(s.WireA[w.ID])
}

// A fuse that legwork chooses holds the peak.
func TestChosenFuseHoldsThePeak(t *testing.T) {
	src := "battery G1  grounds-to frame\nfuse F1  from G1 6in\nlamp P1  draws 5A 12V  peak 18A 20s  grounds-to frame\nwire 1  G1.+  F1.1  6in\nwire 2  F1.2  P1.1  3ft\n"
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.GreaterOrEqual(t, r.Sizes.Fuses[0].RatedA, 18/0.8)
}

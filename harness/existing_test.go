package harness_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// An old feed of unknown size with 0.4 V measured on it at 8 A, a shielded pair
// and a cut-off end (all invented).
const reused = `place   bay   85C
place   dash  50C
leg     bay  dash  40in
metal   frame
battery G1  at bay  grounds-to frame
fuse    F1  10A  at bay  from G1 6in
splice  J1  at bay
cap     Y1  at bay
switch  S1  at dash  closed
lamp    P1  60W  at bay  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  J1    16AWG  existing
wire 3  J1    S1.1  14AWG  existing  drop 0.4V 8A measured
wire 4  J1    Y1    16AWG  existing
wire 5  S1.2  P1.1
cable C1  22AWG  shielded
  core 301  S1.2  open
  drain 302  open  J1
`

// A measured wire takes the resistance that was measured (0.4 V / 8 A at 20 C,
// 0.05 ohm, by copper's law 5/254.5 more at 25 C), whatever its size.
func TestExistingWires(t *testing.T) {
	d := harness.Parse("x.draft", []byte(reused))
	require.Less(t, d.Findings.Worst(), diag.Fault, "%v", d.Findings)
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	w, _ := r.Wire("3")
	require.False(t, w.Chosen)
	require.InDelta(t, 0.05*(234.5+w.Conductor.TempC)/254.5, w.Conductor.Ohm, 1e-9)
	require.InDelta(t, w.DesignA*w.Conductor.Ohm, w.DropV, 1e-9)
	require.InDelta(t, 4.2*0.05*1.2, w.DropV, 0.03, "60 W at 13.5 V draws 4.4 A, at the volts left a little less; hot copper has more")
	for _, f := range r.Findings {
		require.NotEqual(t, "loose-end", f.Rule, "%s", f)
		require.NotEqual(t, "wire-too-thin", f.Rule, "%s", f)
	}
	reading := r.Step("running").Volts("301.open")
	require.True(t, reading.OK, reading.Reason)
	require.InDelta(t, r.Step("running").Volts("S1.2").Volts, reading.Volts, 1e-6)
	bare, _ := d.Model.TerminalByName("Y1")
	require.Equal(t, "bay", bare.Device.Spot.Place.Name)
}

package size_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/size"
)

// Two batteries of 12 V in series under a machine of 28.2 V: each has half of
// the setpoint while it charges, and what they have inside (6/750 = 8 mohm
// each) is no loss of the cables. 1 ft of 70 mm2 is under 0.1 mohm, a ring
// 0.3 mohm (source ring-joint): at 80 A less than 60 mV of the link.
func TestChargingBatteriesInSeries(t *testing.T) {
	r := checked(t, `harness "Two in series" system 24V
battery G1 12V cca 750A grounds-to frame
battery G2 12V cca 750A
alternator G3 grounds-to frame 80A setpoint 28.2V
fuse F2 100A bolt-down from G2 6in
switch S9 closed contact 300A
wire 1 G1.+ G2.- 70mm2 1ft
wire 2 G2.+ F2.1 25mm2 6in
wire 3 F2.2 S9.1 25mm2 1ft
wire 4 S9.2 G3.B+ 25mm2 4ft
`)
	require.Empty(t, worstOf(r), "80 A on 100 A is 80 %%, no more, and the link of a row needs no fuse")
	lost := 0.0
	for _, x := range r.Sizes.Charges {
		lost += x.DropV
		if x.Side == size.ReturnSide {
			require.Less(t, x.DropV, 0.06)
		}
	}
	require.Greater(t, lost, 0.05)
	require.Less(t, lost, 0.8, "the switch's 10 mohm is a low figure: 0.8 V of it would decide")
	s := r.Sizes.Hot.Step("running")
	plus, ok := r.Model.TerminalByName("G3.B+")
	require.True(t, ok)
	require.InDelta(t, 28.2, s.Reading(plus).Volts, 0.1)
	tap, ok := r.Model.TerminalByName("G1.+")
	require.True(t, ok)
	require.InDelta(t, 14.1, s.Reading(tap).Volts, 0.1)
}

// Which of two batteries in series stands first in the draft is no matter:
// 0 V lies at the lower one's negative post, and nothing is shorted.
func TestUpperBatteryFirst(t *testing.T) {
	r := checked(t, `harness "Upper one first" system 24V
battery G2 12V cca 750A
battery G1 12V cca 750A grounds-to frame
lamp P1 21W 27V grounds-to frame
heater R1 400W 27V grounds-to frame
fuse F1 20A from G2 6in
switch S1 closed when running
splice J1
wire 1 G1.+ G2.- 16mm2 6in
wire 2 G2.+ F1.1 6in
wire 3 F1.2 S1.1 1ft
wire 4 S1.2 J1 1ft
wire 5 J1 P1.1 4ft
wire 6 J1 R1.1 20AWG 30ft
`)
	require.NotContains(t, worstOf(r), "supply-shorted")
	require.Contains(t, worstOf(r), "drop-over-limit", "30 ft of 20 AWG, 0.3 ohm, take more than 10 %% of 24 V at 15 A")
	top, ok := r.Model.TerminalByName("G2.+")
	require.True(t, ok)
	require.InDelta(t, 2*6.0/750, top.Device.BatteryOhm, 1e-9)                 // of both, source battery-ohm
	require.InDelta(t, 25.3, r.Sizes.Hot.Step("off").Reading(top).Volts, 0.01) // 2 x 12.65, source rest-emf
}

package harness_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// charged is an alternator with one load of 20 A at 13.5 V, on half the time
// where the draft says so, and a controller that sleeps on 8 mA.
const charged = `draft 1
harness system 12V profile road
battery G1 cca 540A 60Ah grounds-to frame
alternator G2 60A setpoint 14.2V idle 30A grounds-to frame
fuse F1 80A bolt-down from G1 6in
fuse F2 30A from G1 6in
keyswitch S1
  off
  run B IGN
heater H1 draws 20A 13.5V DUTY grounds-to frame
module A1
  MEM feed 0.2A asleep 8mA always
  IGN feed 1A above 7V when run
  GND ground
stud E1 on frame
splice J1
splice J2
wire 1 G1.+ F1.1 6AWG 6in
wire 2 F1.2 G2.B+ 4AWG 2ft
wire 3 G1.+ F2.1 8AWG 6in
wire 4 F2.2 J1 8AWG 1ft
wire 5 J1 S1.B 8AWG 1ft
wire 6 S1.IGN J2 8AWG 1ft
wire 7 J2 H1.+ 8AWG 1ft
wire 8 J2 A1.IGN 16AWG 1ft
wire 9 J1 A1.MEM 16AWG 1ft
wire 10 A1.GND E1 16AWG 1ft
`

// The heater is a resistance: at 14.1 V it takes 20 x 14.1/13.5 = 20.9 A,
// and the controller 1.2 A beside it; half the time on it counts 10.5 A. The
// drain limit of 60 Ah is RC/4 mA with RC = 60/0.6 = 100 min: 25 mA.
func TestMarginsOfChargeAndStandby(t *testing.T) {
	m := marginsOf(t, strings.Replace(charged, "DUTY", "", 1))
	require.InDelta(t, 22.1, m[harness.MarginSpeed].Got, 0.2)
	require.InDelta(t, 60, m[harness.MarginSpeed].Limit, 1e-9)
	require.InDelta(t, 30, m[harness.MarginIdle].Limit, 1e-9)
	require.Equal(t, "running", m[harness.MarginIdle].Step)
	require.InDelta(t, 0.025, m[harness.MarginDrain].Limit, 1e-9)
	require.InDelta(t, 0.008, m[harness.MarginDrain].Got, 1e-4)

	half := marginsOf(t, strings.Replace(charged, "DUTY", "duty 50%", 1))
	require.InDelta(t, 11.7, half[harness.MarginSpeed].Got, 0.2)

	unsaid := marginsOf(t, strings.NewReplacer("DUTY", "", "idle 30A", "").Replace(charged))
	require.NotContains(t, unsaid, harness.MarginIdle, "a guess is no limit")
}

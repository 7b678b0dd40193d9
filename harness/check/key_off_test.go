package check_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// parked is a vehicle with a key and a memory feed (invented).
const parked = `battery G1 cca 540A %s grounds-to frame
fuse F1 10A from G1 6in
keyswitch S1
  off
  run B IGN
module A1
  MEM feed 0.2A asleep %s always
  IGN feed 1A above 7V holds 60ms when run
  GND ground
splice J1
stud E1 on frame M6
wire 1 G1.+ F1.1 6in
wire 2 F1.2 J1 1ft
wire 3 J1 S1.B 1ft
wire 4 J1 A1.MEM 1ft
wire 5 S1.IGN A1.IGN 1ft
wire 6 A1.GND E1 1ft
`

// Without a capacity 35 mA is good and 50 mA the usual limit (drain-35,
// drain-practice); with one, RC/4 mA (drain-limit), where RC = Ah/0.6
// (reserve-capacity): 60 Ah, 100 min, 25 mA; 180 Ah, 300 min, 75 mA.
func TestDrainAgainstCapacity(t *testing.T) {
	cases := []struct {
		capacity, asleep string
		want             diag.Severity
	}{
		{"", "34mA", 0}, {"", "36mA", diag.Note}, {"", "51mA", diag.Warning},
		{"60Ah", "24mA", 0}, {"60Ah", "26mA", diag.Note}, {"60Ah", "51mA", diag.Warning},
		{"180Ah", "74mA", 0}, {"180Ah", "76mA", diag.Warning},
	}
	for _, c := range cases {
		found := checked(t, "x.draft", fmt.Sprintf(parked, c.capacity, c.asleep)).Findings
		require.Equal(t, c.want, found.Worst(), "%v: %v", c, found)
	}
	// 40 % of 60 Ah at 0.1 A last 240 h.
	found := checked(t, "x.draft", fmt.Sprintf(parked, "60Ah", "100mA")).Findings
	require.Contains(t, found[0].Msg, "G1 gives 0.1 A in rest; 25 mA is the most to leave on; 10 days")
	require.Contains(t, found[0].Detail, "A1 0.1 A")
}

// A draft without a key, in which all is on in every step, says nothing of parking.
func TestNoDrainWithoutAnOff(t *testing.T) {
	const lamp = "battery G1 cca 540A grounds-to frame\nfuse F1 10A from G1 6in\nlamp P1 21W grounds-to frame\nwire 1 G1.+ F1.1 6in\nwire 2 F1.2 P1.1 4ft\n"
	require.Empty(t, checked(t, "x.draft", lamp).Findings)
	second := lamp + "switch S1 closed when running\nlamp P2 21W grounds-to frame\nfuse F2 10A from G1 6in\nwire 3 G1.+ F2.1 6in\nwire 4 F2.2 S1.1 1ft\nwire 5 S1.2 P2.1 1ft\n"
	require.Len(t, only(checked(t, "x.draft", second).Findings, "key-off-drain"), 1)
}

// The fan on 87a: one finding, with its wire and the terminal that was meant;
// the drain that it makes is not told again.
func TestLoadOnTheRestContactIsOneFinding(t *testing.T) {
	src := `battery G1 cca 600A grounds-to frame
alternator G2 grounds-to frame
fuse F1 30A from G1 6in
relay K1 change-over contact 40A motor 25A suppress resistor
switch S1 closed when running
motor M1 draws 20A 13.5V grounds-to frame
stud E1 on frame M6
splice J1
wire 1 G1.+ F1.1 10AWG 6in
wire 2 F1.2 J1 10AWG 1ft
wire 3 J1 K1.30 10AWG 1ft
wire 4 K1.87a M1.+ 10AWG 3ft
wire 5 J1 S1.1 10AWG 1ft
wire 6 S1.2 K1.86 10AWG 1ft
wire 7 K1.85 E1 10AWG 1ft
fuse F2 100A from G1 6in
wire 8 G1.+ F2.1 4AWG 6in
wire 9 F2.2 G2.B+ 4AWG 2ft
`
	found := checked(t, "x.draft", src).Findings
	require.Len(t, found, 1, "%v", found)
	require.Equal(t, "M1 draws 20 A in off and rest and none in running; it hangs on K1.87a, meant 87?", found[0].Msg)
	require.Equal(t, 12, found[0].At.Line)
	require.Empty(t, checked(t, "y.draft", strings.Replace(src, "K1.87a", "K1.87", 1)).Findings)
}

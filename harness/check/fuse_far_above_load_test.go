package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Two batteries with a fuse each feed one heater by a post: either fuse may
// have to carry all of it, and half of the load is no ground for a smaller one.
func TestWireBehindTwoFuses(t *testing.T) {
	const src = `battery G1 cca 620A grounds-to frame
battery G2 cca 620A grounds-to frame
fuse F1 100A bolt-down from G1 6in
fuse F2 100A bolt-down from G2 6in
stud E7
heater R1 draws 60A 13.5V grounds-to frame
wire 1 G1.+ F1.1 1/0AWG 6in
wire 2 G2.+ F2.1 1/0AWG 6in
wire 3 F1.2 E7 1/0AWG 6in
wire 4 F2.2 E7 1/0AWG 6in
wire 5 E7 R1.1 6ft
`
	require.Empty(t, only(checked(t, "x.draft", src).Findings, "fuse-far-above-load"))
	// A lamp of its own beside it: the fuse alone feeds that, and may be smaller.
	one := strings.NewReplacer("battery G2 cca 620A grounds-to frame\n", "", "fuse F2 100A bolt-down from G2 6in\n", "",
		"wire 2 G2.+ F2.1 1/0AWG 6in\n", "", "wire 4 F2.2 E7 1/0AWG 6in\n", "", "draws 60A", "draws 20A").Replace(src)
	require.Len(t, only(checked(t, "x.draft", one).Findings, "fuse-far-above-load"), 1)
}

// A fuse by which a solenoid pulls in carries a lamp alone for long; 1 A would
// end the first start.
func TestFuseOfASolenoidIsNotTooLarge(t *testing.T) {
	const src = `battery G1 cca 540A grounds-to frame
starter M1 draws 160A pull-in 30A 8V hold 9A 3V grounds-to frame
fuse F1 30A from G1 6in
keyswitch S1
  off
  run B IGN
  gap B IGN
  crank B IGN ST
lamp P1 5W grounds-to frame
wire 1 G1.+ M1.B 2AWG 2ft
wire 2 G1.+ F1.1 10AWG 6in
wire 3 F1.2 S1.B 8AWG 2ft
wire 4 S1.ST M1.S 8AWG 2ft
wire 5 S1.IGN P1.1 4ft
`
	require.Empty(t, only(checked(t, "x.draft", src).Findings, "fuse-far-above-load"))
	unwired := strings.Replace(src, "wire 4 S1.ST M1.S 8AWG 2ft\n", "spare M1.S S1.ST\n", 1)
	require.Len(t, only(checked(t, "x.draft", unwired).Findings, "fuse-far-above-load"), 1, "with no solenoid behind it the fuse is far above its load")
}

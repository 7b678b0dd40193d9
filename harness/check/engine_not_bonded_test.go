package check_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// A thin bond: 14 AWG of 125 C is good for 40 A (33 CFR 183.425 table 5), for
// three times that while the starter turns, 120 A. The message compares with
// the figure that it prints.
func TestThinBondNamesWhatItIsHeldAgainst(t *testing.T) {
	found := only(checked(t, "x.draft", `metal     block
metal     frame
battery   G1  cca 600A  grounds-to frame
starter   M1  draws 150A  grounds-to block
keyswitch S1
  off
  run    B IGN
  crank  B IGN ST
fuse      F1  15A  from G1 6in
stud      E1  on block  M8
stud      E2  on frame  M8
wire 1  G1.+   M1.B  2/0AWG  3ft
wire 2  G1.+   F1.1  14AWG   6in
wire 3  F1.2   S1.B  14AWG   1ft
wire 4  S1.ST  M1.S  14AWG   2ft
strap 5  E1  E2  14AWG  1ft
`).Findings, "engine-not-bonded")
	require.Len(t, found, 1)
	require.Regexp(t, `^wire 5 bonds block and carries 1[34]\d A in crank; 14 AWG may carry 120 A, 3 x its 40 A$`, found[0].Msg)
	require.InDelta(t, 120, found[0].Values[0].Limit, 1e-9)
}

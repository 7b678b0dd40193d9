package check_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// More flows through the fuse than the lamp behind it draws: 24 A, of which a
// resistor of half an ohm takes 22 A (12.3 V / 0.5 ohm less what the way
// loses; invented). That is no case for a larger fuse; the heater alone is.
func TestFuseIsNotGrownForWhatNoLoadDraws(t *testing.T) {
	const lamp = `battery G1  cca 540A  grounds-to frame
fuse    F1  15A  from G1 6in
lamp    P1  21W  grounds-to frame
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  1ft
`
	found := only(checked(t, "x.draft", lamp+"resistor R1  0.5ohm\nwire 3  F1.2  R1.1  1ft\nwire 4  R1.2  E1    1ft\n").Findings, "fuse-heavily-loaded")
	require.Len(t, found, 1)
	require.Regexp(t, `^The loads behind it draw 1\.\d+ A of that: find what takes the rest`, found[0].Detail)
	found = only(checked(t, "y.draft", lamp+"heater R1  draws 20A 13.5V  grounds-to frame\nwire 3  F1.2  R1.1  1ft\n").Findings, "fuse-heavily-loaded")
	require.Len(t, found, 1)
	require.Regexp(t, "^Fit a larger fuse if every wire behind it carries that", found[0].Detail)
}

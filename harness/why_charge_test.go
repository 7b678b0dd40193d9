package harness_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// workingOf joins the working of a name into one text.
func workingOf(t *testing.T, src, name string) string {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	list, err := r.Why(name)
	require.NoError(t, err)
	var b strings.Builder
	for _, w := range list {
		b.WriteString(w.Title + "\n")
		for _, g := range w.Groups {
			b.WriteString(g.Title + "\n")
			for _, s := range g.Steps {
				b.WriteString(s.Text + "\n")
			}
		}
	}
	return b.String()
}

// A stated fuse below the machine: the machine itself is what the wire is held
// against, it is no fuse, and no fuse style is asked of it.
func TestWhyNamesTheMachine(t *testing.T) {
	src := `battery G1 cca 600A grounds-to frame
alternator G2 100A setpoint 14.3V grounds-to frame
fuse F1 60A bolt-down from G1 6in
wire 1 G1.+ F1.1 6in
wire 2 F1.2 G2.B+ 5ft
`
	text := workingOf(t, src, "wire 2")
	require.Contains(t, text, "largest steady current, in flat-battery charging")
	require.Contains(t, text, "G2 gives no more by itself")
	require.NotContains(t, text, `""`)
	require.NotContains(t, text, "G2 protects it")
	require.Contains(t, text, "G2 at its rated 100 A loses on the feed, at most 400 mV: passes")
	require.Contains(t, workingOf(t, src, "G2"), "on the return, at most 200 mV: passes")
}

// 40 A of blade for 6.5 A of heater: 6.5/0.75 = 8.7, so 10 A would do, and
// 18 AWG (25 A in 33 CFR 183.425 table 5, x 0.8885 at 50 C) carries that.
func TestWhySaysThatTheFuseIsTooLarge(t *testing.T) {
	src := `battery G1 cca 540A grounds-to frame
fuse F1 %s from G1 6in
heater R1 draws 7A 13.5V grounds-to frame
wire 1 G1.+ F1.1 6in
wire 2 F1.2 R1.1 4ft
`
	for _, name := range []string{"wire 2", "F1"} {
		text := workingOf(t, strings.Replace(src, "%s", "40A", 1), name)
		require.Contains(t, text, "F1 is rated 40 A and has to carry")
		require.Contains(t, text, "wire 2 could be 18 AWG in place of 12 AWG")
		text = workingOf(t, strings.Replace(src, "%s", "15A", 1), name)
		require.NotContains(t, text, "could be")
	}
}

// What leaks through an open key is no load of a fuse: 0.013 uA before.
func TestWhyTellsNoLeakAsLoad(t *testing.T) {
	text := workingOf(t, `battery G1 cca 540A grounds-to frame
fuse F7 40A from G1 6in
starter M1 draws 160A grounds-to frame
keyswitch S1
  off
  run    B IGN
  crank  B IGN ST
wire 1 G1.+ F7.1 6in
wire 2 F7.2 S1.B 1ft
wire 3 G1.+ M1.B 2AWG 1ft
wire 4 S1.ST M1.S 1ft
`, "F7")
	require.Contains(t, text, "carries no steady current in any step")
}

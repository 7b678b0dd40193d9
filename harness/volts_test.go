package harness_test

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// inSeries are n batteries of 24 V, one on top of the other, with a lamp.
func inSeries(n int) string {
	src := "harness \"Series\"  system 24V\nbattery G1  24V  grounds-to frame\n"
	plus := "G1.+"
	for i := 2; i <= n; i++ {
		at := string(rune('0' + i))
		src += "battery G" + at + "  24V\nfuse F" + at + "  10A  from " + plus + " 6in\n" +
			"wire 1" + at + "  " + plus + "  F" + at + ".1  6in\nwire 2" + at + "  F" + at + ".2  G" + at + ".-  6in\n"
		plus = "G" + at + ".+"
	}
	return src + "fuse F1  10A  from " + plus + " 6in\nlamp P1  5W  grounds-to frame\nwire 1  " + plus + "  F1.1  6in\nwire 2  F1.2  P1.1  4ft\n"
}

func resultOf(t *testing.T, src string) *harness.Result {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	return r
}

func messagesOf(list diag.List, rule string) (all []string) {
	for _, f := range list {
		if f.Rule == rule {
			all = append(all, f.Msg)
		}
	}
	return all
}

// Three batteries of 24 V in series have 3 x 25.3 V, less what the lamp takes: no figure of the draft is
// above 60 V, and yet the draft is refused whole, and can't be accepted.
func TestBatteriesInSeriesAreRefusedAboveSixtyVolts(t *testing.T) {
	for _, src := range []string{inSeries(3), inSeries(3) + "accept over-60-volts \"we know\"\n"} {
		r := resultOf(t, src)
		require.Equal(t, []string{"there are 75.8 V between two points in off, above the 60 V that legwork is for"}, messagesOf(r.Findings, "over-60-volts"))
		require.Len(t, r.Findings, 1)
		require.Equal(t, diag.Danger, r.Findings[0].Severity)
		require.Nil(t, r.Sizes)
		require.NotEmpty(t, r.Skipped)
	}
	require.Empty(t, messagesOf(resultOf(t, inSeries(2)).Findings, "over-60-volts"))
}

// A battery at rest has 12.65 V for each 12 V of its name (common practice).
func TestVoltsUnlikeTheSystem(t *testing.T) {
	tail := "fuse F1  10A  from G1 6in\nlamp P1  5W  grounds-to frame\nwire 1  G1.+  F1.1  6in\nwire 2  F1.2  P1.1  4ft\n"
	for _, c := range []struct{ name, src, want string }{
		{"24 V battery", "battery G1  24V  grounds-to frame\n" + tail, "G1 brings 25.3 V in off, in a harness of 12 V"},
		{"said twice", "harness \"H\"  system 12V\nbattery G1  24V  grounds-to frame\n" + tail, "G1 brings 25.3 V in off, in a harness of 12 V"},
		{"12 V battery", "harness \"H\"  system 24V\nbattery G1  12V  grounds-to frame\n" + tail, "the sources give 12.6 V together, in a harness of 24 V"},
		{"two in series", inSeries(2), "P1.1 has 50.6 V across it in off and is made for 27 V"},
		{"12 V machine", "harness \"H\"  system 24V\nbattery G1  24V  grounds-to frame\nalternator G2  60A  setpoint 14.2V  grounds-to frame\nwire 9  G1.+  G2.B+  4ft\n" + tail,
			"G2 holds 14.2 V, in a harness of 24 V"},
		{"24 V lamp", "battery G1  grounds-to frame\n" + strings.Replace(tail, "5W", "5W 27V", 1), "P1 is made for 27 V, in a harness of 12 V"},
		{"sound", "battery G1  grounds-to frame\n" + tail, ""},
		{"sound at 24 V", "harness \"H\"  system 24V\nbattery G1  24V  grounds-to frame\n" + tail, ""},
	} {
		got := messagesOf(resultOf(t, c.src).Findings, "wrong-volts")
		if c.want == "" {
			require.Empty(t, got, c.name)
			continue
		}
		require.Contains(t, got, c.want, c.name)
	}
}

// Two batteries of 12 V in series are a source of 24 V; a load of 12 V may hang
// on the lower one.
func TestTapBetweenTwoBatteries(t *testing.T) {
	src := `harness "Tap"  system 24V
battery G1  12V  grounds-to frame
battery G2  12V
fuse    F1  10A  from G2 6in
fuse    F2  10A  from G1 6in
lamp    P1  5W   grounds-to frame
lamp    P2  5W 13.5V  grounds-to frame
wire 1  G1.+  G2.-  2/0AWG  1ft
wire 2  G2.+  F1.1  6in
wire 3  F1.2  P1.1  4ft
wire 4  G1.+  F2.1  6in
wire 5  F2.2  P2.1  4ft
`
	require.Empty(t, messagesOf(resultOf(t, src).Findings, "wrong-volts"))
}

package check_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// How bad a fuse above its wire is. 16 AWG of 125 C carries 30 A at 30 C
// (33 CFR 183.425 table 5, 18 AWG 25 A) and 27.5 A at 45 C, by sqrt(80/95).
// A blade fuse may hold 1.35 times its rating for 600 s (ISO 8820-3), and the
// wire then settles at 45 + 95 (1.35 In / I30)^2 C, against the 250 C that
// cross-linked insulation stands for the seconds of a short.
func TestHowFarAFuseIsAboveItsWire(t *testing.T) {
	tests := []struct {
		fuse, wire string
		want       diag.Severity
		says       string
	}{
		{"30A", "16AWG", diag.Warning, "The rating is 1.09 times that. It may hold 40.5 A for 600 s; the wire then settles at 218 C"}, // 95 (40.5/30)^2 = 173
		{"40A", "16AWG", diag.Fault, "The rating is 1.45 times that. It may hold 54 A for 600 s; the wire then settles at 353 C"},     // 95 (54/30)^2 = 308
		{"30A", "18AWG", diag.Fault, "the wire then settles at 294 C"},                                                                // 95 (40.5/25)^2 = 249
		{"40A", "18AWG", diag.Danger, "The rating is 1.74 times that; no rule allows above 1.5 times"},                                // 40/22.9
		{"30A bolt-down", "16AWG", diag.Warning, "The rating is 1.09 times that, within the 1.5 times"},                               // opening times from memory
	}
	for _, c := range tests {
		src := fmt.Sprintf(`place bay  45C
battery G1  cca 540A  at bay  grounds-to frame
fuse    F1  %s  at bay  from G1 6in
lamp    P1  21W  at bay  grounds-to frame
wire 1  G1.+  F1.1  6AWG  6in
wire 2  F1.2  P1.1  %s  2ft
`, c.fuse, c.wire)
		found := only(checked(t, "x.draft", src).Findings, "fuse-above-wire")
		require.Len(t, found, 1, "%s %s", c.fuse, c.wire)
		require.Equal(t, c.want, found[0].Severity, "%s %s: %s", c.fuse, c.wire, found[0].Detail)
		require.Contains(t, found[0].Detail, c.says)
	}
}

// A stated return that is thinner than the fuse ahead of its load asks for is a
// warning, however thin; 12 AWG carries 50 A at 30 C and 45.8 A at 45 C, by
// sqrt(80/95), 14 AWG 36.7 A.
func TestAReturnBelowTheFuseOfItsLoad(t *testing.T) {
	for wire, want := range map[string]string{
		"12AWG": "", "14AWG": "F1 is rated 40 A but wire 3 (14 AWG) carries at most 36.7 A", "18AWG": "F1 is rated 40 A but wire 3 (18 AWG) carries at most 22.9 A",
	} {
		src := fmt.Sprintf(`place bay  45C
battery G1  cca 540A  at bay  grounds-to frame
fuse    F1  40A  at bay  from G1 6in
motor   M1  draws 15A 13.5V  at bay
stud    E1  on frame  at bay  M6
wire 1  G1.+  F1.1  6AWG  6in
wire 2  F1.2  M1.+  8AWG  4ft
wire 3  M1.-  E1    %s  1ft
`, wire)
		found := only(checked(t, "x.draft", src).Findings, "fuse-above-wire")
		if want == "" {
			require.Empty(t, found)
			continue
		}
		require.Len(t, found, 1)
		require.Equal(t, want, found[0].Msg)
		require.Equal(t, diag.Warning, found[0].Severity)
		require.Contains(t, found[0].Detail, "What M1 takes when it stalls")
	}
}

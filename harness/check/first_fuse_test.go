package check_test

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// A feed that ends on a bus, a stud, a splice or a plug (invented). Its length
// is that of the leg or, where it stays in the bay, what the wire says.
const farFuse = `harness system 12V profile PROFILE
place bay
place dash
leg bay dash LENGTH
battery G1 at bay grounds-to frame
JOINT
fuse F1 10A FUSE
lamp P1 at dash 21W grounds-to frame
wire 2 F1.2 P1.1
`

// The figures are those of the placement sources: 7 in, and 72 in as the bound
// of what the road profile lets pass with a note (abyc-feed).
func TestDistanceToTheFirstFuse(t *testing.T) {
	joints := map[string][2]string{
		"bus":    {"box A2 at dash\n  bus BAT F1.1\nwire 1 G1.+ A2.BAT", "in A2"},
		"stud":   {"stud E9 at dash M6\nwire 1 G1.+ E9\nwire 3 E9 F1.1 1in", "at dash"},
		"splice": {"splice J9 at dash\nwire 1 G1.+ J9\nwire 3 J9 F1.1 1in", "at dash"},
		"plug":   {"connector X1 at dash 2way\n  half a pins\n  half b sockets\nwire 1 G1.+ X1.a.1\nwire 3 X1.b.1 F1.1 1in", "at dash"},
		"strap":  {"stud E9 at dash M6\nwire 1 G1.+ E9\nstud E8 at dash M6\nstrap 90 E9 E8 6AWG 1in\nwire 3 E8 F1.1 1in", "at dash"},
	}
	cases := []struct {
		profile string
		worst   diag.Severity
	}{{"road", diag.Warning}, {"boat", diag.Fault}, {"track", diag.Fault}, {"fire", diag.Warning}}
	for name, j := range joints {
		for _, c := range cases {
			src := strings.NewReplacer("PROFILE", c.profile, "LENGTH", "9ft", "JOINT", j[0], "FUSE", j[1]).Replace(farFuse)
			found := only(checked(t, "x.draft", src).Findings, "unprotected-wire")
			require.Len(t, found, 1, "%s, %s: %v", name, c.profile, found)
			require.Equal(t, c.worst, found[0].Severity, "%s, %s", name, c.profile)
			require.Contains(t, found[0].Msg, "without a fuse lie ahead of F1")
			require.Greater(t, found[0].Values[0].Got, 9*0.3048, name)
		}
	}
}

// In the battery's own place 6 ft pass with a note on the road, more don't.
func TestDistanceWithinThePlaceOfTheBattery(t *testing.T) {
	const src = "battery G1 cca 540A grounds-to frame\nfuse F1 10A\nlamp P1 21W grounds-to frame\nwire 1 G1.+ F1.1 LENGTH\nwire 2 F1.2 P1.1 3ft\n"
	for length, want := range map[string]diag.Severity{"7in": 0, "8in": diag.Note, "72in": diag.Note, "73in": diag.Warning} {
		found := checked(t, "x.draft", strings.Replace(src, "LENGTH", length, 1)).Findings
		require.Equal(t, want, only(found, "unprotected-wire").Worst(), length)
	}
}

// A wire past the main fuse leaves all behind it without: one danger, whatever
// the profile, at that wire. Two fuses side by side are no such thing, and
// neither is one between two batteries.
func TestWirePastTheMainFuse(t *testing.T) {
	src := `harness system 12V profile road
place bay
place dash
leg bay dash 3ft
battery G1 at bay grounds-to frame
fuse F1 60A at bay bolt-down from G1 6in
box A2 at dash
  bus BAT F3.1
fuse F3 5A in A2
lamp P1 at dash 21W grounds-to frame
wire 101 G1.+ F1.1
wire 102 F1.2 A2.BAT
wire 201 F3.2 P1.1
`
	require.Empty(t, only(checked(t, "x.draft", src).Findings, "unprotected-wire"))
	for profile := range map[string]bool{"road": true, "boat": true} {
		d := harness.Parse("x.draft", []byte(src+"wire 900 G1.+ A2.BAT 7ft6in\n"))
		r, err := d.Check(context.Background(), harness.Options{Profile: profile})
		require.NoError(t, err)
		found := only(r.Findings, "unprotected-wire")
		require.Len(t, found, 1, "%v", found)
		require.Equal(t, diag.Danger, found[0].Severity)
		require.Contains(t, found[0].Msg, "wire 900, G1.+ to A2.BAT, leads past F1")
	}
	side := src + "fuse F2 60A at bay bolt-down from G1 6in\nwire 103 G1.+ F2.1\nwire 104 F2.2 A2.BAT\n"
	require.Empty(t, only(checked(t, "x.draft", side).Findings, "unprotected-wire"))
	two := src + "battery G2 at bay grounds-to frame\nfuse F2 60A at bay bolt-down from G2 6in\nwire 103 G2.+ F2.1\nwire 104 F2.2 G1.+ 1ft\n"
	require.Less(t, only(checked(t, "x.draft", two).Findings, "unprotected-wire").Worst(), diag.Danger)
}

package harness_test

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// fixable lists drafts with findings: those that break one rule each, the
// rules' own test drafts and the shipped ones with faults.
func fixable(t *testing.T) map[string]*harness.Draft {
	t.Helper()
	out := map[string]*harness.Draft{}
	for _, r := range check.Rules() {
		if r.Bad != "" {
			out["bad "+r.ID] = harness.Parse("bad.draft", []byte(r.Bad))
		}
	}
	for _, pattern := range []string{"../testdata/*.draft", "check/testdata/*.draft"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files)
		for _, f := range files {
			out[f] = harness.Load(os.DirFS(filepath.Dir(f)), filepath.Base(f))
		}
	}
	return out
}

// Every fix that is offered anywhere, carried out alone, takes its finding
// away, and nothing at warning or above comes in its place.
func TestEveryOfferedFixMends(t *testing.T) {
	rules := map[string]int{}
	for name, d := range fixable(t) {
		r, err := d.Check(context.Background(), harness.Options{})
		require.NoError(t, err)
		all := r.Findings
		for _, f := range all {
			if f.Fix == nil || f.At.File != d.Name {
				continue
			}
			alone := *r
			alone.Findings = diag.List{f}
			for _, g := range all { // the others stay, without their fixes
				if g.String() != f.String() {
					g.Fix = nil
					alone.Findings.Add(g)
				}
			}
			if f.Severity == diag.Note && r.Findings.Worst() >= diag.Fault {
				continue // what a note advises waits
			}
			m, err := alone.Mend(context.Background(), harness.Options{})
			require.NoError(t, err)
			require.Len(t, m.Done, 1, "%s: %s: %s", name, f, f.Fix.Msg)
			require.Equal(t, strings.Count(string(r.Draft.File.Src), "\n"), strings.Count(string(m.Text), "\n"))
			rules[f.Rule]++
		}
	}
	for _, rule := range []string{
		"coil-without-suppression", "wire-too-thin", "wire-above-ampacity", "fuse-above-wire",
		"fuse-heavily-loaded", "fuse-far-above-load", "short-outlasts-wire", "thin-engine-strap",
	} {
		require.Positive(t, rules[rule], rule)
	}
}

// 14 AWG of 105 C insulation carries 35 A by 33 CFR 183.425, table 5.
func TestMendKeepsCommentsAndOrder(t *testing.T) {
	src := "metal frame\nbattery G1  cca 540A  grounds-to frame # \"ours\"\nfuse F1  40A  from G1 6in  # main\n" +
		"lamp P1  21W  grounds-to frame\nwire 1  G1.+  F1.1  8AWG  6in\nwire 2  F1.2  P1.1  14AWG  4ft\n"
	r, err := harness.Parse("t.draft", []byte(src)).Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	m, err := r.Mend(context.Background(), harness.Options{})
	require.NoError(t, err)
	require.Equal(t, strings.Replace(src, "40A  from", "35A  from", 1), string(m.Text))
	require.Equal(t, []string{"fuse-above-wire"}, []string{m.Done[0].Rule})
	require.Less(t, m.After.Findings.Worst(), diag.Warning)
	require.Equal(t, src, string(r.Draft.File.Src), "the draft that was read stays")
}

// A word written wrongly is mended although no rule could run before.
func TestMendSpelling(t *testing.T) {
	src := "battery G1 cca 540A grounds-to frame\nfuse F1 4A form G1 6in\nlamp P1 21W grounds-to fram\nwire 1 G1.+ F1.1 8AWG 6in\nwire 2 F1.2 P1.1 14AWG 4ft\nmetal frame\n"
	r, err := harness.Parse("t.draft", []byte(src)).Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	m, err := r.Mend(context.Background(), harness.Options{})
	require.NoError(t, err)
	require.Equal(t, strings.NewReplacer("form", "from", "fram\n", "frame\n").Replace(src), string(m.Text))
}

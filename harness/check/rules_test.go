package check_test

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
	"legwork/harness/draft"
	"legwork/harness/wanted"
)

// checked runs a draft with every rule; it has to be readable.
func checked(t *testing.T, name, src string) *harness.Result {
	t.Helper()
	d := harness.Parse(name, []byte(src))
	require.Less(t, d.Findings.Worst(), diag.Fault, "%s can't be read: %v", name, d.Findings)
	r, err := d.Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	return r
}

// running gives the rules of this package that have something to run.
func running() []*check.Rule {
	var list []*check.Rule
	for _, r := range check.Rules() {
		if r.Run != nil {
			list = append(list, r)
		}
	}
	return list
}

func tidy(t *testing.T, src string) {
	t.Helper()
	f, found := draft.Parse("x", []byte(src))
	require.Empty(t, found)
	require.Equal(t, string(draft.Tidy(f)), src, "not tidy")
}

func TestBadDraftBreaksItsRuleAlone(t *testing.T) {
	for _, r := range running() {
		t.Run(r.ID, func(t *testing.T) {
			tidy(t, r.Bad)
			found := checked(t, "bad.draft", r.Bad).Findings
			mine := 0
			for _, f := range found {
				require.Equal(t, r.ID, f.Rule, "%s", f)
				if f.Severity >= min(diag.Warning, r.Severity) { // a rule of notes breaks with a note
					mine++
				}
			}
			require.Positive(t, mine, "the draft breaks nothing")
		})
	}
}

func TestGoodDraftIsClean(t *testing.T) {
	for _, r := range running() {
		t.Run(r.ID, func(t *testing.T) {
			tidy(t, r.Good)
			require.NotEqual(t, r.Bad, r.Good)
			require.Empty(t, checked(t, "good.draft", r.Good).Findings)
		})
	}
}

// Each rule has a draft of its own, with what it has to find and with lines
// that only look like it.
func TestRuleDrafts(t *testing.T) {
	for _, r := range running() {
		t.Run(r.ID, func(t *testing.T) {
			name := filepath.Join("testdata", r.ID+".draft")
			src, err := os.ReadFile(name)
			require.NoError(t, err, "every rule has such a draft")
			tidy(t, string(src))
			wants, err := wanted.Read(string(src))
			require.NoError(t, err)
			require.NotEmpty(t, wants, "it wants nothing")
			require.Contains(t, string(src), "# fine", "it has no line that looks like the fault and is none")
			var mine diag.List
			for _, f := range checked(t, name, string(src)).Findings {
				if f.Rule == r.ID {
					mine.Add(f)
				}
			}
			for _, w := range wants {
				require.Equal(t, r.ID, w.Rule, "line %d: a rule's draft is held against that rule alone", w.Line)
			}
			require.Empty(t, wanted.Compare(wants, mine), "%s", strings.Join(wanted.Compare(wants, mine), "\n"))
		})
	}
}

func TestNoStrayRuleDrafts(t *testing.T) {
	entries, err := os.ReadDir("testdata")
	require.NoError(t, err)
	for _, e := range entries {
		if e.Name() == "run-on" {
			continue // drafts of TestRunsOn
		}
		id, isDraft := strings.CutSuffix(e.Name(), ".draft")
		r, known := check.RuleOf(id)
		require.True(t, isDraft && known && r.Run != nil, "%s belongs to no rule", e.Name())
	}
}

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
	"legwork/harness/draft"
	"legwork/harness/wanted"
)

// wholeDraft checks a draft of testdata with every rule.
func wholeDraft(t *testing.T, name string) (src string, found diag.List) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(moduleRoot, "testdata", name))
	require.NoError(t, err)
	d := harness.Parse(name, text)
	r, err := d.Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	for _, skip := range r.Skipped { // only what waits until the faults are mended
		rule, ok := check.RuleOf(skip.Rule)
		require.True(t, ok)
		require.Equal(t, check.Sound, rule.Needs, "%v", skip)
	}
	for f := range r.Findings.AtLeast(diag.Warning) {
		found.Add(f)
	}
	f, _ := draft.Parse(name, text)
	require.Equal(t, string(draft.Tidy(f)), string(text), "not tidy")
	return string(text), found
}

// The whole truck, built as it should be, gives no alarm.
func TestCleanTruck(t *testing.T) {
	_, found := wholeDraft(t, "orchard-truck.draft")
	require.Empty(t, found)
}

// Every planted fault is found, and nothing else at warning or above.
func TestFaultyTruck(t *testing.T) {
	src, found := wholeDraft(t, "orchard-truck-faults.draft")
	wants, err := wanted.Read(src)
	require.NoError(t, err)
	rules := map[string]bool{}
	for _, w := range wants {
		rules[w.Rule] = true
		_, known := check.RuleOf(w.Rule)
		require.True(t, known, "line %d: there is no rule %s", w.Line, w.Rule)
	}
	require.GreaterOrEqual(t, len(wants), 14)
	require.GreaterOrEqual(t, len(rules), 12)
	require.Empty(t, wanted.Compare(wants, found), "%s", strings.Join(wanted.Compare(wants, found), "\n"))
}

package harness_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

var update = flag.Bool("update", false, "write the pages of docs/rules anew")

const (
	rulePages = moduleRoot + "/docs/rules"
	howToPage = "stale page: go test ./harness -run RulePages -update"
)

// The page of a rule is what explain prints, its failing draft run on the spot.
func TestRulePagesAreFresh(t *testing.T) {
	want := map[string]string{"README.md": ruleIndex()}
	for _, r := range check.Rules() {
		page, err := harness.ExplainRule(context.Background(), r)
		require.NoError(t, err)
		want[r.ID+".md"] = page
	}
	if *update {
		require.NoError(t, os.MkdirAll(rulePages, 0o755))
		for name, page := range want {
			require.NoError(t, os.WriteFile(filepath.Join(rulePages, name), []byte(page), 0o644))
		}
	}
	for name, page := range want {
		got, err := os.ReadFile(filepath.Join(rulePages, name))
		require.NoError(t, err, howToPage)
		require.Equal(t, page, string(got), howToPage)
	}
	entries, err := os.ReadDir(rulePages)
	require.NoError(t, err)
	for _, e := range entries {
		_, ok := want[e.Name()]
		require.True(t, ok, "docs/rules/%s is the page of no rule: delete it", e.Name())
	}
}

// ruleIndex lists all rules, those of the earlier stages last.
func ruleIndex() string {
	var b strings.Builder
	b.WriteString("# Rules\n\nWhat legwork looks for. `legwork explain ID` prints the same pages.\n\n" +
		"danger can burn or injure; fault will not work, or strands; warning works, outside the recommended figure; note is good to know.\n" +
		"The severity is the usual one; where a finding may be milder, its page says when.\n")
	list := func(title string, in func(*check.Rule) bool) {
		fmt.Fprintf(&b, "\n## %s\n\n| rule | severity | |\n|---|---|---|\n", title)
		for _, r := range check.Rules() {
			if in(r) {
				fmt.Fprintf(&b, "| [%s](%s.md) | %s | %s |\n", r.ID, r.ID, r.Severity, r.Title)
			}
		}
	}
	for s := diag.Danger; s > diag.Note; s-- {
		list(strings.ToUpper(s.String()[:1])+s.String()[1:], func(r *check.Rule) bool { return r.Run != nil && r.Severity == s })
	}
	list("Told by the earlier stages", func(r *check.Rule) bool { return r.Run == nil })
	return b.String()
}

// A page has to show what the rule's own draft makes legwork say.
func TestRulePagesShowTheFinding(t *testing.T) {
	for _, r := range check.Rules() {
		page, err := harness.ExplainRule(context.Background(), r)
		require.NoError(t, err)
		if r.Run != nil {
			require.Contains(t, page, "## What legwork says\n\n    bad.draft:", r.ID)
			require.Contains(t, page, "["+r.ID+"]", r.ID)
		}
	}
}

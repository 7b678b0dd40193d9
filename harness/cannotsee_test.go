package harness_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/check"
)

const cannotSeePage = moduleRoot + "/docs/cannot-see.md"

// The page of what no rule can see is put together from every rule's misses.
func TestRulePagesCannotSee(t *testing.T) {
	want := cannotSee()
	if *update {
		require.NoError(t, os.WriteFile(cannotSeePage, []byte(want), 0o644))
	}
	got, err := os.ReadFile(cannotSeePage)
	require.NoError(t, err, howToPage)
	require.Equal(t, want, string(got), howToPage)
}

// cannotSee lists what each rule leaves unseen, the rules about the harness
// first, those about the text of the draft last.
func cannotSee() string {
	var b strings.Builder
	b.WriteString("# What legwork can't see\n\n" +
		"A draft without a finding is a draft in which these rules found nothing, no more. A drawing shows neither rust, nor a loose nut, nor a wire\n" +
		"that chafes; and every rule has a limit of its own. Look here before you trust a quiet report. Written from the declarations of the rules:\n" +
		"`go test ./harness -run RulePages -update`.\n")
	list := func(title string, in func(*check.Rule) bool) {
		fmt.Fprintf(&b, "\n## %s\n\n| rule | looks for | does not see |\n|---|---|---|\n", title)
		for _, r := range check.Rules() {
			if in(r) {
				fmt.Fprintf(&b, "| [%s](rules/%s.md) | %s | %s |\n", r.ID, r.ID, cell(r.Title), cell(r.Misses))
			}
		}
	}
	list("Rules about the harness", func(r *check.Rule) bool { return r.Run != nil })
	list("Told while the draft is read, routed, sized and played", func(r *check.Rule) bool { return r.Run == nil })
	return b.String()
}

// cell fits a text into one cell of a table.
func cell(s string) string {
	return strings.ReplaceAll(strings.Join(strings.Fields(s), " "), "|", `\|`)
}

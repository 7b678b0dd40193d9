package harness

import (
	"context"
	"strings"

	"legwork/harness/check"
	"legwork/harness/diag"
)

// ExplainRule prints a rule as a page, with what legwork says about the
// rule's own failing draft, found by running it.
func ExplainRule(ctx context.Context, r *check.Rule) (string, error) {
	if r.Bad == "" {
		return r.Page(""), nil
	}
	d := Parse("bad.draft", []byte(r.Bad))
	res, err := d.Check(ctx, Options{})
	if err != nil {
		return "", err
	}
	var mine diag.List
	for _, f := range res.Findings {
		if f.Rule == r.ID {
			mine.Add(f)
		}
	}
	var out strings.Builder
	if err := diag.WriteText(&out, mine, diag.TextOptions{Source: d.Source, Width: 96}); err != nil {
		return "", err
	}
	return r.Page(out.String()), nil
}

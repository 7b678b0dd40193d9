package main

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// narrowing says which findings a check is asked for.
type narrowing struct {
	Only     []string `sep:"none" placeholder:"RULE" help:"Look at this rule alone; may be given again."`
	Severity string   `enum:"note,warning,fault,danger" default:"note" help:"Show nothing milder: note, warning, fault or danger."`
}

// rules reports the first word of --only that is no rule.
func (n narrowing) rules() error {
	for _, id := range n.Only {
		if _, ok := check.RuleOf(id); ok {
			continue
		}
		var ids []string
		for _, r := range check.Rules() {
			ids = append(ids, r.ID)
		}
		if near := diag.Nearest(id, ids); near != "" {
			return errUsage{fmt.Errorf("--only: no rule %q; did you mean %s?", id, near)}
		}
		return errUsage{fmt.Errorf("--only: no rule %q; legwork explain lists them", id)}
	}
	return nil
}

// apply leaves the findings that are asked for. A draft with mistakes keeps
// these: nothing else was looked at.
func (n narrowing) apply(r *harness.Result) {
	least, _ := diag.ParseSeverity(n.Severity)
	r.Findings = slices.DeleteFunc(slices.Clone(r.Findings), func(f diag.Finding) bool {
		return f.Severity < least || r.Sizes != nil && !n.asks(f.Rule)
	})
	r.Accepted = slices.DeleteFunc(slices.Clone(r.Accepted), func(a check.Accepted) bool { return !n.asks(a.Rule) })
}

func (n narrowing) asks(rule string) bool {
	return len(n.Only) == 0 || slices.Contains(n.Only, rule)
}

// narrowed says what was left out on request, so that silence is not taken for a pass.
func (p *printer) narrowed(n narrowing) {
	var parts []string
	if len(n.Only) > 0 {
		parts = append(parts, "of "+strings.Join(n.Only, ", ")+" alone")
	}
	if n.Severity != "note" {
		parts = append(parts, "of "+n.Severity+" and worse")
	}
	if len(parts) > 0 {
		p.wrapped("  ", "  ", "Shown are findings "+strings.Join(parts, ", "))
	}
}

package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
)

// Accepted is a finding that the draft accepts, with the reason given.
type Accepted struct {
	diag.Finding
	Reason string
}

// Settle parts findings into open ones and accepted ones. An accept that
// names no rule is a fault; one that matches nothing is a note, unless its
// rule could not run: it may hide the next fault of its kind.
func Settle(m *model.Model, found diag.List, skipped []Skip) (open diag.List, accepted []Accepted) {
	used := make([]bool, len(m.Accepts))
	for _, f := range found {
		if i := covering(m.Accepts, f); i >= 0 {
			used[i] = true
			accepted = append(accepted, Accepted{Finding: f, Reason: m.Accepts[i].Reason})
			continue
		}
		open.Add(f)
	}
	for i, a := range m.Accepts {
		waits := slices.ContainsFunc(skipped, func(s Skip) bool { return s.Rule == a.Rule })
		if !used[i] && !waits {
			open.Add(stale(a))
		}
	}
	open.Sort()
	return open, accepted
}

// covering gives the index of the accept that covers a finding, -1 for none.
// What is wrong with the reading of the draft itself can't be accepted.
func covering(accepts []*model.Accept, f diag.Finding) int {
	if r, ok := RuleOf(f.Rule); ok && r.Stage == Drafted {
		return -1
	}
	for i, a := range accepts {
		if a.Rule == f.Rule && (a.Scope == nil || a.Scope.At.File == f.At.File && within(a.Scope, f.At.Line)) {
			return i
		}
	}
	return -1
}

func within(s *draft.Stmt, line int) bool {
	if s.Line == line {
		return true
	}
	for _, c := range s.Children {
		if within(c, line) {
			return true
		}
	}
	return false
}

func stale(a *model.Accept) diag.Finding {
	if _, ok := RuleOf(a.Rule); ok {
		return diag.Finding{
			Rule: "stale-accept", Severity: diag.Note, At: a.At,
			Msg:    fmt.Sprintf("accept %s matches no finding", a.Rule),
			Detail: "Take the line out, or it will hide the next finding of this kind.",
		}
	}
	f := diag.Finding{
		Rule: "draft-name", Severity: diag.Fault, At: a.At,
		Msg: fmt.Sprintf("there is no rule %q to accept", a.Rule),
	}
	if near := diag.Nearest(a.Rule, IDs()); near != "" {
		f.Fix = &diag.Fix{Msg: fmt.Sprintf("did you mean %s?", near)}
	}
	return f
}

var _ = define(Rule{
	ID:       "stale-accept",
	Severity: diag.Note,
	Title:    "An accept line matches no finding.",
	Why: "An accepted finding is put aside with its reason. When the draft has changed and the finding is gone, " +
		"the line no longer does anything today, but it would hide the next finding of the same kind.",
	Misses: "An accept for the whole draft counts as used when it covers one finding out of many.",
	Stage:  Drafted,
})

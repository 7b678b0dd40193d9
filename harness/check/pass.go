package check

import (
	"cmp"
	"context"
	"slices"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/size"
	"legwork/harness/solve"
)

// Pass is what a rule may read; all of it is read-only. Sizes and Routes are
// nil where that stage could not work.
type Pass struct {
	Model   *model.Model
	Nets    *model.Nets
	Routes  *route.Routes
	Sizes   *size.Sizes
	Profile gauge.Profile
	Source  func(file string) []byte // text of the draft's files, for fixes; nil offers none

	rule     *Rule
	found    diag.List
	ways     *graph
	draws    *byNet
	used     []use
	starters []behind
	modules  map[*model.Device]int // index of a controller among the relays
	reached  *reach                // outputs as if on
	bare     *reach                // without outputs
	wired    *reach                // without field windings
	strung   *series
	ran      bool         // down is played
	down     *solve.State // the engine running down, with machines as sources
	partly   []Skip       // what a rule that ran could not judge
}

// Skip names a rule that could not run, and why.
type Skip struct {
	Rule   string
	Reason string
}

// Report adds a finding of the running rule. Rule and, where it is not set,
// Severity are filled in.
func (p *Pass) Report(f diag.Finding) {
	f.Rule = p.rule.ID
	if f.Severity == 0 {
		f.Severity = p.rule.Severity
	}
	p.found.Add(f)
}

// Run runs every rule on the pass and gives the findings, sorted, and the
// rules that could not run.
func Run(ctx context.Context, p *Pass) (diag.List, []Skip, error) {
	return run(ctx, p, Rules())
}

func run(ctx context.Context, p *Pass, list []*Rule) (diag.List, []Skip, error) {
	var skipped []Skip
	for _, r := range soundLast(list) {
		if err := ctx.Err(); err != nil {
			return nil, nil, err
		}
		if r.Run == nil {
			continue
		}
		why := p.lacks(r.Needs)
		if (r.Polar || r.Needs >= Lengths) && p.positiveGround() != nil {
			why = "positive ground: nothing that depends on which side is fed was judged"
		}
		if why != "" {
			skipped = append(skipped, Skip{Rule: r.ID, Reason: why})
			continue
		}
		p.rule = r
		r.Run(p)
	}
	p.found.Sort()
	return p.found, append(skipped, p.partly...), nil
}

// soundLast puts the rules that need a harness without faults behind the others.
func soundLast(list []*Rule) []*Rule {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b *Rule) int {
		return cmp.Compare(a.Needs/Sound, b.Needs/Sound)
	})
	return out
}

// lacks says what is missing for a rule with these needs, "" if nothing is.
func (p *Pass) lacks(n Needs) string {
	if n >= Lengths && p.Routes == nil {
		return "no lengths: the draft could not be routed"
	}
	if n < Played {
		return ""
	}
	if p.Sizes == nil || p.Sizes.Hot == nil {
		return "no states: the network could not be solved"
	}
	if len(states(p.Sizes.Hot)) == 0 && (n > Played || p.Sizes.Hot.States[0].Skipped != "") {
		return "no states: " + cmp.Or(p.Sizes.Hot.States[0].Skipped, "every step is a short; mend it first")
	}
	if n == Bonded && len(p.islands()) > 0 {
		return "an engine has no way back to the battery; mend that first"
	}
	if n == Grounded && p.afloat() {
		return "a controller or an engine has no way back to the battery; mend that first"
	}
	if n >= Sound && slices.ContainsFunc(p.found, p.open) {
		return "what it would tell may come from the faults above; mend them first"
	}
	return ""
}

// states gives the solved steps of a history, in order, without those that a
// short ends at once.
func states(h *solve.History) []*solve.State {
	var list []*solve.State
	if h == nil {
		return nil
	}
	for _, s := range h.States {
		if s.Skipped == "" && len(s.Shorts) == 0 {
			list = append(list, s)
		}
	}
	return list
}

// cranking reports whether the starter draws current in the step.
func cranking(s *solve.State) bool {
	return s.Step.Engine == part.Locked || s.Step.Engine == part.Turning
}

// open reports whether a finding is a fault that the draft does not accept.
func (p *Pass) open(f diag.Finding) bool {
	return f.Severity >= diag.Fault && covering(p.Model.Accepts, f) < 0
}

package harness

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/size"
	"legwork/harness/solve"
)

// ErrProfile is wrapped by the error for a profile that does not exist.
var ErrProfile = errors.New("unknown profile")

// Options say how a draft is checked.
type Options struct {
	Profile string     // limits to judge by; "": the draft's own, or road
	With    []string   // options of the draft that are fitted; nil: those of the last [Draft.Fit], or none
	Start   part.Start // how cold a cold start is, and the charge of the batteries then
}

// Result is everything that legwork worked out about a draft.
type Result struct {
	Draft    *Draft
	Model    *model.Model
	Profile  gauge.Profile
	Start    part.Start    // the cold start that was played
	Routes   *route.Routes // nil where the draft has mistakes
	Sizes    *size.Sizes   // nil where the draft has mistakes
	Findings diag.List     // open findings of every stage
	Accepted []check.Accepted
	Skipped  []check.Skip
	Ran      int // rules that ran
}

// Check routes, sizes, solves and checks a draft. Where the draft itself has
// mistakes, only these are reported, and every rule is listed as not run: on
// half a harness the rules would report faults that are not there. The error
// is the context's, an unknown profile, or a fault of the program.
func (d *Draft) Check(ctx context.Context, o Options) (*Result, error) {
	if o.With != nil {
		if err := d.Fit(o.With); err != nil {
			return nil, err
		}
	}
	p, err := profile(o.Profile, d.Model)
	if err != nil {
		return nil, err
	}
	return d.check(ctx, d.Model, p, o.Start)
}

// check does all that Check promises with a model of the draft.
func (d *Draft) check(ctx context.Context, m *model.Model, p gauge.Profile, start part.Start) (r *Result, err error) {
	r = &Result{Draft: d, Model: m, Profile: p, Start: start}
	if d.Findings.Worst() >= diag.Fault {
		r.Findings = d.Findings
		r.Skipped = skipAll("the draft has mistakes; mend them first")
		return r, nil
	}
	if f, empty := nothing(m); empty {
		r.Findings = append(slices.Clip(d.Findings), f)
		r.Skipped = skipAll("the draft has no device and no wire")
		return r, nil
	}
	r.Routes = route.Measure(m)
	if r.Sizes, err = size.Choose(ctx, m, r.Routes, p, start); err != nil {
		return nil, err
	}
	if f, high := check.OverSixty(m, r.Sizes.Hot); high {
		return r.refused(f), nil
	}
	pass := &check.Pass{Model: m, Nets: m.Nets(), Routes: r.Routes, Sizes: r.Sizes, Profile: p, Source: d.Source}
	found, skipped, err := check.Run(ctx, pass)
	if err != nil {
		return nil, err
	}
	all := append(diag.List{}, d.Findings...)
	all = append(all, r.Routes.Findings...)
	all = append(all, r.Sizes.Findings...)
	all = append(all, noSource(m, found)...)
	r.Findings, r.Accepted = check.Settle(m, all, skipped)
	r.Skipped = skipped
	r.Ran = ran(skipped)
	return r, nil
}

// refused is a result without sizes, states or other findings.
func (r *Result) refused(f diag.Finding) *Result {
	r.Routes, r.Sizes = nil, nil
	r.Findings = diag.List{f}
	r.Skipped = skipAll("legwork is not for more than 60 V d.c.")
	return r
}

func profile(name string, m *model.Model) (gauge.Profile, error) {
	if name == "" {
		name = m.Profile
	}
	if name == "" {
		name = "road"
	}
	p, ok := gauge.ProfileOf(name)
	if !ok {
		var names []string
		for _, p := range gauge.Profiles() {
			names = append(names, p.Name)
		}
		return p, fmt.Errorf("%w %q; there are %s", ErrProfile, name, strings.Join(names, ", "))
	}
	return p, nil
}

func skipAll(why string) []check.Skip {
	var list []check.Skip
	for _, r := range check.Rules() {
		if r.Run != nil {
			list = append(list, check.Skip{Rule: r.ID, Reason: why})
		}
	}
	return list
}

func ran(skipped []check.Skip) int {
	n := -len(skipped)
	for _, r := range check.Rules() {
		if r.Run != nil {
			n++
		}
	}
	return n
}

// Wire gives a wire as sized, with the working of its judgement; ok is false where there is none of that number
// or nothing was sized.
func (r *Result) Wire(number string) (w size.Wire, ok bool) {
	m, found := r.Model.WireByNumber(number)
	if !found || r.Sizes == nil {
		return size.Wire{}, false
	}
	w = r.Sizes.Wires[m.ID]
	w.Judgement = w.Working()
	return w, true
}

// StepView reads one step of the usual case: hot soak, nominal figures.
type StepView struct {
	state *solve.State
	model *model.Model
}

// Step gives the view of a step by its name; an unknown step gives readings
// that say so.
func (r *Result) Step(name string) StepView {
	if r.Sizes == nil {
		return StepView{model: r.Model}
	}
	return StepView{state: r.Sizes.Usual.Step(name), model: r.Model}
}

// Volts gives the voltage of a terminal against the negative post of the
// battery. Where it floats or does not exist, OK is false and Reason says why.
func (v StepView) Volts(terminal string) solve.Reading {
	t, ok := v.model.TerminalByName(terminal)
	switch {
	case !ok:
		return solve.Reading{Reason: "there is no terminal " + terminal}
	case v.state == nil:
		return solve.Reading{Reason: "the step was not solved"}
	}
	return v.state.Reading(t)
}

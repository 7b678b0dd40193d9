package solve

import (
	"context"
	"fmt"
	"math"
	"slices"

	"legwork/harness/circuit"
	"legwork/harness/part"
)

// play is one player of a frame: its solver, and what the devices remember.
type play struct {
	f   *frame
	net *circuit.Solver
	now *circuit.Solution

	kept   answers
	at     *answer   // the one that now belongs to
	fresh  *answer   // the one that the solver found last
	closed []bool    // by link: as in now
	has    []bool    // by link: what the solver has
	ohm    []float64 // by wire: what the solver has
	dirty  bool      // something changed since the last solve
	brief  bool      // a round of sizing: nobody will ask why something floats
	passes int

	step  int
	on    []bool // by relay
	lost  []bool // by relay: a module that dropped out in this step
	given []bool // by output: the command has come
	riseC []float64

	t       float64
	due     []float64 // by relay: when it moves; +Inf: it does not
	seen    []tally   // by relay
	frozen  []bool    // by relay: held out, because it chatters
	spent   int       // moves of the event runs of the step
	restive bool      // a relay moved for the second time in the step

	start   memory // of the step
	scratch search
	reasons reasons
	cycle   *Cycle // in which the last event run ended
	cycles  []Cycle
	races   []int
}

// memory is what is carried from step to step.
type memory struct {
	on, given []bool
}

// tally is what one relay went through in the step.
type tally struct {
	volts  float64 // across its coil, or over the least margin of its feeds
	pullV  float64 // at the moment of its last move or failure to move
	dropV  float64
	zone   Zone
	moves  int
	short  int // AliveState: feed with the least margin
	gap    bool
	outV   float64 // thresholds at its temperature
	inV    float64
	freeV  float64
	coilC  float64
	factor float64 // of resistance and volts against 20 C
}

// history plays all steps from rest.
func (p *play) history(ctx context.Context, c Case) (*History, error) {
	before := c.After
	p.brief = before != nil
	c.After = nil // what it leads to need not keep it
	h := &History{Case: c, Model: p.f.model, Relays: p.f.relays, States: make([]*State, 0, len(p.f.model.Steps))}
	clear(p.on)
	clear(p.given)
	clear(p.riseC)
	for i := range p.f.model.Steps {
		s, err := p.playStep(ctx, i, before)
		if err != nil {
			return nil, fmt.Errorf("step %s: %w", p.f.model.Steps[i].Name, err)
		}
		h.States = append(h.States, s)
		h.Findings.Add(residualFault(p.f, s)...)
	}
	return h, nil
}

// playStep settles one step and reads it.
func (p *play) playStep(ctx context.Context, i int, before *History) (*State, error) {
	p.begin(i)
	if p.f.lay.ref == nil {
		return p.unsolved("the draft has no battery or other source"), nil
	}
	if err := p.toRest(ctx, before); err != nil {
		return nil, err
	}
	if err := p.complete(ctx); err != nil {
		return nil, err
	}
	s := p.read()
	p.warm(s)
	return s, nil
}

func (p *play) toRest(ctx context.Context, before *History) error {
	if ok, err := p.retrace(ctx, before); ok || err != nil {
		return err
	}
	out, err := p.settle(ctx, together)
	if err == nil && out == restless {
		err = p.sequence(ctx)
	}
	return err
}

// begin sets the stage for a step: who is asked, how warm the coils are.
func (p *play) begin(i int) {
	p.step, p.passes, p.dirty = i, 0, true
	p.cycles, p.races = nil, nil
	clear(p.frozen)
	for o := range p.given {
		p.given[o] = p.given[o] && p.commanded(o)
	}
	copy(p.start.on, p.on)
	copy(p.start.given, p.given)
	p.rewind()
	for r := range p.f.relays {
		p.temper(r)
	}
}

// rewind goes back to the start of the step.
func (p *play) rewind() {
	p.t, p.dirty, p.restive = 0, true, false
	copy(p.on, p.start.on)
	copy(p.given, p.start.given)
	clear(p.lost)
	for r := range p.seen {
		s := &p.seen[r]
		s.volts, s.pullV, s.dropV, s.zone, s.moves, s.short, s.gap = 0, 0, 0, SurelyOut, 0, -1, false
		p.due[r] = math.Inf(1)
		if p.frozen[r] {
			p.on[r] = false
		}
	}
	for o := range p.given {
		p.given[o] = p.given[o] || p.f.outs[o].early && p.commanded(o)
	}
}

// solve finds the volts, unless nothing has changed since the last time or
// the same links were closed before in this run.
func (p *play) solve(ctx context.Context) error {
	if !p.dirty {
		return nil
	}
	for _, i := range p.f.moving {
		l := &p.f.links[i]
		p.closed[i] = l.branch != noBranch && p.conducts(l)
	}
	p.note()
	a := p.kept.find()
	if a == nil {
		a = p.kept.room()
		if err := p.solveInto(ctx, a); err != nil {
			return err
		}
	}
	p.at, p.now, p.dirty = a, &a.sol, false
	p.passes += p.now.Passes
	if p.holding() {
		return p.complete(ctx)
	}
	return nil
}

// holding reports whether currents decide if a relay stays in.
func (p *play) holding() bool {
	return slices.ContainsFunc(p.f.pullers, func(r int32) bool { return p.on[r] })
}

// complete gives the answer at hand its currents, which most answers on the
// way through a step are never asked for.
func (p *play) complete(ctx context.Context) error {
	a := p.at
	switch {
	case a.complete:
		return nil
	case p.fresh != a:
		if err := p.solveInto(ctx, a); err != nil {
			return err
		}
	}
	p.net.Currents(&a.sol)
	a.complete = true
	return nil
}

// solveInto has the solver find the volts with the links as they are closed.
func (p *play) solveInto(ctx context.Context, a *answer) error {
	for _, i := range p.f.moving {
		if l := &p.f.links[i]; p.closed[i] != p.has[i] && l.branch != noBranch {
			p.has[i] = p.closed[i]
			p.net.SetOn(l.branch, p.closed[i])
		}
	}
	p.fresh = nil
	if err := p.net.SolveVolts(ctx, &a.sol); err != nil {
		return err
	}
	p.fresh, a.complete = a, false
	a.key = append(a.key[:0], p.kept.key...)
	return nil
}

// conducts reports whether a link is on in the step as things stand.
func (p *play) conducts(l *link) bool {
	return l.steps.Has(p.step) && (l.state < 0 || p.on[l.state] != l.rest) && (l.out < 0 || p.given[l.out])
}

// across is the volts between two nodes, 0 where nothing joins them. It has an
// answer within a floating part too: a coil on a battery of its own works.
func (p *play) across(a, b circuit.Node) float64 {
	v, _ := p.now.Across(a, b)
	return v
}

// engine is what the engine does in the step.
func (p *play) engine() part.Engine { return p.f.model.Steps[p.step].Engine }

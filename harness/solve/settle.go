package solve

import (
	"context"
	"math"
	"slices"

	"legwork/harness/part"
)

// phase is a stretch of a step in which one more class of states may come on.
type phase uint8

const (
	handFirst   phase = iota // key, hand, and what follows from them
	starterPull              // the starter's solenoid as well
	commands                 // controller outputs and the relays that they drive
	phases
)

// lets reports whether a class may come on in the phase. Going off is always
// allowed.
func (ph phase) lets(c class) bool { return uint8(c) <= uint8(ph) }

// order says how moves that fall due together are taken.
type order int8

const (
	together   order = iota // at once: right as long as no relay moves twice
	firstFirst              // one by one, in the order of the draft
	lastFirst               // one by one, in the reverse order
)

// outcome is how settling ended.
type outcome uint8

const (
	settled  outcome = iota
	restless         // a relay moved twice: the order of the moves matters
	endless          // the moves go round
)

// While more than manyDue moves are pending, they are taken in batches: all of
// them where no relay has moved twice, else those of one moment. So a harness
// of hundreds of relays settles in a few solves.
const manyDue = 16

// settle lets the states of a step move until none wants to.
func (p *play) settle(ctx context.Context, o order) (outcome, error) {
	var loop *rounds
	if o != together {
		loop = newRounds(p)
	}
	for ph := handFirst; ph < phases; ph++ {
		if ph == commands {
			p.command()
		}
		for {
			if err := p.solve(ctx); err != nil {
				return 0, err
			}
			next := p.look(ph)
			if next > p.limit() {
				break
			}
			if loop != nil && loop.again(ph) {
				return endless, nil
			}
			p.move(next, o)
			if p.restive && o == together {
				return restless, nil
			}
		}
	}
	return settled, nil
}

// limit is the end of the step, where that matters: in the key's travel a
// relay may be too slow to move at all.
func (p *play) limit() float64 {
	if s := &p.f.model.Steps[p.step]; s.LastS > 0 && s.Engine == part.Still {
		return s.LastS
	}
	return math.MaxFloat64
}

// look asks every state whether it wants to move, and gives the time of the
// first move, +Inf for none. A relay that no longer wants to move before its
// time is up does not.
func (p *play) look(ph phase) float64 {
	first := math.Inf(1)
	for r := range p.f.relays {
		var wants bool
		var delay float64
		if p.f.relays[r].Kind == part.AliveState {
			wants, delay = p.aliveMove(r)
		} else {
			wants, delay = p.coilMove(r, ph)
		}
		switch {
		case !wants:
			p.due[r] = math.Inf(1)
		case math.IsInf(p.due[r], 1):
			p.due[r] = p.t + delay
		}
		first = min(first, p.due[r])
	}
	return first
}

// move lets the states that are due change, and goes on to their time.
func (p *play) move(next float64, o order) {
	until := next + 1e-9
	many := p.pending() > manyDue
	if o == together && many {
		until = math.MaxFloat64
	}
	p.t = max(p.t, next)
	n := len(p.f.relays)
	for k := range n {
		r := k
		if o == lastFirst {
			r = n - 1 - k
		}
		if p.due[r] > until {
			continue
		}
		p.t = max(p.t, p.due[r])
		p.toggle(r)
		if o != together && !many {
			return
		}
	}
}

func (p *play) pending() (n int) {
	for _, t := range p.due {
		if !math.IsInf(t, 1) {
			n++
		}
	}
	return n
}

// toggle moves one state.
func (p *play) toggle(r int) {
	s := &p.seen[r]
	p.on[r] = !p.on[r]
	p.due[r] = math.Inf(1)
	p.dirty = true
	if p.f.relays[r].Kind == part.AliveState {
		p.lost[r] = p.lost[r] || !p.on[r]
		return
	}
	if s.moves++; s.moves > 1 {
		p.restive = true
	}
	if p.on[r] {
		s.pullV = s.volts
	} else {
		s.dropV = s.volts
	}
}

// command gives the outputs of this step, all at once. A controller commands
// what it does while cranking when it has seen the engine turn: not yet while
// the starter takes its first pull.
func (p *play) command() {
	if p.engine() == part.Locked {
		return
	}
	for o := range p.given {
		if !p.given[o] && p.commanded(o) {
			p.given[o], p.dirty = true, true
		}
	}
}

// commanded reports whether an output is on in the step.
func (p *play) commanded(o int) bool {
	return slices.ContainsFunc(p.f.outs[o].links, func(i int32) bool { return p.f.links[i].steps.Has(p.step) })
}

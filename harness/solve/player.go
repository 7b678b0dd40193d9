package solve

import (
	"slices"

	"legwork/harness/circuit"
)

// newPlay makes a player of a frame out of what an old one leaves, nil for none.
func newPlay(f *frame, old *play) *play {
	n := len(f.relays)
	p := &play{
		f: f, closed: make([]bool, len(f.links)), ohm: make([]float64, len(f.model.Wires)),
		on: make([]bool, n), lost: make([]bool, n), given: make([]bool, len(f.outs)), riseC: make([]float64, n),
		due: make([]float64, n), seen: make([]tally, n), frozen: make([]bool, n), reasons: reasons{at: map[string]int32{}, open: map[int32]int32{}},
		start: memory{on: make([]bool, n), given: make([]bool, len(f.outs))},
	}
	for i := range p.closed {
		p.closed[i] = true
	}
	p.inherit(old)
	p.scratch.init(f)
	return p
}

// inherit takes over the room of an old player's answers, and its solver if the
// networks differ in values alone.
func (p *play) inherit(old *play) {
	if old != nil {
		p.kept = old.kept
		p.kept.forget()
	}
	if old == nil || !p.f.alike(old.f) {
		p.net, p.has = circuit.NewSolver(p.f.net), slices.Clone(p.closed)
		return
	}
	p.net, p.has = old.net, old.has
	for i := range p.f.links {
		p.net.SetLaw(p.f.links[i].branch, p.f.net.Law(p.f.links[i].branch)) // noBranch is let pass
	}
}

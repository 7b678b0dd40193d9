package solve

import (
	"math"

	"legwork/harness/circuit"
	"legwork/harness/model"
)

const (
	// leakOhm is the resistance from which a link carries leakage only: the
	// leak beside a load that is off, or more.
	leakOhm = 1e5
	// ghostVolts is what leakage alone has to bring about to be told from
	// nothing.
	ghostVolts = 0.1
)

// ghostReason is why a terminal has no volts to trust though some are there.
const ghostReason = "floating: nothing but leakage reaches it"

// Shown is Reading for people with a meter: volts that leakage alone brings
// about, as between a blocked diode and a load that is off, are no reading.
func (s *State) Shown(t *model.Terminal) Reading {
	r := s.Reading(t)
	if r.OK && s.ghost != nil && s.ghost[t.ID] {
		return Reading{Reason: ghostReason}
	}
	return r
}

// ghosts marks the terminals that have volts by leakage alone, by ID; nil where
// there are none.
func (p *play) ghosts(volts []float64) []bool {
	var marks []bool
	held := p.wellJoined()
	for i, n := range p.f.lay.node {
		if held[n] || !(math.Abs(volts[i]) > ghostVolts) {
			continue
		}
		if marks == nil {
			marks = make([]bool, len(volts))
		}
		marks[i] = true
	}
	return marks
}

// wellJoined marks the nodes that links other than leaks join to the
// reference; the next search uses the marks again.
func (p *play) wellJoined() []bool {
	s := &p.scratch
	for _, i := range p.f.diodes {
		s.hops[i].does &^= solid
		if p.now.Mode(p.f.links[i].branch) == circuit.Conducting {
			s.hops[i].does |= solid
		}
	}
	s.from = append(s.from[:0], 0)
	p.spread(s.plus, s.from, eitherWay, solid)
	return s.plus
}

package solve

import (
	"math"

	"legwork/harness/circuit"
	"legwork/harness/part"
)

// hop is what a walk has to know of a link: links themselves are large.
type hop struct {
	a, b circuit.Node
	does hopDoes
}

// hopDoes are marks of a hop.
type hopDoes uint8

const (
	leadsOn hopDoes = 1 << iota // leads current on: a wire, fuse, contact, output, not a load
	carries                     // the same without using any volts up on purpose
	solid                       // lets more than leakage through; of a diode: in the state at hand
	oneWay                      // from a to b
)

// search is the room for walks through the network.
type search struct {
	hops        []hop    // by link
	plus, minus []bool   // by node: current can come from, or go back to, a supply
	supplies    []supply // of the model
	toward      []int32
	queue       []circuit.Node
	from        []circuit.Node
}

// supply is a source of current: its nodes, and the links that push.
type supply struct {
	plus, minus circuit.Node
	links       []signed
}

// way is the sense in which a walk crosses what conducts one way only.
type way int8

const (
	eitherWay way = iota
	withIt        // as the current flows, away from a supply
	againstIt     // back to where it came from
)

func (s *search) init(f *frame) {
	n := f.lay.count
	s.plus, s.minus = make([]bool, n), make([]bool, n)
	s.toward = make([]int32, n)
	s.hops = make([]hop, len(f.links))
	for i := range f.links {
		l := &f.links[i]
		h := hop{a: l.a, b: l.b}
		if l.path {
			h.does |= leadsOn
		}
		if f.carries(l) {
			h.does |= carries
		}
		if !l.leaks {
			h.does |= solid
		}
		if l.kind == circuit.Diode {
			h.does |= oneWay
		}
		s.hops[i] = h
	}
	for _, d := range f.model.Devices {
		for _, x := range d.Supplies() {
			_, a, okA := f.point(d, x.Plus)
			_, b, okB := f.point(d, x.Minus)
			if okA && okB {
				s.supplies = append(s.supplies, supply{a, b, f.leaving(d, x.Plus, part.SourceElement)})
			}
		}
	}
}

// spread marks all nodes that closed links with a mark join to those in from.
func (p *play) spread(mark []bool, from []circuit.Node, dir way, need hopDoes) {
	clear(mark)
	s := &p.scratch
	s.queue = s.queue[:0]
	for _, n := range from {
		if !mark[n] {
			mark[n] = true
			s.queue = append(s.queue, n)
		}
	}
	for i := 0; i < len(s.queue); i++ {
		n := s.queue[i]
		for _, k := range p.f.beside.at(n) {
			h := s.hops[k]
			if !p.closed[k] || h.does&need == 0 || h.does&oneWay != 0 && (dir == withIt && n == h.b || dir == againstIt && n == h.a) {
				continue
			}
			if o := h.a + h.b - n; !mark[o] {
				mark[o] = true
				s.queue = append(s.queue, o)
			}
		}
	}
}

// reach finds where current can come from and go to without passing a load.
func (p *play) reach() {
	s := &p.scratch
	s.from = s.from[:0]
	for i := range s.supplies {
		if p.pushes(&s.supplies[i]) {
			s.from = append(s.from, s.supplies[i].plus)
		}
	}
	p.spread(s.plus, s.from, withIt, leadsOn)
	s.from = s.from[:0]
	for i := range s.supplies {
		if p.pushes(&s.supplies[i]) {
			s.from = append(s.from, s.supplies[i].minus)
		}
	}
	p.spread(s.minus, s.from, againstIt, leadsOn)
}

// pushes reports whether a supply can give current in the step.
func (p *play) pushes(s *supply) bool {
	for _, x := range s.links {
		if l := &p.f.links[x.link]; l.branch != noBranch && p.closed[x.link] {
			return true
		}
	}
	return false
}

// asked reports whether a coil, or the feeds of a module, are meant to have
// their volts: a way to both ends is closed.
func (p *play) asked(r int) bool {
	m := &p.f.movers[r]
	if len(m.watch) == 0 {
		return false
	}
	s := &p.scratch
	if p.f.relays[r].Kind == part.AliveState {
		for _, w := range m.watch {
			if !s.plus[w.plus] || !s.minus[w.minus] {
				return false
			}
		}
		return true
	}
	a, b := m.watch[0].plus, m.watch[0].minus
	return s.plus[a] && s.minus[b] || s.plus[b] && s.minus[a]
}

// floats reports whether a node has no volts against the reference.
func (p *play) floats(n circuit.Node) bool {
	_, ok := p.now.V(n)
	return !ok
}

// volts is the voltage of a node, NaN where it floats.
func (p *play) volts(n circuit.Node) float64 {
	if v, ok := p.now.V(n); ok {
		return v
	}
	return math.NaN()
}

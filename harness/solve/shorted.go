package solve

import (
	"math"
	"slices"

	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// leastShortA is the current from which a diode is said to conduct.
const leastShortA = 0.1

// Short is a way from a source to the reference, closed in a step, on which
// there is no load: nothing but wire, fuses, contacts, outputs and diodes.
type Short struct {
	Diode          *model.Device // whose diode is the last thing on the way that needs no command; nil for none
	Anode, Cathode *model.Terminal
	Amps           float64
	Through        []*model.Device // without a diode: the devices on the way, source first
}

// shorts finds the shorts of the step as it was settled; [play.reach] has
// been asked before.
func (p *play) shorts() []Short {
	ref := p.f.lay.node[p.f.lay.ref.ID]
	if p.scratch.plus[ref] {
		if s, ok := p.bareShort(ref); ok {
			return []Short{s}
		}
	}
	var list []Short
	spread := false // the same for all diodes
	for _, i := range p.f.diodes {
		if !p.closed[i] || !(p.amps(i) > leastShortA) {
			continue
		}
		if !spread {
			p.spread(p.scratch.plus, p.sourceNodes(), withIt, carries)
			p.spread(p.scratch.minus, []circuit.Node{ref}, againstIt, carries)
			spread = true
		}
		list = append(list, p.diodeShort(&p.f.links[i], p.amps(i))...)
	}
	return list
}

// carries reports whether a link leads current on without using any volts up
// on purpose, as a resistor in the line does.
func (f *frame) carries(l *link) bool {
	return l.path && !(l.dev >= 0 && l.use == part.Element && l.kind == circuit.Resistor)
}

// bareShort follows the way of a short without a diode back from the
// reference; ok is false where there is none.
func (p *play) bareShort(ref circuit.Node) (s Short, ok bool) {
	bare := func(l *link) bool { return p.f.carries(l) && l.kind != circuit.Diode }
	from := p.sourceNodes()
	before := map[circuit.Node]int32{} // link by which a node was come to
	seen := map[circuit.Node]bool{}
	for _, n := range from {
		seen[n] = true
	}
	for i := 0; i < len(from) && !seen[ref]; i++ {
		for _, k := range p.f.beside.at(from[i]) {
			l := &p.f.links[k]
			if o := l.a + l.b - from[i]; p.closed[k] && bare(l) && !seen[o] {
				seen[o], before[o] = true, k
				from = append(from, o)
			}
		}
	}
	if !seen[ref] {
		return s, false
	}
	s.Amps = math.Inf(1)
	for at := ref; ; {
		k, more := before[at]
		if !more {
			break
		}
		l := &p.f.links[k]
		s.Amps = min(s.Amps, math.Abs(p.amps(k)))
		if l.dev >= 0 {
			s.Through = append(s.Through, p.f.model.Devices[l.dev])
		}
		at = l.a + l.b - at
	}
	slices.Reverse(s.Through)
	return s, true
}

// sourceNodes gives the nodes of all sources' positive terminals.
func (p *play) sourceNodes() []circuit.Node {
	var list []circuit.Node
	for i := range p.scratch.supplies {
		if x := &p.scratch.supplies[i]; p.pushes(x) {
			list = append(list, x.plus)
		}
	}
	return list
}

// diodeShort gives the short that a conducting diode makes, where its anode is
// fed and its cathode led back without a load between: the marks say what is.
func (p *play) diodeShort(l *link, amps float64) []Short {
	s := &p.scratch
	if !s.plus[l.a] || !s.minus[l.b] {
		return nil
	}
	return []Short{{
		Diode: p.f.model.Devices[l.dev], Anode: p.terminalOf(l.ta, l.dev), Cathode: p.terminalOf(l.tb, l.dev), Amps: amps,
	}}
}

// terminalOf gives a link's terminal; for metal, the one that the device has
// there.
func (p *play) terminalOf(id, dev int32) *model.Terminal {
	if id >= 0 {
		return p.f.model.Terminals[id]
	}
	for _, t := range p.f.model.Devices[dev].Terminals {
		if t.Metal != nil {
			return t
		}
	}
	return nil
}

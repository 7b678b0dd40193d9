package solve

import (
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// Marks in search.toward for nodes that need no way to the reference, or have
// none.
const (
	held   int32 = -1
	adrift int32 = -2
)

// reasons are the texts on why something floats. They come again in every
// step, so each is made and kept once.
type reasons struct {
	text []string
	at   map[string]int32
	open map[int32]int32 // by open link
}

func (r *reasons) index(text string) int32 {
	i, known := r.at[text]
	if !known {
		i = int32(len(r.text))
		r.text, r.at[text] = append(r.text, text), i
	}
	return i
}

// explain gives every floating terminal the reason, by index: the open contact
// next on its way to the network that has volts.
func (p *play) explain(why []int32) {
	p.wayBack()
	alone := map[circuit.Node]int32{}
	for _, t := range p.f.model.Terminals {
		n := p.f.lay.node[t.ID]
		switch k := p.scratch.toward[n]; {
		case k >= 0:
			why[t.ID] = p.reason(k)
		case k == adrift:
			text, known := alone[n]
			if !known {
				text = p.reasons.index(p.lonely(t))
				alone[n] = text
			}
			why[t.ID] = text
		}
	}
}

// wayBack finds for every floating node the open link nearest to it on the
// way with the fewest open links to a node with volts.
func (p *play) wayBack() {
	s := &p.scratch
	s.queue = s.queue[:0]
	for n := range s.toward {
		s.toward[n] = adrift
		if !p.floats(circuit.Node(n)) {
			s.toward[n] = held
			s.queue = append(s.queue, circuit.Node(n))
		}
	}
	if len(s.queue) == len(s.toward) {
		return
	}
	// Each round crosses one open link more. What closed links join to a node
	// is reached in the same round, through the same open link.
	for level := s.queue; len(level) > 0; {
		var next []circuit.Node
		for _, n := range level {
			for _, k := range p.f.beside.at(n) {
				o := s.hops[k].a + s.hops[k].b - n
				if p.closed[k] || s.toward[o] != adrift {
					continue
				}
				s.toward[o] = k
				next = p.flood(append(next, o), len(next), k)
			}
		}
		level = next
	}
}

// flood gives all nodes that closed links join to those of list from index at
// the same open link.
func (p *play) flood(list []circuit.Node, at int, open int32) []circuit.Node {
	for ; at < len(list); at++ {
		for _, k := range p.f.beside.at(list[at]) {
			h := &p.scratch.hops[k]
			o := h.a + h.b - list[at]
			if p.closed[k] && p.scratch.toward[o] == adrift {
				p.scratch.toward[o] = open
				list = append(list, o)
			}
		}
	}
	return list
}

// reason names the open link.
func (p *play) reason(k int32) int32 {
	if at, known := p.reasons.open[k]; known {
		return at
	}
	l := &p.f.links[k]
	d := p.f.model.Devices[l.dev]
	text := "floating: since " + d.Name + " "
	switch {
	case l.use == part.OutputElement:
		text += "output " + p.pinName(p.f.outs[l.out].pin) + " is off"
	case l.use == part.ContactElement:
		text += "contact " + p.pinName(l.ta) + "-" + p.pinName(l.tb) + " is open"
	default:
		text += "does not conduct between " + p.pinName(l.ta) + " and " + p.pinName(l.tb)
	}
	p.reasons.open[k] = p.reasons.index(text)
	return p.reasons.open[k]
}

func (p *play) pinName(id int32) string {
	if id < 0 {
		return part.Metal
	}
	return p.f.model.Terminals[id].Name
}

// lonely gives the reason for a terminal that no contact could ever join to
// the rest.
func (p *play) lonely(t *model.Terminal) string {
	if p.f.lay.ref == nil {
		return "floating: the draft has no battery or other source"
	}
	if len(t.Ends) == 0 && len(t.Bus) == 0 && t.Metal == nil {
		return "floating: nothing is wired to it"
	}
	return "floating: nothing joins it to " + fullName(p.f.lay.ref)
}

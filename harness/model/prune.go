package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// line is a place by file and line.
type line struct {
	file string
	no   int
}

func lineOf(at diag.Span) line { return line{at.File, at.Line} }

// pruner takes what is not fitted out of a model.
type pruner struct {
	m     *Model
	out   map[*Device]bool
	wires map[*Wire]bool
	lines map[line]bool // of the statements of both
	found bool
}

// maxBoxes is how deep boxes in boxes are followed; in a circle they never end.
const maxBoxes = 16

// prune leaves out the devices and circuits of options that are not fitted,
// what sits in a box that is not, and the wires of both. It comes when all
// mistakes are found, so that a draft is right or wrong whatever is fitted.
func (b *builder) prune() {
	p := &pruner{m: b.m, out: map[*Device]bool{}, wires: map[*Wire]bool{}, lines: map[line]bool{}}
	for _, d := range b.m.Devices {
		in := d
		for range maxBoxes {
			if in == nil || p.out[d] {
				break
			}
			if !in.Option.fitted() {
				p.out[d] = true
				p.strike(d.Stmt)
			}
			in = in.In
		}
	}
	for s, c := range b.circuit {
		if s != nil && !c.Option.fitted() {
			p.strike(s)
		}
	}
	for _, w := range b.m.Wires {
		if !w.Option.fitted() || !w.Circuit.Option.fitted() || w.Cable != nil && !w.Cable.Option.fitted() || p.out[w.From.Device] || p.out[w.To.Device] {
			p.wires[w] = true
			p.strike(w.Stmt)
			for _, t := range []*Terminal{w.From, w.To} {
				if t.Device.open {
					p.out[t.Device] = true
				}
			}
		}
	}
	if p.found {
		p.cut()
	}
}

// strike notes the lines of a statement that is left out.
func (p *pruner) strike(s *draft.Stmt) {
	p.found = true
	p.lines[lineOf(s.At)] = true
	for _, c := range s.Children {
		p.strike(c)
	}
}

// cut takes everything out and numbers what is left anew.
func (p *pruner) cut() {
	m := p.m
	m.Devices = slices.DeleteFunc(m.Devices, func(d *Device) bool { return p.out[d] })
	m.Terminals = slices.DeleteFunc(m.Terminals, p.goneTerminal)
	m.Wires = slices.DeleteFunc(m.Wires, p.goneWire)
	m.Together = slices.DeleteFunc(m.Together, func(t Together) bool { return slices.ContainsFunc(t.Wires, p.goneWire) })
	m.Accepts = slices.DeleteFunc(m.Accepts, func(a *Accept) bool { return a.Scope != nil && p.lines[lineOf(a.Scope.At)] })
	m.Guesses = slices.DeleteFunc(m.Guesses, func(g Guess) bool { return p.lines[lineOf(g.At)] })
	for _, c := range m.Circuits {
		c.Wires = slices.DeleteFunc(c.Wires, p.goneWire)
	}
	for _, k := range m.Cables {
		k.Cores = slices.DeleteFunc(k.Cores, p.goneWire)
	}
	m.Cables = slices.DeleteFunc(m.Cables, func(k *Cable) bool { return len(k.Cores) == 0 })
	for i, k := range m.Cables {
		k.ID = i
	}
	for i, d := range m.Devices {
		d.ID = i
		if d.From != nil && p.goneTerminal(d.From) {
			d.From, d.FromM, d.FromAt = nil, 0, diag.Span{}
		}
	}
	for i, t := range m.Terminals {
		t.ID = i
		t.Bus = slices.DeleteFunc(t.Bus, p.goneTerminal)
		t.Ends = slices.DeleteFunc(t.Ends, func(e End) bool { return p.goneWire(e.Wire) })
	}
	for i, w := range m.Wires {
		w.ID = i
	}
	p.forgetNames()
}

func (p *pruner) goneTerminal(t *Terminal) bool { return p.out[t.Device] }

func (p *pruner) goneWire(w *Wire) bool { return p.wires[w] }

// LeftOut reports whether a device, a terminal or a wire of that name belongs
// to an option that is not fitted.
func (m *Model) LeftOut(name string) bool { return m.leftOut[name] }

// forgetNames takes the names of what is left out from the indexes, and from
// the lines of boxes.
func (p *pruner) forgetNames() {
	gone := map[string]bool{}
	p.m.leftOut = gone
	for d := range p.out {
		delete(p.m.deviceNamed, d.Name)
		gone[d.Name] = true
		for _, t := range d.Terminals {
			gone[fullName(t)] = true
		}
	}
	for w := range p.wires {
		delete(p.m.wireNumbered, w.Number)
		gone[w.Number] = true
	}
	for _, d := range p.m.Devices {
		if d.Kind.Lines == nil || d.Kind.Lines.Shape != part.BusLines {
			continue // the terminals that a key joins are its own
		}
		for i := range d.Lines {
			l := &d.Lines[i]
			l.Refs = slices.DeleteFunc(l.Refs, func(name string) bool { return gone[name] })
		}
	}
}

package diagram

import (
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// reach marks the terminals that are joined with a battery's positive post, and
// those joined with the negative one that is at 0 V, by nothing but wires,
// joints, metal, fuses and what is closed in this step.
func (k *moment) reach(m *model.Model) {
	nt := len(m.Terminals)
	near := make([][]int, nt+len(m.Metals))
	tie := func(a, b int) { near[a], near[b] = append(near[a], b), append(near[b], a) }
	for _, w := range m.Wires {
		if w.From != nil && w.To != nil {
			tie(w.From.ID, w.To.ID)
		}
	}
	for _, t := range m.Terminals {
		for _, u := range t.Bus {
			tie(t.ID, u.ID)
		}
		if t.Metal != nil {
			tie(t.ID, nt+t.Metal.ID)
		}
	}
	for _, d := range m.Devices {
		k.through(m, d, tie)
	}
	var plus, minus []int
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			if t := d.Terminal(s.Plus); s.Battery && t != nil {
				plus = append(plus, t.ID)
			}
			if t := d.Terminal(s.Minus); s.Battery && t != nil {
				if v, ok := k.volts(t); ok && v < nearV {
					minus = append(minus, t.ID)
				}
			}
		}
	}
	k.plus, k.minus = flood(near, plus), flood(near, minus)
}

// through ties what a device joins in this step, as solve does: fuses, closed
// contacts, outputs that are on, the ways of Passes, mated cavities.
func (k *moment) through(m *model.Model, d *model.Device, tie func(a, b int)) {
	at := func(name string) int {
		if name == part.Metal {
			if d.Metal != nil {
				return len(m.Terminals) + d.Metal.ID
			}
			name = d.Kind.Ground
		}
		if t := d.Terminal(name); t != nil {
			return t.ID
		}
		return -1
	}
	join := func(a, b string) {
		if i, j := at(a), at(b); i >= 0 && j >= 0 {
			tie(i, j)
		}
	}
	for _, q := range d.Couples() {
		join(q.A, q.B)
	}
	for _, b := range k.stamped(m, d) {
		if leads(d, b) && k.conducts(d, b) {
			join(b.A, b.B)
		}
	}
}

// joinedOhm is the resistance up to which two terminals count as joined inside
// a device, as the grounds of a controller are.
const joinedOhm = 0.01

// leads reports whether an element takes current on to the next thing rather
// than using it up.
func leads(d *model.Device, b part.Branch) bool {
	switch b.Use {
	case part.FuseElement, part.ContactElement, part.OutputElement:
		return true
	case part.Element:
		if b.Law.Kind == circuit.Resistor && b.Law.Ohm <= joinedOhm {
			return true
		}
		for _, p := range d.Passes() {
			if !p.OneWay && (p.A == b.A && p.B == b.B || p.A == b.B && p.B == b.A) {
				return true
			}
		}
	}
	return false
}

func flood(near [][]int, from []int) []bool {
	seen := make([]bool, len(near))
	for len(from) > 0 {
		i := from[len(from)-1]
		from = from[:len(from)-1]
		if seen[i] {
			continue
		}
		seen[i] = true
		from = append(from, near[i]...)
	}
	return seen
}

package solve

import (
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// layout says which terminals and metals are one node of the network: those
// joined by a bus bar, by mated cavities, by metal. Joining them before
// solving is exact, and spares the solver its smallest resistances.
type layout struct {
	node  []circuit.Node // by terminal ID
	metal []circuit.Node // by metal ID
	count int            // nodes, the reference included
	ref   *model.Terminal
	ties  []tie // joints that do have a resistance
}

// tie is a resistance between a terminal and another, or a metal.
type tie struct {
	a, b *model.Terminal // b nil: the metal
	to   *model.Metal
	ohm  float64
}

// lay joins terminals and metals and numbers the nodes. Node 0 is the
// negative post of the first battery, or of the first supply of any sort; a
// model without one leaves node 0 to itself, so that everything floats.
func lay(m *model.Model, g part.Grade) *layout {
	l := &layout{ref: reference(m)}
	nt := len(m.Terminals)
	u := newUnion(nt + len(m.Metals))
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			u.join(t.ID, o.ID)
		}
		if t.Metal == nil {
			continue
		}
		if t.Metal.Ohm < leastOhm {
			u.join(t.ID, nt+t.Metal.ID)
			continue
		}
		// A body of so many ohms between any two of its points is a star
		// with half of it in each ray.
		l.ties = append(l.ties, tie{a: t, to: t.Metal, ohm: t.Metal.Ohm / 2})
	}
	for _, d := range m.Devices {
		l.couple(u, d, g)
	}
	l.number(u, nt, len(m.Metals))
	return l
}

// couple joins the terminals of a device that are one point. A pair's
// resistance is a low figure and counts in nominal figures alone.
func (l *layout) couple(u union, d *model.Device, g part.Grade) {
	for _, p := range d.Couples() {
		a, b := d.Terminal(p.A), d.Terminal(p.B)
		switch {
		case a == nil || b == nil:
		case g == part.Nominal && p.Ohm >= leastOhm:
			l.ties = append(l.ties, tie{a: a, b: b, ohm: p.Ohm})
		default:
			u.join(a.ID, b.ID)
		}
	}
}

func (l *layout) number(u union, terminals, metals int) {
	of := make([]circuit.Node, len(u))
	for i := range of {
		of[i] = -1
	}
	if l.ref != nil {
		of[u.find(l.ref.ID)] = 0
	}
	next := circuit.Node(1)
	for i := range u {
		if root := u.find(i); of[root] < 0 {
			of[root] = next
			next++
		}
	}
	l.count = int(next)
	nodes := make([]circuit.Node, len(u))
	for i := range u {
		nodes[i] = of[u.find(i)]
	}
	l.node, l.metal = nodes[:terminals], nodes[terminals:terminals+metals]
}

// reference is the terminal whose node is 0 V: the negative post of the first
// battery, and of the lowest one where batteries stand in series.
func reference(m *model.Model) *model.Terminal {
	var batteries, others []*model.Terminal
	at := fusedNets(m)
	stacked := map[int]bool{} // nets that hold a battery's positive post
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			minus, plus := d.Terminal(s.Minus), d.Terminal(s.Plus)
			if minus == nil {
				continue
			}
			if !s.Battery {
				others = append(others, minus)
				continue
			}
			batteries = append(batteries, minus)
			if plus != nil {
				stacked[at(plus)] = true
			}
		}
	}
	for _, t := range batteries {
		if !stacked[at(t)] {
			return t
		}
	}
	if list := append(batteries, others...); len(list) > 0 {
		return list[0]
	}
	return nil
}

// fusedNets tells which terminals lie on one net, with those that a fuse joins
// taken as one: the link of batteries in series may have a fuse.
func fusedNets(m *model.Model) func(t *model.Terminal) int {
	nets := m.Nets()
	u := newUnion(len(nets.Members))
	for _, d := range m.Devices {
		for _, f := range d.Protects() {
			if a, b := d.Terminal(f.In), d.Terminal(f.Out); a != nil && b != nil {
				u.join(nets.Of[a.ID], nets.Of[b.ID])
			}
		}
	}
	return func(t *model.Terminal) int { return u.find(nets.Of[t.ID]) }
}

// union is a disjoint-set forest over 0..n-1; the root of a set is its least member.
type union []int32

func newUnion(n int) union {
	u := make(union, n)
	for i := range u {
		u[i] = int32(i)
	}
	return u
}

func (u union) find(i int) int {
	for int(u[i]) != i {
		u[i] = u[u[i]]
		i = int(u[i])
	}
	return i
}

func (u union) join(i, j int) {
	a, b := u.find(i), u.find(j)
	u[max(a, b)] = int32(min(a, b))
}

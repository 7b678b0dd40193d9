package model

// Nets are the sets of terminals that are one point electrically, as long as
// no contact, fuse or load lies between them: joined by wires, buses, mated
// connector cavities, or the same metal.
type Nets struct {
	Of      []int         // by terminal ID: index of its net
	Members [][]*Terminal // by net, in terminal order
	Wires   [][]*Wire     // by net, in wire order
}

// Nets gives the nets of the model. They are worked out once, by Build.
func (m *Model) Nets() *Nets { return m.nets }

// union is a forest of sets over terminal IDs, then metal IDs.
type union []int

func (u union) root(i int) int {
	for u[i] != i {
		u[i] = u[u[i]]
		i = u[i]
	}
	return i
}

// join makes one set of two; the lower root stays, so the outcome does not
// depend on the order of joining.
func (u union) join(i, j int) {
	i, j = u.root(i), u.root(j)
	u[max(i, j)] = min(i, j)
}

func findNets(m *Model) *Nets {
	u := make(union, len(m.Terminals)+len(m.Metals))
	for i := range u {
		u[i] = i
	}
	for _, w := range m.Wires {
		u.join(w.From.ID, w.To.ID)
	}
	for _, t := range m.Terminals {
		for _, other := range t.Bus {
			u.join(t.ID, other.ID)
		}
		if t.Metal != nil {
			u.join(t.ID, len(m.Terminals)+t.Metal.ID)
		}
	}
	for _, d := range m.Devices {
		if d.Kind.Couples == nil || len(d.Terminals) == 0 {
			continue
		}
		for _, p := range d.Couples() {
			if a, b := d.Terminal(p.A), d.Terminal(p.B); a != nil && b != nil {
				u.join(a.ID, b.ID)
			}
		}
	}
	return numberNets(m, u)
}

// numberNets numbers the sets by their first terminal.
func numberNets(m *Model, u union) *Nets {
	n := &Nets{Of: make([]int, len(m.Terminals))}
	number := make(map[int]int, len(m.Terminals))
	for _, t := range m.Terminals {
		root := u.root(t.ID)
		i, ok := number[root]
		if !ok {
			i = len(n.Members)
			number[root] = i
			n.Members = append(n.Members, nil)
		}
		n.Of[t.ID] = i
		n.Members[i] = append(n.Members[i], t)
	}
	n.Wires = make([][]*Wire, len(n.Members))
	for _, w := range m.Wires {
		i := n.Of[w.From.ID]
		n.Wires[i] = append(n.Wires[i], w)
	}
	return n
}

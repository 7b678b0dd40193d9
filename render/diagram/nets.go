package diagram

import "legwork/harness/model"

// findNets numbers what plain steps join.
func (f *flow) findNets(g [][]edge, minus []int) {
	f.net = make([]int, len(g))
	for i := range f.net {
		f.net[i] = -1
	}
	for i := range g {
		if f.net[i] >= 0 {
			continue
		}
		f.net[i] = i
		for todo := []int{i}; len(todo) > 0; {
			at := todo[len(todo)-1]
			todo = todo[:len(todo)-1]
			for _, e := range g[at] {
				if e.dev == nil && f.net[e.to] < 0 {
					f.net[e.to] = i
					todo = append(todo, e.to)
				}
			}
		}
	}
	f.grounded = make([]bool, len(g))
	for _, i := range minus {
		f.grounded[f.net[i]] = true
	}
}

// fromUnits measures the ways from the pins of units that look down, so that
// signals without a supply know which side is up.
func (p *plan) fromUnits() {
	g := make([][]edge, len(p.m.Terminals))
	plain := func(a, b *model.Terminal, w float64) {
		if a != nil && b != nil {
			g[a.ID] = append(g[a.ID], edge{to: b.ID, weight: w})
			g[b.ID] = append(g[b.ID], edge{to: a.ID, weight: w})
		}
	}
	for _, w := range p.m.Wires {
		plain(w.From, w.To, 1)
	}
	for _, d := range p.m.Devices {
		if d.Kind.Couples != nil {
			for _, q := range d.Kind.Couples(d.Device) {
				plain(terminalOf(d, q.A), terminalOf(d, q.B), 1)
			}
		}
	}
	var from []int
	for _, it := range p.items {
		if it.unit && !it.pins[0].up() && !p.isGround(it.pins[0]) {
			from = append(from, it.pins[0].term.ID)
		}
	}
	p.flow.fromUnit, _ = spreadFrom(g, from, make([]bool, len(g)))
}

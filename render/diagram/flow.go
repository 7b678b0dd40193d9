package diagram

import (
	"container/heap"
	"math"

	"legwork/harness/model"
)

// flow says how far each terminal is from the battery and from ground, by the
// number of elements between. It decides which end of a thing is drawn up.
type flow struct {
	fromPlus, fromMinus []float64 // by terminal ID; +Inf where there is no way
	back                []step    // way to the battery's plus
	fromUnit            []float64 // from the pins of units that look down
	net                 []int     // what wires, buses and mated cavities join
	grounded            []bool    // by net: has a way to ground without an element
}

// step is the way from a terminal towards the battery's plus.
type step struct {
	prev int // terminal ID, -1 at the source
	dev  *model.Device
	what stepKind
}

type stepKind uint8

const (
	plainStep stepKind = iota // wire, bus, mated cavities
	fuseStep
	contactStep
	outputStep
	loadStep
)

// What an element weighs: a way through a load counts only where there is no
// other, so that less than loadWeight means "fed without a load between".
const (
	wireWeight    = 0.01
	elementWeight = 1
	loadWeight    = 1000
)

type edge struct {
	to     int
	weight float64
	dev    *model.Device
	what   stepKind
}

func measureFlow(m *model.Model) *flow {
	g := make([][]edge, len(m.Terminals))
	both := func(a, b *model.Terminal, w float64, d *model.Device, k stepKind) {
		if a == nil || b == nil {
			return
		}
		g[a.ID] = append(g[a.ID], edge{b.ID, w, d, k})
		g[b.ID] = append(g[b.ID], edge{a.ID, w, d, k})
	}
	for _, w := range m.Wires {
		both(w.From, w.To, wireWeight, nil, plainStep)
	}
	var plus, minus []int
	metal := make([]bool, len(m.Terminals))
	for _, d := range m.Devices {
		elements(d, both)
		if d.Kind.Supplies != nil {
			for _, s := range d.Kind.Supplies(d.Device) {
				if a := terminalOf(d, s.Plus); a != nil && s.Battery {
					plus = append(plus, a.ID)
				}
				if a := terminalOf(d, s.Minus); a != nil {
					minus = append(minus, a.ID)
					metal[a.ID] = true
				}
			}
		}
	}
	for _, t := range m.Terminals {
		for _, u := range t.Bus {
			both(t, u, wireWeight/10, nil, plainStep)
		}
		if t.Metal != nil {
			minus = append(minus, t.ID)
			metal[t.ID] = true
		}
	}
	f := &flow{}
	source := make([]bool, len(m.Terminals))
	for _, i := range plus {
		source[i] = true
	}
	f.fromPlus, f.back = spreadFrom(g, plus, metal)
	f.fromMinus, _ = spreadFrom(g, minus, source)
	f.findNets(g, minus)
	return f
}

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

// elements adds the ways through a device, by its abilities.
func elements(d *model.Device, both func(a, b *model.Terminal, w float64, d *model.Device, k stepKind)) {
	k, at := d.Kind, func(name string) *model.Terminal { return terminalOf(d, name) }
	if k.Protects != nil {
		for _, q := range k.Protects(d.Device) {
			both(at(q.In), at(q.Out), elementWeight, d, fuseStep)
		}
	}
	if k.Switches != nil {
		for _, q := range k.Switches(d.Device) {
			both(at(q.A), at(q.B), elementWeight, d, contactStep)
			both(at(q.CoilA), at(q.CoilB), loadWeight, d, loadStep)
		}
	}
	if k.Draws != nil {
		for _, q := range k.Draws(d.Device) {
			both(at(q.Plus), at(q.Minus), loadWeight, d, loadStep)
		}
	}
	if k.Passes != nil {
		for _, q := range k.Passes(d.Device) {
			both(at(q.A), at(q.B), elementWeight, d, plainStep)
		}
	}
	if k.Couples != nil {
		for _, q := range k.Couples(d.Device) {
			both(at(q.A), at(q.B), wireWeight, nil, plainStep)
		}
	}
	outputs(d, both)
}

// outputs adds the ways through what a controller drives: to its grounds, or
// from its feeds.
func outputs(d *model.Device, both func(a, b *model.Terminal, w float64, d *model.Device, k stepKind)) {
	if d.Kind.Drives == nil {
		return
	}
	for _, o := range d.Kind.Drives(d.Device) {
		pin := terminalOf(d, o.Pin)
		if o.Sinks && d.Kind.Grounds != nil {
			for _, g := range d.Kind.Grounds(d.Device) {
				if g.Sensor {
					continue
				}
				both(pin, terminalOf(d, g.Pin), elementWeight, d, outputStep)
			}
		}
		if !o.Sinks && d.Kind.Draws != nil {
			for _, f := range d.Kind.Draws(d.Device) {
				both(pin, terminalOf(d, f.Plus), elementWeight, d, outputStep)
			}
		}
	}
}

// spreadFrom finds the shortest ways from the sources; it ends at the blocked
// terminals (it enters them, but does not leave).
func spreadFrom(g [][]edge, sources []int, blocked []bool) ([]float64, []step) {
	dist, back := make([]float64, len(g)), make([]step, len(g))
	for i := range dist {
		dist[i], back[i] = math.Inf(1), step{prev: -1}
	}
	q := &queue{}
	for _, s := range sources {
		dist[s] = 0
		heap.Push(q, place{s, 0})
	}
	for q.Len() > 0 {
		at := heap.Pop(q).(place)
		if at.dist > dist[at.id] || blocked[at.id] && at.dist > 0 {
			continue
		}
		for _, e := range g[at.id] {
			if d := at.dist + e.weight; d < dist[e.to] {
				dist[e.to], back[e.to] = d, step{at.id, e.dev, e.what}
				heap.Push(q, place{e.to, d})
			}
		}
	}
	return dist, back
}

type place struct {
	id   int
	dist float64
}

type queue []place

func (q queue) Len() int { return len(q) }
func (q queue) Less(i, j int) bool {
	return q[i].dist < q[j].dist || q[i].dist == q[j].dist && q[i].id < q[j].id
}
func (q queue) Swap(i, j int) { q[i], q[j] = q[j], q[i] }
func (q *queue) Push(x any)   { *q = append(*q, x.(place)) }
func (q *queue) Pop() any {
	old := *q
	x := old[len(old)-1]
	*q = old[:len(old)-1]
	return x
}

// height is 1 at the battery's plus and 0 at ground, 0.5 where unknown.
func (f *flow) height(t *model.Terminal) float64 {
	a, b := f.fromPlus[t.ID], f.fromMinus[t.ID]
	switch {
	case math.IsInf(a, 1) && math.IsInf(b, 1):
		if f.fromUnit == nil || math.IsInf(f.fromUnit[t.ID], 1) {
			return 0.5
		}
		return 0.5 - 0.1*(1-1/(1+f.fromUnit[t.ID]))
	case math.IsInf(a, 1):
		return 0.4 * (1 - 1/(1+b))
	case math.IsInf(b, 1):
		return 0.6 + 0.4/(1+a)
	case a+b == 0:
		return 0.5
	}
	return b / (a + b)
}

// fed reports whether the terminal has a way to the battery without a load
// between.
func (f *flow) fed(t *model.Terminal) bool { return f.fromPlus[t.ID] < loadWeight }

package size

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/solve"
)

// flow is a wire on the way of a load's current, with the amperes in it.
type flow struct {
	wire *model.Wire
	amps float64
}

// tracer finds the ways of currents. Terminals that are one point (bus, mated
// cavities, metal) share a point number; the edges between points are wires,
// fuses, contacts and fixed ways through devices. It holds for every state.
type tracer struct {
	point  []int // by terminal ID
	edges  []edge
	start  []int32 // by point, and one more: its first half edge
	halves []half
	width  []float64 // room for a search, by point
	done   []bool
	queue  queue[wideAt]
}

// edge is a way between two points; its current stands in the state.
type edge struct {
	a, b   int
	wire   *model.Wire   // nil for what is in a device
	device *model.Device // nil for a wire
	index  int           // of its fuse, contact or fixed way
	id     int32         // of the wire or device
	sort   edgeSort
	parted bool // behind it the current takes several ways at once
}

// grounds counts the grounds of a controller that something is wired to.
func grounds(d *model.Device) int {
	n := 0
	for _, g := range d.Grounds() {
		if t := d.Terminal(g.Pin); t != nil && len(t.Ends) > 0 {
			n++
		}
	}
	return n
}

// edgeSort says where the current of an edge is read.
type edgeSort uint8

const (
	wireEdge edgeSort = iota
	fuseEdge
	contactEdge
	outputEdge
	fixedEdge
)

// half is an edge as it leaves one of its points.
type half struct{ edge, to int32 }

// amps is the current of an edge in a state, without its sense.
func (e *edge) amps(s *solve.State) float64 {
	switch e.sort {
	case wireEdge:
		return math.Abs(s.WireA[e.id])
	case fuseEdge:
		return math.Abs(s.FuseA.At(e.id, e.index))
	case contactEdge:
		return math.Abs(s.ContactA.At(e.id, e.index))
	case outputEdge:
		return s.OutputA.At(e.id, e.index)
	}
	return math.Inf(1)
}

// points joins the terminals that no resistance parts, but not wires.
func points(m *model.Model) []int {
	u := newUnion(len(m.Terminals) + len(m.Metals))
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			u.join(t.ID, o.ID)
		}
		if t.Metal != nil {
			u.join(t.ID, len(m.Terminals)+t.Metal.ID)
		}
	}
	for _, d := range m.Devices {
		for _, c := range d.Couples() {
			if a, b := d.Terminal(c.A), d.Terminal(c.B); a != nil && b != nil {
				u.join(a.ID, b.ID)
			}
		}
	}
	at := make([]int, len(m.Terminals))
	for i := range at {
		at[i] = u.find(i)
	}
	return at
}

func newTracer(m *model.Model) *tracer {
	n := len(m.Terminals) + len(m.Metals)
	t := &tracer{point: points(m), start: make([]int32, n+1), width: make([]float64, n), done: make([]bool, n)}
	for _, w := range m.Wires {
		t.add(w.From, w.To, edge{wire: w})
	}
	for _, d := range m.Devices {
		for i, f := range d.Protects() {
			t.add(d.Terminal(f.In), d.Terminal(f.Out), edge{device: d, index: i, sort: fuseEdge})
		}
		for i, c := range d.Switches() {
			t.add(d.Terminal(c.A), d.Terminal(c.B), edge{device: d, index: i, sort: contactEdge})
		}
		for i, o := range d.Drives() {
			t.add(d.Terminal(o.Pin), d.Terminal(o.Other), edge{device: d, index: i, sort: outputEdge, parted: o.Sinks && grounds(d) > 1})
		}
		for i, p := range d.Passes() {
			t.add(d.Terminal(p.A), d.Terminal(p.B), edge{device: d, index: i, sort: fixedEdge})
		}
	}
	t.adjoin()
	return t
}

func (t *tracer) add(a, b *model.Terminal, e edge) {
	if a == nil || b == nil {
		return
	}
	e.a, e.b = t.point[a.ID], t.point[b.ID]
	if e.wire != nil {
		e.id = int32(e.wire.ID)
	} else {
		e.id = int32(e.device.ID)
	}
	t.start[e.a+1]++
	t.start[e.b+1]++
	t.edges = append(t.edges, e)
}

// adjoin lists the half edges by point, in the order of the edges.
func (t *tracer) adjoin() {
	for i := 1; i < len(t.start); i++ {
		t.start[i] += t.start[i-1]
	}
	next := make([]int32, len(t.start)-1)
	copy(next, t.start)
	t.halves = make([]half, 2*len(t.edges))
	for i := range t.edges {
		a, b := t.edges[i].a, t.edges[i].b
		t.halves[next[a]] = half{int32(i), int32(b)}
		next[a]++
		t.halves[next[b]] = half{int32(i), int32(a)}
		next[b]++
	}
}

// tree is the widest way, by current, from one terminal to every point in a
// state.
type tree struct {
	t    *tracer
	root int
	s    *solve.State
	from []int32 // point before, -1 at the root or where nothing leads
	by   []int32 // edge taken from it
}

// grow finds the tree from a terminal; the room of an older tree is used.
func (t *tracer) grow(old tree, s *solve.State, root *model.Terminal) tree {
	n := len(t.width)
	tr := tree{t: t, root: t.point[root.ID], s: s, from: old.from, by: old.by}
	if tr.from == nil {
		tr.from, tr.by = make([]int32, n), make([]int32, n)
	}
	for i := range tr.from {
		tr.from[i] = -1
	}
	clear(t.width)
	clear(t.done)
	t.width[tr.root] = math.Inf(1)
	t.queue = append(t.queue[:0], wideAt{t.width[tr.root], tr.root})
	for len(t.queue) > 0 {
		at := t.queue.pop()
		if t.done[at.id] {
			continue
		}
		t.done[at.id] = true
		for _, h := range t.halves[t.start[at.id]:t.start[at.id+1]] {
			if w := min(at.width, t.edges[h.edge].amps(s)); w > t.width[h.to] {
				t.width[h.to], tr.from[h.to], tr.by[h.to] = w, int32(at.id), h.edge
				t.queue.push(wideAt{w, int(h.to)})
			}
		}
	}
	return tr
}

// leadsTo reports whether the tree reaches a point other than its root.
func (tr *tree) leadsTo(point int) bool { return tr.from[point] >= 0 }

// reaches reports whether a point is the tree's root or the tree leads to it.
func (tr *tree) reaches(point int) bool { return point == tr.root || tr.leadsTo(point) }

// way lists the wires from the tree's root to a point, short of where the
// current parts: one of several returns is no measure of what they take
// together, and a thicker one only draws the current to itself.
func (tr *tree) way(point int, list []flow) []flow {
	for tr.from[point] >= 0 {
		e := &tr.t.edges[tr.by[point]]
		if e.parted {
			return list
		}
		if e.wire != nil {
			list = append(list, flow{e.wire, e.amps(tr.s)})
		}
		point = int(tr.from[point])
	}
	return list
}

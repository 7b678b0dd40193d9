package size

import (
	"container/heap"
	"math"

	"legwork/harness/model"
	"legwork/harness/solve"
)

// flow is a wire on the way of a load's current, with the amperes in it.
type flow struct {
	wire *model.Wire
	amps float64
}

// tracer finds the way of currents in one state. Terminals that are one point
// (bus, mated cavities, metal) share a point number; the edges between points
// are wires, fuses and contacts with their currents.
type tracer struct {
	point []int // by terminal ID
	edges [][]edge
}

type edge struct {
	to   int
	wire *model.Wire // nil for a fuse, a contact or a fixed way through a device
	amps float64
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

func newTracer(m *model.Model, point []int, s *solve.State) *tracer {
	t := &tracer{point: point, edges: make([][]edge, len(m.Terminals)+len(m.Metals))}
	for _, w := range m.Wires {
		t.add(w.From, w.To, w, s.WireA[w.ID])
	}
	for _, d := range m.Devices {
		for i, f := range d.Protects() {
			t.add(d.Terminal(f.In), d.Terminal(f.Out), nil, s.FuseA[d.ID][i])
		}
		for i, c := range d.Switches() {
			t.add(d.Terminal(c.A), d.Terminal(c.B), nil, s.ContactA[d.ID][i])
		}
		for _, p := range d.Passes() {
			t.add(d.Terminal(p.A), d.Terminal(p.B), nil, math.Inf(1))
		}
	}
	return t
}

func (t *tracer) add(a, b *model.Terminal, w *model.Wire, amps float64) {
	if a == nil || b == nil || amps == 0 {
		return
	}
	pa, pb := t.point[a.ID], t.point[b.ID]
	t.edges[pa] = append(t.edges[pa], edge{pb, w, math.Abs(amps)})
	t.edges[pb] = append(t.edges[pb], edge{pa, w, math.Abs(amps)})
}

// tree is the widest way, by current, from one terminal to every point.
type tree struct {
	from []int  // point before, -1 at the root or where nothing leads
	by   []edge // edge taken from it
}

func (t *tracer) from(root *model.Terminal) tree {
	n := len(t.edges)
	tr := tree{from: make([]int, n), by: make([]edge, n)}
	width := make([]float64, n)
	for i := range tr.from {
		tr.from[i] = -1
	}
	start := t.point[root.ID]
	width[start] = math.Inf(1)
	q := guardQueue{{width[start], start}}
	done := make([]bool, n)
	for q.Len() > 0 {
		at := heap.Pop(&q).(guardAt)
		if done[at.id] {
			continue
		}
		done[at.id] = true
		for _, e := range t.edges[at.id] {
			if w := math.Min(at.ratedA, e.amps); w > width[e.to] {
				width[e.to], tr.from[e.to], tr.by[e.to] = w, at.id, e
				heap.Push(&q, guardAt{w, e.to})
			}
		}
	}
	return tr
}

// leadsTo reports whether the tree reaches a point other than its root.
func (tr tree) leadsTo(point int) bool { return tr.from[point] >= 0 }

// way lists the wires from the tree's root to a point.
func (tr tree) way(point int, list []flow) []flow {
	for tr.from[point] >= 0 {
		if e := tr.by[point]; e.wire != nil {
			list = append(list, flow{e.wire, e.amps})
		}
		point = tr.from[point]
	}
	return list
}

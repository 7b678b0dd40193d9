package route

import (
	"slices"

	"legwork/harness/model"
)

// way is a course through the harness, without tails.
type way struct {
	stretches []Stretch
	places    []*model.Place
	lengthM   float64
	ok        bool // false: no legs lead there
}

// network finds ways and remembers them.
type network struct {
	hops  [][]hop // by place ID
	trees []tree  // by place ID, grown when asked for
	ways  map[[2]spotKey]*way
	m     *model.Model
}

// spotKey tells spots apart.
type spotKey struct {
	place, leg int
	offsetM    float64
}

func keyOf(s model.Spot) spotKey {
	if s.Leg == nil {
		return spotKey{s.Place.ID, -1, 0}
	}
	return spotKey{-1, s.Leg.ID, s.OffsetM}
}

func newNetwork(m *model.Model) *network {
	n := &network{m: m, hops: make([][]hop, len(m.Places)), trees: make([]tree, len(m.Places)), ways: map[[2]spotKey]*way{}}
	for _, l := range m.Legs {
		n.hops[l.A.ID] = append(n.hops[l.A.ID], hop{l, l.B})
		n.hops[l.B.ID] = append(n.hops[l.B.ID], hop{l, l.A})
	}
	return n
}

func (n *network) tree(p *model.Place) tree {
	if n.trees[p.ID] == nil {
		n.trees[p.ID] = grow(p, n.hops)
	}
	return n.trees[p.ID]
}

// exit is a way off a spot onto a place: none at a place itself, one of two
// part stretches on a leg.
type exit struct {
	place   *model.Place
	stretch *Stretch
}

func (e exit) lengthM() float64 {
	if e.stretch == nil {
		return 0
	}
	return e.stretch.LengthM
}

func exits(s model.Spot) []exit {
	if s.Leg == nil {
		return []exit{{place: s.Place}}
	}
	return []exit{
		{s.Leg.A, &Stretch{s.Leg, s.OffsetM}},
		{s.Leg.B, &Stretch{s.Leg, s.Leg.LengthM - s.OffsetM}},
	}
}

// between gives the shortest way from one spot to another.
func (n *network) between(a, b model.Spot) *way {
	key := [2]spotKey{keyOf(a), keyOf(b)}
	if w := n.ways[key]; w != nil {
		return w
	}
	w := n.find(a, b)
	n.ways[key] = w
	return w
}

func (n *network) find(a, b model.Spot) *way {
	best := &way{places: []*model.Place{a.Place, b.Place}}
	if a.Place == b.Place {
		best.places = best.places[:1]
	}
	if keyOf(a) == keyOf(b) {
		best.ok = true
		return best
	}
	if a.Leg != nil && a.Leg == b.Leg {
		d := max(a.OffsetM-b.OffsetM, b.OffsetM-a.OffsetM)
		best = &way{stretches: []Stretch{{a.Leg, d}}, places: best.places, lengthM: d, ok: true}
	}
	for _, out := range exits(a) {
		for _, in := range exits(b) {
			l := n.tree(out.place)[in.place.ID]
			total := out.lengthM() + l.lengthM + in.lengthM()
			if l.known && (!best.ok || total < best.lengthM) {
				best = n.trace(a, b, out, in)
				best.lengthM = total
			}
		}
	}
	return best
}

// trace lists the stretches and places of the way by the given exits.
func (n *network) trace(a, b model.Spot, out, in exit) *way {
	w := &way{ok: true}
	t := n.tree(out.place)
	if in.stretch != nil && in.stretch.LengthM > 0 {
		w.places = append(w.places, b.Place)
		w.stretches = append(w.stretches, *in.stretch)
	}
	for p := in.place; ; p = t[p.ID].from {
		w.places = append(w.places, p)
		if t[p.ID].last == nil {
			break
		}
		w.stretches = append(w.stretches, Stretch{t[p.ID].last, t[p.ID].last.LengthM})
	}
	if out.stretch != nil && out.stretch.LengthM > 0 {
		w.places = append(w.places, a.Place)
		w.stretches = append(w.stretches, *out.stretch)
	}
	slices.Reverse(w.places)
	slices.Reverse(w.stretches)
	w.places = slices.Compact(w.places)
	return w
}

// through gives the way that passes the given places in order.
func (n *network) through(a model.Spot, via []*model.Place, b model.Spot) *way {
	if len(via) == 0 {
		return n.between(a, b)
	}
	all := &way{ok: true}
	from := a
	for i := range len(via) + 1 {
		to := b
		if i < len(via) {
			to = model.Spot{Place: via[i]}
		}
		w := n.between(from, to)
		all.stretches = append(all.stretches, w.stretches...)
		all.places = slices.Compact(append(all.places, w.places...))
		all.lengthM += w.lengthM
		all.ok = all.ok && w.ok
		from = to
	}
	return all
}

package size

import (
	"math"

	"legwork/harness/model"
)

// chargedShare is the volts of a system that is being charged, as a share of
// its nominal ones.
const chargedShare = 1.2

// Guard says what stands between the sources and a wire: the smallest rating
// on the source path that protects it worst. An unprotected wire has RatedA
// +Inf; one that no source feeds directly (behind its load) has 0.
type Guard struct {
	RatedA float64
	Fuse   *model.Device // nil when unprotected, unfed, or limited by a source itself
	Index  int           // of Fuse in the device's protective elements
	Source *model.Device // where the worst path begins, nil when unfed
}

// link is a way on from a terminal, with the rating that it puts into the path.
type link struct {
	to     int
	ratedA float64 // +Inf: no fuse here
	fuse   *model.Device
	index  int
}

// guarded gives the guard of every terminal, by ID. It looks for the widest
// path from any source: of all ways by which current can come, through every
// contact as if closed, the one whose smallest fuse is largest. Loads and
// coils end a path, since they limit the current themselves; so does metal.
func guarded(m *model.Model, rated func(d *model.Device, index int) float64) []Guard {
	return widest(m, ratingGraph(m, rated))
}

// wireGuards gives the guard of every wire, by wire ID: the wider of those of
// its ends.
func wireGuards(m *model.Model, at []Guard) []Guard {
	guards := make([]Guard, len(m.Wires))
	for _, w := range m.Wires {
		a, b := at[w.From.ID], at[w.To.ID]
		guards[w.ID] = a
		if b.RatedA > a.RatedA {
			guards[w.ID] = b
		}
	}
	return guards
}

func ratingGraph(m *model.Model, rated func(*model.Device, int) float64) [][]link {
	g := make([][]link, len(m.Terminals))
	add := func(a, b *model.Terminal, l link, oneWay bool) {
		if a == nil || b == nil || a.Metal != nil || b.Metal != nil {
			return
		}
		l.to = b.ID
		g[a.ID] = append(g[a.ID], l)
		if !oneWay {
			l.to = a.ID
			g[b.ID] = append(g[b.ID], l)
		}
	}
	free := link{ratedA: math.Inf(1)}
	for _, w := range m.Wires {
		add(w.From, w.To, free, false)
	}
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			add(t, o, free, true)
		}
	}
	for _, d := range m.Devices {
		deviceLinks(d, rated, free, add)
	}
	return g
}

func deviceLinks(d *model.Device, rated func(*model.Device, int) float64, free link, add func(a, b *model.Terminal, l link, oneWay bool)) {
	for i, f := range d.Protects() {
		add(d.Terminal(f.In), d.Terminal(f.Out), link{ratedA: rated(d, i), fuse: d, index: i}, false)
	}
	for _, c := range d.Switches() {
		add(d.Terminal(c.A), d.Terminal(c.B), free, false)
	}
	for _, c := range d.Couples() {
		add(d.Terminal(c.A), d.Terminal(c.B), free, false)
	}
	for _, p := range d.Passes() {
		l := free
		if p.Ohm > 0 {
			l.ratedA = chargedShare * d.SystemV / p.Ohm // no short behind it draws more
		}
		add(d.Terminal(p.A), d.Terminal(p.B), l, p.OneWay)
	}
}

// widest runs the widest-path search from all source terminals at once.
func widest(m *model.Model, g [][]link) []Guard {
	best := make([]Guard, len(m.Terminals))
	done := make([]bool, len(m.Terminals))
	var q queue[guardAt]
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			t := d.Terminal(s.Plus)
			if t == nil || t.Metal != nil {
				continue
			}
			start := Guard{RatedA: math.Inf(1), Source: d}
			if !s.Battery && s.MaxA > 0 {
				start.RatedA = s.MaxA // an alternator limits itself
			}
			if start.RatedA > best[t.ID].RatedA {
				best[t.ID] = start
				q.push(guardAt{wideAt{start.RatedA, t.ID}, false})
			}
		}
	}
	for len(q) > 0 {
		at := q.pop()
		if done[at.id] {
			continue
		}
		done[at.id] = true
		for _, l := range g[at.id] {
			next := best[at.id]
			if l.fuse != nil && l.ratedA <= next.RatedA { // of two alike the later one is nearer to the wire
				next.RatedA, next.Fuse, next.Index = l.ratedA, l.fuse, l.index
			}
			if next.wider(best[l.to]) && !done[l.to] {
				best[l.to] = next
				q.push(guardAt{wideAt{next.RatedA, l.to}, next.Fuse != nil})
			}
		}
	}
	return best
}

// wider reports whether more can come by one way than by another. Of two that
// let the same through, the one with a fuse counts: a fuse is the better known.
func (g Guard) wider(o Guard) bool {
	return g.RatedA > o.RatedA || g.RatedA == o.RatedA && g.Fuse != nil && o.Fuse == nil
}

// guardAt is a point with the guard of the worst way to it.
type guardAt struct {
	wideAt
	fused bool
}

// before puts the widest first; equal widths go by fuse, then by ID.
func (a guardAt) before(b guardAt) bool {
	if a.width == b.width && a.fused != b.fused {
		return a.fused
	}
	return a.wideAt.before(b.wideAt)
}

// wideAt is a point with the width of the best way to it.
type wideAt struct {
	width float64
	id    int
}

// before puts the widest first; equal widths go by ID.
func (a wideAt) before(b wideAt) bool {
	if a.width != b.width {
		return a.width > b.width
	}
	return a.id < b.id
}

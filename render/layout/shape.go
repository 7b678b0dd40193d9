package layout

import (
	"cmp"
	"math"
	"slices"

	"legwork/render/scene"
)

// Measures of the tree, mm.
const (
	leastLeg = 24.0 // shorter legs are drawn this long, with a break mark
	stubLong = 17.0
	stubBox  = 2.2  // half the box of its letter
	apart    = 16.0 // between legs that don't meet
	partGap  = 45.0 // between parts of a harness that no leg joins
	leastR   = 2.0  // of the ring of a place
)

// shape is the tree on paper.
type shape struct {
	at    []scene.Point // by node
	segs  []seg         // by branch
	faked []bool        // by branch: not to scale
	mmPer float64       // mm of paper for 1 m
	tight float64       // how much closer legs come than they should
}

// turns are the directions in which a branch may leave, degrees from the way
// that its place is reached, best first. The trunk runs level.
var (
	offTrunk  = []float64{-90, 90, -60, 60, -120, 120, -40, 40, -140, 140}
	offEnd    = []float64{-90, 90, 45, -45, -60, 60, 20, -20, 0, -120, 120}
	offBranch = []float64{0, -40, 40, -75, 75, -20, 20, -100, 100}
)

// shapeAt gives a copy of the tree laid out at a scale, to be moved about.
func (p *plan) shapeAt(mmPer float64) *shape {
	if p.shapes[mmPer] == nil {
		p.shapes[mmPer] = p.layOut(mmPer)
	}
	s := *p.shapes[mmPer]
	s.at, s.segs = slices.Clone(s.at), slices.Clone(s.segs)
	return &s
}

func (p *plan) layOut(mmPer float64) *shape {
	t := &p.tree
	s := &shape{at: make([]scene.Point, t.nodes), segs: make([]seg, len(t.branches)), faked: make([]bool, len(t.branches)), mmPer: mmPer}
	low := 0.0
	for _, trunk := range t.trunks {
		w := &walker{p: p, s: s, done: map[int]bool{}}
		w.trunk(trunk)
		var points []scene.Point
		for _, n := range w.order {
			points = append(points, s.at[n])
		}
		b := spread(points)
		w.shift(-b.X1, low-b.Y1)
		low += b.Y2 - b.Y1 + partGap
	}
	return s
}

// walker lays out one part of the tree.
type walker struct {
	p     *plan
	s     *shape
	done  map[int]bool
	order []int
	drawn []int // branches
}

func (w *walker) shift(dx, dy float64) {
	for _, n := range w.order {
		w.s.at[n] = scene.Point{X: w.s.at[n].X + dx, Y: w.s.at[n].Y + dy}
	}
	for _, i := range w.drawn {
		b := w.p.tree.branches[i]
		w.s.segs[i].a, w.s.segs[i].b = w.s.at[b.from], w.s.at[b.to]
	}
}

// longMM is how long a branch is drawn, and whether that is not to scale.
func (w *walker) longMM(b branch) (mm float64, faked bool) {
	if b.stub != "" {
		return stubLong, true
	}
	long := b.leg.LengthM * w.s.mmPer
	if long < leastLeg {
		return leastLeg, true
	}
	return long, false
}

func (w *walker) trunk(nodes []int) {
	w.put(nodes[0], scene.Point{})
	for i, n := range nodes[1:] {
		for _, k := range w.p.tree.at[nodes[i]] {
			if b := w.p.tree.branches[k]; b.other(nodes[i]) == n && b.stub == "" {
				w.draw(k, nodes[i], 0)
			}
		}
	}
	for i, n := range nodes {
		turns := offTrunk
		if i == len(nodes)-1 {
			turns = offEnd
		}
		heading := 0.0
		if i == 0 && len(nodes) > 1 {
			turns, heading = offEnd, 180
		}
		w.twigs(n, heading, turns)
	}
}

func (w *walker) put(n int, p scene.Point) {
	w.s.at[n], w.done[n] = p, true
	w.order = append(w.order, n)
}

func (w *walker) target(k, from int, deg float64) scene.Point {
	long, _ := w.longMM(w.p.tree.branches[k])
	sin, cos := math.Sincos(deg * math.Pi / 180)
	o := w.s.at[from]
	return scene.Point{X: o.X + long*cos, Y: o.Y + long*sin}
}

func (w *walker) draw(k, from int, deg float64) {
	b := w.p.tree.branches[k]
	w.put(b.other(from), w.target(k, from, deg))
	_, w.s.faked[k] = w.longMM(b)
	w.s.segs[k] = seg{a: w.s.at[b.from], b: w.s.at[b.to], wide: w.p.loads[b.leg.ID].thickMM()}
	w.drawn = append(w.drawn, k)
}

// twigs lays out what leaves a node, the largest first, each in the direction
// that keeps it farthest from the rest.
func (w *walker) twigs(n int, heading float64, turns []float64) {
	var out []int
	for _, k := range w.p.tree.at[n] {
		if !w.done[w.p.tree.branches[k].other(n)] {
			out = append(out, k)
		}
	}
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(w.weight(b, n), w.weight(a, n)) })
	headings := make([]float64, len(out))
	for i, k := range out {
		best, cost := heading+turns[0], math.Inf(1)
		for rank, turn := range turns {
			if c := w.cost(k, n, heading+turn) + 2*float64(rank); c < cost {
				best, cost = heading+turn, c
			}
		}
		headings[i] = best
		w.draw(k, n, best)
		if cost >= 1000 {
			w.s.tight += cost / 1000
		}
	}
	for i, k := range out {
		w.twigs(w.p.tree.branches[k].other(n), headings[i], offBranch)
	}
}

// weight is how many mm of legs hang on a branch.
func (w *walker) weight(k, from int) float64 {
	long, _ := w.longMM(w.p.tree.branches[k])
	to := w.p.tree.branches[k].other(from)
	for _, i := range w.p.tree.at[to] {
		if i != k {
			long += w.weight(i, to)
		}
	}
	return long
}

// cost is how bad a direction is: near to other legs, or far from the middle.
func (w *walker) cost(k, from int, deg float64) float64 {
	new := seg{a: w.s.at[from], b: w.target(k, from, deg)}
	cost := 0.0
	up, down := 0.0, 0.0
	for _, i := range w.drawn {
		old := w.s.segs[i]
		up, down = min(up, old.a.Y, old.b.Y), max(down, old.a.Y, old.b.Y)
		b := w.p.tree.branches[i]
		d := 0.0
		if b.from == from || b.to == from {
			// Legs that meet have to part soon: judge them a way off.
			far := w.s.at[b.other(from)]
			d = min(new.to(far), old.to(new.b))
		} else {
			d = new.gap(old)
		}
		if d < apart {
			cost += 1000 * (apart - d) / apart
		} else if d < 3*apart {
			cost += 6 * (3*apart - d) / apart
		}
	}
	return cost + 0.15*max(new.b.Y, -new.b.Y)/10 + 0.05*max(max(down, new.b.Y)-min(up, new.b.Y), 0)
}

// radius of the ring of a place: it covers the ends of the legs that meet there.
func (s *shape) radius(t *tree, n int) float64 {
	r := leastR
	for _, i := range t.at[n] {
		r = max(r, s.segs[i].wide/2+0.5)
	}
	return r
}

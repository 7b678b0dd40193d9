package diagram

import "slices"

// What a poor order of tracks costs. The figures are our own, tuned by eye.
const (
	splitCost   = 1e6  // an item whose columns do not stand side by side
	fragCost    = 30   // every further fragment of a unit
	mateCost    = 25   // every track between coil and contact
	barCost     = 4    // every track that a bar spans
	crossCost   = 6    // every wire that a bar crosses
	studCost    = 2    // every track that the wires of one stud span
	mirrorCost  = 0.4  // a two-column item drawn from right to left
	habitCost   = 0.05 // every pair of tracks against the order of the draft
	fullSearch  = 6    // so many tracks are tried in every order
	longestMove = 4    // tracks that are moved at once
)

// puzzle is one section whose tracks are to be put in order.
type puzzle struct {
	n       int
	groups  []set // columns of one item, in order
	units   []set
	mates   [][2]set
	bars    []barSet
	studs   []set
	inverse []int // place by track
}

type set []int

type barSet struct {
	tracks  set
	crossed set // tracks with a strand through the bar's gap
}

// arrange puts the tracks of every section in order; items whose columns can't
// stand side by side lose a wire to boxed path numbers, and all is tried anew.
func (p *plan) arrange() {
	for range 1 + len(p.runs) + len(p.pins) {
		again := false
		for _, s := range p.sections {
			again = p.arrangeSection(s) || again
		}
		if !again {
			return
		}
		p.makeBars()
		p.level()
		p.track()
	}
}

func (p *plan) arrangeSection(s *section) bool {
	for i, t := range s.tracks {
		t.index = i
	}
	z := p.puzzle(s)
	order := z.solve()
	sorted := make([]*track, len(order))
	for i, k := range order {
		sorted[i] = s.tracks[k]
	}
	cut := false
	for _, it := range s.items {
		if p.apart(it, order) {
			cut = p.cutOne(it) || cut
		}
	}
	bridgeFirst(sorted)
	s.tracks = sorted
	for i, t := range s.tracks {
		t.index = i
	}
	for _, it := range s.items {
		if len(it.cols) == 2 {
			it.flip = it.cols[0].track().index > it.cols[1].track().index
		}
	}
	return cut
}

// apart reports whether the columns of an item do not stand side by side.
func (p *plan) apart(it *item, order []int) bool {
	if len(it.cols) < 2 {
		return false
	}
	z := puzzle{inverse: inverseOf(order)}
	g := make(set, len(it.cols))
	for i, c := range it.cols {
		g[i] = c.track().index
	}
	return z.split(g) >= splitCost
}

// cutOne cuts a wire at the last column of the item that has an uncut one.
func (p *plan) cutOne(it *item) bool {
	for i := len(it.cols) - 1; i >= 0; i-- {
		for _, s := range p.strands {
			for _, t := range []tip{s.upper, s.lower} {
				if t.pin != nil && t.pin.item == it && t.pin.col == i && !s.run.cut {
					p.cut(s.run)
					return true
				}
			}
		}
	}
	return false
}

func (z *puzzle) solve() []int {
	order := make([]int, z.n)
	for i := range order {
		order[i] = i
	}
	if z.n <= fullSearch {
		return z.tryAll(order)
	}
	if z.n > wholeSearch {
		return z.solveParts()
	}
	order = z.insert(order)
	best := z.cost(order)
	for range 40 {
		next, c := z.improve(order, best)
		if c >= best-1e-9 {
			break
		}
		order, best = next, c
	}
	return order
}

// tryAll finds the cheapest of all orders; the first found of equals stays.
func (z *puzzle) tryAll(order []int) []int {
	best, cost := slices.Clone(order), z.cost(order)
	var visit func(int)
	visit = func(k int) {
		if k == len(order) {
			if c := z.cost(order); c < cost-1e-9 {
				best, cost = slices.Clone(order), c
			}
			return
		}
		for i := k; i < len(order); i++ {
			order[k], order[i] = order[i], order[k]
			visit(k + 1)
			order[k], order[i] = order[i], order[k]
		}
	}
	visit(0)
	return best
}

package layout

import (
	"cmp"
	"math"
	"slices"

	"legwork/render/scene"
)

// order says which of two cards is set first.
type order func(x, y *card) int

// orders are those that are tried: large cards first, small ones first, and as
// the draft has them.
var orders = []order{bySize, func(x, y *card) int { return bySize(y, x) }, func(x, y *card) int { return cmp.Compare(x.place.ID, y.place.ID) }}

func bySize(x, y *card) int {
	_, hx := x.size(1)
	_, hy := y.size(1)
	return cmp.Compare(hy, hx)
}

// strain is the cost of the card that stands worst.
func (a *attempt) strain() float64 {
	most := 0.0
	for _, s := range a.set {
		most = max(most, s.cost(s.leader.a))
	}
	return most
}

// placeCards sets the cards in an order, and then again one by one with
// the others in their places. Where texts have no room already, it is not
// worth the search.
func (a *attempt) placeCards(by order) {
	var cards []*card
	for _, c := range a.p.cards {
		if len(c.rows) > 0 || c.about != "" {
			cards = append(cards, c)
		}
	}
	if len(cards) > mostCards || a.failed > 0 {
		a.left = cards
		return
	}
	slices.SortStableFunc(cards, by)
	for _, c := range cards {
		if !a.setOne(c) {
			a.left = append(a.left, c)
			if a.strict {
				return
			}
		}
	}
	if len(a.left) > 0 {
		return
	}
	for range 2 {
		for range a.set {
			was := a.set[0]
			a.set = slices.Delete(a.set, 0, 1)
			if !a.setOne(was.card) {
				a.set = append(a.set, was)
			}
		}
	}
}

// option is a place that a card might take: its upper left corner.
type option struct {
	x, y, cost float64
	cols       int
}

const grid = 4.0

// setOne finds the best free place for a card.
func (a *attempt) setOne(c *card) bool {
	r := a.blank.Room
	node := a.shape.at[c.place.ID]
	var all []option
	lastW := 0.0
	for cols := 1; cols <= 3; cols++ {
		w, h := c.size(cols)
		if w == lastW {
			break
		}
		lastW = w
		for y := r.Y1; y+h <= r.Y2; y += grid {
			for x := r.X1; x+w <= r.X2; x += grid {
				s := setAt(c, node, option{x, y, 0, cols}, w, h)
				if cost := s.cost(node); cost < farthest {
					all = append(all, option{x, y, cost, cols})
				}
			}
		}
	}
	slices.SortFunc(all, func(x, y option) int {
		return cmp.Or(cmp.Compare(x.cost, y.cost), cmp.Compare(x.cols, y.cols), cmp.Compare(x.y, y.y), cmp.Compare(x.x, y.x))
	})
	for _, o := range all {
		w, h := c.size(o.cols)
		if s := setAt(c, node, o, w, h); a.holds(s) {
			a.set = append(a.set, s)
			return true
		}
	}
	return false
}

// farthest is the cost of a place that is too far off to be of use.
const farthest = 170.0

func setAt(c *card, node scene.Point, o option, w, h float64) setCard {
	b := scene.Box{X1: o.x, Y1: o.y, X2: o.x + w, Y2: o.y + h}
	return setCard{card: c, cols: o.cols, box: b, leader: leaderTo(node, b)}
}

// leaderTo is the line from a node to the nearest spot on the edge of a card.
func leaderTo(node scene.Point, b scene.Box) seg {
	to := scene.Point{X: min(max(node.X, b.X1+2), b.X2-2), Y: min(max(node.Y, b.Y1), b.Y2)}
	if node.Y > b.Y1 && node.Y < b.Y2 {
		to.X = min(max(node.X, b.X1), b.X2)
	}
	return seg{a: node, b: to, wide: 0.25}
}

// cost likes a card near, straight above or below its place, and narrow.
func (s setCard) cost(node scene.Point) float64 {
	slant := math.Abs(s.leader.b.X - node.X)
	off := math.Abs((s.box.X1+s.box.X2)/2 - node.X)
	return s.leader.long() + 1.2*slant + 0.25*off + 5*float64(s.cols-1)
}

// holds reports whether a card and its leader are clear of everything else.
func (a *attempt) holds(s setCard) bool {
	if !a.free(s.box, 2.5) || s.leader.long() < 5 {
		return false
	}
	for i, b := range a.p.tree.branches {
		leg := a.shape.segs[i]
		if b.from != s.card.place.ID && b.to != s.card.place.ID {
			if leg.gap(s.leader) < leg.wide/2+2 {
				return false
			}
			continue
		}
		// The leader starts where the leg does; a little way out they have to
		// be apart.
		if leg.to(s.leader.at(min(5/s.leader.long(), 1))) < leg.wide/2+1 {
			return false
		}
	}
	for _, t := range a.texts {
		if s.leader.clear(t.box) < 0.5 {
			return false
		}
	}
	for n, o := range a.shape.at {
		if n != s.card.place.ID && s.leader.to(o) < a.radius(n)+1.5 {
			return false
		}
	}
	for _, m := range a.spots {
		if s.leader.to(m.at) < 2.5 {
			return false
		}
	}
	for _, o := range a.set {
		if s.leader.clear(o.box) < 1.5 || s.leader.gap(o.leader) < 1.5 {
			return false
		}
	}
	return true
}

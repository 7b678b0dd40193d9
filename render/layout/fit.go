package layout

import (
	"fmt"
	"math"

	"legwork/render/diagram"
)

// ratios are the scales that are tried: 1:2 and on.
var ratios = []int{2, 4, 5, 6, 8, 10, 12, 15, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 60, 70, 80, 100, 120, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 3000, 5000, 10000}

// fit tries papers and scales, largest first, and takes the first at which
// everything has its room. A sheet that was asked for by name, and A3, are kept
// also when some lists have to go to further sheets.
func (p *plan) fit() {
	blanks := diagram.Blanks(p.in.Paper)
	named := p.in.Paper != "" && p.in.Paper != diagram.DefaultPaper
	for i, b := range blanks {
		var fitting []int
		for _, ratio := range ratios {
			if p.shapeAt(1000 / float64(ratio)).fits(b) {
				fitting = append(fitting, ratio)
			}
		}
		if a := p.whole(b, fitting[:min(len(fitting), mostScales)]); a != nil {
			p.best = a
			return
		}
		for _, ratio := range fitting[:min(len(fitting), mostScales)] {
			if a := p.on(b, ratio, 0.5, bySize, false); p.best == nil || a.worse() < p.best.worse() {
				p.best = a
			}
		}
		if (named || i > 0) && p.best != nil && p.best.failed == 0 {
			return
		}
	}
	if p.best == nil {
		p.best = p.on(blanks[len(blanks)-1], ratios[len(ratios)-1], 0.5, bySize, false)
	}
}

// whole looks for a drawing on which everything has its room: the first with
// every list near its place, else the one with the farthest list nearest; nil
// if there is none.
func (p *plan) whole(b diagram.Blank, fitting []int) *attempt {
	var best *attempt
	least := math.Inf(1)
	for i, ratio := range fitting {
		for _, lift := range []float64{0.5, 0.25, 0.75} {
			for _, by := range orders {
				a := p.on(b, ratio, lift, by, true)
				if a.worse() > 0 {
					break // other orders seldom do where large cards first does not
				}
				strain := a.strain() + 5*float64(i) // a smaller scale is a price too
				if strain < least {
					best, least = a, strain
				}
				if strain < easy {
					return best
				}
			}
		}
	}
	return best
}

// easy is the strain up to which a drawing is taken at once: lists stand some
// 40 mm from their places.
const easy = 50.0

// mostScales is how many scales are tried on one sheet.
const mostScales = 5

// worse counts what an attempt leaves undone.
func (a *attempt) worse() float64 {
	return 1000*float64(a.failed) + 300*math.Ceil(a.shape.tight) + 10*float64(len(a.left))
}

// fits reports whether the tree has room on a sheet.
func (s *shape) fits(b diagram.Blank) bool {
	box := spread(s.at).Grow(9)
	return box.X2-box.X1 <= b.Room.X2-b.Room.X1 && box.Y2-box.Y1 <= b.Room.Y2-b.Room.Y1
}

// on lays the harness out on a sheet at one scale; lift says how far down in
// its room the tree stands, 0 to 1.
func (p *plan) on(b diagram.Blank, ratio int, lift float64, by order, strict bool) *attempt {
	s := p.shapeAt(1000 / float64(ratio))
	box := spread(s.at).Grow(9)
	dx := (b.Room.X1+b.Room.X2)/2 - (box.X1+box.X2)/2
	dy := b.Room.Y1 - box.Y1 + lift*(b.Room.Y2-b.Room.Y1-(box.Y2-box.Y1))
	for i := range s.at {
		s.at[i].X += dx
		s.at[i].Y += dy
	}
	for i, br := range p.tree.branches {
		s.segs[i].a, s.segs[i].b = s.at[br.from], s.at[br.to]
	}
	a := &attempt{p: p, blank: b, shape: s, ratio: ratio, strict: strict}
	a.placeMarks()
	a.placeNames()
	if strict && a.failed > 0 {
		return a
	}
	a.placeLabels()
	a.placeCards(by)
	a.center()
	return a
}

func (a *attempt) radius(n int) float64 { return a.shape.radius(&a.p.tree, n) }

func (a *attempt) scaleText() string { return fmt.Sprintf("1:%d", a.ratio) }

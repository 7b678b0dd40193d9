package diagram

import (
	"math"

	"legwork/render/scene"
)

// way is one straight leg of a drawn wire, with its stroke.
type way struct {
	wire string
	box  scene.Box
}

// misled is what a label costs that stands nearer to another wire than to its
// own: more than covering a corner of something, less than leaving the sheet.
const misled = 20.0

// passWay keeps the legs of a wire through the points x, y, x, y ...: the ends
// are cut square.
func (c *canvas) passWay(wire string, p []float64, stroke float64) {
	for i := 0; i+3 < len(p); i += 2 {
		x1, y1, x2, y2 := p[i], p[i+1], p[i+2], p[i+3]
		dx, dy := stroke/2, 0.0
		if y1 == y2 {
			dx, dy = 0, stroke/2
		}
		c.ways = append(c.ways, way{wire, scene.Box{X1: min(x1, x2) - dx, Y1: min(y1, y2) - dy, X2: max(x1, x2) + dx, Y2: max(y1, y2) + dy}})
	}
}

// crowded is what a label costs that stands so near beside that of another wire
// that both read as one text; labelApart is what tells them apart, mm: two
// blanks of their size.
const (
	crowded    = 15.0
	labelApart = 1.4
)

// confuses is what a text about a wire costs for being taken for one about
// another.
func (c *canvas) confuses(b scene.Box, wire string) float64 {
	cost := 0.0
	if c.misleads(b, wire) {
		cost = misled
	}
	wide := b
	wide.X1, wide.X2 = b.X1-labelApart, b.X2+labelApart
	for _, s := range c.said {
		if s.wire != wire && wide.Overlap(s.box) > 0 {
			return cost + crowded
		}
	}
	return cost
}

// misleads reports whether a text about a wire would be read as one about
// another: some other wire is nearer to it, as under the end of a thicker one.
func (c *canvas) misleads(b scene.Box, wire string) bool {
	own, other := math.Inf(1), math.Inf(1)
	for _, w := range c.ways {
		if d := b.Distance(w.box); w.wire == wire {
			own = min(own, d)
		} else {
			other = min(other, d)
		}
	}
	return other < own-1e-9
}

package scene

import "math"

// Box is an upright rectangle, mm. X1 <= X2 and Y1 <= Y2.
type Box struct{ X1, Y1, X2, Y2 float64 }

// Grow gives the box wider by d on every side.
func (b Box) Grow(d float64) Box { return Box{b.X1 - d, b.Y1 - d, b.X2 + d, b.Y2 + d} }

// Overlap gives the area that two boxes share, mm2.
func (b Box) Overlap(c Box) float64 {
	w := min(b.X2, c.X2) - max(b.X1, c.X1)
	h := min(b.Y2, c.Y2) - max(b.Y1, c.Y1)
	if w <= 0 || h <= 0 {
		return 0
	}
	return w * h
}

// Inside reports whether b lies wholly in c.
func (b Box) Inside(c Box) bool {
	return b.X1 >= c.X1 && b.Y1 >= c.Y1 && b.X2 <= c.X2 && b.Y2 <= c.Y2
}

// Distance gives the gap between two boxes, 0 where they touch or overlap.
func (b Box) Distance(c Box) float64 {
	dx := max(b.X1-c.X2, c.X1-b.X2, 0)
	dy := max(b.Y1-c.Y2, c.Y1-b.Y2, 0)
	return math.Hypot(dx, dy)
}

// TextBox gives the box of a text: from 0.74 of the size above the base line
// (capitals and ascenders) to 0.21 below it (descenders).
func TextBox(text string, x, y float64, at Anchor, sizeMM float64, bold bool) Box {
	w := Width(text, sizeMM, bold)
	switch at {
	case Middle:
		x -= w / 2
	case End:
		x -= w
	}
	return Box{x, y - 0.74*sizeMM, x + w, y + 0.21*sizeMM}
}

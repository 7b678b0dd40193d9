package layout

import (
	"math"

	"legwork/render/scene"
)

// seg is a straight line with a width, mm.
type seg struct {
	a, b scene.Point
	wide float64
}

func (s seg) at(t float64) scene.Point {
	return scene.Point{X: s.a.X + t*(s.b.X-s.a.X), Y: s.a.Y + t*(s.b.Y-s.a.Y)}
}

func (s seg) long() float64 { return math.Hypot(s.b.X-s.a.X, s.b.Y-s.a.Y) }

// to is the distance of a point from the line's middle.
func (s seg) to(p scene.Point) float64 {
	dx, dy := s.b.X-s.a.X, s.b.Y-s.a.Y
	t := 0.0
	if d := dx*dx + dy*dy; d > 0 {
		t = min(max(((p.X-s.a.X)*dx+(p.Y-s.a.Y)*dy)/d, 0), 1)
	}
	q := s.at(t)
	return math.Hypot(p.X-q.X, p.Y-q.Y)
}

func side(a, b, p scene.Point) float64 { return (b.X-a.X)*(p.Y-a.Y) - (b.Y-a.Y)*(p.X-a.X) }

func (s seg) crosses(o seg) bool {
	return side(s.a, s.b, o.a)*side(s.a, s.b, o.b) < 0 && side(o.a, o.b, s.a)*side(o.a, o.b, s.b) < 0
}

// gap is the distance between the middles of two lines, 0 where they cross.
func (s seg) gap(o seg) float64 {
	if s.crosses(o) {
		return 0
	}
	return min(s.to(o.a), s.to(o.b), o.to(s.a), o.to(s.b))
}

// clear is the gap between a box and the edge of the line, 0 or less where
// they touch.
func (s seg) clear(b scene.Box) float64 {
	around := scene.Box{X1: min(s.a.X, s.b.X), Y1: min(s.a.Y, s.b.Y), X2: max(s.a.X, s.b.X), Y2: max(s.a.Y, s.b.Y)}
	if far := around.Distance(b) - s.wide/2; far > 6 {
		return far // near enough to the truth for what is this far off
	}
	inside := func(p scene.Point) bool { return p.X >= b.X1 && p.X <= b.X2 && p.Y >= b.Y1 && p.Y <= b.Y2 }
	if inside(s.a) || inside(s.b) {
		return -s.wide / 2
	}
	c := [4]scene.Point{{X: b.X1, Y: b.Y1}, {X: b.X2, Y: b.Y1}, {X: b.X2, Y: b.Y2}, {X: b.X1, Y: b.Y2}}
	d := math.Inf(1)
	for i := range c {
		d = min(d, s.gap(seg{a: c[i], b: c[(i+1)%4]}))
	}
	return d - s.wide/2
}

func boxAround(p scene.Point, r float64) scene.Box {
	return scene.Box{X1: p.X - r, Y1: p.Y - r, X2: p.X + r, Y2: p.Y + r}
}

// spread gives the box around points.
func spread(points []scene.Point) scene.Box {
	b := scene.Box{X1: math.Inf(1), Y1: math.Inf(1), X2: math.Inf(-1), Y2: math.Inf(-1)}
	for _, p := range points {
		b = scene.Box{X1: min(b.X1, p.X), Y1: min(b.Y1, p.Y), X2: max(b.X2, p.X), Y2: max(b.Y2, p.Y)}
	}
	return b
}

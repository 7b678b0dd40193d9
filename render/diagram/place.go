package diagram

import (
	"slices"

	"legwork/render/scene"
)

// placeLabels sets all waiting texts: those with fewest ways first.
func (c *canvas) placeLabels() {
	slices.SortStableFunc(c.jobs, func(a, b job) int { return a.rank - b.rank })
	field := c.field()
	for _, j := range c.jobs {
		if len(j.choices) == 0 {
			continue
		}
		best := c.choose(j, field)
		g := scene.G(j.class)
		g.Data = j.data
		for i, b := range best.boxes() {
			l := best.lines[i]
			g.Add(scene.Words(l.class(), best.x, b.Y2-0.21*l.size, best.at, l.text))
			c.taken = append(c.taken, b)
			if j.class == "wl" {
				c.said = append(c.said, way{j.data[0].Value, b})
			}
		}
		c.labels.Add(g)
	}
}

// field is where texts of the drawing may stand.
func (c *canvas) field() scene.Box {
	s := c.p.paper
	return scene.Box{X1: s.left + 0.6, Y1: s.margin + 0.6, X2: s.w - s.margin - 0.6, Y2: c.g.tall.baseY - 0.6}
}

// choose gives the first free place of a text, or else the one that covers
// least.
func (c *canvas) choose(j job, field scene.Box) choice {
	best, cost := j.choices[0], 0.0
	for i, ch := range j.choices {
		k := ch.cost
		for _, b := range ch.boxes() {
			k += c.covered(b, field)
			if j.class == "wl" {
				k += c.confuses(b, j.data[0].Value)
			}
		}
		if i == 0 || k < cost-1e-9 {
			best, cost = ch, k
		}
		if cost == 0 {
			break
		}
	}
	return best
}

func (c *canvas) covered(b, field scene.Box) float64 {
	sum := 0.0
	if !b.Inside(field) {
		sum += 50
	}
	b = b.Grow(clearance)
	for _, t := range c.taken {
		sum += b.Overlap(t)
	}
	return sum
}

// beside gives the places of a text along a vertical line, from the top down:
// all of them at its right, then those at its left, in each of the settings of
// the text. Labels at one side are read without looking for them.
func beside(x, half, y1, y2 float64, settings ...[]line) []choice {
	var out []choice
	for _, right := range []bool{true, false} {
		for _, lines := range settings {
			out = append(out, onSide(lines, x, half, y1, y2, right)...)
		}
	}
	return out
}

func onSide(lines []line, x, half, y1, y2 float64, right bool) []choice {
	var out []choice
	height := lineStep * float64(len(lines)-1)
	first, last := y1+2.6, y2-height-1.0
	at, dx := scene.Start, half+labelGap
	if !right {
		at, dx = scene.End, -half-labelGap
	}
	for y := first; y <= last+1e-9; y += 0.75 {
		out = append(out, choice{lines: lines, x: x + dx, y: y, at: at})
	}
	if first > last {
		out = append(out, choice{lines: lines, x: x + dx, y: (first + last) / 2, at: at})
	}
	return out
}

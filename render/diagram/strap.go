package diagram

import "legwork/render/scene"

// Measures of a wire between two studs, mm: it lies at their height, over one
// track, a little to the left of it.
const (
	mostStrap  = 7.5 // from its middle to each end
	strapShift = -1  // the names of both studs stand at the right of them
)

// strapOn gives the wire between two studs that a track is there for.
func strapOn(t *track) *strand {
	for _, s := range t.strands {
		if s.run.strap {
			return s
		}
	}
	return nil
}

// strapEnds gives both ends of a wire between two studs, the left one first: a
// stud that stands beside it already comes next to it, so that it is drawn once.
func (c *canvas) strapEnds(s *strand) (left, right tread) {
	t := s.col.track()
	a, b := s.upper.joint, s.lower.joint
	if before, after := c.studBeside(t, -1), c.studBeside(t, 1); before == b || after == a {
		if before != a && after != b {
			a, b = b, a
		}
	}
	half := min(c.g.pitch/3, mostStrap)
	return tread{t, t.x + strapShift - half, a, a.metal}, tread{t, t.x + strapShift + half, b, b.metal}
}

// studBeside gives the stud under the track before or after one.
func (c *canvas) studBeside(t *track, step int) *joint {
	for i, o := range t.panel.tracks {
		if k := i + step; o == t && k >= 0 && k < len(t.panel.tracks) {
			if d, ok := c.treadOf(t.panel, t.panel.tracks[k]); ok {
				return d.stud
			}
		}
	}
	return nil
}

// drawStrap draws a wire between two studs.
func (c *canvas) drawStrap(s *strand) {
	left, right := c.strapEnds(s)
	x1, x2, y := left.x, right.x, c.g.tall.studY
	width := c.p.strokeMM(s.run.w)
	c.wires.Add(c.wireNode(s.run.w, []float64{x1, y, x2, y}, [2]float64{}))
	c.takeLine(x1, y, x2, y, width+casing)
	for _, x := range []float64{x1, x2} {
		c.dots.Add(scene.Ring("dot", x, y, 0.55+0.35*width))
	}
	lines := c.p.label(s.run.w)
	rise := width/2 + 1 + lineStep*float64(len(lines)-1)
	at := func(x, dy float64) choice { return choice{lines: lines, x: x, y: y + dy, at: scene.Middle} }
	mid := (x1 + x2) / 2
	c.jobs = append(c.jobs, job{rank: 3, class: "wl", data: []scene.Attr{{Name: "wire", Value: s.run.w.Number}},
		choices: []choice{at(mid, -rise), at(mid-2, -rise), at(mid+2, -rise), at(mid, width/2+2.6)}})
}

package diagram

import (
	"slices"

	"legwork/render/scene"
)

// Measures of a wire between two rails, mm: it goes down from one rail under
// the lowest and up to the other, so that its own length and label show.
const (
	bridgeHalf = 5.0 // from the middle of its track to each leg
	bridgeDeep = 5.5 // under the lowest rail
)

// bridges reports whether the strand joins two rails.
func (s *strand) bridges() bool {
	a, b := s.upper.joint, s.lower.joint
	return a != nil && b != nil && a.kind == railJoint && b.kind == railJoint
}

// bridgeFirst puts the tracks of wires between rails together, at the left of
// their section: supplies are read from there. What the search put in order
// keeps its order.
func bridgeFirst(tracks []*track) {
	slices.SortStableFunc(tracks, func(a, b *track) int { return a.bridgeRank() - b.bridgeRank() })
}

func (t *track) bridgeRank() int {
	for _, s := range t.strands {
		if s.bridges() && len(t.items) == 0 {
			return 0
		}
	}
	return 1
}

// drawBridge draws a wire between two rails with number, size and both ends.
func (c *canvas) drawBridge(s *strand) {
	x, w := s.col.track().x, s.run.w
	x1, x2 := x-bridgeHalf, x+bridgeHalf
	y1, y2, foot := c.g.tall.heightOf(s.upper.joint), c.g.tall.heightOf(s.lower.joint), c.g.tall.railY+bridgeDeep
	width := c.p.strokeMM(w)
	c.wires.Add(c.wireNode(w, []float64{x1, y1, x1, foot, x2, foot, x2, y2}, c.haloEnds(s)))
	c.takeLine(x1, y1, x1, foot, width+casing)
	c.takeLine(x2, y2, x2, foot, width+casing)
	c.takeLine(x1, foot, x2, foot, width+casing)
	c.endDot(s, s.upper, x1, y1, width)
	c.endDot(s, s.lower, x2, y2, width)
	under := func(lines []line, from float64) []choice {
		var ch []choice
		for dy := from; dy < from+8; dy++ {
			ch = append(ch, choice{lines: lines, x: x, y: foot + width/2 + dy, at: scene.Middle})
		}
		return ch
	}
	data := []scene.Attr{{Name: "wire", Value: w.Number}}
	lines := c.p.label(w)
	c.jobs = append(c.jobs, job{rank: 3, class: "wl", data: data, choices: under(lines, 2.6)})
	var ends []line
	for _, text := range scene.Wrap(bridgeCaption(s), sizeSmall, false, c.g.pitch-2.5, 2) {
		ends = append(ends, faint(text))
	}
	c.jobs = append(c.jobs, job{rank: 4, class: "far", data: data, choices: under(ends, 2.6+lineStep*float64(len(lines)))})
}

// bridgeCaption names both ends of a wire between rails or studs.
func bridgeCaption(s *strand) string { return s.upper.joint.name + " to " + s.lower.joint.name }

// bridgeAt gives where the leg of a wire between rails meets the joint.
func bridgeAt(s *strand, j *joint) float64 {
	if s.upper.joint == j {
		return s.col.track().x - bridgeHalf
	}
	return s.col.track().x + bridgeHalf
}

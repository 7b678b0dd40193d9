package diagram

import (
	"cmp"
	"slices"

	"legwork/render/scene"
)

// segment is a bar on one panel: the part of a joint that is drawn as one
// horizontal line.
type segment struct {
	bar    *bar
	panel  *panel
	places []*track
	lines  int // strands that end at it
	gap    int // merged gap
	lane   int
	y      float64
	others []*segment // the same joint elsewhere
}

func (s *segment) left() float64  { return s.places[0].x }
func (s *segment) right() float64 { return s.places[len(s.places)-1].x }

// weight says how much of the joint the piece is: its ends, and before all
// whether the joint goes on from here to a stud, a rail or another joint.
func (s *segment) weight() int {
	n := len(s.places)
	for _, list := range [][]*member{s.bar.uppers, s.bar.lowers} {
		for _, m := range list {
			if m.strand != nil && m.strand.col.track().panel == s.panel && m.strand.joins() {
				n += 1000
			}
		}
	}
	return n
}

// joins reports whether both ends of a strand are joints.
func (s *strand) joins() bool {
	return s.upper.pin == nil && s.lower.pin == nil && !s.upper.box && !s.lower.box
}

// reach is the stretch that the segment needs in its lane: the bar, its name
// at the left and a box at the right.
func (s *segment) reach() (from, to float64) {
	from = s.left() - 3 - scene.Width(s.bar.joint.name, sizeName, true)
	to = s.right() + 2
	if len(s.others) > 0 {
		to = s.right() + 13
	}
	return from, to
}

// segments cuts all bars by panel.
func (p *plan) segments() []*segment {
	var out []*segment
	for _, j := range p.joints {
		var mine []*segment
		for _, b := range j.gaps {
			mine = append(mine, p.segmentsOf(b)...)
		}
		for _, s := range mine {
			for _, o := range mine {
				if o != s {
					s.others = append(s.others, o)
				}
			}
		}
		out = append(out, mine...)
	}
	return out
}

func (p *plan) segmentsOf(b *bar) []*segment {
	var out []*segment
	for _, a := range p.panelsOf(b.sect) {
		s := &segment{bar: b, panel: a}
		for _, list := range [][]*member{b.uppers, b.lowers} {
			for _, m := range list {
				t := m.col().track()
				if t.panel != a {
					continue
				}
				s.places = append(s.places, t)
				if m.strand != nil {
					s.lines++
				}
			}
		}
		if len(s.places) == 0 {
			continue
		}
		slices.SortStableFunc(s.places, func(x, y *track) int { return cmp.Compare(x.index, y.index) })
		out = append(out, s)
	}
	return out
}

// lanes gives every segment of a sheet and merged gap its lane, by the left
// edge rule: the first lane in which nothing stands in its way, below all
// segments that have to be above it. It gives the number of lanes.
func lanes(all []*segment, above func(a, b *segment) bool) int {
	slices.SortStableFunc(all, func(a, b *segment) int {
		return cmp.Or(cmp.Compare(a.bar.gap, b.bar.gap), cmp.Compare(a.left(), b.left()), cmp.Compare(a.bar.joint.id, b.bar.joint.id))
	})
	most := 0
	done := map[*segment]bool{}
	for range all {
		next := nextSegment(all, done, above)
		next.lane = 0
		for _, o := range all {
			if done[o] && above(o, next) {
				next.lane = max(next.lane, o.lane+1)
			}
		}
		for blocked(next, all, done) {
			next.lane++
		}
		done[next] = true
		most = max(most, next.lane+1)
	}
	return most
}

// nextSegment is the first one with nothing open above it, or the first of
// all where they go round in a circle.
func nextSegment(all []*segment, done map[*segment]bool, above func(a, b *segment) bool) *segment {
	var first *segment
	for _, s := range all {
		if done[s] {
			continue
		}
		if first == nil {
			first = s
		}
		open := false
		for _, o := range all {
			open = open || !done[o] && o != s && above(o, s)
		}
		if !open {
			return s
		}
	}
	return first
}

func blocked(s *segment, all []*segment, done map[*segment]bool) bool {
	a, b := s.reach()
	for _, o := range all {
		if !done[o] || o.lane != s.lane {
			continue
		}
		if c, d := o.reach(); a < d && c < b {
			return true
		}
	}
	return false
}

// standsAbove reports whether a has to be in a lane above b: a wire goes from
// one to the other, or on a common track one ends above where the other begins.
func standsAbove(a, b *segment) bool {
	if a.panel != b.panel {
		return false
	}
	for _, u := range a.bar.uppers {
		for _, l := range b.bar.lowers {
			if u.col().track() == l.col().track() && a.bar.gap <= b.bar.gap && u.strandOrPin() != l.strandOrPin() {
				return true
			}
		}
	}
	for _, l := range a.bar.lowers {
		if l.strand != nil && l.strand.lower.bar == b.bar {
			return true
		}
	}
	return false
}

func (m *member) strandOrPin() any {
	if m.strand != nil {
		return m.strand
	}
	return m.pin
}

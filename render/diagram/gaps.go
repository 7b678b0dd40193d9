package diagram

import "slices"

func (p *plan) fillLanes(t *tallness) {
	for _, s := range p.segments() {
		if t.shows(s.places[0]) {
			t.segs = append(t.segs, s)
		}
	}
	for _, s := range t.segs {
		s.gap = t.merged[s.bar.gap]
	}
	for i := range t.gaps {
		t.gaps[i].pitch = lanePitch
		for _, g := range t.sheets {
			var here []*segment
			for _, s := range t.segs {
				if s.gap == i && s.panel.page == g {
					here = append(here, s)
				}
			}
			t.gaps[i].lanes = max(t.gaps[i].lanes, lanes(here, standsAbove))
		}
	}
	for _, s := range p.strands {
		if a, b := s.upper.bar, s.lower.bar; t.shows(s.col.track()) && a != nil && b != nil && t.merged[a.gap] == t.merged[b.gap] {
			t.gaps[t.merged[a.gap]].pitch = t.room
		}
	}
}

// needOf finds how high a merged gap has to be.
func (p *plan) needOf(t *tallness, i int) {
	g := &t.gaps[i]
	for _, s := range t.segs {
		if s.gap == i {
			g.above = max(g.above, t.roomFor(s.bar.uppers, s, true))
			g.below = max(g.below, t.roomFor(s.bar.lowers, s, false))
		}
	}
	if i == 0 && slices.ContainsFunc(p.strands, func(s *strand) bool { return s.bridges() && t.shows(s.col.track()) }) {
		g.above = max(g.above, bridgeDeep+linkRoom)
	}
	g.need = g.above + g.below + g.pitch*float64(max(g.lanes-1, 0))
	for _, s := range p.strands {
		a, b := t.gapBelow(s.upper), t.gapAbove(s.lower)
		if a != i && b != i || s.run.strap || !t.shows(s.col.track()) {
			continue
		}
		if s.upper.box || s.lower.box {
			g.need = max(g.need, stubRoom)
		} else if a == b && g.lanes == 0 {
			g.need = max(g.need, t.room+s.ringed())
		}
	}
	if g.lanes == 0 {
		g.need = max(g.need, linkRoom)
	}
	for _, it := range p.items {
		for _, q := range it.pins {
			if _, ok := p.stray(q); ok && t.shows(it.cols[q.col].track()) && (q.up() && t.merged[it.slot-1] == i || !q.up() && t.merged[it.slot] == i) {
				g.need = max(g.need, strayRoom)
			}
		}
	}
}

func (t *tallness) roomFor(list []*member, s *segment, upper bool) float64 {
	room := linkRoom / 2
	for _, m := range list {
		switch {
		case m.pin != nil:
			room = max(room, linkRoom)
		case upper && t.gapBelow(m.strand.upper) == s.gap && !m.strand.upper.box, !upper && t.gapAbove(m.strand.lower) == s.gap && !m.strand.lower.box:
			room = max(room, t.room+m.strand.ringed())
		case m.strand.lower.box:
			room = max(room, stubRoom)
		}
	}
	return room
}

// gapBelow is the merged gap that a strand enters under its upper tip.
func (t *tallness) gapBelow(end tip) int {
	switch {
	case end.pin != nil:
		return t.merged[end.pin.item.slot]
	case end.bar != nil:
		return t.merged[end.bar.gap]
	case end.joint != nil && end.joint.kind == railJoint:
		return 0
	}
	return -1
}

// gapAbove is the merged gap that a strand leaves at its lower tip.
func (t *tallness) gapAbove(end tip) int {
	switch {
	case end.pin != nil:
		return t.merged[end.pin.item.slot-1]
	case end.bar != nil:
		return t.merged[end.bar.gap]
	case end.joint != nil && end.joint.kind == studJoint:
		return len(t.gaps) - 1
	}
	return -1
}

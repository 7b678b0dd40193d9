package diagram

import (
	"cmp"
	"slices"
)

// joinStrands ties every strand to the columns of its pins; it gives a run
// that does not fit.
func (p *plan) joinStrands() *run {
	for _, s := range p.strands {
		for _, t := range []tip{s.upper, s.lower} {
			if t.pin != nil && !join(s.col, t.pin.item.cols[t.pin.col]) && !s.run.cut {
				return s.run
			}
		}
	}
	return nil
}

// joinBars lets the members above a bar stand over those below it: heaviest
// over heaviest, a pin of the joint itself first.
func (p *plan) joinBars() {
	for _, j := range p.joints {
		for _, b := range j.gaps {
			heaviest(b.uppers, p)
			heaviest(b.lowers, p)
			free := slices.Clone(b.lowers)
			for _, u := range b.uppers {
				for i, l := range free {
					if l != nil && join(u.col(), l.col()) {
						free[i] = nil
						break
					}
				}
			}
		}
	}
}

func (m *member) col() *col {
	if m.pin != nil {
		return m.pin.item.cols[m.pin.col]
	}
	return m.strand.col
}

func heaviest(list []*member, p *plan) {
	weight := func(m *member) float64 {
		if m.pin != nil {
			return 1e6
		}
		return p.areaOf(m.strand.run.w)
	}
	slices.SortStableFunc(list, func(a, b *member) int { return cmp.Compare(weight(b), weight(a)) })
}

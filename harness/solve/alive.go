package solve

import (
	"math"

	"legwork/gauge"
	"legwork/harness/part"
)

// aliveMove says whether a module wants to come alive or to drop out, and
// when. One that dropped out stays out for the step: it reboots.
func (p *play) aliveMove(r int) (wants bool, delayS float64) {
	s, st := &p.seen[r], &p.f.relays[r].State
	fed := p.fed(r)
	if !p.on[r] {
		return fed && !p.lost[r], 0
	}
	if fed {
		return false, 0
	}
	worst, least := p.lasts()
	if st.HoldsS >= least {
		s.gap = true
		s.zone = SurelyIn
		if st.HoldsS < worst {
			s.zone = NotSure
		}
		return false, 0
	}
	return true, st.HoldsS
}

// lasts gives the longest and shortest time for which feeds can be away in
// the step before they return: the starter's first pull takes 15 to 40 ms.
func (p *play) lasts() (worst, least float64) {
	s := &p.f.model.Steps[p.step]
	switch {
	case s.Engine == part.Locked:
		return gauge.EngageLongS, gauge.EngageShortS
	case s.LastS > 0:
		return s.LastS, s.LastS
	}
	return math.Inf(1), math.Inf(1)
}

// fed reports whether all feeds of a module have their volts, and notes the
// feed with the least margin.
func (p *play) fed(r int) bool {
	s, m := &p.seen[r], &p.f.movers[r]
	least := math.Inf(1)
	s.short = -1
	for i, w := range m.watch {
		v := p.across(w.plus, w.minus)
		if margin := v - w.atLeastV; margin < least {
			least, s.short, s.volts = margin, i, v
		}
	}
	return s.short >= 0 && least >= 0
}

package part

import "math"

// fastS is the longest time on whose heat copper evens out: bare 20 AWG warms
// with some 20 s, a bundle more slowly. What is on for longer heats its wire
// as if it were always on.
const fastS = 10

// rhythm is how a load comes and goes.
type rhythm struct {
	dutyFrac     float64
	onS, periodS float64
}

// rhythm reads duty, cycle and pwm. Duty alone is taken as switched fast, as a
// controller does it.
func (d *Device) rhythm() rhythm {
	r := rhythm{dutyFrac: d.dutyFrac()}
	if d.Said("cycle") {
		r.onS, r.periodS = d.Num("cycle"), d.NumAt("cycle", 1)
	}
	return r
}

// HeatA is the current that heats as the load does over its duty, r.m.s., out
// of the current while it is on.
func (w *Draw) HeatA(onA float64) float64 { return onA * math.Sqrt(w.HeatFrac()) }

// HeatFrac is the share of the time that counts for heat: that of its duty, or
// 1 where it is on for longer than 10 s at a time or no share is said.
func (w *Draw) HeatFrac() float64 {
	if !(w.DutyFrac > 0 && w.DutyFrac < 1) || w.OnS > fastS {
		return 1
	}
	return w.DutyFrac
}

// AverageA is what the load takes out of the battery over hours, as a steady
// current: its duty, and its peak once each period.
func (w *Draw) AverageA() float64 {
	frac := w.DutyFrac
	if !(frac > 0) {
		frac = 1
	}
	a := w.Amps * frac
	if w.PeriodS > 0 && w.PeakA > w.Amps {
		a += (w.PeakA - w.Amps) * math.Min(w.PeakS, w.OnS) / w.PeriodS
	}
	return a
}

// ExtraA is what the load draws at its start above the current while it is on.
func (w *Draw) ExtraA(onA float64) float64 {
	return math.Max(0, w.PeakA-onA)
}

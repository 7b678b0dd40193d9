package check

import (
	"cmp"
	"math"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// drain is what a battery gives with the key off.
type drain struct {
	battery    *model.Device
	amps       float64
	capacityAh float64 // 0: not said
}

// reserveMin is the reserve capacity in minutes.
func (d drain) reserveMin() float64 { return d.capacityAh / gauge.AmpHours(1) }

func (d drain) limitA() float64 {
	if d.capacityAh > 0 {
		return gauge.DrainLimitA(d.reserveMin())
	}
	return gauge.DrainGoodA
}

// over is the drain in parts of its limit.
func (d drain) over() float64 {
	if d.battery == nil {
		return 0
	}
	return d.amps / d.limitA()
}

// share is what one load takes of a drain.
type share struct {
	device *model.Device
	draw   part.Draw
	amps   float64
}

// drawing lists the loads that draw in a step, the largest first. A feed with
// a current asleep is taken to be asleep; what hangs on a rest contact by
// mistake has a finding of its own.
func (p *Pass) drawing(s *solve.State) []share {
	apart := map[*model.Device]bool{}
	for _, r := range p.onRest() {
		apart[r.device] = true
	}
	var list []share
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		amps := math.Abs(s.DrawA.Of(d, i))
		if w.AsleepA > 0 {
			amps = min(amps, w.AsleepA)
		}
		if amps >= leastDrainA && !apart[d] {
			list = append(list, share{d, w, amps})
		}
	})
	slices.SortStableFunc(list, func(a, b share) int { return cmp.Compare(b.amps, a.amps) })
	return list
}

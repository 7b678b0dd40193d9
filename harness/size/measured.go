package size

import (
	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
)

// leastMeasuredOhm keeps a measured resistance above nothing when what its
// joints take is taken off.
const leastMeasuredOhm = 1e-6

// copperOhm gives the resistance of a wire's copper at a size and temperature:
// what was measured on it where the draft says so, taken as measured at 20 C,
// without the joints that are counted by themselves.
func (c *chooser) copperOhm(w *model.Wire, s *gauge.Rating, tempC float64) float64 {
	if !(w.Ohm > 0) {
		return s.Size.OhmPerM(tempC) * c.r.Paths[w.ID].LengthM
	}
	ohm := w.Ohm
	for _, t := range []*model.Terminal{w.From, w.To} {
		if t.Landing == part.Post {
			ohm -= gauge.RingJointOhm
		}
	}
	return gauge.CopperAt(max(ohm, leastMeasuredOhm), tempC)
}

package solve

import (
	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
)

// ohmAt is the copper of a conductor in a corner. The cold corner counts from
// the size and length where they are known, else from the hot resistance.
func (c Conductor) ohmAt(corner part.Corner) float64 {
	if corner != part.ColdStart {
		return c.Ohm
	}
	if c.Size.AreaMM2 > 0 && c.LengthM > 0 {
		return c.Size.OhmPerM(gauge.ColdC) * c.LengthM
	}
	return gauge.CopperAt(c.Ohm, gauge.ColdC) * c.Ohm / max(gauge.CopperAt(c.Ohm, c.TempC), 1e-12)
}

// joints counts the bolted joints of a wire: one for each end under a nut.
func joints(w *model.Wire) float64 {
	n := 0.0
	for _, t := range []*model.Terminal{w.From, w.To} {
		if t != nil && t.Landing == part.Post {
			n++
		}
	}
	return n
}

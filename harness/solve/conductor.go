package solve

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
)

// ohmAt is the copper of a conductor in a corner. The cold corner counts from
// the size and length where they are known, else from the hot resistance.
func (c Conductor) ohmAt(corner part.Corner, start part.Start) float64 {
	if corner != part.ColdStart {
		return c.Ohm
	}
	cold := start.Temp()
	if c.Size.AreaMM2 > 0 && c.LengthM > 0 && !c.Measured {
		return c.Size.OhmPerM(cold) * c.LengthM
	}
	return gauge.CopperAt(c.Ohm, cold) * c.Ohm / max(gauge.CopperAt(c.Ohm, c.TempC), 1e-12)
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

// fit gives the solver the resistance of every wire. Answers stay known where
// none has changed.
func (p *play) fit(wires []Conductor) error {
	changed := false
	for i, w := range p.f.model.Wires {
		ohm := wires[i].ohmAt(p.f.corner, p.f.start)
		if !(ohm >= 0 && ohm <= 1e9) {
			return fmt.Errorf("solve: wire %s has a resistance of %g ohm", w.Number, ohm)
		}
		ohm = max(ohm+joints(w)*gauge.RingJointOhm, leastOhm)
		if l := &p.f.links[i]; l.branch != noBranch && p.ohm[i] != ohm {
			p.ohm[i], changed = ohm, true
			p.net.SetLaw(l.branch, resistor(ohm))
		}
	}
	if changed {
		p.kept.forget()
	}
	p.dirty = true
	return nil
}

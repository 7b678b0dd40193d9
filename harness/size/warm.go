package size

import (
	"legwork/gauge"
	"legwork/harness/model"
)

// ohmAt gives the resistance of a wire when its chain stands on a rung, at the
// temperature that its design current brings it to.
func (c *chooser) ohmAt(w *model.Wire, rung int) float64 {
	s := c.menu[w.ID].at(rung)
	return c.copperOhm(w, s, c.tempAt(w, s))
}

func (c *chooser) tempAt(w *model.Wire, s *gauge.Rating) float64 {
	amps := 0.0
	if c.cur.stepA != nil {
		amps = c.cur.stepA[w.ID]
	}
	return s.TempC(c.r.Paths[w.ID].HotC, amps)
}

// hotOhm is the resistance of a wire as it stands while a flat battery is
// charged through it; the steps are played with the copper that their own
// currents warm.
func (c *chooser) hotOhm(w *model.Wire, s *gauge.Rating) float64 {
	amps := c.charge.through(w)
	if c.cur.stepA != nil {
		amps = max(amps, c.cur.stepA[w.ID])
	}
	return c.copperOhm(w, s, s.TempC(c.r.Paths[w.ID].HotC, amps))
}

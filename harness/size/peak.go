package size

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/solve"
)

// fuseLoad gives the largest steady current through a protective element, with
// one load behind it at the peak of its start, and the step in which it flows;
// or what it has to carry while a flat battery is charged.
func (c *chooser) fuseLoad(h *solve.History, d *model.Device, i int) (amps float64, at string) {
	for _, s := range h.States {
		if !steady(s) {
			continue
		}
		if a := math.Abs(s.FuseA.Of(d, i)) + c.extraThrough(s, d, i); a > amps {
			amps, at = a, s.Step.Name
		}
	}
	if a := c.charge.throughFuse(d, i); a > amps {
		return a, Charging
	}
	return amps, at
}

// extraThrough is the most that one starting load adds in a fuse: starts at
// the same moment are no plan.
func (c *chooser) extraThrough(s *solve.State, d *model.Device, i int) float64 {
	most := 0.0
	for _, p := range c.pulses {
		if !(p.draw.PeakA > 0) {
			continue
		}
		passes := false
		amps := c.eachEdge(p, s, func(e *edge) {
			passes = passes || e.sort == fuseEdge && e.device == d && e.index == i
		})
		if passes {
			most = math.Max(most, p.draw.ExtraA(amps))
		}
	}
	return most
}

// atPeak adds to a path what the load's peak loses on it: the extra current
// through every resistance on its way, as that stands in the step.
func (c *chooser) atPeak(p Path) Path {
	w := p.Device.Draws()[p.Draw]
	s := c.history.States[p.Step.ID]
	if !(w.PeakA > 0) {
		return p
	}
	ohm := 0.0
	amps := c.eachEdge(pulse{p.Device, p.Draw, w}, s, func(e *edge) { ohm += c.ohmOf(e, s) })
	p.ExtraA = w.ExtraA(amps)
	p.steadyV = p.DropV
	p.DropV += p.ExtraA * ohm
	return p
}

// ohmOf is the resistance of an edge as it stands in a state: its volts over
// its current.
func (c *chooser) ohmOf(e *edge, s *solve.State) float64 {
	a, b := c.sides(e)
	volts, ok := across(s, a, b)
	if amps := e.amps(s); ok && amps > 0 && !math.IsInf(amps, 1) {
		return math.Abs(volts) / amps
	}
	return 0
}

// sides gives the terminals at the two sides of an edge.
func (c *chooser) sides(e *edge) (a, b *model.Terminal) {
	switch e.sort {
	case wireEdge:
		return e.wire.From, e.wire.To
	case fuseEdge:
		f := e.device.Protects()[e.index]
		return e.device.Terminal(f.In), e.device.Terminal(f.Out)
	case contactEdge:
		k := e.device.Switches()[e.index]
		return e.device.Terminal(k.A), e.device.Terminal(k.B)
	case outputEdge:
		o := e.device.Drives()[e.index]
		return e.device.Terminal(o.Pin), e.device.Terminal(o.Other)
	case fixedEdge:
		p := e.device.Passes()[e.index]
		return e.device.Terminal(p.A), e.device.Terminal(p.B)
	}
	return nil, nil
}

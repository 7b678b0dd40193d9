package size

import (
	"iter"
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// starterLimitV is what the whole starter path may lose while cranking:
// 0.5 V on the positive side and 0.2 V on the ground side.
const starterLimitV = 0.5 + 0.2

// forLess is the share of the system's volts under which a load is rated for
// less than the system, as an ignition coil behind its ballast resistor is.
const forLess = 0.85

// flowing is the share of a load's stated current from which it counts as on.
const flowing = 0.2

// drops gives the judged paths of the current history: of every load that a
// battery feeds itself, in every step in which its volts are judged, the loss
// from that battery's posts to the load's own terminals, feed and return
// together, with the limit that applies.
func (c *chooser) drops() iter.Seq[Path] {
	return func(yield func(Path) bool) {
		held := heldNets(c.m)
		for _, d := range c.m.Devices {
			for path := range c.dropsOf(held, d) {
				if !yield(path) {
					return
				}
			}
		}
	}
}

// dropsOf gives the paths of one device.
func (c *chooser) dropsOf(held netSet, d *model.Device) iter.Seq[Path] {
	return func(yield func(Path) bool) {
		for i, w := range d.Draws() {
			if w.Coil || held.has(c.m, d.Terminal(w.Plus)) || w.RatedV < forLess*c.m.SystemV {
				continue // coils are judged by pull-in; the others are not meant for the system's volts
			}
			plus, minus := pinOrMetal(c.m, d, w.Plus), pinOrMetal(c.m, d, w.Minus)
			for _, s := range c.history.States {
				if !judgedIn(s, d, i, w) {
					continue
				}
				ways, ok := c.waysTo(s.Step.ID, plus, minus)
				if !ok {
					continue
				}
				path := Path{Device: d, Draw: i, Step: s.Step, ways: ways}
				if path, ok = c.dropIn(s, path); ok && !yield(c.lessDrivers(c.atPeak(path))) {
					return
				}
			}
		}
	}
}

// judgedIn reports whether a load is on in a step that judges its volts.
func judgedIn(s *solve.State, d *model.Device, i int, w part.Draw) bool {
	if s.Skipped != "" || len(s.Shorts) > 0 || s.Step.Engine == part.Locked || s.Step.LastS > 0 {
		return false
	}
	return w.Amps > 0 && math.Abs(s.DrawA.Of(d, i)) > flowing*w.Amps
}

// dropIn measures a path in a state of its step; ok is false where nothing
// limits it.
func (c *chooser) dropIn(s *solve.State, p Path) (Path, bool) {
	w := p.Device.Draws()[p.Draw]
	plus, minus := c.endsOf(p)
	source, ok1 := across(s, p.ways.bank.plus, p.ways.bank.minus)
	load, ok2 := across(s, plus, minus)
	if !ok1 || !ok2 {
		return p, false
	}
	if w.EitherWay {
		load = math.Abs(load)
	}
	limit, asked := limitOf(c.m, c.p, s, p.Device, w, source)
	p.DropV, p.LimitV = source-load, limit
	return p, asked
}

// limitOf gives the volts that a load's path may lose in a step. While the
// starter draws, only stated least volts and the starter's own path count.
func limitOf(m *model.Model, p gauge.Profile, s *solve.State, d *model.Device, w part.Draw, source float64) (float64, bool) {
	turning := s.Step.Engine == part.Turning
	if w.Starter {
		return starterLimitV * m.SystemV / 12, turning
	}
	if turning {
		least := leastVolts(w, s.Step.ID)
		return source - least, least > 0 && source > least
	}
	frac := p.DropOther
	if w.Critical {
		frac = p.DropCritical
	}
	if c := circuitFeeding(d, w.Plus); c != nil && c.DropFrac > 0 {
		frac = c.DropFrac
	}
	return frac * m.SystemV, true
}

// leastVolts gives the most that is asked of a load's volts in a step.
func leastVolts(w part.Draw, step int) float64 {
	least := 0.0
	for _, n := range w.Needs {
		if n.Steps.Has(step) {
			least = math.Max(least, n.Volts)
		}
	}
	return least
}

// circuitFeeding gives the circuit of the first wire at a terminal, nil for none.
func circuitFeeding(d *model.Device, pin string) *model.Circuit {
	t := d.Terminal(pin)
	if t == nil || len(t.Ends) == 0 {
		return nil
	}
	return t.Ends[0].Wire.Circuit
}

// pinOrMetal gives the terminal that a pin of a device stands for: its own,
// or where the device returns through metal, the terminal that is the metal.
func pinOrMetal(m *model.Model, d *model.Device, pin string) *model.Terminal {
	if pin != part.Metal {
		return d.Terminal(pin)
	}
	for _, t := range d.Terminals {
		if t.Metal != nil {
			return t
		}
	}
	return nil
}

// across gives the volts between two terminals; ok is false where one floats.
func across(s *solve.State, a, b *model.Terminal) (volts float64, ok bool) {
	if a == nil || b == nil {
		return 0, false
	}
	volts = s.Volts[a.ID] - s.Volts[b.ID]
	return volts, !math.IsNaN(volts)
}

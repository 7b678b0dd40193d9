package size

import (
	"iter"
	"math"
	"slices"

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

// drops gives the path of every load in every step in which its volts are
// judged: the loss from the battery's posts to the load's own terminals, feed
// and return together, with the limit that applies.
func drops(m *model.Model, p gauge.Profile, h *solve.History) iter.Seq[Path] {
	return func(yield func(Path) bool) {
		posts := batteryPosts(m)
		if posts.plus == nil || h == nil {
			return
		}
		held := heldNets(m)
		for _, d := range m.Devices {
			for path := range dropsOf(m, p, h, posts, held, d) {
				if !yield(path) {
					return
				}
			}
		}
	}
}

// dropsOf gives the paths of one device.
func dropsOf(m *model.Model, p gauge.Profile, h *solve.History, posts posts, held netSet, d *model.Device) iter.Seq[Path] {
	return func(yield func(Path) bool) {
		for i, w := range d.Draws() {
			if w.Coil || held.has(m, d.Terminal(w.Plus)) || w.RatedV < forLess*m.SystemV {
				continue // coils are judged by pull-in; the others are not meant for the system's volts
			}
			for _, s := range h.States {
				if path, ok := dropOf(m, p, s, posts, d, i, w); ok && !yield(path) {
					return
				}
			}
		}
	}
}

// dropOf measures one load in one step; ok is false where it is not judged.
func dropOf(m *model.Model, p gauge.Profile, s *solve.State, posts posts, d *model.Device, i int, w part.Draw) (Path, bool) {
	if s.Skipped != "" || len(s.Shorts) > 0 || s.Step.Engine == part.Locked || s.Step.LastS > 0 {
		return Path{}, false
	}
	amps := math.Abs(s.DrawA.Of(d, i))
	if !(amps > flowing*w.Amps) || w.Amps == 0 {
		return Path{}, false
	}
	source, ok1 := across(s, posts.plus, posts.minus)
	load, ok2 := across(s, pinOrMetal(m, d, w.Plus), pinOrMetal(m, d, w.Minus))
	if !ok1 || !ok2 {
		return Path{}, false
	}
	if w.EitherWay {
		load = math.Abs(load)
	}
	limit, asked := limitOf(m, p, s, d, w, source)
	if !asked {
		return Path{}, false
	}
	return Path{Device: d, Draw: i, Step: s.Step, DropV: source - load, LimitV: limit}, true
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

// posts are the two posts of the first battery, or of a row of them in series.
type posts struct {
	plus, minus *model.Terminal
}

func batteryPosts(m *model.Model) posts {
	var list []posts
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			if s.Battery {
				list = append(list, posts{d.Terminal(s.Plus), d.Terminal(s.Minus)})
			}
		}
	}
	if len(list) == 0 {
		return posts{}
	}
	return ends(m, list)
}

// ends gives the outer posts of batteries in series: the first positive one
// that is no other battery's negative, and the other way round.
func ends(m *model.Model, list []posts) (out posts) {
	nets := m.Nets()
	high, low := map[int]bool{}, map[int]bool{}
	for _, p := range list {
		if p.plus != nil && p.minus != nil {
			high[nets.Of[p.plus.ID]], low[nets.Of[p.minus.ID]] = true, true
		}
	}
	out = list[0]
	for _, p := range slices.Backward(list) {
		if p.plus != nil && !low[nets.Of[p.plus.ID]] {
			out.plus = p.plus
		}
		if p.minus != nil && !high[nets.Of[p.minus.ID]] {
			out.minus = p.minus
		}
	}
	return out
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

package size

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// pulse is a load that is not on all the time, or draws more at its start.
type pulse struct {
	device *model.Device
	index  int
	draw   part.Draw
}

// pulses lists the loads with a duty or a peak. What a controller switches by
// an output with a duty has that duty.
func pulses(m *model.Model) []pulse {
	var list []pulse
	duty := dutyNets(m)
	for _, d := range m.Devices {
		for i, w := range d.Draws() {
			for _, pin := range []string{w.Plus, w.Minus} {
				if t := d.Terminal(pin); t != nil && len(duty) > 0 && w.HeatFrac() == 1 && w.OnS == 0 {
					if frac, ok := duty[m.Nets().Of[t.ID]]; ok {
						w.DutyFrac = frac
					}
				}
			}
			if w.HeatFrac() < 1 || w.PeakA > 0 {
				list = append(list, pulse{d, i, w})
			}
		}
	}
	return list
}

// dutyNets gives the duty of the outputs that have one, by net.
func dutyNets(m *model.Model) map[int]float64 {
	nets := map[int]float64{}
	for _, d := range m.Devices {
		for _, o := range d.Drives() {
			if t := d.Terminal(o.Pin); t != nil && o.DutyFrac > 0 && o.DutyFrac < 1 {
				nets[m.Nets().Of[t.ID]] = o.DutyFrac
			}
		}
	}
	return nets
}

// eachEdge yields the edges on the ways of a pulse's current in a state, as
// far as they can be followed; a load that is off there has none.
func (c *chooser) eachEdge(p pulse, s *solve.State, yield func(e *edge)) (amps float64) {
	amps = math.Abs(s.DrawA.Of(p.device, p.index))
	if s.Skipped != "" || !(amps > flowing*p.draw.Amps) {
		return 0
	}
	plus, minus := pinOrMetal(c.m, p.device, p.draw.Plus), pinOrMetal(c.m, p.device, p.draw.Minus)
	w, ok := c.waysTo(s.Step.ID, plus, minus)
	if !ok {
		return amps
	}
	w.out.each(c.tracer.point[plus.ID], yield)
	if minus != nil {
		w.back.each(c.tracer.point[minus.ID], yield)
	}
	return amps
}

// each yields the edges from the tree's root to a point, short of where the
// current parts.
func (tr *tree) each(point int, yield func(e *edge)) {
	for tr.from[point] >= 0 {
		e := &tr.t.edges[tr.by[point]]
		yield(e)
		if e.parted {
			return
		}
		point = int(tr.from[point])
	}
}

// rootMeanSquare gives, by wire ID, the current that heats a wire in a state;
// nil where it is the current itself. Loads on one wire are taken to be on at
// the same moments, which is the hottest that they can be.
func (c *chooser) rootMeanSquare(s *solve.State) []float64 {
	if len(c.pulses) == 0 || s.Skipped != "" {
		return nil
	}
	n := len(c.m.Wires)
	on, mean, swing := make([]float64, n), make([]float64, n), make([]float64, n)
	for _, p := range c.pulses {
		frac := p.draw.HeatFrac()
		if frac == 1 {
			continue
		}
		var wires []int
		amps := c.eachEdge(p, s, func(e *edge) {
			if e.wire != nil {
				wires = append(wires, e.wire.ID)
			}
		})
		for _, w := range wires {
			on[w] += amps
			mean[w] += amps * frac
			swing[w] += amps * math.Sqrt(frac*(1-frac))
		}
	}
	heat := make([]float64, n)
	for i := range heat {
		amps := math.Abs(s.WireA[i])
		rest := math.Max(0, amps-on[i])
		heat[i] = math.Min(amps, math.Hypot(rest+mean[i], swing[i]))
	}
	return heat
}

package size

import (
	"cmp"
	"slices"

	"legwork/harness/model"
)

// bank is a battery, or a row of them in series, by the two posts at its ends.
type bank struct {
	plus, minus *model.Terminal
	ohm         float64 // inside, warm
}

// banks lists the banks of a model, by the name of the device that their
// positive post belongs to, so that the order of the draft is no matter.
func banks(m *model.Model) []bank {
	var list []bank
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			b := bank{plus: d.Terminal(s.Plus), minus: d.Terminal(s.Minus)}
			if !s.Battery || b.plus == nil || b.minus == nil {
				continue
			}
			b.ohm = s.Ohm
			if s.RatedV > 0 {
				b.ohm *= m.SystemV / s.RatedV // of as many in series as give the system's volts
			}
			list = append(list, b)
		}
	}
	slices.SortFunc(list, func(a, b bank) int { return cmp.Compare(a.plus.Device.Name, b.plus.Device.Name) })
	return rows(m, list)
}

// rows joins batteries in series: from each positive post that is no other
// battery's negative one, down to the negative post that is no other's
// positive one.
func rows(m *model.Model, list []bank) []bank {
	at := fusedNets(m)
	above := map[int]int{} // by net of a positive post: the battery under it
	low := map[int]bool{}
	for i, b := range slices.Backward(list) {
		above[at(b.plus)], low[at(b.minus)] = i, true
	}
	var out []bank
	for _, b := range list {
		if low[at(b.plus)] {
			continue
		}
		for range list { // no further than there are batteries, should they stand in a ring
			under, ok := above[at(b.minus)]
			if !ok {
				break
			}
			b.minus = list[under].minus
		}
		out = append(out, b)
	}
	return out
}

// fusedNets tells which terminals lie on one net, with those that a fuse joins
// taken as one: the link of a row may have a fuse.
func fusedNets(m *model.Model) func(t *model.Terminal) int {
	nets := m.Nets()
	u := newUnion(len(nets.Members))
	for _, d := range m.Devices {
		for _, f := range d.Protects() {
			if a, b := d.Terminal(f.In), d.Terminal(f.Out); a != nil && b != nil {
				u.join(nets.Of[a.ID], nets.Of[b.ID])
			}
		}
	}
	return func(t *model.Terminal) int { return u.find(nets.Of[t.ID]) }
}

// sameVolts is how far two ways may differ by the order of solving alone.
const sameVolts = 1e-6

// waysTo gives the ways between a load and the bank that feeds it in a step;
// ok is false where no bank does. Where several lead to it that is the nearest
// one: with the least volts along the way out and back, whichever sense the
// currents have. A bank farther up loses those of the link between besides,
// and so does one farther down, which the link charges. Of two that are as
// near it is the first by name.
func (c *chooser) waysTo(step int, plus, minus *model.Terminal) (best *ways, ok bool) {
	if plus == nil || len(c.banks) == 0 {
		return nil, false
	}
	if len(c.banks) == 1 {
		best = c.waysIn(step, 0)
		return best, best.out.leadsTo(c.tracer.point[plus.ID])
	}
	nearest := 0.0
	for i := range c.banks {
		w := c.waysIn(step, i)
		if !w.out.leadsTo(c.tracer.point[plus.ID]) || minus == nil || !w.back.reaches(c.tracer.point[minus.ID]) {
			continue
		}
		volts := c.voltsAlong(&w.out, plus) + c.voltsAlong(&w.back, minus)
		if best == nil || volts < nearest-sameVolts {
			best, nearest = w, volts
		}
	}
	return best, best != nil
}

// voltsAlong adds up the volts along a tree's way to a terminal, without their sense.
func (c *chooser) voltsAlong(tr *tree, to *model.Terminal) float64 {
	sum := 0.0
	tr.walk(c.tracer.point[to.ID], func(e *edge, _ int) {
		a, b := c.sides(e)
		if volts, ok := across(tr.s, a, b); ok {
			sum += max(volts, -volts)
		}
	})
	return sum
}

package size

import (
	"context"
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// finish plays the other cases with the sizes and writes down every wire.
func (c *chooser) finish(ctx context.Context) (*Sizes, error) {
	wires := c.conductors(nil, c.now)
	c.last = true // the other cases are played once each
	cold, err := c.play(ctx, wires, solve.Case{Corner: part.ColdStart, Grade: part.Sure, Start: c.start})
	if err != nil {
		return nil, err
	}
	usual, err := c.play(ctx, wires, solve.Case{Corner: part.HotSoak, Grade: part.Nominal})
	if err != nil {
		return nil, err
	}
	c.plan = nil // nothing more is played, and it is large
	s := &Sizes{Hot: c.history, Cold: cold, Usual: usual, Guards: c.guards, Backs: c.backs, Shorts: slices.Concat(c.dead.diodes, c.dead.bare)}
	for _, f := range c.fuses {
		f.LoadA, f.At = c.fuseLoad(c.history, f.Device, f.Index)
		s.Fuses = append(s.Fuses, f)
	}
	s.Wires = make([]Wire, len(c.m.Wires))
	for i, w := range c.m.Wires {
		s.Wires[i] = c.wire(w, wires[i])
	}
	s.drops, s.Charges = c.pairedDrops(usual), c.charges()
	s.Pulls = c.pulled
	s.Findings = append(s.Findings, c.history.Findings...)
	return s, nil
}

// wire writes down one wire with the judgement of all its floors.
func (c *chooser) wire(w *model.Wire, k solve.Conductor) Wire {
	ch := &c.chains[c.of[w.ID]]
	asked := c.caseOf(w, c.cur.heatA[w.ID], c.cur.loaded[w.ID])
	asked.ShortA, asked.MaxOhm = c.shorts[w.ID], c.spares[w.ID]
	_, given := givenSize(w)
	out := Wire{
		Wire: w, Conductor: k, Chosen: !given, Chain: c.of[w.ID],
		DesignA: c.cur.peakA[w.ID], HeatA: c.cur.heatA[w.ID], At: c.cur.at[w.ID], Loaded: c.cur.loaded[w.ID],
		PullA:     c.pullA[w.ID],
		Judgement: c.now(w).Judge(&asked),
	}
	out.DropV = out.DesignA * k.Ohm
	if out.At == Charging {
		out.DropV = out.DesignA * c.hotOhm(w, c.now(w))
	}
	switch {
	case given:
		out.Governs = "given"
	case ch.rung > ch.floor:
		out.Governs = "drop"
	default:
		out.Governs = ch.by
	}
	return out
}

// pairedDrops gives the loss of every load with sure figures, and beside it
// what the nominal figures make of the same path.
func (c *chooser) pairedDrops(usual *solve.History) []Path {
	list := slices.Collect(c.drops())
	for i := range list {
		p := &list[i]
		if s := usual.States[p.Step.ID]; judgedIn(s, p.Device, p.Draw, p.Device.Draws()[p.Draw]) {
			if also, ok := c.dropIn(s, *p); ok {
				p.UsualV = also.DropV
			}
		}
		for _, x := range p.drivers {
			volts, _ := across(usual.States[p.Step.ID], x[0], x[1])
			p.UsualV -= math.Abs(volts)
		}
		p.Shares = c.shares(*p)
		if p.ExtraA > 0 {
			p.UsualV += p.DropV - p.steadyV
		}
		c.flows = c.flows[:0]
		for _, f := range c.lossOf(*p).flows {
			p.Wires = append(p.Wires, f.wire)
		}
		c.unmet(p)
		p.ways = nil // of the sizing, not of its outcome
	}
	return list
}

// Drops gives the loss of every judged load in every judged step, in model
// and step order.
func (s *Sizes) Drops() []Path { return s.drops }

// WorstDrop gives the path of a load with the least margin; ok is false where
// the load is never judged.
func (s *Sizes) WorstDrop(d *model.Device, draw int) (worst Path, ok bool) {
	margin := math.Inf(1)
	for _, p := range s.drops {
		if p.Device == d && p.Draw == draw && p.LimitV-p.DropV < margin {
			margin, worst, ok = p.LimitV-p.DropV, p, true
		}
	}
	return worst, ok
}

// peakOf gives the largest steady current of a wire, charging included.
func (c *chooser) peakOf(w *model.Wire) float64 {
	peak := c.charge.through(w)
	for _, s := range c.history.States {
		if steady(s) {
			peak = math.Max(peak, math.Abs(s.WireA[w.ID]))
		}
	}
	return peak
}

// Through gives the tightest judged path of each load whose current passes a
// wire, in model order.
func (s *Sizes) Through(w *model.Wire) []Path {
	var list []Path
	for _, p := range s.drops {
		if !slices.Contains(p.Wires, w) {
			continue
		}
		last := len(list) - 1
		if last >= 0 && list[last].Device == p.Device && list[last].Draw == p.Draw {
			if p.LimitV-p.DropV < list[last].LimitV-list[last].DropV {
				list[last] = p
			}
			continue
		}
		list = append(list, p)
	}
	return list
}

package size

import (
	"context"
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// judgedFrom is the share of its limit from which a loss is kept in the
// division of drop; lesser ones can't come to matter through one chain.
const judgedFrom = 0.2

// settle divides the drop, plays the steps with the sizes, and goes on until
// nothing fails that a thicker wire would mend.
func (c *chooser) settle(ctx context.Context) error {
	for range rounds {
		h, err := c.play(ctx, c.conductors(c.now), solve.Case{Corner: part.HotSoak, Grade: part.Sure})
		if err != nil {
			return err
		}
		c.history = h
		c.shorts = c.shortCurrents()
		grown := c.raiseFloors()
		d := c.divide(h)
		before := c.rungs()
		d.grow()
		if !grown && slices.Equal(before, c.rungs()) {
			c.spares = c.spareOhms(d)
			return nil
		}
		d.trim()
	}
	c.spares = c.spareOhms(c.divide(c.history))
	return nil
}

func (c *chooser) rungs() []int {
	list := make([]int, len(c.chains))
	for i := range c.chains {
		list[i] = c.chains[i].rung
	}
	return list
}

// raiseFloors judges every open wire with the currents of the last play and
// lifts the floors that no longer hold; it reports whether a chain grew.
func (c *chooser) raiseFloors() bool {
	c.cur = demand(c.m, c.r, c.history, c.base)
	grown := false
	for i := range c.chains {
		ch := &c.chains[i]
		for _, w := range ch.wires {
			if _, given := givenSize(w); given {
				continue
			}
			k, _ := c.caseOf(w, c.cur.heatA[w.ID], c.cur.loaded[w.ID])
			k.ShortA = c.shorts[w.ID]
			ch.floor = max(ch.floor, c.lowest(k, w))
		}
		if ch.floor > ch.rung {
			ch.rung, grown = ch.floor, true
		}
	}
	return grown
}

// divide sets up the division of drop from a play. The chains of the divider
// are the chooser's own: growing them there grows them here.
func (c *chooser) divide(h *solve.History) *divider {
	d := &divider{of: c.of, chains: c.chains, onPath: make([][]int, len(c.chains))}
	point, ways := points(c.m), map[*solve.State][2]tree{}
	for _, p := range drops(c.m, c.p, h) {
		if p.DropV >= judgedFrom*p.LimitV {
			d.add(c.lossOf(p, point, c.waysIn(ways, point, p.Step.ID)))
		}
	}
	return d
}

// waysIn gives the widest ways out of and back into the battery in a step of
// the current history; they are found once and kept.
func (c *chooser) waysIn(kept map[*solve.State][2]tree, point []int, step int) [2]tree {
	s := c.history.States[step]
	if w, ok := kept[s]; ok {
		return w
	}
	t, p := newTracer(c.m, point, s), batteryPosts(c.m)
	kept[s] = [2]tree{t.from(p.plus), t.from(p.minus)}
	return kept[s]
}

// lossOf follows a load's current from the battery to the load and back.
func (c *chooser) lossOf(p Path, point []int, ways [2]tree) *loss {
	w := p.Device.Kind.Draws(p.Device.Device)[p.Draw]
	l := &loss{dropV: p.DropV, limitV: p.LimitV}
	l.flows = ways[0].way(point[pinOrMetal(c.m, p.Device, w.Plus).ID], l.flows)
	l.flows = ways[1].way(point[pinOrMetal(c.m, p.Device, w.Minus).ID], l.flows)
	return l
}

func (d *divider) add(l *loss) {
	i := len(d.losses)
	d.losses = append(d.losses, l)
	for _, f := range l.flows {
		c := d.of[f.wire.ID]
		if on := d.onPath[c]; len(on) == 0 || on[len(on)-1] != i {
			d.onPath[c] = append(on, i)
		}
	}
}

// spareOhms gives the resistance that each wire may have before the first
// loss it lies on passes its limit, by wire ID; 0 where no loss is judged.
func (c *chooser) spareOhms(d *divider) []float64 {
	list := make([]float64, len(c.m.Wires))
	for _, l := range d.losses {
		for _, f := range l.flows {
			ohm := c.ohmAt(f.wire, c.chains[c.of[f.wire.ID]].rung)
			allowed := math.Max(ohm-l.excess()/f.amps, math.SmallestNonzeroFloat64)
			if at := &list[f.wire.ID]; *at == 0 || allowed < *at {
				*at = allowed
			}
		}
	}
	return list
}

// shortCurrents gives the least current of a short to metal at the far end of
// each wire, by wire ID; 0 where no source reaches it directly.
func (c *chooser) shortCurrents() []float64 {
	list := make([]float64, len(c.m.Wires))
	s := newShorts(c.m, c.conductors(c.now), c.rated)
	for _, w := range c.m.Wires {
		if w.Role != model.Strap {
			list[w.ID] = s.least(w)
		}
	}
	return list
}

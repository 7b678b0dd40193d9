package size

import (
	"context"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// judgedFrom is the share of its limit from which a loss is kept in the
// division of drop; lesser ones can't come to matter through one chain.
const judgedFrom = 0.2

// settle divides the drop, plays the steps with the sizes, and goes on until
// nothing fails that a thicker wire would mend. Then it takes back, a round at
// a time, the growth that turned out needless; a chain that has to grow again
// after that is left alone, so that it ends.
func (c *chooser) settle(ctx context.Context) error {
	for round := 0; round < rounds; round++ {
		before := c.rungs()
		d, err := c.replay(ctx)
		if err != nil {
			return err
		}
		d.grow()
		if !slices.Equal(before, c.rungs()) {
			c.lock(before, round)
			continue
		}
		d.trim()
		if slices.Equal(before, c.rungs()) {
			break
		}
	}
	return c.confirm(ctx)
}

// confirm plays the sizes once more; what still fails may only grow.
func (c *chooser) confirm(ctx context.Context) error {
	for {
		before := c.rungs()
		d, err := c.replay(ctx)
		if err != nil {
			return err
		}
		d.grow()
		if slices.Equal(before, c.rungs()) {
			c.spares = c.spareOhms(d)
			return nil
		}
	}
}

// replay plays the steps with the sizes as they stand, lifts the floors that
// no longer hold and sets up the division of drop.
func (c *chooser) replay(ctx context.Context) (*divider, error) {
	h, err := c.play(ctx, c.conductors(c.now), solve.Case{Corner: part.HotSoak, Grade: part.Sure})
	if err != nil {
		return nil, err
	}
	c.history = h
	c.shorts = c.shortCurrents()
	c.raiseFloors()
	return c.divide(h), nil
}

// lock keeps chains that had to grow after the first rounds from being
// trimmed again.
func (c *chooser) lock(before []int, round int) {
	if round < rounds/2 {
		return
	}
	for i := range c.chains {
		if c.chains[i].rung > before[i] {
			c.chains[i].least = c.chains[i].rung
		}
	}
}

func (c *chooser) rungs() []int {
	list := make([]int, len(c.chains))
	for i := range c.chains {
		list[i] = c.chains[i].rung
	}
	return list
}

// raiseFloors judges every open wire with the currents of the last play and
// sets the floors anew; chains under their floor grow to it.
func (c *chooser) raiseFloors() {
	c.cur = demand(c.m, c.r, c.history, c.base)
	for i := range c.chains {
		ch := &c.chains[i]
		ch.floor, ch.by = 0, ""
		for _, w := range ch.wires {
			if _, given := givenSize(w); given {
				continue
			}
			c.raise(ch, w, c.cur.heatA[w.ID], c.shorts[w.ID])
		}
		ch.rung = max(ch.rung, ch.floor)
	}
}

// divide sets up the division of drop from a play. The chains of the divider
// are the chooser's own: growing them there grows them here.
func (c *chooser) divide(h *solve.History) *divider {
	d := &divider{of: c.of, chains: c.chains, onPath: make([][]int, len(c.chains))}
	for _, p := range c.drops(h) {
		if p.DropV < judgedFrom*p.LimitV {
			continue
		}
		if l := c.lossOf(p); !d.hopeless(l) {
			d.add(l)
		}
	}
	return d
}

// waysIn gives the widest ways out of and back into the battery in a step of
// the current history; they are found once and kept.
func (c *chooser) waysIn(step int) [2]tree {
	s := c.history.States[step]
	if w, ok := c.ways[s]; ok {
		return w
	}
	if c.point == nil {
		c.point = points(c.m)
	}
	t, p := newTracer(c.m, c.point, s), batteryPosts(c.m)
	c.ways[s] = [2]tree{t.from(p.plus), t.from(p.minus)}
	return c.ways[s]
}

// lossOf follows a load's current from the battery to the load and back.
func (c *chooser) lossOf(p Path) *loss {
	plus, minus := c.endsOf(p)
	ways := c.waysIn(p.Step.ID)
	l := &loss{dropV: p.DropV, limitV: p.LimitV}
	l.flows = ways[0].way(c.point[plus.ID], l.flows)
	l.flows = ways[1].way(c.point[minus.ID], l.flows)
	return l
}

func (c *chooser) endsOf(p Path) (plus, minus *model.Terminal) {
	w := p.Device.Draws()[p.Draw]
	return pinOrMetal(c.m, p.Device, w.Plus), pinOrMetal(c.m, p.Device, w.Minus)
}

// drops gives the judged paths of a history whose load the battery feeds
// itself; a sensor on a controller's reference volts has no drop of its own.
func (c *chooser) drops(h *solve.History) []Path {
	var list []Path
	for _, p := range drops(c.m, c.p, h) {
		plus, _ := c.endsOf(p)
		if ways := c.waysIn(p.Step.ID); ways[0].leadsTo(c.point[plus.ID]) {
			list = append(list, p)
		}
	}
	return list
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
			allowed := ohm - l.excess()/f.amps
			if at := &list[f.wire.ID]; allowed > 0 && (*at == 0 || allowed < *at) {
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

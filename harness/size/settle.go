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

// settle grows what the design currents say would fail. Then it plays the
// steps with the sizes, grows what does fail, takes back the growth that
// turned out needless, makes the rest lighter, and goes on until a round
// changes nothing. A chain that
// has to grow again in a late round is left alone after that, so that it ends.
func (c *chooser) settle(ctx context.Context) error {
	c.divide().grow()
	for round := 0; round < rounds; round++ {
		before := c.rungs()
		d, err := c.replay(ctx)
		if err != nil {
			return err
		}
		d.grow()
		c.lock(before, round)
		d.trim()
		if round < rounds/4 {
			d.polish(0) // early, as the rounds that follow play it anyway
		}
		if slices.Equal(before, c.rungs()) && c.steadied() {
			if d, err = c.polish(ctx, d); err != nil {
				return err
			}
			return c.refine(ctx, d)
		}
	}
	return c.confirm(ctx)
}

// steadied reports whether the currents of the last play leave the wires as
// warm as they were taken to be: no resistance is off by 0.01 %, which is a
// few microvolts in a drop that matters.
func (c *chooser) steadied() bool {
	for _, w := range c.m.Wires {
		if now := c.ohmAt(w, c.chains[c.of[w.ID]].rung); math.Abs(now-c.played[w.ID].Ohm) > 1e-4*now {
			return false
		}
	}
	return true
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
			return c.refine(ctx, d)
		}
	}
}

// replay plays the steps with the sizes as they stand, lifts the floors that
// no longer hold and sets up the division of drop.
func (c *chooser) replay(ctx context.Context) (*divider, error) {
	c.played = c.conductors(c.played, c.now)
	h, err := c.play(ctx, c.played, solve.Case{Corner: part.HotSoak, Grade: part.Sure, After: c.before()})
	if err != nil {
		return nil, err
	}
	c.history = h
	if err := c.recharge(ctx); err != nil {
		return nil, err
	}
	c.repull()
	c.shorts = c.shortCurrents()
	c.raiseFloors()
	return c.divide(), nil
}

// before is the history that a round may go by: what sizing asks of a step,
// most relays tell by where they come to rest.
func (c *chooser) before() *solve.History {
	if c.thorough {
		return nil
	}
	return c.history
}

// follow plays the sizes once more, every relay followed move by move. It is
// false if one of them comes to rest elsewhere than it did in the rounds.
func (c *chooser) follow(ctx context.Context) (bool, error) {
	if c.thorough {
		return true, nil
	}
	h, err := c.play(ctx, c.played, solve.Case{Corner: part.HotSoak, Grade: part.Sure})
	if err != nil {
		return false, err
	}
	same := h.Agrees(c.history)
	c.history = h
	return same, nil
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
	c.cur = c.demand()
	for i := range c.chains {
		ch := &c.chains[i]
		ch.floor, ch.by = 0, ""
		for _, w := range ch.wires {
			if _, given := givenSize(w); given {
				continue
			}
			c.raise(ch, w, c.cur.heatA[w.ID], c.shorts[w.ID])
		}
		c.fitFloor(ch)
		ch.rung = max(ch.rung, ch.floor)
	}
}

// divide sets up the division of drop from the last play, with what has
// changed in the wires since then. The chains of the divider are the chooser's
// own: growing them there grows them here.
func (c *chooser) divide() *divider {
	d := &divider{of: c.of, chains: c.chains, onPath: make([][]int, len(c.chains))}
	c.flows, c.stuck = c.flows[:0], map[judged]bool{}
	for i := range c.chains {
		c.chains[i].pays = 0
	}
	for p := range c.drops() {
		if !c.enter(d, c.lossOf(p)) {
			c.stuck[judged{p.Device, p.Draw, p.Step.ID}] = true
		}
	}
	for _, l := range c.otherLosses() {
		c.enter(d, l)
	}
	d.payOff()
	return d
}

// enter files a loss with what has changed in its wires since the last play;
// met is false where no size brings it within its limit.
func (c *chooser) enter(d *divider, l *loss) (met bool) {
	for _, f := range l.flows {
		l.dropV += f.amps * (c.ohmAt(f.wire, c.chains[c.of[f.wire.ID]].rung) - c.played[f.wire.ID].Ohm)
	}
	if l.dropV < judgedFrom*l.limitV {
		return true
	}
	if d.hopeless(l) {
		d.pay(l, c.leastPaidV())
		return false
	}
	d.add(l)
	return true
}

// otherLosses lists the losses that no step plays to its end: those of charging
// a flat battery, and of a solenoid that pulls in.
func (c *chooser) otherLosses() []*loss {
	var list []*loss
	for _, x := range c.charges() {
		list = append(list, x.loss())
	}
	for i := range c.pulled {
		list = append(list, c.pulled[i].loss())
	}
	return list
}

// shortCurrents gives the least current of a short to metal at the far end of
// each wire, by wire ID; 0 where no source reaches it directly. Of several
// banks the one that gives the most is taken: what others add is not sure.
func (c *chooser) shortCurrents() []float64 {
	list := make([]float64, len(c.m.Wires))
	for _, s := range c.short {
		s.fit(c.played)
		for _, w := range c.m.Wires {
			if w.Role != model.Strap {
				list[w.ID] = max(list[w.ID], s.least(w))
			}
		}
	}
	return list
}

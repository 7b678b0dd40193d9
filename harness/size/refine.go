package size

import (
	"context"
	"slices"

	"legwork/harness/solve"
)

// tieShare is how much less than predicted a thinner chain may add to a loss
// for it to be tried out. The prediction leaves currents as they are, while a
// lamp that loses a share of its volts draws less by that share, and parallel
// grounds share their current anew: half as much again.
func (c *chooser) tieShare(l *loss) float64 { return 1.5 * l.limitV / c.m.SystemV }

// warmPlays is how often the steps are played at most for the copper to warm.
const warmPlays = 4

// refine tries out, by playing the steps, whether chains that only just need
// their size do without it. Trimming predicts; here nothing is thinner than it
// was found to be in truth. Chains that share no loss are tried together.
func (c *chooser) refine(ctx context.Context, d *divider) error {
	proved := make([]bool, len(c.chains))
	for round := 0; ; {
		if batch := c.ties(d, proved); len(batch) > 0 {
			next, err := c.attempt(ctx, d, batch, proved)
			if err != nil {
				return err
			}
			d = next
			continue
		}
		next, lighter, err := c.swap(ctx, d)
		if err != nil {
			return err
		}
		if d = next; !lighter || round == swapRounds {
			c.spares = c.spareOhms(d)
			return nil
		}
		round++
		clear(proved)
	}
}

// ties picks chains to try, heaviest first, no two of them on one loss.
func (c *chooser) ties(d *divider, proved []bool) []trial {
	taken := make([]bool, len(d.losses))
	var batch []trial
	for _, i := range d.heaviest() {
		ch := &c.chains[i]
		if proved[i] || ch.fixed || ch.rung <= max(ch.floor, ch.pays) || !d.nearlySpare(i, c.tieShare) {
			continue
		}
		if t := (trial{{i, -1}}); d.take(t, taken) {
			batch = append(batch, t)
		}
	}
	return batch
}

// attempt changes the chains of a batch and plays the steps. Those with a loss
// over its limit get their size back, all of them where a loss of others is
// over; what is left has been played.
func (c *chooser) attempt(ctx context.Context, d *divider, batch []trial, proved []bool) (*divider, error) {
	before, stuck, was := c.rungs(), len(c.stuck), c.keep()
	for _, t := range batch {
		for _, x := range t {
			c.chains[x.chain].rung += x.by
		}
	}
	for len(batch) > 0 {
		tried := c.rungs()
		next, err := c.warmed(ctx)
		if err != nil {
			return nil, err
		}
		failed := c.failed(next, batch, !slices.Equal(tried, c.rungs()) || len(c.stuck) > stuck)
		if len(failed) == 0 {
			return next, nil
		}
		for i := range c.chains {
			c.chains[i].rung = tried[i]
		}
		for _, i := range failed {
			for _, x := range batch[i] {
				c.chains[x.chain].rung, proved[x.chain] = before[x.chain], true
			}
			batch[i] = nil
		}
		batch = slices.DeleteFunc(batch, func(t trial) bool { return t == nil })
	}
	was.restore(c)
	return d, nil
}

// kept is what a play leaves behind in a chooser.
type kept struct {
	c      chooser
	played []solve.Conductor
	chains []chain
	charge charging
}

// keep notes the outcome of the last play; the next one gets room of its own
// for what it would overwrite.
func (c *chooser) keep() *kept {
	k := &kept{c: *c, played: slices.Clone(c.played), chains: slices.Clone(c.chains)}
	if c.charge != nil {
		k.charge = *c.charge
	}
	c.flows = nil
	return k
}

// restore puts the outcome back.
func (k *kept) restore(c *chooser) {
	c.history, c.cur, c.shorts, c.stuck, c.flows = k.c.history, k.c.cur, k.c.shorts, k.c.stuck, k.c.flows
	c.pulled, c.pullA, c.played = k.c.pulled, k.c.pullA, k.played
	copy(c.chains, k.chains)
	if c.charge != nil {
		*c.charge = k.charge
	}
}

// failed lists the trials of a batch with a loss over its limit; all where
// such a loss lies on none of them, or where all are said to.
func (c *chooser) failed(d *divider, batch []trial, all bool) (list []int) {
	over := make([]bool, len(d.losses))
	for i, l := range d.losses {
		over[i] = l.excess() > 0
	}
	others := slices.Clone(over)
	for i, t := range batch {
		fails := all
		for _, x := range t {
			for _, l := range d.onPath[x.chain] {
				fails, others[l] = fails || over[l], false
			}
		}
		if fails {
			list = append(list, i)
		}
	}
	if !all && slices.Contains(others, true) {
		return c.failed(d, batch, true)
	}
	return list
}

// warmed plays the steps until the copper is as warm as it was taken to be.
func (c *chooser) warmed(ctx context.Context) (*divider, error) {
	for i := 1; ; i++ {
		before := c.rungs()
		d, err := c.replay(ctx)
		if err != nil || i == warmPlays || c.steadied() || !slices.Equal(before, c.rungs()) {
			return d, err
		}
	}
}

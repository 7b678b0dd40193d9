package size

import (
	"cmp"
	"context"
	"math"
	"slices"
)

const (
	// polishPasses bounds how often all chains are gone through.
	polishPasses = 4
	// hubLosses is from how many losses on a chain are tried in no patch: its
	// size is a matter of all of them, which a few chains cannot settle.
	hubLosses = 256
)

// polish looks for less copper than greed found: it takes a few chains that
// share losses, leaves all the others, and finds their lightest sizes. It
// keeps off every limit by a share of it where that limit was not nearer
// before. It reports whether anything changed.
func (d *divider) polish(margin float64) bool {
	p := &patch{d: d, margin: margin}
	changed := false
	for range polishPasses {
		better := false
		for _, c := range d.heaviest() {
			if p.around(c) && p.solve() {
				better = true
			}
		}
		if !better {
			break
		}
		changed = true
	}
	return changed
}

// copper is what the open chains weigh, in grams.
func (d *divider) copper() (grams float64) {
	for c := range d.chains {
		if ch := &d.chains[c]; !ch.fixed {
			grams += ch.grams(ch.rung)
		}
	}
	return grams
}

// lost lists the volts of all losses.
func (d *divider) lost() []float64 {
	list := make([]float64, len(d.losses))
	for i, l := range d.losses {
		list[i] = l.dropV
	}
	return list
}

// polishMargins are the shares of a limit that polishing keeps off it: none at
// first; where playing shows a loss over its limit, as a load that gets more
// volts draws more, a little.
var polishMargins = [...]float64{0, 0.005}

// polish makes the division lighter and plays the steps with it. What then
// fails has to grow; if that costs more than was saved, all is as before.
func (c *chooser) polish(ctx context.Context, d *divider) (*divider, error) {
	for _, margin := range polishMargins {
		was, lost, stuck, grams := c.keep(), d.lost(), len(c.stuck), d.copper()
		if !d.polish(margin) {
			c.flows = was.c.flows
			return d, nil
		}
		next, err := c.proved(ctx)
		if err != nil {
			return nil, err
		}
		if next != nil && len(c.stuck) <= stuck && next.copper() < grams {
			return next, nil
		}
		was.restore(c)
		for i, l := range d.losses {
			l.dropV = lost[i]
		}
	}
	return d, nil
}

// proved plays the steps, and grows what fails, until nothing does and the
// copper is as warm as it was taken to be; nil where that does not come about
// soon.
func (c *chooser) proved(ctx context.Context) (*divider, error) {
	for range rounds {
		before := c.rungs()
		d, err := c.replay(ctx)
		if err != nil {
			return nil, err
		}
		d.grow()
		if slices.Equal(before, c.rungs()) && c.steadied() {
			return d, nil
		}
		d.trim()
	}
	return nil, nil
}

// neighbors lists a chain, the open ones that share a loss with it, those that
// share the most first, and where there is room those that share one with
// these: at most as many as a patch has.
func (d *divider) neighbors(c int, room []int) []int {
	list := append(room[:0], c)
	for i := 0; i < len(list) && len(list) < patchChains; i++ {
		list = d.sharing(list[i], list)
	}
	return list[:min(len(list), patchChains)]
}

// sharing adds the chains that share a loss with one to a list that lacks them.
func (d *divider) sharing(c int, list []int) []int {
	if d.shared == nil {
		d.shared = make([]int32, len(d.chains))
	}
	from, shared := len(list), d.shared
	for _, o := range list {
		shared[o] = math.MinInt32
	}
	for _, i := range d.onPath[c] {
		for _, f := range d.losses[i].flows {
			if o := d.of[f.wire.ID]; !d.chains[o].fixed && len(d.onPath[o]) <= hubLosses {
				if shared[o]++; shared[o] == 1 {
					list = append(list, o)
				}
			}
		}
	}
	slices.SortFunc(list[from:], func(a, b int) int { return cmp.Or(int(shared[b]-shared[a]), a-b) })
	for _, o := range list {
		shared[o] = 0
	}
	return list
}

// low is the thinnest size that a chain may have.
func (ch *chain) low() int { return max(ch.floor, ch.least, ch.pays) }

// pays reports whether all that the chains can lose outweighs the least that
// one of them gains.
func (p *patch) pays() bool {
	saved, least := 0.0, math.Inf(1)
	for _, c := range p.chains {
		ch := &p.d.chains[c]
		now := ch.grams(ch.rung)
		saved += now - ch.grams(min(ch.low(), ch.rung))
		if ch.rung < ch.top {
			least = min(least, ch.grams(ch.rung+1)-now)
		}
	}
	return saved > least
}

// mayThin reports whether the first chain can be a size thinner with all the
// others at their thickest. What is lighter has one that is thinner, and a
// patch about each one is tried.
func (p *patch) mayThin() bool {
	d, c := p.d, p.chains[0]
	if d.chains[c].rung <= d.chains[c].low() {
		return false
	}
	for _, i := range d.onPath[c] {
		l := d.losses[i]
		over := l.dropV - d.saved(c, l, -1) - l.limitV*(1-min(p.margin, 0))
		for _, o := range p.chains[1:] {
			if over <= 0 {
				break
			}
			if ch := &d.chains[o]; ch.rung < ch.top {
				over -= d.saved(o, l, ch.top-ch.rung)
			}
		}
		if over > 0 {
			return false
		}
	}
	return true
}

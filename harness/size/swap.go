package size

import (
	"context"
	"slices"
)

const (
	// swapWires is the largest harness in which swaps are tried: each costs a
	// play of its own, and what they save is a few parts in a thousand.
	swapWires = 2000
	// swapRounds bounds how often swaps are looked for.
	swapRounds = 4
)

// swapShares are the shares of a limit by which a loss may be predicted to
// pass it for a swap to be tried. The prediction leaves currents as they are;
// a lamp that loses a share of its volts draws less by up to that share, of
// which a swap changes a tenth or so.
var swapShares = [...]float64{0.01, 0.005, 0.0025}

// trial is what a few chains would change by, to be played.
type trial []change

type change struct{ chain, by int }

// swap tries, by playing the steps, to make a few chains lighter together where
// the prediction only just speaks against it. It reports whether it did.
func (c *chooser) swap(ctx context.Context, d *divider) (*divider, bool, error) {
	if len(c.m.Wires) > swapWires {
		return d, false, nil
	}
	for _, share := range swapShares {
		batch := d.swaps(share)
		if len(batch) == 0 {
			continue
		}
		next, err := c.attempt(ctx, d, batch, make([]bool, len(c.chains)))
		if err != nil || next != d {
			return next, true, err
		}
	}
	return d, false, nil
}

// swaps picks what to try, the heaviest chain first, no two on one loss.
func (d *divider) swaps(share float64) []trial {
	p := &patch{d: d, margin: -share}
	taken := make([]bool, len(d.losses))
	var batch []trial
	for _, c := range d.heaviest() {
		if !p.around(c) {
			continue
		}
		if t := p.find(); len(t) > 0 && d.take(t, taken) {
			batch = append(batch, t)
		}
	}
	return batch
}

// take marks the losses of a trial as taken; ok is false where one was.
func (d *divider) take(t trial, taken []bool) (ok bool) {
	for _, x := range t {
		if slices.ContainsFunc(d.onPath[x.chain], func(l int) bool { return taken[l] }) {
			return false
		}
	}
	for _, x := range t {
		for _, l := range d.onPath[x.chain] {
			taken[l] = true
		}
	}
	return true
}

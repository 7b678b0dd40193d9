package size

import (
	"context"
	"slices"

	"legwork/harness/model"
	"legwork/harness/solve"
)

// Short is a way from a source to ground without a load on it, in the step in
// which most current takes it. One through a diode is open in all states of
// Sizes, so that its current hides no other: everything is worked out as if
// the diode was not there.
type Short struct {
	solve.Short
	Step *model.Step
}

// dead is what was found of shorts.
type dead struct {
	open   []*model.Device // whose diodes make a short
	diodes []Short
	bare   []Short // without a diode
}

// playOpen plays the steps, notes the shorts, and plays again without the
// diodes that make some of them until no diode makes one.
func (c *chooser) playOpen(ctx context.Context, k solve.Case) (*solve.History, error) {
	for {
		h, err := c.play(ctx, c.played, k)
		if err != nil || !c.dead.note(h) {
			return h, err
		}
	}
}

// note keeps the shorts of a history; more is true where a diode makes one
// that was not open yet.
func (d *dead) note(h *solve.History) (more bool) {
	d.bare = nil
	for _, s := range h.States {
		for _, x := range s.Shorts {
			found := Short{Short: x, Step: s.Step}
			if x.Diode == nil {
				d.bare = worse(d.bare, found)
				continue
			}
			d.diodes = worse(d.diodes, found)
			if !slices.Contains(d.open, x.Diode) {
				d.open, more = append(d.open, x.Diode), true
			}
		}
	}
	return more
}

// plainly is how much more a short has to draw in a later step to be told of
// there.
const plainly = 1.05

// worse keeps of each short the first of the steps in which it draws most.
func worse(list []Short, s Short) []Short {
	for i := range list {
		o := &list[i]
		if o.Diode == s.Diode && slices.Equal(o.Through, s.Through) {
			if s.Amps > plainly*o.Amps {
				*o = s
			}
			return list
		}
	}
	return append(list, s)
}

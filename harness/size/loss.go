package size

import (
	"legwork/harness/model"
	"legwork/harness/solve"
)

// ways are the widest ways out of and back into a bank in one state.
type ways struct {
	bank      bank
	state     *solve.State
	out, back tree
}

// waysIn gives the ways of a bank in a step of the current history; they are
// found once and kept until the next one.
func (c *chooser) waysIn(step, bank int) *ways {
	s, w := c.history.States[step], &c.ways[step*len(c.banks)+bank]
	if w.state != s {
		b := c.banks[bank]
		w.bank, w.state = b, s
		w.out, w.back = c.tracer.grow(w.out, s, b.plus), c.tracer.grow(w.back, s, b.minus)
	}
	return w
}

// lossOf follows a load's current from the battery to the load and back. Its
// flows lie in one list with those of others, until the next division.
func (c *chooser) lossOf(p Path) *loss {
	plus, minus := c.endsOf(p)
	from := len(c.flows)
	c.flows = p.ways.out.way(c.tracer.point[plus.ID], c.flows)
	c.flows = p.ways.back.way(c.tracer.point[minus.ID], c.flows)
	for i := from; i < len(c.flows); i++ {
		c.flows[i].amps += p.ExtraA
	}
	return &loss{dropV: p.DropV, limitV: p.LimitV, flows: c.flows[from:]}
}

func (c *chooser) endsOf(p Path) (plus, minus *model.Terminal) {
	w := p.Device.Draws()[p.Draw]
	return pinOrMetal(c.m, p.Device, w.Plus), pinOrMetal(c.m, p.Device, w.Minus)
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
			hot := c.hotOhm(f.wire, c.now(f.wire))
			if l.hot {
				ohm = hot
			}
			// A wire is judged as hot as it ever gets.
			allowed := (ohm - l.excess()/f.amps) * hot / ohm
			if at := &list[f.wire.ID]; allowed > 0 && (*at == 0 || allowed < *at) {
				*at = allowed
			}
		}
	}
	return list
}

package size

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
)

// floors puts every open chain on the lowest rung that heat, protection and
// handling admit. Drop comes afterwards.
func (c *chooser) floors() {
	c.base = make([]gauge.Size, len(c.m.Wires))
	for _, w := range c.m.Wires {
		peak := peakOf(c.history, w)
		c.base[w.ID] = c.ladder[c.lowest(c.caseOf(w, peak, 1))]
	}
	c.cur = demand(c.m, c.r, c.history, c.base)
	for i := range c.chains {
		for _, w := range c.chains[i].wires {
			c.raise(&c.chains[i], w, c.cur.heatA[w.ID], 0)
		}
		c.chains[i].rung = c.chains[i].floor
	}
}

// raise lifts the floor of a chain to what one of its wires asks for.
func (c *chooser) raise(ch *chain, w *model.Wire, heatA, shortA float64) {
	k, _ := c.caseOf(w, heatA, c.cur.loaded[w.ID])
	k.ShortA = shortA
	rung := min(c.lowest(k, w), ch.top)
	if rung < ch.floor || rung == ch.floor && ch.by != "" {
		return
	}
	ch.floor, ch.by = rung, "mechanical"
	if rung > 0 {
		ch.by = c.failing(k, w, rung-1)
	}
}

// failing names the first floor that a wire would fail on a rung.
func (c *chooser) failing(k gauge.WireCase, w *model.Wire, rung int) string {
	k.Size = c.ladder[rung]
	k.Family = familyOf(w, k.Size)
	for _, l := range gauge.JudgeWire(k).Limits {
		if !l.OK && !l.Hint {
			return l.Name
		}
	}
	return "mechanical"
}

// lowest gives the first rung of the ladder whose size passes, the top one
// where none does. The size and family of the case are filled in.
func (c *chooser) lowest(k gauge.WireCase, w *model.Wire) int {
	for i, s := range c.ladder {
		k.Size, k.Family = s, familyOf(w, s)
		if gauge.JudgeWire(k).OK {
			return i
		}
	}
	return len(c.ladder) - 1
}

// caseOf is what is asked of a wire, all but drop and short circuit.
func (c *chooser) caseOf(w *model.Wire, heatA float64, loaded int) (gauge.WireCase, *model.Wire) {
	path := c.r.Paths[w.ID]
	k := gauge.WireCase{
		Profile: c.p, AmbientC: path.HotC, Loaded: loaded, LengthM: path.LengthM,
		HeatA: heatA, Wet: path.Wet, Single: len(path.Legs) == 0,
	}
	c.guard(&k, w)
	return k, w
}

// guard fills in what protection asks of a wire.
func (c *chooser) guard(k *gauge.WireCase, w *model.Wire) {
	g := c.guards[w.ID]
	switch {
	case feedsStarter(w):
		k.Exempt = "starter cable"
	case math.IsInf(g.RatedA, 1):
		k.Exempt = "ahead of the first fuse"
	case g.Fuse != nil:
		k.FuseA, k.FuseName = g.RatedA, g.Fuse.Name
		k.FuseKind = g.Fuse.Protects()[g.Index].Family
	case g.RatedA > 0:
		k.FuseA, k.FuseName = g.RatedA, g.Source.Name
	}
}

// feedsStarter reports whether a wire lands on the terminal through which a
// starter motor takes its current.
func feedsStarter(w *model.Wire) bool {
	for _, t := range []*model.Terminal{w.From, w.To} {
		for _, d := range t.Device.Draws() {
			if d.Starter && d.Plus == t.Name {
				return true
			}
		}
	}
	return false
}

package size

import (
	"cmp"
	"math"

	"legwork/gauge"
	"legwork/harness/model"
)

// floors puts every open chain on the lowest rung that heat, protection and
// handling admit. Drop comes afterwards.
func (c *chooser) floors() {
	c.base = make([]*gauge.Rating, len(c.m.Wires))
	for _, w := range c.m.Wires {
		k := c.caseOf(w, c.peakOf(w), 1)
		c.base[w.ID] = c.thinnest(&k, w)
	}
	c.cur = c.demand()
	for i := range c.chains {
		for _, w := range c.chains[i].wires {
			if _, given := givenSize(w); given {
				continue
			}
			c.raise(&c.chains[i], w, c.cur.heatA[w.ID], 0)
		}
		c.fitFloor(&c.chains[i])
		c.chains[i].rung = c.chains[i].floor
	}
}

// thinnest gives the thinnest size of the ladder that passes, whatever the
// draft gives.
func (c *chooser) thinnest(k *gauge.WireCase, w *model.Wire) *gauge.Rating {
	if m := c.menu[w.ID]; len(m) > 1 {
		return m[lowest(m, k)]
	}
	m, _ := c.menus.of(w)
	return m[lowest(m, k)]
}

// raise lifts the floor of a chain to what one of its wires asks for.
func (c *chooser) raise(ch *chain, w *model.Wire, heatA, shortA float64) {
	k := c.caseOf(w, heatA, c.cur.loaded[w.ID])
	k.ShortA = shortA
	m := c.menu[w.ID]
	rung := min(lowest(m, &k), ch.most)
	if rung < ch.floor || rung == ch.floor && ch.by != "" {
		return
	}
	ch.floor, ch.by = rung, gauge.FloorMechanical
	if rung > 0 {
		ch.by = cmp.Or(m.at(rung-1).Fails(&k), gauge.FloorMechanical)
	}
}

// lowest gives the first rung of a menu whose size passes, the top one where
// none does.
func lowest(m menu, k *gauge.WireCase) int {
	for i, s := range m {
		if s.Fits(k) {
			return i
		}
	}
	return len(m) - 1
}

// caseOf is what is asked of a wire, all but drop and short circuit.
func (c *chooser) caseOf(w *model.Wire, heatA float64, loaded int) gauge.WireCase {
	path := c.r.Paths[w.ID]
	k := gauge.WireCase{
		Profile: c.p, AmbientC: path.HotC, Loaded: loaded, LengthM: path.LengthM,
		HeatA: heatA, Wet: path.Wet, Single: len(path.Legs) == 0,
	}
	c.guard(&k, w)
	c.pullHeat(&k, w)
	return k
}

// guard fills in what protection asks of a wire.
func (c *chooser) guard(k *gauge.WireCase, w *model.Wire) {
	g := c.guards[w.ID]
	switch {
	case c.starter[w.ID]:
		k.Exempt = "starter cable"
	case math.IsInf(g.RatedA, 1):
		k.Exempt = "ahead of the first fuse"
	case g.Fuse != nil:
		k.FuseA, k.FuseName = g.RatedA, g.Fuse.Name
		k.FuseKind = g.Fuse.Protects()[g.Index].Family
	case g.RatedA > 0:
		k.FuseA, k.FuseName, k.Source = g.RatedA, g.Source.Name, true
	case c.backs[w.ID].Fuse != nil:
		b := c.backs[w.ID]
		k.FuseA, k.FuseName, k.Behind = b.RatedA, b.Fuse.Name, b.Load.Name
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

package size

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/solve"
)

// rateFuses reads the load of every protective element and chooses a rating
// where the draft gives none.
func (c *chooser) rateFuses(h *solve.History) {
	c.rating = map[*model.Device][]float64{}
	c.fuses = nil
	for _, d := range c.m.Devices {
		for i, f := range d.Protects() {
			fuse := Fuse{Device: d, Index: i, RatedA: f.RatedA}
			fuse.LoadA, fuse.At = c.fuseLoad(h, d, i)
			switch {
			case f.RatedA > 0 || f.Wire.AreaMM2 > 0 && fuse.rateLink(c, f.Wire):
			case c.leadsNowhere(d, f.In) || c.leadsNowhere(d, f.Out):
				fuse.Chosen = true
				fuse.Why = []gauge.Step{{Text: "nothing fitted hangs on it: no rating to choose"}}
			default:
				fuse.choose(c, f.Family)
			}
			c.fuses = append(c.fuses, fuse)
			c.rating[d] = append(c.rating[d], fuse.RatedA)
		}
	}
}

// choose rates a fuse for its load and for a start through it. Where the style
// ends below what a start takes that does not come to its end, one that comes
// to its end has to do: then the contact closes within the engagement.
func (f *Fuse) choose(c *chooser, family string) {
	start := c.startThrough(f.Device, f.Index)
	rated, why, ok := gauge.ChooseFuseForStart(family, f.LoadA, start, c.p)
	if !ok && start.FirstA > 0 {
		start.FirstS = gauge.EngageLongS
		rated, why, ok = gauge.ChooseFuseForStart(family, f.LoadA, start, c.p)
	}
	f.Chosen, f.Why = true, why
	if ok {
		f.RatedA = rated
	}
}

// leadsNowhere reports whether nothing is joined to a terminal of a device: its
// wires may belong to an option that is not fitted.
func (c *chooser) leadsNowhere(d *model.Device, pin string) bool {
	t := d.Terminal(pin)
	return t != nil && t.Metal == nil && len(c.m.Nets().Members[c.m.Nets().Of[t.ID]]) == 1
}

// rated gives the rating of a protective element as it stands: the draft's,
// or the chosen one.
func (c *chooser) rated(d *model.Device, i int) float64 {
	if r := c.rating[d]; i < len(r) && r[i] > 0 {
		return r[i]
	}
	return math.Inf(1)
}

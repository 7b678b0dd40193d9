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
			if f.RatedA == 0 {
				fuse.choose(c, f.Family)
			}
			c.fuses = append(c.fuses, fuse)
			c.rating[d] = append(c.rating[d], fuse.RatedA)
		}
	}
}

func (f *Fuse) choose(c *chooser, family string) {
	rated, why, ok := gauge.ChooseFuse(family, f.LoadA, c.p)
	f.Chosen, f.Why = true, why
	if ok {
		f.RatedA = rated
	}
}

// rated gives the rating of a protective element as it stands: the draft's,
// or the chosen one.
func (c *chooser) rated(d *model.Device, i int) float64 {
	if r := c.rating[d]; i < len(r) && r[i] > 0 {
		return r[i]
	}
	return math.Inf(1)
}

package size

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/part"
)

// cavityMM2 is the largest conductor that goes into a cavity: primary wire
// ends at 8 AWG (8.37 mm2); what is thicker is battery cable and takes a ring.
const cavityMM2 = 8.4

// ceiling gives the highest rung for a chain: any, unless one of its wires
// ends in a cavity.
func (c *chooser) ceiling(wires []*model.Wire) int {
	top := len(c.ladder) - 1
	for _, w := range wires {
		for _, t := range []*model.Terminal{w.From, w.To} {
			for t.Landing == part.Cavity && !c.held(t) && t.Metal == nil && top > 0 && c.ladder[top].AreaMM2 > cavityMM2 {
				top--
			}
		}
	}
	return top
}

// bladeMostA is the largest fuse that goes into cavities of a box; a larger
// one is held by studs or comes with leads of its own (common practice).
const bladeMostA = 40

// held reports whether a terminal is that of a fuse too large for a cavity.
func (c *chooser) held(t *model.Terminal) bool {
	for i, f := range t.Device.Protects() {
		if r := c.rated(t.Device, i); (f.In == t.Name || f.Out == t.Name) && r > bladeMostA && !math.IsInf(r, 1) {
			return true
		}
	}
	return false
}

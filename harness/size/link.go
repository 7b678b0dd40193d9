package size

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/model"
)

// linkGap is how many gauge numbers a fusible link is thinner than the wire
// that it protects (source fusible-link).
const linkGap = 4

// rateLink gives a link that is stated by its wire the rating that it protects
// as: what a wire four gauge numbers thicker carries alone in the link's place.
// A wire behind it that carries less does not outlast it.
func (f *Fuse) rateLink(c *chooser, link gauge.Size) bool {
	behind, ok := behindLink(link)
	if !ok {
		return false
	}
	amps, why, _ := c.p.Ampacity.Ampacity(behind, gauge.FamilyFor(behind), f.Device.AmbientC, 1)
	text := fmt.Sprintf("a link of %s wants wire four gauge numbers thicker behind it, %s; it protects as what that carries", link.Name, behind.Name)
	f.RatedA, f.Chosen = amps, true
	f.Why = append(why, gauge.Step{Text: text, Equation: "wire gauge <= link gauge - 4", Value: amps, Unit: "A", Source: "fusible-link"})
	return true
}

// behindLink is the thinnest wire that a link protects. A metric link is taken
// by the gauge that its print stands for, else by the next gauge that is no
// thinner.
func behindLink(link gauge.Size) (behind gauge.Size, ok bool) {
	n := link.AWG
	if link.Metric {
		n = awgOf(link.Nominal)
	}
	for ; n-linkGap >= -3; n-- { // up to 4/0
		if behind, ok = gauge.AWGSize(n - linkGap); ok {
			return behind, true
		}
	}
	return gauge.Size{}, false
}

func awgOf(mm2 float64) int {
	for n := 30; n > -3; n-- {
		if print, ok := gauge.LinkMM2(n); ok && print == mm2 {
			return n
		}
	}
	n := 30
	for n > -3 && gauge.AWGAreaMM2(n) < mm2 {
		n--
	}
	return n
}

// LinkOf gives the wire of the link that a guard is, if it is one by its wire.
func LinkOf(d *model.Device, index int) (link, behind gauge.Size, ok bool) {
	if d == nil {
		return link, behind, false
	}
	f := d.Protects()
	if index >= len(f) || f[index].Wire.AreaMM2 == 0 || f[index].RatedA > 0 {
		return link, behind, false
	}
	behind, ok = behindLink(f[index].Wire)
	return f[index].Wire, behind, ok
}

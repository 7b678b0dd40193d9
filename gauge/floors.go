package gauge

import (
	"fmt"
	"strings"
)

// ampacity: the wire carries its heating current for ever, in its bundle.
func (j *Judgement) ampacity() {
	c := &j.Case
	if c.HeatA == 0 {
		return
	}
	amps, conf := j.carries(c.Loaded)
	j.add(Limit{Name: FloorAmpacity, Got: amps, Asked: c.HeatA, Unit: "A"}, conf, func() []Step { return j.carriesWhy(c.Loaded) })
}

// carries is the current that the profile's rule-book allows, and how far
// it may be trusted.
func (j *Judgement) carries(loaded int) (amps float64, conf Confidence) {
	c := &j.Case
	if c.Profile.Ampacity == AmpacityCFR {
		return j.base.ampsAt(c.AmbientC, loaded), j.wireConf()
	}
	amps, _, conf = c.Profile.Ampacity.Ampacity(c.Size, c.Family, c.AmbientC, loaded)
	return amps, conf
}

// carriesWhy is the working of carries.
func (j *Judgement) carriesWhy(loaded int) []Step {
	c := &j.Case
	_, why, _ := c.Profile.Ampacity.Ampacity(c.Size, c.Family, c.AmbientC, loaded)
	return why
}

// protection: the fuse opens before an overload ruins the wire. One overload
// at a time, so the bundle is left out.
func (j *Judgement) protection() {
	c := &j.Case
	if c.Exempt != "" {
		j.skip(FloorProtection, "exempt: ", c.Exempt)
		return
	}
	if c.FuseA == 0 {
		return
	}
	over := c.Profile.FuseOverWire
	if over == 0 {
		over = 1
	}
	amps, conf := j.carries(1)
	l := Limit{Name: FloorProtection, Got: over * amps, Asked: c.FuseA, Unit: "A"}
	j.add(l, conf, func() []Step { return j.protectionWhy(over, l.Got) })
}

func (j *Judgement) protectionWhy(over, got float64) []Step {
	c := &j.Case
	why := j.carriesWhy(1)
	if over != 1 {
		why = append(why, Step{
			Text:     fmt.Sprintf("profile %s lets the device be %.4g x the ampacity", c.Profile.Name, over),
			Equation: "In <= share x ampacity", Value: got, Unit: "A", Source: c.Profile.Source,
		})
	}
	name := c.FuseName
	if name == "" {
		name = "device that"
	}
	if c.Source {
		return append(why, Step{Text: name + " gives no more by itself, and no fuse holds it to less", Value: c.FuseA, Unit: "A", Source: "stated"})
	}
	if c.Behind != "" {
		return append(why, Step{Text: "a return: " + name + " limits what comes back through it, with " + c.Behind + " stalled or shorted", Value: c.FuseA, Unit: "A", Source: "stated"})
	}
	return append(why, Step{Text: name + " protects it", Value: c.FuseA, Unit: "A", Source: "stated"})
}

// drop: the resistance at conductor temperature stays within what the path
// leaves for this wire.
func (j *Judgement) drop() {
	c := &j.Case
	if c.MaxOhm == 0 {
		return
	}
	perM := c.Size.OhmPerM(j.TempC)
	l := Limit{Name: FloorDrop, Got: perM * c.LengthM, Asked: c.MaxOhm, Unit: "ohm", AtMost: true}
	j.add(l, j.sizeConf(), func() []Step { return j.dropWhy(perM) })
}

func (j *Judgement) dropWhy(perM float64) []Step {
	c := &j.Case
	return []Step{
		{
			Text:     fmt.Sprintf("conductor at %.4g A in %.4g C", c.HeatA, c.AmbientC),
			Equation: "Ta + (Tr - 30)(I/I30)^2", Value: j.TempC, Unit: "C", Source: "conductor-temperature",
		},
		{
			Text:     fmt.Sprintf("%s, %.4g mm2 of copper", c.Size.Name, c.Size.AreaMM2),
			Equation: "rho20 / A", Value: c.Size.OhmPerM(20), Unit: "ohm/m", Source: c.Size.Source,
		},
		{
			Text:     "at conductor temperature",
			Equation: "R20 (234.5 + T)/254.5", Value: perM, Unit: "ohm/m", Source: "copper-temperature",
		},
		{
			Text:     fmt.Sprintf("over %.4g m", c.LengthM),
			Equation: "R L", Value: perM * c.LengthM, Unit: "ohm", Source: "far-end-short",
		},
	}
}

// mechanical: the smallest size that survives handling. Areas are compared,
// so that the margin has a meaning.
func (j *Judgement) mechanical() {
	c := &j.Case
	p := &c.Profile
	if p.Name == "" {
		return
	}
	least, where := p.Dry, "in a dry bundle"
	if c.Wet {
		least, where = p.Wet, "in the wet"
	}
	if c.Single {
		least, where = p.Alone, "outside a bundle"
	}
	l := Limit{Name: FloorMechanical, Got: c.Size.Nominal, Asked: least.MM2, Unit: "mm2"}
	if !c.Size.Metric {
		l.Got, l.Asked = AWGAreaMM2(c.Size.AWG), AWGAreaMM2(least.AWG)
	}
	j.add(l, confidenceOf(p.SizeSource), func() []Step {
		name := fmt.Sprintf("%g mm2", least.MM2)
		if !c.Size.Metric {
			name = AWGName(least.AWG)
		}
		return []Step{{
			Text:     "smallest wire " + where + ": " + name,
			Equation: "A >= A of the smallest size", Value: l.Asked, Unit: "mm2", Source: p.SizeSource,
		}}
	})
}

// skip notes a floor that was not judged; why comes in pieces.
func (j *Judgement) skip(name string, why ...string) {
	if !j.quiet {
		j.NotJudged = append(j.NotJudged, Step{Text: name + ": " + strings.Join(why, ""), Source: "stated"})
	}
}

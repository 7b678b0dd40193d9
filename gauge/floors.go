package gauge

import "fmt"

// ampacity: the wire carries its heating current for ever, in its bundle.
func (j *Judgement) ampacity() {
	c := j.Case
	if c.HeatA == 0 {
		return
	}
	got, why, conf := Ampacity(c.Size, c.Family, c.AmbientC, c.Loaded)
	j.add(Limit{Name: FloorAmpacity, Got: got, Asked: c.HeatA, Unit: "A", Why: why}, min(conf, j.sizeConf()))
}

// protection: the fuse opens before an overload ruins the wire. One overload
// at a time, so the bundle is left out.
func (j *Judgement) protection() {
	c := j.Case
	if c.Exempt != "" {
		j.skip(FloorProtection, "exempt: "+c.Exempt)
		return
	}
	if c.FuseA == 0 {
		return
	}
	got, why, conf := Ampacity(c.Size, c.Family, c.AmbientC, 1)
	if over := c.Profile.FuseOverWire; over > 0 && over != 1 {
		got *= over
		why = append(why, Step{
			Text:     fmt.Sprintf("profile %s lets the device be %.4g x the ampacity", c.Profile.Name, over),
			Equation: "In <= share x ampacity", Value: got, Unit: "A", Source: c.Profile.Source,
		})
	}
	why = append(why, Step{Text: deviceText(c), Value: c.FuseA, Unit: "A", Source: "stated"})
	j.add(Limit{Name: FloorProtection, Got: got, Asked: c.FuseA, Unit: "A", Why: why}, min(conf, j.sizeConf()))
}

func deviceText(c WireCase) string {
	if c.FuseName == "" {
		return "device that protects it"
	}
	return c.FuseName + " protects it"
}

// drop: the resistance at conductor temperature stays within what the path
// leaves for this wire.
func (j *Judgement) drop() {
	c := j.Case
	if c.MaxOhm == 0 {
		return
	}
	perM := c.Size.OhmPerM(j.TempC)
	why := []Step{
		{
			Text:     fmt.Sprintf("conductor at %.4g A", c.HeatA),
			Equation: "Ta + (Tr - 30)(I/I30)^2", Value: j.TempC, Unit: "C", Source: "conductor-temperature",
		},
		{
			Text:     fmt.Sprintf("%s, %.4g mm2 of copper", c.Size.Name, c.Size.AreaMM2),
			Equation: "rho20 (234.5 + T)/254.5 / A", Value: perM, Unit: "ohm/m", Source: c.Size.Source,
		},
		{
			Text:     fmt.Sprintf("over %.4g m", c.LengthM),
			Equation: "R L", Value: perM * c.LengthM, Unit: "ohm", Source: "copper-temperature",
		},
	}
	j.add(Limit{Name: FloorDrop, Got: perM * c.LengthM, Asked: c.MaxOhm, Unit: "ohm", AtMost: true, Why: why}, j.sizeConf())
}

// mechanical: the smallest size that survives handling. Areas are compared,
// so that the margin has a meaning.
func (j *Judgement) mechanical() {
	c := j.Case
	p := c.Profile
	awg, mm2, where := p.SmallestAWG, p.SmallestMM2, "in a dry bundle"
	if c.Wet || c.Single {
		awg, mm2, where = p.AloneAWG, p.AloneMM2, "in the wet or alone"
	}
	if p.Name == "" {
		return
	}
	got, asked, name := c.Size.Nominal, mm2, fmt.Sprintf("%g mm2", mm2)
	if !c.Size.Metric {
		got, asked, name = AWGAreaMM2(c.Size.AWG), AWGAreaMM2(awg), AWGName(awg)
	}
	why := []Step{{
		Text:     fmt.Sprintf("smallest wire %s: %s", where, name),
		Equation: "A >= A of the smallest size", Value: asked, Unit: "mm2", Source: p.SizeSource,
	}}
	j.add(Limit{Name: FloorMechanical, Got: got, Asked: asked, Unit: "mm2", Why: why}, confidenceOf(p.SizeSource))
}

// skip notes a floor that was not judged.
func (j *Judgement) skip(name, why string) {
	j.NotJudged = append(j.NotJudged, Step{Text: name + ": " + why, Source: "stated"})
}

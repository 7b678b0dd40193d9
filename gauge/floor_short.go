package gauge

import "fmt"

// short: a dead short at the far end does not ruin the wire before the device
// opens. A short that the wire carries for ever is no matter; below the gate
// that surely opens it fails; above, the let-through of the device is held
// against what the copper takes up with no heat lost.
func (j *Judgement) short() {
	c := j.Case
	switch {
	case c.Exempt != "" || c.FuseA == 0:
		return
	case c.ShortA == 0:
		j.skip(FloorShort, "current of a short at the far end is not known")
		return
	case len(FuseGates(c.FuseKind)) == 0:
		j.skip(FloorShort, "no opening times known for kind "+kindText(c.FuseKind))
		return
	}
	carries, why, conf := Ampacity(c.Size, c.Family, c.AmbientC, 1)
	conf = min(conf, j.sizeConf(), confidenceOf("let-through"))
	if carries >= c.ShortA {
		why = append(why, Step{Text: "wire carries its own short for ever", Value: c.ShortA, Unit: "A", Source: "far-end-short"})
		j.add(Limit{Name: FloorShort, Got: carries, Asked: c.ShortA, Unit: "A", Why: why}, conf)
		return
	}
	j.heatOfShort(conf)
}

func kindText(kind string) string {
	if kind == "" {
		return "(none)"
	}
	return kind
}

// heatOfShort holds the let-through against the adiabatic limit, by sure
// gates where the style has one, by remembered ones (a hint) where not.
func (j *Judgement) heatOfShort(conf Confidence) {
	c := j.Case
	share, sure := sureShare(c.FuseKind)
	let, gate, ok := LetThrough(c.FuseKind, c.FuseA, c.ShortA, sure)
	if !ok {
		j.tooWeak(share, sure, conf)
		return
	}
	take := WithstandA2S(c.Size.AreaMM2, j.TempC, c.Family.ShortC)
	why := []Step{
		{Text: "short at the far end", Equation: "V / sum(R)", Value: c.ShortA, Unit: "A", Source: "far-end-short"},
		{
			Text:     fmt.Sprintf("%s %.4g A opens within %.3g s at %.3g x its rating", c.FuseKind, c.FuseA, gate.MaxS, gate.Share),
			Equation: "(share In)^2 t", Value: let, Unit: "A2s", Source: gate.Source,
		},
		{Text: "a fuse lets through no more at a larger current", Value: let, Unit: "A2s", Source: "let-through"},
		{
			Text:     fmt.Sprintf("copper from %.4g C to %.4g C", j.TempC, c.Family.ShortC),
			Equation: "k = 226 sqrt(ln((T2+234.5)/(T1+234.5)))", Value: K(j.TempC, c.Family.ShortC), Unit: "A s^0.5/mm2", Source: "adiabatic-k",
		},
		{
			Text:     fmt.Sprintf("%s, %.4g mm2, end temperature of the insulation", c.Size.Name, c.Size.AreaMM2),
			Equation: "(k S)^2", Value: take, Unit: "A2s", Source: "k-factors",
		},
	}
	if fast, g, found := LetThrough(c.FuseKind, c.FuseA, c.ShortA, false); sure && found && fast < let {
		why = append(why, Step{
			Text: fmt.Sprintf("remembered gate, %.3g s at %.3g x: would be", g.MaxS, g.Share), Equation: "(share In)^2 t",
			Value: fast, Unit: "A2s", Source: g.Source,
		})
	}
	if !sure {
		conf = min(conf, confidenceOf(gate.Source))
	}
	j.add(Limit{Name: FloorShort, Got: take, Asked: let, Unit: "A2s", Why: why}, conf)
}

// tooWeak files a short below every gate that counts: the device may take
// minutes to open.
func (j *Judgement) tooWeak(share float64, sure bool, conf Confidence) {
	c := j.Case
	source := "fuse-gates"
	if !sure {
		g := firstGate(c.FuseKind)
		share, source = g.Share, g.Source
	}
	j.add(Limit{
		Name: FloorShort, Got: c.ShortA, Asked: share * c.FuseA, Unit: "A",
		Why: []Step{
			{Text: "short at the far end", Equation: "V / sum(R)", Value: c.ShortA, Unit: "A", Source: "far-end-short"},
			{
				Text:     fmt.Sprintf("%s %.4g A surely opens only from", c.FuseKind, c.FuseA),
				Equation: "share x In", Value: share * c.FuseA, Unit: "A", Source: source,
			},
		},
	}, min(conf, confidenceOf(source)))
}

// firstGate is the lowest gate with an opening time; FuseGates is not empty.
func firstGate(family string) Gate {
	for _, g := range FuseGates(family) {
		if g.MaxS > 0 {
			return g
		}
	}
	return Gate{}
}

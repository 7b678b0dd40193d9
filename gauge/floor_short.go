package gauge

import "fmt"

// short: a dead short at the far end does not ruin the wire before the device
// opens. A short that the wire carries for ever is no matter; below the gate
// that surely opens it fails; above, the let-through of the device is held
// against what the copper takes up with no heat lost.
func (j *Judgement) short() {
	c := &j.Case
	switch {
	case c.Exempt != "" || c.FuseA == 0:
		return
	case c.ShortA == 0:
		j.skip(FloorShort, "current of a short at the far end is not known")
		return
	case c.Source:
		j.skip(FloorShort, c.FuseName, " limits its own current; a fuse on the way to a battery is judged by its load")
		return
	case c.FuseKind == "":
		j.skip(FloorShort, "what limits it is no fuse")
		return
	case len(gatesOf(c.FuseKind)) == 0:
		j.skip(FloorShort, "no opening times known for a device of kind \"", c.FuseKind, "\"")
		return
	}
	if carries := j.base.ampsAt(c.AmbientC, 1); carries >= c.ShortA {
		l := Limit{Name: FloorShort, Got: carries, Asked: c.ShortA, Unit: "A"}
		j.add(l, j.wireConf(), func() []Step {
			return append(j.base.whyAt(c.AmbientC, 1), j.shortStep("the wire carries its own short for ever"))
		})
		return
	}
	j.heatOfShort()
}

func (j *Judgement) shortStep(text string) Step {
	return Step{Text: text, Equation: "V / sum(R)", Value: j.Case.ShortA, Unit: "A", Source: "far-end-short"}
}

// heatOfShort holds the let-through against the adiabatic limit, by gates
// that may decide where the style has one, by remembered ones (a hint) where
// not.
func (j *Judgement) heatOfShort() {
	c := &j.Case
	first, sure := sureGate(c.FuseKind)
	let, gate, ok := LetThrough(c.FuseKind, c.FuseA, c.ShortA, sure)
	if !ok {
		j.tooWeak(first)
		return
	}
	l := Limit{Name: FloorShort, Got: WithstandA2S(c.Size.AreaMM2, j.TempC, c.Family.ShortC), Asked: let, Unit: "A2s"}
	conf := min(j.wireConf(), confidenceOf("let-through"), confidenceOf(c.Family.shortKey()), confidenceOf(gate.Source))
	j.add(l, conf, func() []Step { return j.heatWhy(l, gate, sure) })
}

func (j *Judgement) heatWhy(l Limit, gate Gate, sure bool) []Step {
	c := &j.Case
	why := []Step{
		j.shortStep("short at the far end"),
		{
			Text:     fmt.Sprintf("%s %.4g A opens within %.3g s at %.3g x its rating", c.FuseKind, c.FuseA, gate.MaxS, gate.Share),
			Equation: "(share In)^2 t", Value: l.Asked, Unit: "A2s", Source: gate.Source,
		},
		{Text: "a fuse lets through no more at a larger current", Value: l.Asked, Unit: "A2s", Source: "let-through"},
		{
			Text:     fmt.Sprintf("copper from %.4g C to %.4g C", j.TempC, c.Family.ShortC),
			Equation: "k = 226 sqrt(ln((T2+234.5)/(T1+234.5)))", Value: K(j.TempC, c.Family.ShortC), Unit: "A s^0.5/mm2", Source: "adiabatic-k",
		},
		{
			Text:     fmt.Sprintf("%s, %.4g mm2, end temperature of the insulation", c.Size.Name, c.Size.AreaMM2),
			Equation: "(k S)^2", Value: l.Got, Unit: "A2s", Source: c.Family.shortKey(),
		},
	}
	if fast, g, found := LetThrough(c.FuseKind, c.FuseA, c.ShortA, false); sure && found && fast < l.Asked {
		why = append(why, Step{
			Text:     fmt.Sprintf("usual gate, %.3g s at %.3g x, from memory: it would let through", g.MaxS, g.Share),
			Equation: "(share In)^2 t", Value: fast, Unit: "A2s", Source: g.Source,
		})
	}
	return why
}

// tooWeak files a short below every gate that counts: the device may take
// minutes to open.
func (j *Judgement) tooWeak(first Gate) {
	c := &j.Case
	if first.Share == 0 {
		j.skip(FloorShort, "a ", c.FuseKind, " fuse may take minutes: no law of shorts applies")
		return
	}
	l := Limit{Name: FloorShort, Got: c.ShortA, Asked: first.Share * c.FuseA, Unit: "A"}
	j.add(l, min(j.wireConf(), confidenceOf(first.Source)), func() []Step {
		return []Step{
			j.shortStep("short at the far end"),
			{
				Text:     fmt.Sprintf("%s %.4g A opens soon only from %.3g x its rating", c.FuseKind, c.FuseA, first.Share),
				Equation: "share x In", Value: l.Asked, Unit: "A", Source: first.Source,
			},
		}
	})
}

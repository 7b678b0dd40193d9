package harness

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

func (r *Result) whyWire(w *model.Wire) Working {
	s := r.Sizes.Wires[w.ID]
	s.Judgement = s.Working()
	how := "given by the draft"
	if s.Chosen {
		how = "chosen; " + s.Governs + " governs"
	}
	noun := [...]string{model.Built: "wire", model.Lead: "lead", model.Strap: "strap"}[w.Role]
	out := Working{Title: fmt.Sprintf("%s %s, %s to %s: %s %s (%s)",
		noun, w.Number, w.From.Shown, w.To.Shown, s.Conductor.Size.Name, s.Conductor.Family.Name, how)}
	out = withGroups(out, r.lengthOf(w), r.currentOf(s))
	for _, l := range s.Judgement.Limits {
		out.Groups = append(out.Groups, limitGroup(s, l))
	}
	return withGroups(out, notJudged(s), r.chainOf(s), r.thinner(s), r.smallerFuse(w), r.chargeOn(w), r.pullOn(w), r.lossesThrough(w))
}

func (r *Result) lengthOf(w *model.Wire) Group {
	p := r.Routes.Paths[w.ID]
	g := Group{Title: "Length"}
	show := func(m float64) string { return quantity.LengthText(m, r.Model.Metric) }
	add := func(text string, v float64, unit, source string) {
		g.Steps = append(g.Steps, gauge.Step{Text: text, Value: v, Unit: unit, Source: source})
	}
	if !p.Given {
		for _, l := range p.Legs {
			source := "stated"
			if !l.Leg.Known {
				source = "" // assumed: the draft gives the leg no length
			}
			add("leg "+l.Leg.Name+", "+show(l.LengthM), l.LengthM, "m", source)
		}
		if p.TailsM > 0 {
			add("tails, "+show(p.TailsM), p.TailsM, "m", "tail")
		}
	}
	switch {
	case p.Given:
		add("length as the draft gives it, "+show(p.LengthM), p.LengthM, "m", "stated")
	case !p.Known:
		add("length assumed, "+show(p.LengthM)+": a guess, measure it", p.LengthM, "m", "")
	case p.Assumed:
		add("length, "+show(p.LengthM)+": rests on a leg whose length is a guess", p.LengthM, "m", "")
	default:
		g.Steps = append(g.Steps, gauge.Step{Text: "length, " + show(p.LengthM), Equation: "legs + tails", Value: p.LengthM, Unit: "m"})
	}
	add("hottest place on its way", p.HotC, "C", "stated")
	return g
}

func (r *Result) currentOf(s size.Wire) Group {
	g := Group{Title: "Current"}
	if s.PullA > 0 {
		g.Steps = append(g.Steps, gauge.Step{Text: "while the starter's solenoid pulls in, both windings", Equation: "I at 12 V x V / 12 V", Value: s.PullA, Unit: "A", Source: gauge.NodeLaw})
	}
	if s.DesignA < gauge.LeastTellA && s.PullA > 0 {
		return g
	}
	if s.DesignA < gauge.LeastTellA {
		g.Steps = []gauge.Step{{Text: "carries no current in any step", Unit: "A", Source: gauge.NodeLaw}}
		return g
	}
	g.Steps = append(g.Steps, gauge.Step{Text: "largest steady current, in " + s.At, Value: s.DesignA, Unit: "A", Source: gauge.NodeLaw})
	if s.HeatA != s.DesignA {
		g.Steps = append(g.Steps, gauge.Step{Text: "for heat, over its duty", Equation: "r.m.s.", Value: s.HeatA, Unit: "A", Source: gauge.NodeLaw})
	}
	if s.Loaded > 1 {
		g.Steps = append(g.Steps, gauge.Step{Text: "conductors in its bundle that are loaded then", Value: float64(s.Loaded), Source: "loaded-share"})
	}
	tempC, ohm := s.Conductor.TempC, s.Conductor.Ohm
	if s.At == size.Charging {
		tempC, ohm = s.Judgement.TempC, s.DropV/s.DesignA
	}
	_, judged := s.Judgement.Limit(gauge.FloorDrop)
	switch {
	case s.Conductor.Measured:
		g.Steps = append(g.Steps, gauge.Step{Text: "resistance as measured, without its bolted joints", Value: s.Conductor.Ohm, Unit: "ohm", Source: "stated"})
	case !judged:
		g.Steps = append(g.Steps,
			gauge.Step{Text: "conductor temperature", Equation: "Ta + (Tr - 30)(I/I30)^2", Value: tempC, Unit: "C", Source: "conductor-temperature"},
			gauge.Step{Text: "resistance at that temperature", Equation: "rho(T) L / A", Value: ohm, Unit: "ohm", Source: s.Conductor.Size.Source})
	}
	g.Steps = append(g.Steps, gauge.Step{Text: "loses along itself", Equation: "I R", Value: s.DropV, Unit: "V"})
	return g
}

// limitGroup shows one floor: what the wire gives, what is asked, the verdict
// and the working.
func limitGroup(s size.Wire, l gauge.Limit) Group {
	state := "passes"
	if !l.OK {
		state = "fails"
	}
	if s.Chosen && l.Name == s.Governs {
		state += ", and governs"
	}
	if l.Hint {
		state += "; a hint, since it rests on a figure that may not decide"
	}
	asked := "at least"
	if l.AtMost {
		asked = "at most"
	}
	title := fmt.Sprintf("%s: %s, %s %s asked: %s", strings.ToUpper(l.Name[:1])+l.Name[1:],
		amount(l.Got, l.Unit), asked, amount(l.Asked, l.Unit), state)
	return Group{Title: title, Steps: append(append([]gauge.Step{}, l.Why...), askedOf(s, l)...)}
}

// askedOf says where the figure comes from that a wire has to reach, where the
// working of the floor does not say it itself.
func askedOf(s size.Wire, l gauge.Limit) []gauge.Step {
	switch l.Name {
	case gauge.FloorAmpacity:
		return []gauge.Step{{Text: "asked: its current for heat", Value: l.Asked, Unit: "A", Source: gauge.NodeLaw}}
	case gauge.FloorDrop:
		return []gauge.Step{{
			Text: "asked: what the tightest load on its way leaves for it", Equation: "R + (limit - loss)/I",
			Value: l.Asked, Unit: "ohm", Source: gauge.NodeLaw,
		}}
	case gauge.FloorMechanical:
		return []gauge.Step{{Text: s.Conductor.Size.Name + " has", Value: l.Got, Unit: "mm2"}}
	}
	return nil
}

// amount prints a figure of a limit with its unit.
func amount(v float64, unit string) string {
	switch unit {
	case "A":
		return quantity.Text(v, quantity.Current)
	case "V":
		return quantity.Text(v, quantity.Voltage)
	case "ohm":
		return quantity.Text(v, quantity.Resistance)
	}
	return quantity.Number(v) + " " + unit
}

func notJudged(s size.Wire) Group {
	return Group{Title: "Not judged", Steps: s.Judgement.NotJudged}
}

// chainOf names the wires that share one size with a wire.
func (r *Result) chainOf(s size.Wire) Group {
	numbers := r.chained(s)
	if len(numbers) < 2 {
		return Group{}
	}
	return Group{Title: "Series chain", Steps: []gauge.Step{
		{Text: "one size for wires " + strings.Join(numbers, ", ") + ", which follow each other without a branch"},
	}}
}

func (r *Result) chained(s size.Wire) []string {
	var numbers []string
	for _, o := range r.Sizes.Wires {
		if o.Chain == s.Chain {
			numbers = append(numbers, o.Wire.Number)
		}
	}
	return numbers
}

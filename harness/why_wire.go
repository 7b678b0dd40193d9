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
	how := "given by the draft"
	if s.Chosen {
		how = "chosen; " + s.Governs + " governs"
	}
	out := Working{Title: fmt.Sprintf("wire %s, %s to %s: %s %s (%s)",
		w.Number, w.From.Shown, w.To.Shown, s.Conductor.Size.Name, s.Conductor.Family.Name, how)}
	out.Groups = append(out.Groups, r.lengthOf(w), r.currentOf(s))
	for _, l := range s.Judgement.Limits {
		out.Groups = append(out.Groups, limitGroup(l))
	}
	return withGroups(out, r.chainOf(s), r.dropsAlong(w))
}

func withGroups(w Working, groups ...Group) Working {
	for _, g := range groups {
		if len(g.Steps) > 0 {
			w.Groups = append(w.Groups, g)
		}
	}
	return w
}

func (r *Result) lengthOf(w *model.Wire) Group {
	p := r.Routes.Paths[w.ID]
	g := Group{Title: "Length"}
	for _, l := range p.Legs {
		g.Steps = append(g.Steps, gauge.Step{Text: "leg " + l.Leg.Name, Value: l.LengthM, Unit: "m"})
	}
	if p.TailsM > 0 {
		g.Steps = append(g.Steps, gauge.Step{Text: "tails", Value: p.TailsM, Unit: "m", Source: "tail"})
	}
	text := "length"
	switch {
	case p.Given:
		text = "length as the draft gives it"
	case !p.Known:
		text = "length assumed"
	}
	g.Steps = append(g.Steps,
		gauge.Step{Text: text + " (" + quantity.LengthText(p.LengthM, r.Model.Metric) + ")", Value: p.LengthM, Unit: "m"},
		gauge.Step{Text: "hottest place on the way", Value: p.HotC, Unit: "C"})
	return g
}

func (r *Result) currentOf(s size.Wire) Group {
	g := Group{Title: "Current"}
	if s.DesignA == 0 {
		g.Steps = append(g.Steps, gauge.Step{Text: "carries no current in any step", Unit: "A"})
		return g
	}
	g.Steps = append(g.Steps, gauge.Step{Text: "largest steady current, in " + s.At, Value: s.DesignA, Unit: "A"})
	if s.Loaded > 1 {
		g.Steps = append(g.Steps, gauge.Step{Text: "loaded conductors in its bundle then", Value: float64(s.Loaded)})
	}
	g.Steps = append(g.Steps,
		gauge.Step{Text: "conductor temperature", Equation: "place + (class - 30)(I / I_30)^2", Value: s.Conductor.TempC, Unit: "C"},
		gauge.Step{Text: "resistance", Equation: "rho(T) x length / area", Value: s.Conductor.Ohm, Unit: "ohm", Source: s.Conductor.Size.Source})
	return g
}

func limitGroup(l gauge.Limit) Group {
	state := "passes"
	if !l.OK {
		state = "fails"
	}
	if l.Hint {
		state += " (a hint: rests on a figure that may not decide)"
	}
	title := strings.ToUpper(l.Name[:1]) + l.Name[1:] + ": " + state
	return Group{Title: title, Steps: l.Why}
}

// chainOf names the wires that share one size with a wire.
func (r *Result) chainOf(s size.Wire) Group {
	var numbers []string
	for _, o := range r.Sizes.Wires {
		if o.Chain == s.Chain {
			numbers = append(numbers, o.Wire.Number)
		}
	}
	if len(numbers) < 2 {
		return Group{}
	}
	return Group{Title: "Series chain", Steps: []gauge.Step{
		{Text: "one size for wires " + strings.Join(numbers, ", ") + ", which follow each other without a branch"},
	}}
}

// dropsAlong gives the tightest drop of each load that the wire's chain feeds
// or returns.
func (r *Result) dropsAlong(w *model.Wire) Group {
	g := Group{Title: "Drop at the loads on its way"}
	for _, p := range r.Sizes.Through(w) {
		g.Steps = append(g.Steps, gauge.Step{
			Text: fmt.Sprintf("%s in %s: %s of %s allowed, %s with usual contacts", p.Device.Name, p.Step.Name,
				quantity.Text(p.DropV, quantity.Voltage), quantity.Text(p.LimitV, quantity.Voltage), quantity.Text(p.UsualV, quantity.Voltage)),
			Equation: "(post to post) - (across the load)", Value: p.DropV, Unit: "V",
		})
	}
	return g
}

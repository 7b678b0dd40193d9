package harness

import (
	"fmt"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// chargeOn shows what is lost on the charge paths that pass a wire.
func (r *Result) chargeOn(w *model.Wire) Group {
	var g Group
	for _, x := range r.Sizes.Charges {
		if slices.Contains(x.Wires, w) {
			g.Steps = append(g.Steps, chargeSteps(x)...)
		}
	}
	return titled("Charging a flat battery", g)
}

// chargeOf shows what a machine loses on its way to the battery and back.
func (r *Result) chargeOf(d *model.Device) Group {
	var g Group
	for _, x := range r.Sizes.Charges {
		if x.Device == d {
			g.Steps = append(g.Steps, chargeSteps(x)...)
		}
	}
	return titled("Charging a flat battery", g)
}

func titled(title string, g Group) Group {
	if len(g.Steps) > 0 {
		g.Title = title
	}
	return g
}

func chargeSteps(x size.Charge) []gauge.Step {
	state := "passes"
	if x.DropV > x.LimitV {
		state = "fails"
	}
	return []gauge.Step{{
		Text: fmt.Sprintf("%s at its rated %s loses on the %s, at most %s: %s", x.Device.Name,
			quantity.Text(x.RatedA, quantity.Current), x.Side, quantity.Text(x.LimitV, quantity.Voltage), state),
		Equation: "sum(I R)", Value: x.DropV, Unit: "V", Source: chargeSource(x),
	}}
}

// chargeSource is where the limit of a charge path comes from.
func chargeSource(x size.Charge) string {
	switch x.Side {
	case size.FeedSide:
		return "journal-limits"
	case size.ReturnSide:
		return "drop-guide-part"
	}
	return "stated"
}

// pullOn shows what is left for the starter's solenoid behind a wire.
func (r *Result) pullOn(w *model.Wire) Group {
	var g Group
	for _, p := range r.Sizes.Pulls {
		if !slices.Contains(p.Wires, w) {
			continue
		}
		state := "passes"
		if p.Volts < p.LeastV {
			state = "fails"
		}
		g.Steps = append(g.Steps, gauge.Step{
			Text: fmt.Sprintf("in %s %s has, of the %s that close it hot: %s", p.Step.Name, p.Device.Name,
				quantity.Text(p.LeastV, quantity.Voltage), state),
			Value: p.Volts, Unit: "V", Source: gauge.NodeLaw,
		})
	}
	return titled("Pulling in", g)
}

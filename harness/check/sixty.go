package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// OverSixty looks whether a solved draft has more than 60 V d.c. between two
// of its terminals, as from batteries in series, though none of its figures
// says so. Such a draft is refused: no other finding of it may stand.
func OverSixty(m *model.Model, h *solve.History) (f diag.Finding, found bool) {
	if h == nil {
		return f, false
	}
	for _, s := range h.States {
		if s.Skipped != "" {
			continue
		}
		if v := furthest(s); v > gauge.MostSystemV {
			return overSixty(m, s, v), true
		}
	}
	return f, false
}

func overSixty(m *model.Model, s *solve.State, volts float64) diag.Finding {
	f := diag.Finding{
		Rule: "over-60-volts", Severity: diag.Danger, At: diag.Span{File: m.File},
		Msg:    fmt.Sprintf("there are %s between two points in %s, above the 60 V that legwork is for", quantity.Text(volts, quantity.Voltage), s.Step.Name),
		Detail: "Batteries in series add up. Above 60 V d.c. a touch can kill, and other rules and other training apply. This program refuses such a draft.",
		Values: []diag.Value{{Name: "between two points", Got: volts, Limit: gauge.MostSystemV, Unit: "V", Bound: diag.AtMost}},
	}
	first := true
	for _, d := range m.Devices {
		switch {
		case len(d.Supplies()) == 0:
		case first:
			f.At, first = d.At, false
		default:
			f.Related = append(f.Related, diag.Related{At: d.At, Msg: d.Name + " adds its volts"})
		}
	}
	return f
}

package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "loose-end",
	Severity: diag.Fault,
	Title:    "A wire ends where nothing goes on.",
	Why: "A wire that ends in a splice, a bus or a plug cavity without a partner is cut off or forgotten. " +
		"If it has volts in any step it can short when something touches it, and that is a fault; dead, it is a warning. " +
		"Wire it on, leave it out, or cap it.",
	Equation: "at a joining terminal at least one other way goes on",
	Misses:   "A terminal of a device that takes a wire but uses it for nothing.",
	Needs:    States,
	Run:      looseEnd,
})

func looseEnd(p *Pass) {
	for _, w := range p.Model.Wires {
		for _, t := range []*model.Terminal{w.From, w.To} {
			if !t.Device.Kind.Joins || t.Metal != nil || goesOn(t) {
				continue
			}
			p.reportLoose(w, t)
		}
	}
}

func (p *Pass) reportLoose(w *model.Wire, t *model.Terminal) {
	f := diag.Finding{
		At:     w.ToAt,
		Msg:    fmt.Sprintf("wire %s ends at %s, where nothing goes on", w.Number, t.Shown),
		Detail: "Wire it on, leave the wire out, or cap its end.",
	}
	if t == w.From {
		f.At = w.FromAt
	}
	f.Severity = diag.Warning
	for _, s := range states(p.Sizes.Hot) {
		if r := s.Reading(t); r.OK && r.Volts >= deadBelowV {
			f.Severity = diag.Fault
			f.Msg += fmt.Sprintf(", and has %s in %s", quantity.Text(r.Volts, quantity.Voltage), s.Step.Name)
			break
		}
	}
	p.Report(f)
}

// goesOn reports whether from a joining terminal anything leads on besides
// one wire: another wire, a bus, or a mated terminal that has one.
func goesOn(t *model.Terminal) bool {
	if len(t.Ends) > 1 || len(t.Bus) > 0 {
		return true
	}
	if t.Device.Kind.Couples == nil {
		return false
	}
	for _, c := range t.Device.Kind.Couples(t.Device.Device) {
		for _, mates := range [][2]string{{c.A, c.B}, {c.B, c.A}} {
			if mates[0] != t.Name {
				continue
			}
			if m := pinOf(t.Device, mates[1]); m != nil && len(m.Ends) > 0 {
				return true
			}
		}
	}
	return false
}

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
	Misses:   "A terminal of a device that takes a wire but uses it for nothing. A plug of which only one half is drawn is taken to lead out of the draft.",
	Needs:    States,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W  grounds-to frame
splice  J1
splice  J2
wire 1  G1.+  F1.1  6in
wire 2  F1.2  J1    2ft
wire 3  J1    P1.1  2ft
wire 4  J1    J2    2ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W  grounds-to frame
splice  J1
wire 1  G1.+  F1.1  6in
wire 2  F1.2  J1    2ft
wire 3  J1    P1.1  2ft
`,
	Run: looseEnd,
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
	pairs := t.Device.Couples()
	if len(pairs) == 0 {
		return true // a plug drawn with one half leads out of the draft: a trailer, a test plug
	}
	for _, c := range pairs {
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

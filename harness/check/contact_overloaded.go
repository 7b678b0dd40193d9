package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "contact-overloaded",
	Severity: diag.Fault,
	Title:    "A contact switches more current than it is rated for with this sort of load.",
	Why: "The figure printed on a relay or switch is for a heater. A motor or a cold lamp draws several times its current in the first moment, " +
		"and an arc follows when a motor is switched off: the same contact is good for only about half with them, and welds above that. " +
		"Without a motor or lamp rating in the draft, going over the usual share of the printed figure is a note.",
	Equation: "steady current <= rating for that sort of load; without one: 17/30 of the resistive rating for motors and lamps (a note)",
	Figures:  []string{"relay-motor"},
	Misses:   "Inrush against the make rating, and the life that a hard-worked contact has left.",
	Needs:    States,
	Run:      contactOverloaded,
})

func contactOverloaded(p *Pass) {
	for _, d := range p.Model.Devices {
		if d.Kind.Switches == nil {
			continue
		}
		for i, c := range d.Kind.Switches(d.Device) {
			if c.ResistiveA > 0 || c.MotorA > 0 || c.LampA > 0 {
				p.judgeContact(d, i, c)
			}
		}
	}
}

func (p *Pass) judgeContact(d *model.Device, i int, c part.Contact) {
	amps, step := 0.0, (*solve.State)(nil)
	for _, s := range states(p.Sizes.Hot) {
		if a := math.Abs(s.ContactA[d.ID][i]); !cranking(s) && a > amps {
			amps, step = a, s
		}
	}
	if step == nil {
		return
	}
	sort := p.sortBehind(d, c, step)
	limit, said := rating(c, sort)
	if limit <= 0 || amps <= limit {
		return
	}
	f := diag.Finding{
		At: c.At,
		Msg: fmt.Sprintf("%s switches %s of %s load in %s; its contact is good for %s of it", d.Name,
			quantity.Text(amps, quantity.Current), sort, step.Step.Name, quantity.Text(limit, quantity.Current)),
		Detail: "Fit a contact rated for that load, or give each load a relay of its own.",
		Values: []diag.Value{{Name: "current", Got: amps, Limit: limit, Unit: "A", Bound: diag.AtMost}},
	}
	if !said && amps <= c.ResistiveA {
		f.Severity = diag.Note
		f.Detail = fmt.Sprintf("Its %s rating is not in the draft; usual is 17/30 of the resistive one. State it from the sheet.", sort)
	}
	p.Report(f)
}

// rating gives the contact's rating for a sort of load; said is false where
// it is only the usual share of the resistive one.
func rating(c part.Contact, sort part.LoadType) (amps float64, said bool) {
	switch {
	case sort == part.MotorLoad && c.MotorA > 0:
		return c.MotorA, true
	case sort == part.LampLoad && c.LampA > 0:
		return c.LampA, true
	case sort == part.MotorLoad || sort == part.LampLoad:
		return gauge.MotorShareOfContact * c.ResistiveA, false
	}
	return c.ResistiveA, true
}

// sortBehind tells what sort of load a contact feeds: the hardest of those
// whose current passes a wire at its terminals and which draw in the step.
func (p *Pass) sortBehind(d *model.Device, c part.Contact, s *solve.State) part.LoadType {
	sort := part.ResistiveLoad
	reached := p.beyond(d, c)
	p.eachDraw(func(o *model.Device, i int, w part.Draw) {
		t := pinOf(o, w.Plus)
		if t == nil || !reached[p.Nets.Of[t.ID]] || math.Abs(s.DrawA[o.ID][i]) < 0.2*w.Amps {
			return
		}
		if w.Type == part.MotorLoad || w.Type == part.LampLoad && sort != part.MotorLoad {
			sort = w.Type
		}
	})
	return sort
}

// beyond gives the nets that a contact leads on to, through fuses, further
// contacts and diodes but not back through itself.
func (p *Pass) beyond(d *model.Device, c part.Contact) []bool {
	next := make([][]int, len(p.Nets.Members))
	for _, o := range p.Model.Devices {
		if o == d || o.Kind.Supplies != nil {
			continue
		}
		for _, w := range p.ways(o) {
			next[w.from] = append(next[w.from], w.to)
		}
	}
	return spread(len(next), next, p.netsOf(nil, d, c.B))
}

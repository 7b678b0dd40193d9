package check

import (
	"cmp"
	"fmt"
	"math"
	"slices"

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
	Equation: "steady current into each sort of load <= rating for it; without one: 17/30 of the resistive rating for motors and lamps (a note)",
	Figures:  []string{"relay-motor"},
	Misses:   "Inrush against the make rating, and the life that a hard-worked contact has left. What flows only while the starter turns is not judged.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  40A  bolt-down  from G1 6in
fuse    F2  5A
switch  S1  closed when running
relay   K1  contact 30A  motor 17A  suppress resistor
motor   M1  draws 20A 13.5V
stud    E1  on frame  M6
wire 1  G1.+   F1.1   8AWG   6in
wire 2  F1.2   K1.30  8AWG   2ft
wire 3  K1.87  M1.+   8AWG   4ft
wire 4  M1.-   E1     8AWG   1ft
wire 5  F1.2   F2.1   8AWG   6in
wire 6  F2.2   S1.1   18AWG  2ft
wire 7  S1.2   K1.86  18AWG  2ft
wire 8  K1.85  E1     18AWG  1ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  40A  bolt-down  from G1 6in
fuse    F2  5A
switch  S1  closed when running
relay   K1  contact 40A  motor 25A  suppress resistor
motor   M1  draws 20A 13.5V
stud    E1  on frame  M6
wire 1  G1.+   F1.1   8AWG   6in
wire 2  F1.2   K1.30  8AWG   2ft
wire 3  K1.87  M1.+   8AWG   4ft
wire 4  M1.-   E1     8AWG   1ft
wire 5  F1.2   F2.1   8AWG   6in
wire 6  F2.2   S1.1   18AWG  2ft
wire 7  S1.2   K1.86  18AWG  2ft
wire 8  K1.85  E1     18AWG  1ft
`,
	Run: contactOverloaded,
})

func contactOverloaded(p *Pass) {
	for _, d := range p.Model.Devices {
		for i, c := range d.Switches() {
			if c.ResistiveA > 0 || c.MotorA > 0 || c.LampA > 0 {
				p.judgeContact(d, i, c)
			}
		}
	}
}

// judgeContact holds the currents of a contact against its ratings: motors
// and lamps each against their own, all together against the resistive one.
func (p *Pass) judgeContact(d *model.Device, i int, c part.Contact) {
	if p.mostThrough(d, i) <= leastRating(c) {
		return
	}
	forward, backward := p.loadsOf(d, c.A, c.B), p.loadsOf(d, c.B, c.A)
	for _, sort := range []part.LoadType{part.MotorLoad, part.LampLoad, part.ResistiveLoad} {
		limit, said := rating(c, sort)
		amps, step := 0.0, (*solve.State)(nil)
		for _, s := range states(p.Sizes.Hot) {
			through, loads := s.ContactA.Of(d, i), forward
			if through < 0 {
				loads = backward
			}
			if a := sumOf(s, loads, sort, math.Abs(through)); !cranking(s) && a > amps {
				amps, step = a, s
			}
		}
		if limit > 0 && amps > limit {
			p.reportContact(d, c, sort, amps, limit, step, said)
			return
		}
	}
}

func (p *Pass) reportContact(d *model.Device, c part.Contact, sort part.LoadType, amps, limit float64, s *solve.State, said bool) {
	f := diag.Finding{
		At: c.At,
		Msg: fmt.Sprintf("%s switches %s of %s load in %s; its contact is good for %s of it", d.Name,
			quantity.Text(amps, quantity.Current), sort, s.Step.Name, quantity.Text(limit, quantity.Current)),
		Detail: "Fit a contact rated for that load, or give each load a relay of its own.",
		Values: []diag.Value{{Name: "current", Got: amps, Limit: limit, Unit: "A", Bound: diag.AtMost}},
	}
	if !said && amps <= c.ResistiveA {
		f.Severity = diag.Note
		f.Detail = fmt.Sprintf("Its %s rating is not in the draft; usual is 17/30 of the resistive one. State it from the sheet.", sort)
	}
	p.Report(f)
}

// mostThrough is the largest current of a contact outside of starting.
func (p *Pass) mostThrough(d *model.Device, i int) float64 {
	most := 0.0
	for _, s := range states(p.Sizes.Hot) {
		if !cranking(s) {
			most = max(most, math.Abs(s.ContactA.Of(d, i)))
		}
	}
	return most
}

// leastRating is the current that a contact may switch into any sort of load.
func leastRating(c part.Contact) float64 {
	least := math.Inf(1)
	for _, sort := range []part.LoadType{part.MotorLoad, part.LampLoad, part.ResistiveLoad} {
		if amps, _ := rating(c, sort); amps > 0 {
			least = min(least, amps)
		}
	}
	return least
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

// behind is a load whose current a contact makes and breaks.
type behind struct {
	device *model.Device
	index  int
	sort   part.LoadType
	turned bool // counts when its current flows against its stated direction
}

// loadsOf lists the loads that a contact switches when its current flows from
// one terminal to the other: those fed from beyond it, and those that return
// to it.
func (p *Pass) loadsOf(d *model.Device, from, to string) []behind {
	g, draws := p.graph(), p.drawsByNet()
	var list []behind
	for n := range g.beyond(g.on, p.netOf(d, to), d) {
		list = append(list, draws.fed[n]...)
	}
	if near := p.netOf(d, from); near >= 0 && !p.sides().plus[near] { // else it feeds, and nothing returns to it
		for n := range g.beyond(g.back, near, d) {
			list = append(list, draws.led[n]...)
		}
	}
	slices.SortFunc(list, func(a, b behind) int {
		return cmp.Or(a.device.ID-b.device.ID, a.index-b.index)
	})
	return slices.CompactFunc(list, func(a, b behind) bool { return a == b })
}

// sumOf adds up the currents of one sort of load, never more than passes the
// contact; that is also the sum for the resistive sort, which limits all loads.
func sumOf(s *solve.State, loads []behind, sort part.LoadType, through float64) float64 {
	if sort == part.ResistiveLoad {
		return through
	}
	sum := 0.0
	for _, l := range loads {
		amps := s.DrawA.Of(l.device, l.index)
		if l.sort == sort && amps < 0 == l.turned {
			sum += math.Abs(amps)
		}
	}
	return min(sum, through)
}

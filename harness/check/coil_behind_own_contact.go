package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "coil-behind-own-contact",
	Severity: diag.Fault,
	Title:    "A relay's coil gets its current only by way of the relay's own contact.",
	Why: "As long as the relay is out its coil has nothing, so it never pulls in; kept in by hand once, it never lets go. " +
		"Feed the coil from ahead of the contact. Where the relay is to hold itself, a button beside the contact starts it.",
	Equation: "with the relay's contact held open a way still leads to its coil, and back from it",
	Misses:   "A relay that pulls in by a button and that nothing lets go again. A coil that nothing reaches: load-without-feed. A relay whose rest contact is wired: relay-chatter.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery  G1  grounds-to frame
fuse     F1  10A  from G1 6in
relay    K1  suppress resistor
stud     E1  on frame  M6
lamp     P1  21W  grounds-to frame
wire 1  G1.+   F1.1   6in
wire 2  F1.2   K1.30  1ft
wire 3  K1.87  P1.1   1ft
wire 4  K1.87  K1.86  1ft
wire 5  K1.85  E1     1ft
together K1.87  3 4
`,
	Good: `battery  G1  grounds-to frame
fuse     F1  10A  from G1 6in
switch   S1  closed when running
relay    K1  suppress resistor
stud     E1  on frame  M6
lamp     P1  21W  grounds-to frame
wire 1  G1.+   F1.1   6in
wire 2  F1.2   K1.30  1ft
wire 3  K1.87  P1.1   1ft
wire 4  S1.2   K1.86  1ft
wire 5  K1.85  E1     1ft
wire 6  F1.2   S1.1   1ft
together F1.2  2 6
`,
	Run: coilBehindOwnContact,
})

func coilBehindOwnContact(p *Pass) {
	r, waits := p.reach(), p.waiting()
	for _, d := range p.Model.Devices {
		coil, ok := ownCoil(d)
		if !ok || !waits[d.ID] {
			continue
		}
		a, b := p.netOf(d, coil.CoilA), p.netOf(d, coil.CoilB)
		if a < 0 || b < 0 || !r.plus[a] || !r.minus[b] {
			continue // told of by other rules, or worked the other way round
		}
		left, shut := p.without(d), p.with(d)
		switch {
		case !shut.works(d, coil.CoilA, coil.CoilB): // for another reason
		case !left.plus[a]:
			p.reportOwnContact(d, coil.CoilA, "gets its feed")
		case !left.minus[b]:
			p.reportOwnContact(d, coil.CoilB, "has its way back")
		}
	}
}

// waiting marks the devices, by ID, of which it takes a closer look whether
// their coils can do without their own contacts. A coil that is come to while
// all of these are held open can; then the contact counts, and more may be
// come to.
func (p *Pass) waiting() []bool {
	c := &cut{p: p, from: p.graph().sources, waits: make([]bool, len(p.Model.Devices))}
	coils := map[*model.Device]part.Contact{}
	for _, d := range p.Model.Devices {
		if coil, ok := ownCoil(d); ok {
			coils[d], c.waits[d.ID] = coil, true
		}
	}
	c.grown()
	for again := true; again; {
		again = false
		for d, coil := range coils {
			a, b := p.netOf(d, coil.CoilA), p.netOf(d, coil.CoilB)
			if a >= 0 && b >= 0 && c.plus[a] && c.minus[b] {
				c.waits[d.ID], again = false, true
				delete(coils, d)
			}
		}
		if again {
			c.grow()
		}
	}
	return c.waits
}

// ownCoil gives a make contact of a device that a coil of the device works. By
// a rest contact a coil pulls in, and lets go: relay-chatter tells of that.
func ownCoil(d *model.Device) (part.Contact, bool) {
	for _, c := range d.Switches() {
		if c.AtRest && (wiredAt(d, c.A) && wiredAt(d, c.B)) {
			return c, false
		}
	}
	for _, c := range d.Switches() {
		if c.CoilA != "" && c.CoilB != "" && !c.AtRest {
			return c, true
		}
	}
	return part.Contact{}, false
}

func (p *Pass) reportOwnContact(d *model.Device, pin, what string) {
	p.Report(diag.Finding{
		At:      d.At,
		Msg:     fmt.Sprintf("%s %s only by the contact of %s itself, so it never pulls in", shown(d, pin), what, d.Name),
		Detail:  "Take the coil's wire to a place that is live without this relay.",
		Related: feedingWires(d, pin),
	})
}

package check

import (
	"fmt"
	"math"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "load-on-rest-contact",
	Severity: diag.Warning,
	Title:    "A load hangs on the rest contact of a relay: it is on with the key off and dead in running.",
	Why: "A change-over relay has two ways out. The rest contact is closed while its coil is without current, so what hangs on it runs with everything off " +
		"and stops as soon as it is commanded: the fan empties the battery overnight and lets the engine boil. " +
		"Move the wire to the other contact. If the load is really meant to work only at rest, accept the finding with that reason.",
	Equation: "with the key off less than a fifth of the load's current comes by a rest contact, or the load draws that much in running",
	Figures:  []string{"din-72552"},
	Misses:   "A coil that is worked the wrong way round. A load that another way feeds in running.",
	Needs:    Bonded,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  30A  from G1 6in
relay   K1  change-over  contact 40A  motor 25A  suppress resistor
switch  S1  closed when running
motor   M1  draws 18A 13.5V  grounds-to frame
stud    E1  on frame  M6
splice  J1
wire 1  G1.+    F1.1   10AWG  6in
wire 2  F1.2    J1     10AWG  1ft
wire 3  J1      K1.30  10AWG  1ft
wire 4  K1.87a  M1.+   10AWG  3ft
wire 5  J1      S1.1   10AWG  1ft
wire 6  S1.2    K1.86  10AWG  1ft
wire 7  K1.85   E1     10AWG  1ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  30A  from G1 6in
relay   K1  change-over  contact 40A  motor 25A  suppress resistor
switch  S1  closed when running
motor   M1  draws 18A 13.5V  grounds-to frame
stud    E1  on frame  M6
splice  J1
wire 1  G1.+   F1.1   10AWG  6in
wire 2  F1.2   J1     10AWG  1ft
wire 3  J1     K1.30  10AWG  1ft
wire 4  K1.87  M1.+   10AWG  3ft
wire 5  J1     S1.1   10AWG  1ft
wire 6  S1.2   K1.86  10AWG  1ft
wire 7  K1.85  E1     10AWG  1ft
`,
	Run: func(p *Pass) {
		for _, r := range p.onRest() {
			p.reportOnRest(r)
		}
	},
})

// onRest is a load that hangs on a rest contact.
type onRest struct {
	behind
	relay *model.Device
	rest  part.Contact
	steps []string // with the key off, in which it draws its current
	amps  float64
}

// onRest lists the loads that a rest contact feeds with the key off and that
// are dead in running.
func (p *Pass) onRest() []onRest {
	var list []onRest
	for _, d := range p.Model.Devices {
		for i, c := range d.Switches() {
			if !c.AtRest || c.CoilA == "" {
				continue
			}
			for _, b := range append(p.loadsOf(d, c.A, c.B), p.loadsOf(d, c.B, c.A)...) {
				if r := p.restOf(onRest{behind: b, relay: d, rest: c}, i); len(r.steps) > 0 {
					list = append(list, r)
				}
			}
		}
	}
	return list
}

// restOf fills in where the load draws by the contact; without steps where it
// also draws in running.
func (p *Pass) restOf(r onRest, contact int) onRest {
	w := r.device.Draws()[r.index]
	if w.Coil || w.Starter || w.Amps <= 0 {
		return r
	}
	for _, s := range states(p.Sizes.Hot) {
		amps := math.Abs(s.DrawA.Of(r.device, r.index))
		on := amps >= onShare*w.Amps
		switch {
		case on && s.Step.Engine == part.Running:
			r.steps = nil
			return r
		case on && keyOff(s) && math.Abs(s.ContactA.Of(r.relay, contact)) >= onShare*w.Amps:
			r.steps, r.amps = append(r.steps, s.Step.Name), max(r.amps, amps)
		}
	}
	return r
}

// keyOff reports whether a step is one with the key off and the engine still.
func keyOff(s *solve.State) bool {
	return s.Step.Key == "off" && s.Step.Engine == part.Still
}

func (p *Pass) reportOnRest(r onRest) {
	at := pinOf(r.relay, r.rest.B)
	f := diag.Finding{
		At: r.device.At,
		Msg: fmt.Sprintf("%s draws %s in %s and none in running; it hangs on %s", r.device.Name, quantity.Text(r.amps, quantity.Current),
			strings.Join(r.steps, " and "), shown(r.relay, r.rest.B)),
		Detail: "Accept the finding where the load is meant to work at rest only.",
		Values: []diag.Value{{Name: "current with the key off", Got: r.amps, Unit: "A"}},
	}
	for _, e := range at.Ends {
		f.At = e.Wire.ToAt
		if e.From {
			f.At = e.Wire.FromAt
		}
	}
	for _, c := range r.relay.Switches() {
		if !c.AtRest && c.CoilA == r.rest.CoilA && c.A == r.rest.A {
			f.Msg += ", meant " + c.B + "?"
			f.Detail = fmt.Sprintf("Move its wire to %s. ", shown(r.relay, c.B)) + f.Detail
		}
	}
	p.Report(f)
}

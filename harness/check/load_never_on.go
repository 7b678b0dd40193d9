package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// onShare is the share of its stated current from which a load counts as on.
const onShare = 0.2

var _ = define(Rule{
	ID:       "load-never-on",
	Severity: diag.Warning,
	Title:    "A load draws its current in no step of use.",
	Why: "Wires and fuses are sized from the currents of the steps. A load that is never on in any of them leaves its wires sized for nothing, " +
		"and nobody has looked at its drop. Say when its switch is closed or its output is on, or add a step in which it works.",
	Equation: "in at least one step the load draws a fifth of its current or more",
	Misses:   "Anything while another rule reports a fault, which may be why a load is never on. Loads that are on together in the vehicle but never in the same step. A device whose coil is a spare; what hangs on a relay that is in the vehicle already and whose coil is not drawn. A starter: starter-never-turns.",
	Needs:    Sound,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
switch  S1  open
lamp    P1  21W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.1  4ft
wire 3  S1.2  P1.1  4ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
switch  S1  closed when running
lamp    P1  21W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.1  4ft
wire 3  S1.2  P1.1  4ft
`,
	Run: loadNeverOn,
})

func loadNeverOn(p *Pass) {
	r, starved, unseen := p.reach(), p.starved(), p.behindUnseen()
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		plus, minus := pinOf(d, w.Plus), pinOf(d, w.Minus)
		if w.Amps <= 0 || isStarter(d) || starved[d] || workedElsewhere(d) || unseen[loadOf{d, i}] || plus == nil || minus == nil || !r.plus[p.Nets.Of[plus.ID]] || !r.minus[p.Nets.Of[minus.ID]] {
			return // told of by other rules
		}
		most, fed := 0.0, false
		for _, s := range states(p.Sizes.Hot) {
			most = math.Max(most, math.Abs(s.DrawA.Of(d, i)))
			fed = fed || atReference(s, d, w)
		}
		if fed || most >= onShare*w.Amps {
			return
		}
		p.Report(diag.Finding{
			At:     w.At,
			Msg:    fmt.Sprintf("%s is on in no step, so its wires were sized without its %.3g A", d.Name, w.Amps),
			Detail: "Say when its switch is closed (closed when running), when its output is on, or add a step.",
			Values: []diag.Value{{Name: "current", Got: most, Limit: onShare * w.Amps, Unit: "A", Bound: diag.AtLeast}},
		})
	})
}

// atReference reports whether electronics have volts: fed by a controller's
// 5 V they draw little of what they would on the battery.
func atReference(s *solve.State, d *model.Device, w part.Draw) bool {
	volts, ok := feedV(s, d, w)
	return ok && w.Type == part.ElectronicLoad && !w.Constant && volts >= deadBelowV
}

// workedElsewhere reports whether a coil of a device has no wire on purpose:
// what works it is not in the draft.
func workedElsewhere(d *model.Device) bool {
	for _, c := range d.Switches() {
		if t := pinOf(d, c.CoilA); t != nil && leftOut(t) {
			return true
		}
	}
	return false
}

// behindUnseen gives the loads behind a contact of a device that is in the
// vehicle already and whose coil is not drawn: it may well pull in.
func (p *Pass) behindUnseen() map[loadOf]bool {
	set := map[loadOf]bool{}
	for _, d := range p.Model.Devices {
		if !d.Existing || !workedElsewhere(d) {
			continue
		}
		for _, c := range d.Switches() {
			for _, b := range append(p.loadsOf(d, c.A, c.B), p.loadsOf(d, c.B, c.A)...) {
				set[loadOf{b.device, b.index}] = true
			}
		}
	}
	return set
}

package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "starter-out-of-step",
	Severity: diag.Danger,
	Title:    "A starter turns when nobody starts the engine.",
	Why: "A starter wire on the wrong side of a change-over switch, on a run contact of the key or on a rest contact has the starter run as soon as the battery is joined, " +
		"or stay engaged when the engine runs: the vehicle moves, or the starter burns.",
	Equation: "the solenoid is in only in steps in which the engine is cranked",
	Misses:   "A contact that welds. A safety switch that is left out: it can't be seen that one was meant.",
	Needs:    Bonded,
	Bad: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S1  "Start"  change-over  closed when crank
spare   S1.NO
wire 1  G1.+   M1.B    2AWG   2ft
wire 2  G1.+   F1.1    10AWG  6in
wire 3  F1.2   S1.COM  8AWG   2ft
wire 4  S1.NC  M1.S    8AWG   2ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S1  "Start"  change-over  closed when crank
spare   S1.NC
wire 1  G1.+   M1.B    2AWG   2ft
wire 2  G1.+   F1.1    10AWG  6in
wire 3  F1.2   S1.COM  8AWG   2ft
wire 4  S1.NO  M1.S    8AWG   2ft
`,
	Run: starterOutOfStep,
})

func starterOutOfStep(p *Pass) {
	p.eachSolenoid(func(i int, d *model.Device, coil part.Draw) {
		var in []*solve.State
		for _, s := range states(p.Sizes.Hot) {
			if s.Relay[i].On && !cranking(s) {
				in = append(in, s)
			}
		}
		if len(in) > 0 {
			p.reportIn(d, coil, in)
		}
	})
}

// eachSolenoid calls f for every starter's solenoid, with its index among the
// relays and the winding by which it is called for.
func (p *Pass) eachSolenoid(f func(i int, d *model.Device, coil part.Draw)) {
	for i, r := range p.Sizes.Hot.Relays {
		if r.Kind != part.SolenoidState {
			continue
		}
		for _, w := range r.Device.Draws() {
			if w.Coil {
				f(i, r.Device, w)
				break
			}
		}
	}
}

// asked reports whether a winding has a feed and a return at all: what lacks
// one is told by other rules.
func (p *Pass) asked(d *model.Device, w part.Draw) bool {
	plus, minus := p.netOf(d, w.Plus), p.netOf(d, w.Minus)
	return wiredAt(d, w.Plus) && plus >= 0 && minus >= 0 && p.reach().plus[plus] && p.reach().minus[minus]
}

func (p *Pass) reportIn(d *model.Device, w part.Draw, in []*solve.State) {
	s := in[0]
	volts, _ := feedV(s, d, w)
	more := ""
	if n := len(in) - 1; n == 1 {
		more = " and in one more step"
	} else if n > 1 {
		more = fmt.Sprintf(" and in %d more steps", n)
	}
	p.Report(diag.Finding{
		At: d.At,
		Msg: fmt.Sprintf("%s turns in %s%s, with nobody starting: %s has %s", d.Name, s.Step.Name, more, shown(d, w.Plus),
			quantity.Text(volts, quantity.Voltage)),
		Detail:  "Take its wire to the contact that is closed while the engine is started, and then alone.",
		Values:  []diag.Value{{Name: "volts in " + s.Step.Name, Got: volts, Limit: deadBelowV, Unit: "V", Bound: diag.AtMost}},
		Related: p.cameBy(s, d, w.Plus, w.Amps),
	})
}

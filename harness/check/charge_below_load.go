package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "charge-below-load",
	Severity: diag.Warning,
	Title:    "The loads take more than the alternator gives, so that the battery runs flat on the road.",
	Why: "With all that is on in a step, averaged over its duty, the machine gives less than is taken; the battery gives the rest until it is flat. " +
		"At speed the rated output counts, at idle what the draft states of it (idle 40A). " +
		"Where it states nothing for idle, a published machine's share of its rating gives a hint, which is a note.",
	Equation: "sum of the currents of all sources, less what duty takes off <= rated output, and <= output at idle",
	Figures:  []string{"alternator-idle", "budget-factor"},
	Misses:   "The charge that a battery takes after a start. How long a step lasts: a minute of work lamps at idle does no harm. That a hot machine gives less than its label.",
	Needs:    Bonded,
	Polar:    true,
	Bad: `battery    G1  cca 540A  grounds-to frame
alternator G2  30A  setpoint 14.3V  grounds-to frame
fuse       F1  60A  bolt-down  from G1 6in
fuse       F2  60A  bolt-down  from G1 6in
switch     S1  "Heater"  closed when running
heater     H1  draws 38A  grounds-to frame
wire 1  G1.+  F1.1   6AWG  6in
wire 2  F1.2  G2.B+  4AWG  2ft
wire 3  G1.+  F2.1   6AWG  6in
wire 4  F2.2  S1.1   6AWG  2ft
wire 5  S1.2  H1.+   6AWG  2ft
`,
	Good: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  idle 42A  grounds-to frame
fuse       F1  80A  bolt-down  from G1 6in
fuse       F2  60A  bolt-down  from G1 6in
switch     S1  "Heater"  closed when running
heater     H1  draws 38A  grounds-to frame
wire 1  G1.+  F1.1   6AWG  6in
wire 2  F1.2  G2.B+  4AWG  2ft
wire 3  G1.+  F2.1   6AWG  6in
wire 4  F2.2  S1.1   6AWG  2ft
wire 5  S1.2  H1.+   6AWG  2ft
`,
	Run: chargeBelowLoad,
})

func chargeBelowLoad(p *Pass) {
	var speed, idle, hint Balance
	for _, b := range Balances(p.Sizes.Hot) {
		if b.NeedA > b.SpeedA && b.NeedA > speed.NeedA {
			speed = b
		}
		if b.IdleSaid && b.NeedA > b.IdleA && b.NeedA > idle.NeedA {
			idle = b
		}
		if !b.IdleSaid && b.NeedA > gauge.IdleShare*b.SpeedA && b.NeedA > hint.NeedA {
			hint = b
		}
	}
	switch {
	case speed.Step != nil:
		p.reportBalance(speed, "rated to give", speed.SpeedA, 0)
	case idle.Step != nil:
		p.reportBalance(idle, "gives at idle", idle.IdleA, 0)
	case hint.Step != nil:
		p.reportBalance(hint, "may give at idle", gauge.IdleShare*hint.SpeedA, diag.Note)
	}
}

func (p *Pass) reportBalance(b Balance, has string, haveA float64, severity diag.Severity) {
	d := b.Machines[0]
	f := diag.Finding{
		At:       d.At,
		Severity: severity,
		Msg: fmt.Sprintf("in %s %s are taken on average, and %s %s %s", b.Step.Name, quantity.Text(b.NeedA, quantity.Current),
			d.Name, has, quantity.Text(haveA, quantity.Current)),
		Detail: "State what it gives at idle (idle 40A), switch something off in that step, or fit a larger machine.",
		Values: []diag.Value{{Name: "taken on average", Got: b.NeedA, Limit: haveA, Unit: "A", Bound: diag.AtMost}},
	}
	if n := len(b.Machines); n > 1 {
		f.Msg = fmt.Sprintf("in %s %s are taken on average, and the %d machines together: %s %s", b.Step.Name,
			quantity.Text(b.NeedA, quantity.Current), n, has, quantity.Text(haveA, quantity.Current))
	}
	for _, s := range p.drawing(states(p.Sizes.Hot)[p.stateOf(b)]) {
		if s.amps >= math.Max(leastDrainA, b.NeedA/10) {
			f.Related = append(f.Related, diag.Related{At: s.draw.At, Msg: s.device.Name + " " + quantity.Text(s.amps*s.draw.DutyFrac, quantity.Current)})
		}
	}
	p.Report(f)
}

// stateOf gives the index of the state of a balance among the solved ones.
func (p *Pass) stateOf(b Balance) int {
	for i, s := range states(p.Sizes.Hot) {
		if s.Step == b.Step {
			return i
		}
	}
	return 0
}

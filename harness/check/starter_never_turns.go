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
	ID:       "starter-never-turns",
	Severity: diag.Fault,
	Title:    "A starter stays out in every step in which the engine is cranked.",
	Why: "Its solenoid has no volts when the key stands at start: the start line of the key is not the contact that it hangs on, a button is open, or a relay is not asked for. " +
		"Without the starter's current nothing of cranking is judged either: no sag, no relay that drops out, no feed that dies. A clean report would then say nothing.",
	Equation: "in at least one step of cranking the solenoid is in",
	Misses:   "Anything while another rule reports a fault, which may be why. A solenoid that has too few volts: solenoid-starved.",
	Needs:    Sound,
	Bad: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S1  open
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  10AWG  6in
wire 3  F1.2  S1.1  8AWG   2ft
wire 4  S1.2  M1.S  8AWG   2ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S1  closed when crank
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  10AWG  6in
wire 3  F1.2  S1.1  8AWG   2ft
wire 4  S1.2  M1.S  8AWG   2ft
`,
	Run: starterNeverTurns,
})

func starterNeverTurns(p *Pass) {
	starved := p.starved()
	p.eachSolenoid(func(i int, d *model.Device, coil part.Draw) {
		var out *solve.State
		for _, s := range states(p.Sizes.Hot) {
			switch on := s.Relay[i].On; {
			case on:
				return
			case s.Step.Engine == part.Turning && out == nil:
				out = s
			}
		}
		if out == nil || starved[d] || workedElsewhere(d) || !p.asked(d, coil) {
			return
		}
		volts, _ := feedV(out, d, coil)
		p.Report(diag.Finding{
			At: d.At,
			Msg: fmt.Sprintf("%s stays out in %s: %s has %s", d.Name, out.Step.Name, shown(d, coil.Plus),
				quantity.Text(volts, quantity.Voltage)),
			Detail: "Follow its wire to the contact that has to close: the key's start line, a button (closed when crank) or a relay's coil. " +
				"Without it no sag, no relay and no feed of cranking is judged.",
			Values:  []diag.Value{{Name: "volts in " + out.Step.Name, Got: volts, Limit: deadBelowV, Unit: "V", Bound: diag.AtLeast}},
			Related: feedingWires(d, coil.Plus),
		})
	})
}

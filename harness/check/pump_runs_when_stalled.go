package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "pump-runs-when-stalled",
	Severity: diag.Danger,
	Title:    "The fuel pump runs while the engine stands with the key on.",
	Why: "After a stall or a crash the key is usually still on. A pump that follows the key, not the engine, goes on pumping fuel, " +
		"perhaps out of a torn line onto hot metal. " +
		"Let the controller work the pump relay, so that it stops a second or two after the engine does, or cut it by an inertia or oil-pressure switch.",
	Equation: "volts across the pump in koeo and in stalled < 1 V",
	Misses:   "A cut that only opens on impact is drawn closed here, so the pump is reported; accept it with that reason.",
	Needs:    States,
	Bad: `battery   G1  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run  B IGN
motor     M1  fuel  draws 4A 13.5V
stud      E1  on frame  M6
wire 1  G1.+    F1.1  14AWG  6in
wire 2  F1.2    S1.B  14AWG  2ft
wire 3  S1.IGN  M1.+  14AWG  4ft
wire 4  M1.-    E1    1ft
`,
	Good: `battery   G1  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run  B IGN
switch    S2  "Oil pressure"  closed when running
motor     M1  fuel  draws 4A 13.5V
stud      E1  on frame  M6
wire 1  G1.+    F1.1  14AWG  6in
wire 2  F1.2    S1.B  14AWG  2ft
wire 3  S1.IGN  S2.1  14AWG  3ft
wire 4  M1.-    E1    1ft
wire 5  S2.2    M1.+  14AWG  1ft
`,
	Run: pumpRunsWhenStalled,
})

func pumpRunsWhenStalled(p *Pass) {
	p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
		if !w.Pump {
			return
		}
		for _, s := range states(p.Sizes.Hot) {
			if s.Step.Engine != part.Still || s.Step.Name == "prime" || s.Step.LastS > 0 || s.Step.Key != "run" {
				continue
			}
			volts, ok := feedV(s, d, w)
			if !ok || volts < deadBelowV {
				continue
			}
			p.Report(diag.Finding{
				At:      d.At,
				Msg:     fmt.Sprintf("%s runs in %s, with the engine still: it has %s", d.Name, s.Step.Name, quantity.Text(volts, quantity.Voltage)),
				Detail:  "Let the controller's pump output work its relay, on only in prime, crank and running.",
				Values:  []diag.Value{{Name: "volts in " + s.Step.Name, Got: volts, Limit: deadBelowV, Unit: "V", Bound: diag.AtMost}},
				Related: feedingWires(d, w.Plus),
			})
			return
		}
	})
}

package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "charge-path-drop",
	Severity: diag.Warning,
	Title:    "A charge path loses more volts at the machine's rated output than it may.",
	Why: "What is lost between the alternator and the battery is missing at the battery: it charges late and never gets full. " +
		"The loss is taken with the machine at its rated output into a flat battery, with the copper as warm as that makes it. " +
		"The lead may lose 0.4 V at 12 V and the way back 0.2 V, twice that at 24 V; a circuit that states a drop is held to that, out and back.",
	Equation: "sum(I R) at rated output <= limit",
	Figures:  []string{"journal-limits", "drop-guide-part"},
	Misses:   "A machine that senses the volts at the battery makes up for some of it; loose and corroded joints take more.",
	Needs:    States,
	Bad: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
fuse       F1  80A  bolt-down  from G1 6in
wire 1  G1.+  F1.1   6AWG  6in
wire 2  F1.2  G2.B+  6AWG  14ft
`,
	Good: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
fuse       F1  80A  bolt-down  from G1 6in
wire 1  G1.+  F1.1   4AWG  6in
wire 2  F1.2  G2.B+  4AWG  14ft
`,
	Run: chargePathDrop,
})

func chargePathDrop(p *Pass) {
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	for _, x := range p.Sizes.Charges {
		if x.DropV <= x.LimitV {
			continue
		}
		f := diag.Finding{
			At: x.Device.At,
			Msg: fmt.Sprintf("%s at its rated %s loses %s on the %s; the limit is %s", x.Device.Name,
				quantity.Text(x.RatedA, quantity.Current), volts(x.DropV), x.Side, volts(x.LimitV)),
			Values: []diag.Value{{Name: "drop", Got: x.DropV, Limit: x.LimitV, Unit: "V", Bound: diag.AtMost}},
		}
		most := 0.0
		for _, w := range x.Wires {
			k := p.Sizes.Wires[w.ID]
			if v := x.Amps(w) * k.Conductor.Ohm; v > most {
				most = v
				f.Detail = fmt.Sprintf("Wire %s, %s, takes the most of it. Give it more copper or a shorter way.", w.Number, k.Conductor.Size.Name)
			}
		}
		p.Report(f)
	}
}

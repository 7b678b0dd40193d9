package check

import (
	"fmt"

	"legwork/harness/diag"
)

var _ = define(Rule{
	ID:       "load-reversed",
	Severity: diag.Danger,
	Title:    "A load that minds its polarity has feed and return exchanged.",
	Why: "Electronics connected the wrong way round die at once, often with smoke, since their input diode shorts the feed. " +
		"A motor turns backwards: a pump then moves nothing, a fan blows against the wind. " +
		"Lamps, heaters and plain coils don't mind and are not judged.",
	Equation: "the positive terminal can be fed and the negative one leads back; not the other way round",
	Misses:   "A device whose draft has its terminals named the wrong way round.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
motor   M1  draws 5A 13.5V
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  M1.-  4ft
wire 3  M1.+  E1    1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
motor   M1  draws 5A 13.5V
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  M1.+  4ft
wire 3  M1.-  E1    1ft
`,
	Run: loadReversed,
})

func loadReversed(p *Pass) {
	for _, l := range p.lays() {
		if !l.reversed {
			continue
		}
		p.Report(diag.Finding{
			At: l.at,
			Msg: fmt.Sprintf("%s, the positive side of %s, leads to ground, and %s is fed", shown(l.device, l.plus), l.device.Name,
				shown(l.device, l.minus)),
			Detail:  "Exchange its two wires.",
			Related: append(feedingWires(l.device, l.plus), feedingWires(l.device, l.minus)...),
		})
	}
}

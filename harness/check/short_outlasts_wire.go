package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "short-outlasts-wire",
	Severity: diag.Danger,
	Title:    "A short at a wire's far end heats it past its limit before the fuse opens.",
	Why: "A fuse opens fast only if enough current flows. At the end of a long thin wire a short may draw so little " +
		"that the fuse takes seconds, and the wire takes the heat meanwhile. Use a smaller fuse or a thicker wire.",
	Equation: "I^2 t <= (k S)^2, with the longest time the fuse may take at that current",
	Figures:  []string{"adiabatic-k"},
	Misses:   "A short through rust or a wet plug, which draws less than a dead short.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  20A  from G1 6in
lamp    P1  5W  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  18AWG  55ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
lamp    P1  5W  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  18AWG  55ft
`,
	Run: func(p *Pass) {
		p.failing(gauge.FloorShort, func(w size.Wire, l gauge.Limit) {
			fuse, wire := w.Judgement.Case.FuseName, w.Conductor.Size.Name
			f := diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("a short at the end of wire %s draws %.0f A; %s opens soon only from %.0f A", w.Wire.Number,
					w.Judgement.Case.ShortA, fuse, l.Asked),
				Detail: "Fit a smaller fuse, a thicker wire, or lead it a shorter way.",
				Values: []diag.Value{{Name: l.Name, Got: l.Got, Limit: l.Asked, Unit: l.Unit, Bound: diag.AtLeast}},
			}
			if l.Unit != "A" {
				f.Msg = fmt.Sprintf("before it opens on a short, %s may let %.0f A2s through wire %s; %s stands %.0f", fuse, l.Asked,
					w.Wire.Number, wire, l.Got)
			}
			f.Fix = p.thicker(w)
			p.Report(f)
		})
	},
})

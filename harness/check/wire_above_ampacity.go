package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "wire-above-ampacity",
	Severity: diag.Danger,
	Title:    "A wire carries more than it can in its place and its bundle.",
	Why: "A wire's table current holds at 30 C and alone. In a hot engine bay, and beside other loaded wires, it gets rid of less heat. " +
		"Above its ampacity the insulation ages fast, softens, and in the end bares the copper. Use the next size, or a cooler way.",
	Equation: "I <= table current x sqrt((class - place) / (class - 30)) x bundle factor",
	Figures:  []string{"ampacity-33cfr183"},
	Misses:   "Heat from an exhaust nearby that the place's temperature does not tell; current of a few seconds, such as cranking.",
	Needs:    States,
	Run: func(p *Pass) {
		p.failing("ampacity", func(w size.Wire, l gauge.Limit) {
			p.Report(diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("wire %s carries %s in %s; %s is good for %s there", w.Wire.Number,
					quantity.Text(l.Asked, quantity.Current), w.At, w.Conductor.Size.Name, quantity.Text(l.Got, quantity.Current)),
				Detail: fmt.Sprintf("Its way passes %.0f C, with %d loaded conductors together.", w.Judgement.Case.AmbientC, max(1, w.Loaded)),
				Values: []diag.Value{{Name: "current", Got: l.Asked, Limit: l.Got, Unit: "A", Bound: diag.AtMost}},
			})
		})
	},
})

package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "wire-too-thin",
	Severity: diag.Warning,
	Title:    "A wire is thinner than its place lets it be handled.",
	Why: "Very thin wire breaks at the crimp from vibration, and in a wet plug it is hard to seal. " +
		"Common practice stops at 20 AWG in a dry bundle and at 18 AWG where it is wet or where the wire runs alone.",
	Equation: "size >= 20 AWG dry in a bundle, 18 AWG wet or alone",
	Figures:  []string{"smallest-wire"},
	Misses:   "Wire in a moving part (door, lid, steering) wants fine strands and more copper.",
	Needs:    States,
	Run: func(p *Pass) {
		p.failing("mechanical", func(w size.Wire, l gauge.Limit) {
			p.Report(diag.Finding{
				At:     sizeSpan(w),
				Msg:    fmt.Sprintf("wire %s is %s; the least for its place is %.2f mm2", w.Wire.Number, w.Conductor.Size.Name, l.Asked),
				Values: []diag.Value{{Name: "area", Got: l.Got, Limit: l.Asked, Unit: "mm2", Bound: diag.AtLeast}},
			})
		})
	},
})

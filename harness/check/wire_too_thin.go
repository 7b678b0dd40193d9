package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
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
	Misses:   "Wire in a moving part (door, lid, steering) wants fine strands and more copper. Cores of a cable are not judged: the jacket carries them. Leads are not either: they are as the maker of their device made them.",
	Needs:    States,
	Bad: `place   dash  30C
place   door  30C
leg     dash  door  3ft
battery G1  at dash  grounds-to frame
fuse    F1  3A  at dash  from G1 6in
lamp    P1  3W  at door  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  22AWG
`,
	Good: `place   dash  30C
place   door  30C
leg     dash  door  3ft
battery G1  at dash  grounds-to frame
fuse    F1  3A  at dash  from G1 6in
lamp    P1  3W  at door  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  20AWG
`,
	Run: func(p *Pass) {
		p.failing(gauge.FloorMechanical, func(w size.Wire, l gauge.Limit) {
			if w.Wire.Cable != nil || w.Wire.Role == model.Lead {
				return // the jacket carries it, or the device's maker answers for it
			}
			p.Report(diag.Finding{
				At:     sizeSpan(w),
				Msg:    fmt.Sprintf("wire %s is %s; the least for its place is %s", w.Wire.Number, w.Conductor.Size.Name, leastName(p.Profile, w)),
				Values: []diag.Value{{Name: "area", Got: l.Got, Limit: l.Asked, Unit: "mm2", Bound: diag.AtLeast}},
				Fix:    p.thicker(w),
			})
		})
	},
})

// leastName names the smallest size that a wire's place allows.
func leastName(p gauge.Profile, w size.Wire) string {
	least := p.Dry
	switch c := w.Judgement.Case; {
	case c.Single:
		least = p.Alone
	case c.Wet:
		least = p.Wet
	}
	if w.Conductor.Size.Metric {
		return fmt.Sprintf("%g mm2", least.MM2)
	}
	return gauge.AWGName(least.AWG)
}

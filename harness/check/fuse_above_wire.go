package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// grossly is the rating over the ampacity from which a fuse does not protect
// its wire in any reading of the rules.
const grossly = 1.5

var _ = define(Rule{
	ID:       "fuse-above-wire",
	Severity: diag.Danger,
	Title:    "A fuse is rated above what a wire that it alone protects can carry.",
	Why: "The fuse is there for the wire. If the thinnest wire behind it carries less than the fuse, the wire is the fuse: " +
		"it heats for minutes while the fuse holds. Above one and a half times the wire's ampacity this is a danger; " +
		"below that it is a warning, since a short still opens the fuse in time.",
	Equation: "rating <= ampacity in its place, alone",
	Figures:  []string{"ampacity-33cfr183", "cfr-183-455-rating"},
	Misses:   "A fuse that somebody swaps for a bigger one.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  40A  from G1 6in
lamp    P1  21W  grounds-to frame
wire 1  G1.+  F1.1  8AWG   6in
wire 2  F1.2  P1.1  14AWG  4ft
`,
	Good: `battery G1  cca 530A  grounds-to frame
fuse    F1  30A  from G1 6in
lamp    P1  21W  grounds-to frame
wire 1  G1.+  F1.1  8AWG   6in
wire 2  F1.2  P1.1  14AWG  4ft
`,
	Run: func(p *Pass) {
		p.failing(gauge.FloorProtection, func(w size.Wire, l gauge.Limit) {
			g := p.Sizes.Guards[w.Wire.ID]
			is := "is rated"
			if g.Fuse == nil {
				is = "gives, and no fuse holds it to less than,"
			}
			f := diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("%s %s %s but wire %s (%s) carries at most %s", w.Judgement.Case.FuseName, is,
					quantity.Text(l.Asked, quantity.Current), w.Wire.Number, w.Conductor.Size.Name, quantity.Text(l.Got, quantity.Current)),
				Detail: "Fit a smaller fuse or a thicker wire, or give the wire a fuse of its own where it begins.",
				Values: []diag.Value{{Name: "rating", Got: l.Asked, Limit: l.Got, Unit: "A", Bound: diag.AtMost}},
			}
			if l.Asked <= grossly*l.Got {
				f.Severity = diag.Warning
			}
			if g.Fuse != nil {
				f.Related = append(f.Related, diag.Related{At: g.Fuse.At, Msg: "the fuse"})
			}
			p.Report(f)
		})
	},
})

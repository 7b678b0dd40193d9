package check

import (
	"fmt"
	"strings"

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
	Run: func(p *Pass) {
		p.failing("protection", func(w size.Wire, l gauge.Limit) {
			g := p.Sizes.Guards[w.Wire.ID]
			f := diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("%s is rated %s but wire %s (%s) carries at most %s", w.Judgement.Case.FuseName,
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
	Run: func(p *Pass) {
		p.failing("short circuit", func(w size.Wire, l gauge.Limit) {
			p.Report(diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("a short at the end of wire %s draws %.0f A, too little for %s to open before %s overheats", w.Wire.Number,
					w.Judgement.Case.ShortA, strings.TrimSpace(w.Judgement.Case.FuseName), w.Conductor.Size.Name),
				Values: []diag.Value{{Name: l.Name, Got: l.Got, Limit: l.Asked, Unit: l.Unit, Bound: diag.AtLeast}},
			})
		})
	},
})

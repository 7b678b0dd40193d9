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
		"it heats for minutes while the fuse holds. Above one and a half times the wire's ampacity, the most that any of the rules allows, this is a danger. " +
		"Below that it is a fault where the fuse may hold an overload of 1.35 times its rating so long that the wire settles " +
		"at or above what its insulation stands for the seconds of a short. " +
		"Where it settles lower it only ages, and that is a warning; so it is where the fuse's opening times are known from memory alone. " +
		"A wire behind a load is held against the largest of the fuses ahead of the loads that return through it, and too thin a one is a warning: " +
		"a motor that stalls takes what its fuse lets through, and common practice makes the return as thick as the feed. " +
		"Not so behind a relay's coil or a controller's output, which let no overload through.",
	Equation: "rating <= ampacity in its place, alone; wire at 1.35 x rating: T = Ta + (Tr - 30)(1.35 In / I30)^2",
	Figures:  []string{"ampacity-33cfr183", "cfr-183-455-rating", "fuse-gates", "conductor-temperature", "k-factors"},
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
			if w.Judgement.Case.Source {
				is = "gives, and no fuse holds it to less than,"
			}
			f := diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("%s %s %s but wire %s (%s) carries at most %s", w.Judgement.Case.FuseName, is,
					quantity.Text(l.Asked, quantity.Current), w.Wire.Number, w.Conductor.Size.Name, quantity.Text(l.Got, quantity.Current)),
				Values: []diag.Value{{Name: "rating", Got: l.Asked, Limit: l.Got, Unit: "A", Bound: diag.AtMost}},
			}
			f.Severity, f.Detail = outlast(w.Judgement.Case, l)
			f.Detail += " Fit a smaller fuse or a thicker wire, or give the wire a fuse of its own where it begins."
			if b := p.Sizes.Backs[w.Wire.ID]; w.Judgement.Case.Behind != "" {
				g.Fuse = b.Fuse
				f.Severity, f.Detail = diag.Warning, backDetail(b)
			}
			if link, behind, ok := size.LinkOf(g.Fuse, g.Index); ok && w.Judgement.Case.Behind == "" {
				f.Msg = fmt.Sprintf("%s is a link of %s and wants %s or thicker behind it; wire %s is %s", g.Fuse.Name, link.Name, behind.Name,
					w.Wire.Number, w.Conductor.Size.Name)
				f.Detail = "A link four gauge numbers thinner melts before its wire does. Take a thinner link, or a thicker wire."
			}
			if g.Fuse != nil {
				f.Related = append(f.Related, diag.Related{At: g.Fuse.At, Msg: "the fuse"})
			}
			if f.Fix = p.smallerFuse(g, l.Got); f.Fix == nil {
				f.Fix = p.thicker(w)
			}
			p.Report(f)
		})
	},
})

// backDetail says how a fuse ahead of a load overloads the wire behind it.
func backDetail(b size.Back) string {
	return fmt.Sprintf("What %s takes when it stalls or has a short in it comes back through this wire. "+
		"Make the return as thick as the feed, or fit a smaller fuse.", b.Load.Name)
}

// outlast says by which measure a rating above the ampacity is a danger, a
// fault or a warning.
func outlast(c gauge.WireCase, l gauge.Limit) (diag.Severity, string) {
	ratio := fmt.Sprintf("The rating is %.2f times that", l.Asked/l.Got)
	if l.Asked > grossly*l.Got {
		return diag.Danger, ratio + "; no rule allows above 1.5 times."
	}
	g, ok := slowGate(c.FuseKind)
	if !ok {
		return diag.Warning, ratio + ", within the 1.5 times that the mildest of the rules allows."
	}
	amps := g.Share * c.FuseA
	tempC := gauge.ConductorTempC(c.Size, c.Family, c.AmbientC, amps)
	text := fmt.Sprintf("%s. It may hold %s for %.0f s; the wire then settles at %.0f C, and its insulation stands %.0f C for the seconds of a short",
		ratio, quantity.Text(amps, quantity.Current), g.MaxS, tempC, c.Family.ShortC)
	if tempC >= c.Family.ShortC {
		return diag.Fault, text + ": the wire does not outlast the fuse."
	}
	return diag.Warning, text + ": it ages, but outlasts the fuse."
}

// slowGate is the longest opening time of a style of fuse, where figures tell
// it that may decide.
func slowGate(kind string) (slow gauge.Gate, ok bool) {
	for _, g := range gauge.FuseGates(kind) {
		if s, found := gauge.SourceOf(g.Source); found && s.Confidence.MayDecide() && g.MaxS > slow.MaxS {
			slow, ok = g, true
		}
	}
	return slow, ok
}

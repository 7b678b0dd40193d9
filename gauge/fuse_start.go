package gauge

import "fmt"

// PullIn is a current that comes and goes, such as that of a solenoid: a first
// one for some seconds, then less for as long as a start lasts.
type PullIn struct {
	FirstA float64 // amperes, on top of the steady load
	FirstS float64 // seconds that it may last
	HoldA  float64 // amperes, on top of the steady load
}

// HoldsFor is the most that a style of fuse surely holds for a time in
// seconds, as a share of its rating, with the source: of the gates that may
// decide the highest that holds so long. Where none does it is the rating
// itself (source fuse-margin).
func HoldsFor(family string, seconds float64) (share float64, source string) {
	share, source = 1, "fuse-margin"
	for _, g := range gatesOf(family) {
		if g.MinS >= seconds && g.Share > share && confidenceOf(g.Source).MayDecide() {
			share, source = g.Share, g.Source
		}
	}
	return share, source
}

// ChooseFuseForStart is [ChooseFuse] for a fuse through which a start flows,
// too: what is held counts as load, and the first current has to be held by
// the fuse for as long as it may last (source fuse-gates). ok is false when the
// series ends below, or nothing flows.
func ChooseFuseForStart(family string, loadA float64, s PullIn, p Profile) (ratedA float64, why []Step, ok bool) {
	if !(s.FirstA > 0) {
		return ChooseFuse(family, loadA, p)
	}
	share, source := HoldsFor(family, s.FirstS)
	held, first := loadA+s.HoldA, (loadA+s.FirstA)/share
	why = append(why,
		Step{
			Text:     fmt.Sprintf("%.4g A, held during a start included, may take %.0f %% of the fuse", held, 100*p.ChooseAt),
			Equation: "In >= I / share", Value: held / p.ChooseAt, Unit: "A", Source: "fuse-margin",
		},
		Step{
			Text:     fmt.Sprintf("%.4g A while it pulls in, which the fuse has to hold for %.3g s: %.4g x its rating", loadA+s.FirstA, s.FirstS, share),
			Equation: "In >= I / share", Value: first, Unit: "A", Source: source,
		})
	f, known := fuseStyleOf(family)
	need := max(held/p.ChooseAt, first)
	if !known || !(need > 0) {
		return 0, why, false
	}
	for _, r := range f.RatingsA {
		if r >= need {
			why = append(why, Step{Text: "next rating of the " + family + " series", Value: r, Unit: "A", Source: f.Source})
			return r, why, true
		}
	}
	return 0, why, false
}

package gauge

import (
	"fmt"
	"math"
	"slices"
)

// Start is the first current of a load, held against its fuse and the wire.
type Start struct {
	DropV     float64 // lost while it lasts, copper as warm as in steady running
	LeftV     float64 // at the load
	HoldS     float64 // the fuse holds it at least so long; 0: no gate tells
	OpenS     float64 // and opens within; 0: no gate tells
	Sure      bool    // the hold stands on a gate that may decide
	WantsA    float64 // fuse that would outlast the start, 0: length not known or no gate
	WantsSure bool    // that stands on a gate that may decide
	Why       []Step
}

// pickedStyles are tried in turn for a fuse that nobody named, those that are
// made for the system volts.
var pickedStyles = [...]string{"blade", "maxi", "bolt-down", "blade58", "class-t"}

func stylesFor(systemV float64) (out []string) {
	for _, s := range pickedStyles {
		if ratedV, _, _, _ := FuseLimits(s); ratedV >= systemV {
			out = append(out, s)
		}
	}
	return out
}

// fuse takes the given fuse, or chooses the smallest that carries the load.
func (a *Answer) fuse() {
	q := &a.Ask
	a.FuseMinA, a.FuseStyle = q.LoadA/q.Profile.ChooseAt, q.FuseStyle
	styles := stylesFor(q.SystemV)
	if q.FuseStyle != "" {
		styles = []string{q.FuseStyle}
	}
	if q.FuseA > 0 {
		a.FuseA, a.FuseMinA = q.FuseA, q.LoadA/q.Profile.LoadOfFuse
		for _, s := range styles {
			if f, _ := fuseStyleOf(s); a.FuseStyle == "" && slices.Contains(f.RatingsA, q.FuseA) {
				a.FuseStyle = s
			}
		}
		return
	}
	for _, s := range styles {
		if ratedA, _, ok := ChooseFuse(s, q.LoadA, q.Profile); ok {
			a.FuseA, a.FuseStyle = ratedA, s
			return
		}
	}
}

// verdict says what stands in the way.
func (a *Answer) verdict() {
	q := &a.Ask
	switch {
	case !a.OK && a.Governs == FloorProtection:
		a.Fault = fmt.Sprintf("no size is protected by %.4g A: %s, the largest, allows %.4g A", a.FuseA, a.Chosen.Size.Name, a.FuseMaxA)
	case !a.OK && a.Governs == FloorAmpacity:
		a.Fault = fmt.Sprintf("no size carries %.4g A: %s, the largest, carries %.4g A; run two, each with its own fuse", q.LoadA, a.Chosen.Size.Name, a.Chosen.AmpacityA)
	case !a.OK:
		a.Fault = fmt.Sprintf("no size keeps the drop: %s, the largest, loses %.3g V, %.3g V allowed; it serves over %.3g m one way",
			a.Chosen.Size.Name, a.Chosen.DropV, a.mostV(), float64(q.OneWay)*a.mostV()/a.Chosen.DropV)
	case a.FuseA == 0:
		a.OK, a.Fault = false, fmt.Sprintf("no fuse is made for %.4g A: it would have to be %.4g A", q.LoadA, a.FuseMinA)
	case a.FuseA < q.LoadA:
		a.OK, a.Fault = false, fmt.Sprintf("a fuse of %.4g A opens under a load of %.4g A: take %.4g A at least", a.FuseA, q.LoadA, a.FuseMinA)
	}
	if limitV, _, _, ok := FuseLimits(a.FuseStyle); a.OK && ok && q.SystemV > limitV {
		a.OK, a.Fault = false, fmt.Sprintf("a %s fuse is made for %.4g V: %.4g V asks for another style", a.FuseStyle, limitV, q.SystemV)
	}
}

// start holds the first current against the gates of the fuse.
func (a *Answer) start() {
	q := &a.Ask
	if q.StartA == 0 {
		return
	}
	s := Start{DropV: a.Chosen.DropV * q.StartA / q.LoadA}
	s.LeftV = q.SystemV - s.DropV
	s.Why = append(s.Why,
		Step{fmt.Sprintf("first current %.4g A through the same copper", q.StartA), "V I1 / I", s.DropV, "V", "far-end-short"},
		Step{"left for the load", "Vsystem - V", max(s.LeftV, 0), "V", "asked"},
	)
	if a.FuseA > 0 {
		s.gates(q, a.FuseStyle, a.FuseA)
	}
	a.Start = s
}

// gates reads how long the fuse holds the start and when it opens.
func (s *Start) gates(q *Ask, style string, ratedA float64) {
	b := bandAt(FuseAt{Style: style, RatedA: ratedA}, q.StartA)
	name := fmt.Sprintf("%s %.4g A at %.3g x its rating", style, ratedA, q.StartA/ratedA)
	if b.holdS > 0 {
		s.HoldS, s.Sure = b.holdS, confidenceOf(b.holdFrom.Source).MayDecide()
		s.Why = append(s.Why, Step{name + fmt.Sprintf(": gate at %.3g x holds at least", b.holdFrom.Share), "", b.holdS, "s", b.holdFrom.Source})
	}
	if !math.IsInf(b.openS, 1) {
		s.OpenS = b.openS
		s.Why = append(s.Why, Step{name + fmt.Sprintf(": gate at %.3g x opens within", b.openFrom.Share), "", b.openS, "s", b.openFrom.Source})
	}
	if q.StartS > 0 {
		s.wants(q, style, ratedA)
	}
}

// wants finds the smallest rating from the fuse up that outlasts the start: by
// gates that may decide, or where there is none by remembered ones.
func (s *Start) wants(q *Ask, style string, ratedA float64) {
	f, _ := fuseStyleOf(style)
	for _, sure := range []bool{true, false} {
		for _, r := range f.RatingsA {
			if g, ok := outlasts(style, r, q.StartA, q.StartS, sure); ok && r >= ratedA {
				s.WantsA, s.WantsSure = r, sure
				s.Why = append(s.Why, Step{
					fmt.Sprintf("smallest %s, from there up, that holds %.4g A for %.3g s", style, q.StartA, q.StartS),
					fmt.Sprintf("%.3g x In holds %.3g s", g.Share, g.MinS), r, "A", g.Source,
				})
				return
			}
		}
	}
}

// outlasts finds a gate at or above a current that holds for a time.
func outlasts(style string, ratedA, amps, seconds float64, sure bool) (Gate, bool) {
	for _, g := range gatesOf(style) {
		if g.MinS >= seconds && amps <= g.Share*ratedA && (!sure || confidenceOf(g.Source).MayDecide()) {
			return g, true
		}
	}
	return Gate{}, false
}

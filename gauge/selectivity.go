package gauge

import (
	"fmt"
	"math"
	"slices"
)

// FuseAt is a fuse of a style and a rating in amperes, with what its maker
// says of its I^2 t, 0 where nothing is known.
type FuseAt struct {
	Style    string
	RatedA   float64
	MeltA2S  float64 // least that melts it
	ClearA2S float64 // most that it lets through until it has cleared
}

// Order says which of two fuses in series opens first.
type Order uint8

const (
	// OrderUnknown: the bands overlap, or there are none; either may open first.
	OrderUnknown Order = iota
	// LowerFirst: if any opens it is the one nearer the load, before the one above can.
	LowerFirst
	// UpperFirst: the one above opens first, and takes its other loads along.
	UpperFirst
	// NeitherOpens: both carry the current for hours.
	NeitherOpens
)

// String gives the words printed for an order.
func (o Order) String() string {
	if o > NeitherOpens {
		return "invalid"
	}
	return [...]string{"not known", "lower first", "upper first", "neither opens"}[o]
}

const forEverS = 3600.0 * 2 // a fuse that holds so long is said not to open

// band is what the gates say of the time at a current: it holds at least
// holdS and opens within openS (+Inf: no figure).
type band struct {
	holdS, openS       float64
	holdFrom, openFrom Gate
}

// bandAt reads the gates of a fuse: times never rise with current, so the
// gate above bounds the hold and the gate below the opening.
func bandAt(f FuseAt, amps float64) band {
	b := band{openS: math.Inf(1)}
	for _, g := range gatesOf(f.Style) {
		at := g.Share * f.RatedA
		if g.MinS > b.holdS && amps <= at {
			b.holdS, b.holdFrom = g.MinS, g
		}
		if g.MaxS > 0 && g.MaxS < b.openS && amps >= at {
			b.openS, b.openFrom = g.MaxS, g
		}
	}
	return b
}

// Selective says which of two fuses in series opens first at a current of
// amps, as far as their opening gates, or the I^2 t of their makers, tell.
// The gates of most styles are from memory: then c does not decide, and the
// answer is a hint. A ratio of ratings proves nothing and is not used. ok is
// false unless ratings and current are from 0 to 1e6 A (source selectivity).
func Selective(upper, lower FuseAt, amps float64) (o Order, why []Step, c Confidence, ok bool) {
	if !(amps > 0 && amps <= mostA) || !(upper.RatedA > 0 && upper.RatedA <= mostA) || !(lower.RatedA > 0 && lower.RatedA <= mostA) {
		return OrderUnknown, nil, 0, false
	}
	u, l := bandAt(upper, amps), bandAt(lower, amps)
	switch {
	case l.openS < u.holdS:
		return LowerFirst, bandSteps("lower", lower, l.openFrom, "upper", upper, u.holdFrom), bandGrade(l.openFrom, u.holdFrom), true
	case u.openS < l.holdS:
		return UpperFirst, bandSteps("upper", upper, u.openFrom, "lower", lower, l.holdFrom), bandGrade(u.openFrom, l.holdFrom), true
	case u.holdS >= forEverS && l.holdS >= forEverS:
		return NeitherOpens, bandSteps("lower", lower, l.holdFrom, "upper", upper, u.holdFrom)[1:], bandGrade(u.holdFrom, l.holdFrom), true
	case u.holdS >= forEverS:
		return LowerFirst, bandSteps("lower", lower, l.openFrom, "upper", upper, u.holdFrom)[1:], bandGrade(u.holdFrom, u.holdFrom), true
	case lower.ClearA2S > 0 && upper.MeltA2S > 0 && lower.ClearA2S < upper.MeltA2S:
		return LowerFirst, []Step{
			{"lower one clears within, as its maker says", "I^2 t", lower.ClearA2S, "A2s", "stated"},
			{"upper one melts from", "I^2 t", upper.MeltA2S, "A2s", "stated"},
		}, confidenceOf("stated"), true
	}
	return OrderUnknown, []Step{{Text: "opening bands overlap, or have no figure here", Value: amps, Unit: "A", Source: "selectivity"}}, confidenceOf("selectivity"), true
}

func bandGrade(a, b Gate) Confidence {
	return min(confidenceOf(a.Source), confidenceOf(b.Source), confidenceOf("selectivity"))
}

func bandSteps(first string, f FuseAt, open Gate, second string, s FuseAt, hold Gate) []Step {
	return []Step{
		{fmt.Sprintf("%s %s %.4g A, gate at %.3g x: opens within", first, f.Style, f.RatedA, open.Share), "", open.MaxS, "s", open.Source},
		{fmt.Sprintf("%s %s %.4g A, gate at %.3g x: holds at least", second, s.Style, s.RatedA, hold.Share), "", hold.MinS, "s", hold.Source},
	}
}

// SelectiveTo is the largest current up to which the lower fuse is known to
// open first or neither opens, walked over the gates of both; 0 when not even
// the smallest fault is. Above it nothing is known without the makers' I^2 t
// (source selectivity).
func SelectiveTo(upper, lower FuseAt) (amps float64, c Confidence) {
	c = Computed
	var at []float64
	for _, f := range []FuseAt{upper, lower} {
		for _, g := range gatesOf(f.Style) {
			at = append(at, g.Share*f.RatedA)
		}
	}
	slices.Sort(at)
	for _, a := range at {
		// the gate itself, and just above: the two sides of each stair
		for _, try := range []float64{a, a * (1 + 1e-9)} {
			o, _, grade, ok := Selective(upper, lower, try)
			if !ok || o == UpperFirst || o == OrderUnknown {
				return amps, c
			}
			if o == LowerFirst {
				amps, c = try, min(c, grade)
			}
		}
	}
	return amps, c
}

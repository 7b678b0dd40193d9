package shop

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
)

// What the length of a wire rests on.
const (
	byLegs  = "legs"    // the legs on its way, and tails
	byTails = "tails"   // both ends at one place: nothing but tails
	given   = "given"   // the draft says it
	assumed = "assumed" // no way is known, or a leg on it has no length
)

const (
	inchM  = 0.0254
	tailsM = gauge.TailM
)

// basis says what the length of a wire rests on.
func basis(s Source, w *model.Wire) string {
	p := s.Routes.Paths[w.ID]
	switch {
	case p.Given:
		return given
	case !p.Known, p.Assumed:
		return assumed
	case len(p.Legs) == 0:
		return byTails
	}
	return byLegs
}

// cutM is the length to cut in meters: a built wire has the allowance for a
// second termination at each end, a strap has not; both go up to the step of
// the bench, half an inch or 10 mm.
func cutM(s Source, w *model.Wire) float64 {
	m := s.Routes.Paths[w.ID].LengthM
	if w.Role == model.Built {
		m += 2 * gauge.ReterminateM
	}
	if s.Model.Metric {
		return roundUp(m, 0.010)
	}
	return roundUp(m, inchM/2)
}

// roundUp takes a length up to a multiple of a step; a length that lies on a
// multiple, but for rounding, stays.
func roundUp(m, step float64) float64 {
	return math.Ceil(m/step-1e-9) * step
}

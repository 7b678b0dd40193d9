package gauge

import (
	"math"
	"slices"
)

// BendRadiusMM is the least inside radius of a bend for a bundle or cable of
// an outside diameter: 6 x when it is laid, 10 x where it stays. ok is false
// unless the diameter is from 0 to 1e4 mm (source bend-space).
func BendRadiusMM(outsideMM float64) (laidMM, staysMM float64, ok bool) {
	if !(outsideMM >= 0 && outsideMM <= 1e4) {
		return 0, 0, false
	}
	return 6 * outsideMM, 10 * outsideMM, true
}

// BendExtraMM is how much longer the way along the outside of a bend of
// degrees is than along its middle: angle x (outer - middle radius). ok is
// false unless both are from 0 on and not absurd (source bundle-geometry).
func BendExtraMM(degrees, outsideMM float64) (mm float64, ok bool) {
	if !(degrees >= 0 && degrees <= 3600) || !(outsideMM >= 0 && outsideMM <= 1e4) {
		return 0, false
	}
	return degrees * math.Pi / 180 * outsideMM / 2, true
}

// Clip is a rule on the distance between supports.
type Clip struct {
	Field  string // vehicle, boat, boat battery, passenger vessel, aircraft
	MostM  float64
	Book   string
	Source string
}

var clips = [...]Clip{
	{"vehicle", 0.300, "body-builder manual of a light commercial vehicle", "clip-vehicle"},
	{"vehicle, wire added to a harness", 0.300, "army manual", "clip-army"},
	{"boat", 0.450, "ISO 10133 clause 7.3", "iso10133-read"},
	{"boat, by ABYC", 0.457, "ABYC E-11 as quoted: 18 in", "clip-abyc"},
	{"boat battery", 0.300, "ISO 10133 clause 7.4", "iso10133-read"},
	{"boat, first from the battery", 1.000, "ISO 10133 clause 7.4", "iso10133-read"},
	{"passenger vessel", 0.610, "46 CFR 183.340(b)(4)", "clip-vessel"},
	{"aircraft", 0.610, "FAA AC 43.13-1B, 11-96: 24 in", "clip-aircraft"},
	{"aircraft, tie between supports", 0.305, "FAA AC 43.13-1B, 11-158: 12 in", "clip-aircraft"},
}

// Clips lists rules on the distance between supports (sources clip-vehicle,
// clip-army, iso10133-read, clip-abyc, clip-vessel, clip-aircraft).
func Clips() []Clip { return slices.Clone(clips[:]) }

// ClipM is the largest distance between supports in a field, in meters; ok is
// false for a field that is not in [Clips].
func ClipM(field string) (mostM float64, c Confidence, ok bool) {
	i := slices.IndexFunc(clips[:], func(r Clip) bool { return r.Field == field })
	if i < 0 {
		return 0, 0, false
	}
	return clips[i].MostM, confidenceOf(clips[i].Source), true
}

// ClipCount is how many supports a run of lengthM needs in a field, one at
// each end and none farther apart than the rule; ok as [ClipM], and for a
// run from 0 to 1000 m.
func ClipCount(field string, lengthM float64) (clips int, ok bool) {
	most, _, ok := ClipM(field)
	if !ok || !(lengthM >= 0 && lengthM <= 1000) {
		return 0, false
	}
	return int(math.Ceil(lengthM/most-1e-9)) + 1, true
}

// tolerance is one band of a finished length, its upper end included.
type tolerance struct{ upTo, plus float64 }

var (
	toleranceM  = [...]tolerance{{0.3, 0.025}, {1.5, 0.050}, {3.0, 0.100}, {7.5, 0.150}} // m
	toleranceFt = [...]tolerance{{1, 1}, {5, 2}, {10, 4}, {25, 6}}                       // ft, in
)

const longTolerance = 0.05 // above the bands, of the length

// LengthToleranceM is how much longer than asked a finished cable may be, in
// meters; never shorter. Bands include their upper end: 1.5 m is still
// +50 mm, above 7.5 m it is 5 %. ok is false unless the length is from 0 to
// 1e5 m (source length-tolerance).
func LengthToleranceM(lengthM float64) (plusM float64, ok bool) {
	return within(toleranceM[:], lengthM)
}

// LengthToleranceIn is the same for a length in feet: inches that it may be
// longer; above 25 ft 5 % (source length-tolerance).
func LengthToleranceIn(lengthFt float64) (plusIn float64, ok bool) {
	plus, ok := within(toleranceFt[:], lengthFt)
	if lengthFt > toleranceFt[len(toleranceFt)-1].upTo {
		plus *= 12
	}
	return plus, ok
}

func within(bands []tolerance, length float64) (plus float64, ok bool) {
	if !(length > 0 && length <= 1e5) {
		return 0, false
	}
	for _, b := range bands {
		if length <= b.upTo {
			return b.plus, true
		}
	}
	return longTolerance * length, true
}

// IDMarks is how many identification marks a wire of lengthM carries at a
// pitch of 15 in: none below 3 in, one near the middle to 7 in, else both
// ends and no farther apart than the pitch. ok is false unless the length is
// from 0 to 1e5 m (source id-marks).
func IDMarks(lengthM float64) (marks int, ok bool) {
	if !(lengthM >= 0 && lengthM <= 1e5) {
		return 0, false
	}
	inches := lengthM / 0.0254
	switch {
	case inches < 3-1e-9:
		return 0, true
	case inches <= 7+1e-9:
		return 1, true
	}
	return int(math.Ceil(inches/15-1e-9)) + 1, true
}

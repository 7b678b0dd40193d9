package gauge

import "math"

// TwistRatio is how much longer each wire of a twisted pair is than the
// pair: sqrt(1 + (pi d/p)^2), with d the outside diameter of one wire and p
// the pitch, in mm. ok is false unless d is from 0 to 1000 mm and p from 0.1
// to 1e5 mm (source twist-geometry).
func TwistRatio(outsideMM, pitchMM float64) (ratio float64, ok bool) {
	if !(outsideMM >= 0 && outsideMM <= 1000) || !(pitchMM >= 0.1 && pitchMM <= 1e5) {
		return 0, false
	}
	return math.Hypot(1, math.Pi*outsideMM/pitchMM), true
}

// TwistPitchMM is the pitch of so many turns over lengthM; ok is false unless
// both are above zero and not absurd (source twist-geometry).
func TwistPitchMM(turns, lengthM float64) (pitchMM float64, ok bool) {
	if !(turns >= 1e-3 && turns <= 1e6) || !(lengthM > 0 && lengthM <= 1e5) {
		return 0, false
	}
	return 1000 * lengthM / turns, true
}

// TapedMM is the outside diameter of a bundle under tape: four thicknesses
// more at a half lap, where two layers lie everywhere, two more edge to
// edge. ok is false unless the diameter is from 0 to 1e4 mm and the tape from
// 0 to 10 mm (source tape-geometry).
func TapedMM(bundleMM, tapeMM float64, halfLap bool) (mm float64, ok bool) {
	if !(bundleMM >= 0 && bundleMM <= 1e4) || !(tapeMM >= 0 && tapeMM <= 10) {
		return 0, false
	}
	if halfLap {
		return bundleMM + 4*tapeMM, true
	}
	return bundleMM + 2*tapeMM, true
}

// TapeLengthM is the tape that a run of lengthM takes at a half lap:
// L pi (D + 2 t)/(w/2), along the helix. ok as [TapedMM], with a width from 1
// to 1000 mm and a run from 0 to 1e5 m (source tape-geometry).
func TapeLengthM(lengthM, bundleMM, tapeMM, widthMM float64) (m float64, ok bool) {
	if _, ok := TapedMM(bundleMM, tapeMM, true); !ok || !(widthMM >= 1 && widthMM <= 1000) || !(lengthM >= 0 && lengthM <= 1e5) {
		return 0, false
	}
	return lengthM * math.Pi * (bundleMM + 2*tapeMM) / (widthMM / 2), true
}

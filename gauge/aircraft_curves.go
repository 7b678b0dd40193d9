package gauge

import (
	"math"
	"slices"
)

// CurvePoint is one point of the curves of FAA AC 43.13-1B chapter 11. The
// curves themselves were not seen: text examples give single points.
type CurvePoint struct {
	Figure string
	Text   string
	AWG    int     // free-air points
	RiseK  float64 // free-air points: conductor rating less ambient
	Wires  int     // bundle points
	Loaded float64 // bundle points: share of the harness capacity in use
	Feet   float64 // altitude points
	Value  float64 // A, or factor
	Source string
}

var curvePoints = [...]CurvePoint{
	{Figure: "11-4a", Text: "14 AWG in free air", AWG: 14, RiseK: 150, Value: 47, Source: "ac4313-example-2"},
	{Figure: "11-4a", Text: "20 AWG in free air", AWG: 20, RiseK: 140, Value: 21.5, Source: "ac4313-curves-memory"},
	{Figure: "11-4a", Text: "22 AWG in free air", AWG: 22, RiseK: 140, Value: 16.2, Source: "ac4313-curves-memory"},
	{Figure: "11-4a", Text: "12 AWG in free air", AWG: 12, RiseK: 175, Value: 68, Source: "ac4313-curves-memory"},
	{Figure: "11-4a", Text: "12 AWG in free air", AWG: 12, RiseK: 140, Value: 61, Source: "ac4313-curves-memory"},
	{Figure: "11-5", Text: "sea level", Feet: 0, Value: 1, Source: "ac4313-example-2"},
	{Figure: "11-5", Text: "20,000 ft", Feet: 20000, Value: 0.91, Source: "ac4313-example-2"},
	{Figure: "11-5", Text: "60,000 ft", Feet: 60000, Value: 0.79, Source: "ac4313-curves-memory"},
	{Figure: "11-6", Text: "8 wires at 60 %", Wires: 8, Loaded: 0.60, Value: 0.60, Source: "ac4313-example-2"},
	{Figure: "11-6", Text: "35 wires at 20 %", Wires: 35, Loaded: 0.20, Value: 0.52, Source: "ac4313-curves-memory"},
	{Figure: "11-6", Text: "12 wires at 100 %", Wires: 12, Loaded: 1, Value: 0.43, Source: "ac4313-curves-memory"},
}

// CurvePoints lists every known point of the aircraft curves.
func CurvePoints() []CurvePoint { return slices.Clone(curvePoints[:]) }

// AltitudeFactor derates a current for thin air by straight lines between the
// known points, sea level to 60,000 ft; c is that of the weaker point. ok is
// false outside (sources ac4313-example-2, ac4313-curves-memory).
func AltitudeFactor(feet float64) (factor float64, c Confidence, ok bool) {
	var last CurvePoint
	for _, p := range curvePoints {
		if p.Figure != "11-5" {
			continue
		}
		switch {
		case feet == p.Feet:
			return p.Value, confidenceOf(p.Source), true
		case feet < p.Feet && feet > last.Feet:
			share := (feet - last.Feet) / (p.Feet - last.Feet)
			return last.Value + share*(p.Value-last.Value), min(confidenceOf(last.Source), confidenceOf(p.Source)), true
		}
		last = p
	}
	return 0, 0, false
}

// AircraftBundleFactor bounds the bundle factor from below: of the known
// points that have at least as many wires and as much load, the mildest. ok
// is false beyond all of them. A wire alone has 1 (sources ac4313-example-2,
// ac4313-curves-memory).
func AircraftBundleFactor(wires int, loaded float64) (factor float64, c Confidence, ok bool) {
	if wires == 1 && loaded >= 0 && loaded <= 1 {
		return 1, Computed, true
	}
	for _, p := range curvePoints {
		if p.Wires >= wires && wires > 1 && p.Loaded >= loaded && loaded >= 0 && p.Value > factor {
			factor, c, ok = p.Value, confidenceOf(p.Source), true
		}
	}
	return factor, c, ok
}

// FreeAirAmps brings a current of the free-air curve from one temperature
// rise in kelvin to another by the square-root rule, I2 = I1 sqrt(dT2/dT1);
// 0 unless both are above zero (source ambient-law).
func FreeAirAmps(amps, riseK, otherK float64) float64 {
	if !(riseK > 0 && otherK > 0) {
		return 0
	}
	return amps * math.Sqrt(otherK/riseK)
}

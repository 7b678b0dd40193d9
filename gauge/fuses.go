package gauge

import (
	"fmt"
	"math"
)

const (
	// FuseRise is how a fuse element warms: R = Rcold (1 + 0.42 (I/In)^2) (source blade-resistance).
	FuseRise = 0.42
	// BoltDownV is the cold resistance of a bolt-down fuse times its rating, in volts (source bolt-down-resistance, low).
	BoltDownV = 0.056
	// LeastTellA is the current in amperes below which none is told: the leak of
	// something that is off, or what is left of a sum.
	LeastTellA = 1e-6
	// EnduranceShare is the current over rating that a blade fuse must hold for 100 h (source fuse-gates).
	EnduranceShare = 1.10
)

// bladeOhm is the cold resistance of regular blade fuses in mohm, by rating,
// ascending (source blade-resistance).
var bladeOhm = [...]struct{ ratedA, mohm float64 }{
	{1, 123}, {2, 53.5}, {3, 31.1}, {4, 22.8}, {5, 17.85}, {7.5, 10.91},
	{10, 7.70}, {15, 4.80}, {20, 3.38}, {25, 2.52}, {30, 1.97},
}

// FuseOhm is the cold resistance of a fuse in ohm. Blade and mini have a
// table; between and beyond its ratings, and for every other style, it is
// 56 mV over the rating and only hints (sources blade-resistance,
// blade58-resistance, bolt-down-resistance). It is 0 for a rating that is not above zero.
func FuseOhm(family string, ratedA float64) (cold float64, c Confidence) {
	if !(ratedA > 0) {
		return 0, Low
	}
	switch {
	case family == "mini" && ratedA == 10:
		return 7.42e-3, confidenceOf("blade-resistance")
	case family == "blade58" && ratedA == 30:
		return 1.85e-3, confidenceOf("blade58-resistance")
	case family == "maxi" && ratedA == 40:
		return 1.4e-3, confidenceOf("blade-resistance")
	case family == "maxi" && ratedA == 50:
		return 1.1e-3, confidenceOf("blade-resistance")
	case family == "blade" || family == "mini":
		for _, row := range bladeOhm {
			if row.ratedA == ratedA {
				return row.mohm / 1000, confidenceOf("blade-resistance")
			}
		}
	}
	return BoltDownV / ratedA, confidenceOf("bolt-down-resistance")
}

// FuseOhmAt is the resistance of a fuse of cold ohm at amps:
// Rcold (1 + 0.42 (I/In)^2); +Inf unless the rating is above zero (source
// blade-resistance).
func FuseOhmAt(cold, ratedA, amps float64) float64 {
	if !(ratedA > 0) {
		return math.Inf(1)
	}
	share := amps / ratedA
	return cold * (1 + FuseRise*share*share)
}

// FuseTestA is the small current that a voltage across a fuse tells, with the
// element still cold: I = V / Rcold; 0 unless it has ohms (source fuse-test).
func FuseTestA(cold, volts float64) float64 {
	if !(cold > 0) {
		return 0
	}
	return volts / cold
}

// ChooseFuse is the smallest rating of a style that carries loadA within the
// share p.ChooseAt of its rating: In >= I / 0.75 (source fuse-margin). ok is
// false when the series ends below.
func ChooseFuse(family string, loadA float64, p Profile) (ratedA float64, why []Step, ok bool) {
	need := loadA / p.ChooseAt
	why = append(why, Step{
		Text:     fmt.Sprintf("%.4g A may take %.0f %% of the fuse", loadA, 100*p.ChooseAt),
		Equation: "In >= I / share",
		Value:    need, Unit: "A", Source: "fuse-margin",
	})
	f, known := fuseStyleOf(family)
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

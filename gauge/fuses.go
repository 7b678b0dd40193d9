package gauge

import (
	"fmt"
	"slices"
)

const (
	// FuseRise is how a fuse element warms: R = Rcold (1 + 0.42 (I/In)^2) (source blade-resistance).
	FuseRise = 0.42
	// BoltDownV is the cold resistance of a bolt-down fuse times its rating, in volts (source bolt-down-resistance, low).
	BoltDownV = 0.056
	// EnduranceShare is the current over rating that a blade fuse must hold for 100 h (source fuse-gates).
	EnduranceShare = 1.10
)

// bladeOhm is the cold resistance of regular blade fuses in mohm, by rating,
// ascending (source blade-resistance).
var bladeOhm = [...]struct{ ratedA, mohm float64 }{
	{1, 123}, {2, 53.5}, {3, 31.1}, {4, 22.8}, {5, 17.85}, {7.5, 10.91},
	{10, 7.70}, {15, 4.80}, {20, 3.38}, {25, 2.52}, {30, 1.97},
}

// fuseFamily is one style of fuse: the ratings in which it is made.
type fuseFamily struct {
	name    string
	ratings []float64
	ratedV  float64
	breakA  float64 // breaking capacity
	source  string
}

var fuseFamilies = [...]fuseFamily{
	{"blade", []float64{1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40}, 32, 1000, "fuse-series"},
	{"mini", []float64{2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30}, 32, 1000, "fuse-series"},
	{"maxi", []float64{20, 25, 30, 35, 40, 50, 60, 70, 80, 100}, 32, 1000, "fuse-series"},
	{"micro", []float64{5, 7.5, 10, 15, 20, 25, 30}, 32, 1000, "fuse-series-micro"},
	{"cartridge", []float64{20, 25, 30, 40, 50, 60}, 32, 1000, "fuse-series-memory"},
	{"bolt-down", []float64{30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500}, 32, 2000, "fuse-series-memory"},
	{"class-t", []float64{30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400}, 125, 20000, "fuse-series-class-t"},
}

func fuseFamilyOf(name string) (fuseFamily, bool) {
	for _, f := range fuseFamilies {
		if f.name == name {
			return f, true
		}
	}
	return fuseFamily{}, false
}

// FuseFamilies lists the styles of fuse that [FuseSeries] knows.
func FuseFamilies() []string {
	out := make([]string, 0, len(fuseFamilies))
	for _, f := range fuseFamilies {
		out = append(out, f.name)
	}
	return out
}

// FuseSeries lists the ratings in amperes in which a style of fuse is made,
// ascending; nil for an unknown style (sources fuse-series,
// fuse-series-memory).
func FuseSeries(family string) []float64 {
	f, _ := fuseFamilyOf(family)
	return slices.Clone(f.ratings)
}

// FuseLimits gives the rated volts (d.c.) of a style of fuse and the largest
// current in amperes that it can break (source as [FuseSeries]).
func FuseLimits(family string) (ratedV, breakA float64, c Confidence, ok bool) {
	f, ok := fuseFamilyOf(family)
	if !ok {
		return 0, 0, 0, false
	}
	return f.ratedV, f.breakA, confidenceOf(f.source), true
}

// FuseOhm is the cold resistance of a fuse in ohm. Blade and mini have a
// table; between and beyond its ratings, and for every other style, it is
// 56 mV over the rating and only hints (sources blade-resistance,
// bolt-down-resistance). It is 0 for a rating that is not above zero.
func FuseOhm(family string, ratedA float64) (cold float64, c Confidence) {
	if !(ratedA > 0) {
		return 0, Low
	}
	switch {
	case family == "mini" && ratedA == 10:
		return 7.42e-3, confidenceOf("blade-resistance")
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
// Rcold (1 + 0.42 (I/In)^2) (source blade-resistance).
func FuseOhmAt(cold, ratedA, amps float64) float64 {
	share := amps / ratedA
	return cold * (1 + FuseRise*share*share)
}

// FuseTestA is the small current that a voltage across a fuse tells, with the
// element still cold: I = V / Rcold (source fuse-test).
func FuseTestA(cold, volts float64) float64 { return volts / cold }

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
	f, known := fuseFamilyOf(family)
	if !known || !(need > 0) {
		return 0, why, false
	}
	for _, r := range f.ratings {
		if r >= need {
			why = append(why, Step{Text: "next rating of the " + family + " series", Value: r, Unit: "A", Source: f.source})
			return r, why, true
		}
	}
	return 0, why, false
}

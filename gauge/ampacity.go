package gauge

import (
	"fmt"
	"math"
)

// TableAmbientC is the ambient of the ampacity table in Celsius (source ampacity-33cfr183).
const TableAmbientC = 30

// columnC names the columns of table5: insulation temperature in Celsius.
var columnC = [...]float64{60, 75, 80, 90, 105, 125, 200}

// table5 is 33 CFR 183.425 table 5: amperes of one copper conductor in air at
// 30 C, by gauge and insulation temperature (source ampacity-33cfr183).
var table5 = [...]struct {
	awg  int
	amps [7]float64
}{
	{18, [7]float64{10, 10, 15, 20, 20, 25, 25}},
	{16, [7]float64{15, 15, 20, 25, 25, 30, 35}},
	{14, [7]float64{20, 20, 25, 30, 35, 40, 45}},
	{12, [7]float64{25, 25, 35, 40, 45, 50, 55}},
	{10, [7]float64{40, 40, 50, 55, 60, 70, 70}},
	{8, [7]float64{55, 65, 70, 70, 80, 90, 100}},
	{6, [7]float64{80, 95, 100, 100, 120, 125, 135}},
	{4, [7]float64{105, 125, 130, 135, 160, 170, 180}},
	{3, [7]float64{120, 145, 150, 155, 180, 195, 210}},
	{2, [7]float64{140, 170, 175, 180, 210, 225, 240}},
	{1, [7]float64{165, 195, 210, 210, 245, 265, 280}},
	{0, [7]float64{195, 230, 245, 245, 285, 305, 325}},
	{-1, [7]float64{225, 265, 285, 285, 330, 355, 370}},
	{-2, [7]float64{260, 310, 330, 330, 385, 410, 430}},
	{-3, [7]float64{300, 360, 385, 385, 445, 475, 510}},
}

// base is the ampacity of a size and family at 30 C, alone.
type base struct {
	size   Size
	amps   float64
	ratedC float64 // conductor temperature at which it holds
	tabled bool    // from table 5, else from the heat balance
	conf   Confidence
}

func (b base) why() Step {
	if b.tabled {
		return Step{
			Text:  fmt.Sprintf("33 CFR 183.425 table 5, %s, column %g C", b.size.Name, b.ratedC),
			Value: b.amps, Unit: "A", Source: "ampacity-33cfr183",
		}
	}
	return Step{
		Text:     fmt.Sprintf("heat balance of %s in still air at 30 C, conductor %g C", b.size.Name, b.ratedC),
		Equation: "0.85 sqrt(pi D (hc + hr)(Ts - Ta) / R)",
		Value:    b.amps, Unit: "A", Source: "heat-balance",
	}
}

// TableAmps reads 33 CFR 183.425 table 5: gauge and insulation temperature of
// a column (60, 75, 80, 90, 105, 125, 200 C). ok is false off the table.
func TableAmps(awg int, insulationC float64) (amps float64, ok bool) {
	for _, row := range table5 {
		if row.awg != awg {
			continue
		}
		for i, c := range columnC {
			if c == insulationC {
				return row.amps[i], true
			}
		}
	}
	return 0, false
}

// columnFor is the hottest column that an insulation of tempC reaches, 0 when
// it reaches none.
func columnFor(tempC float64) float64 {
	best := 0.0
	for _, c := range columnC {
		if c <= tempC {
			best = c
		}
	}
	return best
}

// baseOf finds the ampacity at 30 C: the table where it has the gauge, else
// 0.85 of the heat balance. A class between two columns takes the lower one,
// together with its temperature.
func baseOf(s Size, f Family) base {
	conf := f.Confidence()
	if col := columnFor(f.TempC); !s.Metric && col > 0 {
		if amps, ok := TableAmps(s.AWG, col); ok {
			return base{s, amps, col, true, min(confidenceOf("ampacity-33cfr183"), conf)}
		}
	}
	amps := ModelShare * thinWallA(s, TableAmbientC, f.TempC)
	return base{s, amps, f.TempC, false, min(confidenceOf("heat-balance"), conf)}
}

// Ampacity30 is the ampacity of a size and family alone in air at 30 C, in
// amperes, with how far it may be trusted (sources ampacity-33cfr183,
// heat-balance).
func Ampacity30(s Size, f Family) (amps float64, c Confidence) {
	b := baseOf(s, f)
	return b.amps, b.conf
}

// AmbientFactor corrects an ampacity for the ambient: sqrt((Tr - Ta) /
// (Tr - Tref)), 0 from Ta = Tr on (source ambient-law). All in Celsius; 0 as
// well below absolute zero, and unless the reference is below the rating.
func AmbientFactor(ratedC, ambientC, referenceC float64) float64 {
	if !(ambientC < ratedC && ambientC >= -kelvin && referenceC < ratedC && ratedC < math.Inf(1)) {
		return 0
	}
	return math.Sqrt((ratedC - ambientC) / (ratedC - referenceC))
}

// BundleFactor is note 2 of 33 CFR 183.425 table 5 by conductors loaded
// together: 1 up to two, 0.70 for three, 0.60 to six, 0.50 to 24, 0.40 above
// (source bundle-33cfr183).
func BundleFactor(loaded int) float64 {
	switch {
	case loaded <= 2:
		return 1
	case loaded == 3:
		return 0.70
	case loaded <= 6:
		return 0.60
	case loaded <= 24:
		return 0.50
	}
	return 0.40
}

// Ampacity is the current that a wire may carry for ever at ambientC
// (Celsius) in a bundle of loaded conductors, itself included (0 or 1:
// alone): I30 x AmbientFactor x BundleFactor. The steps are its working.
func Ampacity(s Size, f Family, ambientC float64, loaded int) (amps float64, why []Step, c Confidence) {
	b := baseOf(s, f)
	return b.ampsAt(ambientC, loaded), b.whyAt(ambientC, loaded), b.conf
}

// ampsAt derates a base for ambient and bundle.
func (b base) ampsAt(ambientC float64, loaded int) float64 {
	return b.amps * AmbientFactor(b.ratedC, ambientC, TableAmbientC) * BundleFactor(loaded)
}

// whyAt is the working of ampsAt.
func (b base) whyAt(ambientC float64, loaded int) []Step {
	why := make([]Step, 1, 4)
	why[0] = b.why()
	if ambientC != TableAmbientC {
		why = append(why, Step{
			Text:     fmt.Sprintf("hottest place %.4g C, insulation %g C", ambientC, b.ratedC),
			Equation: "I30 sqrt((Tr - Ta)/(Tr - 30))",
			Value:    b.ampsAt(ambientC, 1), Unit: "A", Source: "ambient-law",
		})
	}
	if factor := BundleFactor(loaded); factor < 1 {
		why = append(why, Step{
			Text:     fmt.Sprintf("%d loaded conductors bundled: x %.2f", loaded, factor),
			Equation: "I x factor of note 2",
			Value:    b.ampsAt(ambientC, loaded), Unit: "A", Source: "bundle-33cfr183",
		})
	}
	return why
}

// ConductorTempC is the steady conductor temperature in Celsius: ambient +
// (Tr - 30)(I / I30)^2 (source conductor-temperature). A size without any
// ampacity stays at ambient.
func ConductorTempC(s Size, f Family, ambientC, amps float64) float64 {
	return baseOf(s, f).tempC(ambientC, amps)
}

func (b base) tempC(ambientC, amps float64) float64 {
	if !(b.amps > 0) {
		return ambientC
	}
	share := amps / b.amps
	return ambientC + (b.ratedC-TableAmbientC)*share*share
}

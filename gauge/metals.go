package gauge

import (
	"math"
	"slices"
)

// Metal holds the adiabatic constants of a conductor material.
type Metal struct {
	Name   string
	K      float64 // A s^0.5/mm2
	ZeroC  float64 // k = K sqrt(ln((T2 + ZeroC)/(T1 + ZeroC)))
	Source string
}

// legwork sizes copper alone; aluminum is data, for comparison.
var metals = [...]Metal{
	{"copper", adiabaticK, CopperZeroC, "adiabatic-k"},
	{"aluminum", 148, 228, "adiabatic-aluminum"},
}

// Metals lists the conductor materials that [KOf] knows (sources adiabatic-k,
// adiabatic-aluminum).
func Metals() []Metal { return slices.Clone(metals[:]) }

// KOf is the adiabatic constant of a metal (copper, aluminum) in
// A s^0.5/mm2 from startC to finalC. ok is false for another metal, or unless
// -100 <= startC < finalC <= 1000 (sources adiabatic-k, adiabatic-aluminum).
func KOf(metal string, startC, finalC float64) (k float64, c Confidence, ok bool) {
	i := slices.IndexFunc(metals[:], func(m Metal) bool { return m.Name == metal })
	if i < 0 || !(startC >= -100 && startC < finalC && finalC <= 1000) {
		return 0, 0, false
	}
	m := metals[i]
	return m.K * math.Sqrt(math.Log((finalC+m.ZeroC)/(startC+m.ZeroC))), confidenceOf(m.Source), true
}

// KRow is one published adiabatic constant.
type KRow struct {
	Insulation     string
	Metal          string
	StartC, FinalC float64
	K              float64 // A s^0.5/mm2, to 300 mm2
	KAbove300      float64 // as printed, above 300 mm2; 0: none
	Source         string
}

// kRows are the cells of the published table, as printed. The start is that
// of a conductor at its class temperature: [K] takes the real one.
var kRows = [...]KRow{
	{"PVC 70 C", "copper", 70, 160, 115, 103, "k-factors"},
	{"PVC 90 C", "copper", 90, 160, 100, 86, "k-factors"},
	{"cross-linked or EPR 90 C", "copper", 90, 250, 143, 0, "k-factors"},
	{"rubber 60 C", "copper", 60, 200, 141, 0, "k-factors"},
	{"rubber 85 C", "copper", 85, 220, 134, 0, "k-factors"},
	{"silicone 180 C", "copper", 180, 350, 132, 0, "k-factors"},
	{"PVC 70 C", "aluminum", 70, 160, 76, 78, "k-factors"},
	{"cross-linked or EPR 90 C", "aluminum", 90, 250, 94, 0, "k-factors"},
}

// KRows lists the published adiabatic constants as printed (source
// k-factors).
func KRows() []KRow { return slices.Clone(kRows[:]) }

// EndTemp is what an insulation stands: for ever, in ageing tests, and at the
// end of a short.
type EndTemp struct {
	Class                 string
	ClassC                float64
	Test240hC, Overload6h float64 // C; 0: none
	ShortC                float64
	Source                string
}

var endTemps = [...]EndTemp{
	{"A (PVC)", 85, 110, 135, 160, "insulation-overload"},
	{"B", 100, 125, 150, 160, "insulation-overload"},
	{"C (cross-linked)", 125, 150, 175, 250, "insulation-overload"},
	{"D", 150, 175, 200, 250, "insulation-overload"},
	{"ICEA PVC", 75, 0, 0, 150, "icea-final"},
	{"ICEA cross-linked or EPR", 90, 0, 0, 250, "icea-final"},
	{"ICEA rubber or polyethylene", 75, 0, 0, 200, "icea-final"},
}

// EndTemps lists temperatures by class of insulation; they are from memory
// and only hint (sources insulation-overload, icea-final).
func EndTemps() []EndTemp { return slices.Clone(endTemps[:]) }

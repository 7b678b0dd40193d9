package gauge

import (
	"fmt"
	"math"
)

// Stranding is how a conductor is made up.
type Stranding struct {
	Text     string // "19/29": strands over their gauge; "35/0.30": over their diameter in mm
	Strands  int
	StrandMM float64 // diameter of one strand
	Source   string
}

// AreaMM2 is the copper of all strands together.
func (s Stranding) AreaMM2() float64 {
	return float64(s.Strands) * math.Pi / 4 * s.StrandMM * s.StrandMM
}

// OverMM is the diameter over the strands in mm: seven lie in a ring around
// one (3 d), nineteen in two rings (5 d), other numbers as densely as
// nineteen (source strand-geometry).
func (s Stranding) OverMM() float64 {
	if s.Strands == 7 {
		return 3 * s.StrandMM
	}
	return strandFill * s.StrandMM * math.Sqrt(float64(s.Strands))
}

// saeStrands holds the usual make of SAE primary wire: strands and their
// gauge (source sae-strands).
var saeStrands = [...]struct{ awg, strands, strandAWG int }{
	{22, 7, 30}, {20, 7, 28}, {18, 16, 30}, {16, 19, 29}, {14, 19, 27}, {12, 19, 25}, {10, 19, 23}, {8, 19, 21},
}

// StrandingOf is the usual make of a size: SAE 22 to 8, or the thin-wall
// metric sizes; ok is false for others (sources sae-strands, thin-wall-list).
func StrandingOf(s Size) (made Stranding, ok bool) {
	if s.Metric {
		for _, row := range thinWallCable {
			if row.mm2 == s.Nominal {
				return Stranding{fmt.Sprintf("%d/%.2f", row.strands, row.strandMM), row.strands, row.strandMM, "thin-wall-list"}, true
			}
		}
		return Stranding{}, false
	}
	for _, row := range saeStrands {
		if row.awg == s.AWG {
			return Stranding{fmt.Sprintf("%d/%d", row.strands, row.strandAWG), row.strands, AWGDiameterMM(row.strandAWG), "sae-strands"}, true
		}
	}
	return Stranding{}, false
}

// overStrands is the diameter over the strands of any size: of its usual
// make, else of nineteen strands with the area on its label.
func overStrands(s Size) float64 {
	if made, ok := StrandingOf(s); ok {
		return made.OverMM()
	}
	return strandFill * 2 * math.Sqrt(labelMM2(s)/math.Pi)
}

// labelMM2 is the area that a size goes by: the AWG law, or the label.
func labelMM2(s Size) float64 {
	if s.Metric {
		return s.Nominal
	}
	return AWGAreaMM2(s.AWG)
}

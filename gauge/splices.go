package gauge

import (
	"fmt"
	"slices"
)

// SpliceArea is several conductors in one barrel: their sum and the sizes
// that it counts as.
type SpliceArea struct {
	MM2     float64
	Cmil    float64
	AWG     int     // next larger gauge, odd ones too
	EvenAWG int     // next larger even gauge: what barrels are made for
	AWGOK   bool    // the sum is within 4/0
	Label   float64 // next larger metric size, mm2 on the label
	LabelOK bool    // the sum is within 120 mm2
	Why     []Step
}

// SpliceOf adds the areas of conductors in one barrel, in mm2, and takes the
// next larger size, never the nearest. ok is false for none, or an area that
// is not from 0.01 to 1000 mm2 (sources splice-area, awg-law, iec-60228).
func SpliceOf(areasMM2 ...float64) (s SpliceArea, ok bool) {
	for _, a := range areasMM2 {
		if !(a >= 0.01 && a <= 1000) {
			return SpliceArea{}, false
		}
		s.MM2 += a
	}
	if len(areasMM2) == 0 {
		return SpliceArea{}, false
	}
	s.Cmil = s.MM2 / MM2PerCmil
	for n := 30; n >= -3 && !s.AWGOK; n-- {
		if AWGAreaMM2(n) >= s.MM2*(1-spliceSlack) {
			s.AWG, s.AWGOK = n, true
			i := slices.IndexFunc(evenGauges[:], func(even int) bool { return even <= n })
			s.EvenAWG = evenGauges[i]
		}
	}
	for _, size := range Ladder(true) {
		if size.Nominal >= s.MM2*(1-spliceSlack) {
			s.Label, s.LabelOK = size.Nominal, true
			break
		}
	}
	s.Why = []Step{{fmt.Sprintf("%d conductors in one barrel", len(areasMM2)), "sum(A)", s.MM2, "mm2", "splice-area"}}
	if s.AWGOK {
		s.Why = append(s.Why, Step{"next larger gauge, " + AWGName(s.AWG) + "; even, " + AWGName(s.EvenAWG), "A >= sum(A)", AWGAreaMM2(s.EvenAWG), "mm2", "awg-law"})
	}
	if s.LabelOK {
		s.Why = append(s.Why, Step{"next larger metric size", "A >= sum(A)", s.Label, "mm2", "iec-60228"})
	}
	return s, true
}

const spliceSlack = 1e-9

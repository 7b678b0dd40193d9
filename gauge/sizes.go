package gauge

import (
	"fmt"
	"slices"
)

// saeCmil holds the least conducting area of SAE cable in circular mils, by
// gauge number, ascending area (source sae-area).
var saeCmil = [...]struct {
	awg  int
	cmil float64
}{
	{18, 1537}, {16, 2336}, {14, 3702}, {12, 5833}, {10, 9343}, {8, 14810},
	{6, 24538}, {4, 37360}, {2, 62450}, {1, 77790}, {0, 98980}, {-1, 125100},
	{-2, 158600}, {-3, 205500},
}

// lawAWG lists the gauges that have no SAE area read: they follow the AWG law
// with the strand lay, and are never chosen by themselves.
var lawAWG = [...]int{30, 28, 26, 24, 22, 20, 3}

// class5 holds the largest resistance at 20 C of IEC 60228 class 5 plain
// copper in mohm/m, by nominal area in mm2, ascending (source iec-60228).
var class5 = [...]struct{ mm2, mohmPerM float64 }{
	{0.5, 39.0}, {0.75, 26.0}, {1, 19.5}, {1.5, 13.3}, {2.5, 7.98}, {4, 4.95},
	{6, 3.30}, {10, 1.91}, {16, 1.21}, {25, 0.780}, {35, 0.554}, {50, 0.386},
	{70, 0.272}, {95, 0.206}, {120, 0.161},
}

// AWGName writes a gauge number as the shop does: "10 AWG", "2/0 AWG".
func AWGName(n int) string {
	if n <= 0 {
		return fmt.Sprintf("%d/0 AWG", 1-n)
	}
	return fmt.Sprintf("%d AWG", n)
}

// AWGSize gives the stranded vehicle cable of gauge n (1/0 is 0 ... 4/0 is
// -3). 18 to 4/0 have the least area of SAE cable; 3 and 20 to 30 have the
// area of the AWG law over the strand lay, because no SAE figure was read for
// them. ok is false for gauges that are not sold as stranded cable.
func AWGSize(n int) (s Size, ok bool) {
	for _, row := range saeCmil {
		if row.awg == n {
			return Size{Name: AWGName(n), AWG: n, AreaMM2: row.cmil * MM2PerCmil, Source: "sae-area"}, true
		}
	}
	if slices.Contains(lawAWG[:], n) {
		return StrandedAWG(n), true
	}
	return Size{}, false
}

// StrandedAWG is a stranded conductor of the AWG area: its resistance is that
// of the solid wire times 1.02 (sources awg-law, strand-lay). Use it for
// cable sold by AWG area; vehicle cable to SAE is smaller, see [AWGSize].
func StrandedAWG(n int) Size {
	return Size{Name: AWGName(n), AWG: n, AreaMM2: AWGAreaMM2(n) / LayFactor, Source: "awg-law"}
}

// MetricSize gives the cable of nominal area mm2. Its AreaMM2 is what its
// largest permitted resistance amounts to in copper, 5 to 14 % below the
// label (source iec-60228). Vehicle cable of a label between those of class 5,
// as 0.35, 2 or 3 mm2, is taken to hold the least copper for its label that
// class 5 allows (source between-class5); it may stand in a draft and is never
// chosen. ok is false for areas that no cable is sold by.
func MetricSize(mm2 float64) (s Size, ok bool) {
	for _, row := range class5 {
		if row.mm2 == mm2 {
			return Size{
				Name:    fmt.Sprintf("%g mm2", mm2),
				Metric:  true,
				Nominal: mm2,
				AreaMM2: RhoCopper20 * 1e9 / row.mohmPerM,
				Source:  "iec-60228",
			}, true
		}
	}
	if !soldBetween(mm2) {
		return Size{}, false
	}
	return Size{Name: fmt.Sprintf("%g mm2", mm2), Metric: true, Nominal: mm2, AreaMM2: leastCopper() * mm2, Source: "between-class5"}, true
}

// soldBetween reports whether vehicle cable is sold by that label off class 5.
func soldBetween(mm2 float64) bool {
	return mm2 == 0.65 || slices.ContainsFunc(isoTable[:], func(r ISORow) bool { return r.MM2 == mm2 }) ||
		slices.ContainsFunc(thinWallCable[:], func(r thinWallRow) bool { return r.mm2 == mm2 })
}

// leastCopper is the least copper that class 5 allows, over the label.
func leastCopper() float64 {
	share := 1.0
	for _, row := range class5 {
		share = min(share, RhoCopper20*1e9/row.mohmPerM/row.mm2)
	}
	return share
}

// Ladder lists the sizes that may be chosen, ascending: SAE 18 to 4/0, or
// IEC 60228 class 5. 20 AWG and smaller may stand in a draft, but are not
// here: no area of theirs was read.
func Ladder(metric bool) []Size {
	var out []Size
	if metric {
		for _, row := range class5 {
			s, _ := MetricSize(row.mm2)
			out = append(out, s)
		}
		return out
	}
	for _, row := range saeCmil {
		s, _ := AWGSize(row.awg)
		out = append(out, s)
	}
	return out
}

package gauge

import "slices"

// Shrink is one size of heat-shrink tube: at least ExpandedMM inside before,
// at most RecoveredMM after.
type Shrink struct {
	Ratio       int // 2, 3 or 4 to 1
	Name        string
	ExpandedMM  float64
	RecoveredMM float64
	Adhesive    bool
	Source      string
}

var shrinks = [...]Shrink{
	{2, "3/64", 1.17, 0.58, false, "shrink-sizes"},
	{2, "1/16", 1.60, 0.80, false, "shrink-sizes"},
	{2, "3/32", 2.36, 1.18, false, "shrink-sizes"},
	{2, "1/8", 3.17, 1.59, false, "shrink-sizes"},
	{2, "3/16", 4.75, 2.37, false, "shrink-sizes"},
	{2, "1/4", 6.35, 3.17, false, "shrink-sizes"},
	{2, "3/8", 9.52, 4.76, false, "shrink-sizes"},
	{2, "1/2", 12.7, 6.35, false, "shrink-sizes"},
	{2, "3/4", 19.05, 9.52, false, "shrink-sizes"},
	{2, "1", 25.4, 12.7, false, "shrink-sizes"},
	{2, "1-1/2", 38.1, 19.05, false, "shrink-sizes"},
	{2, "2", 50.8, 25.4, false, "shrink-sizes"},
	{3, "3/1", 3, 1, true, "shrink-sizes"},
	{3, "4.8/1.5", 4.8, 1.5, true, "shrink-sizes"},
	{3, "6/2", 6, 2, true, "shrink-sizes"},
	{3, "9/3", 9, 3, true, "shrink-sizes"},
	{3, "12/4", 12, 4, true, "shrink-sizes"},
	{3, "18/6", 18, 6, true, "shrink-sizes"},
	{3, "24/8", 24, 8, true, "shrink-sizes"},
	{3, "39/13", 39, 13, true, "shrink-sizes"},
	{4, "4/1", 4, 1, true, "shrink-sizes"},
	{4, "8/2", 8, 2, true, "shrink-sizes"},
	{4, "12/3", 12, 3, true, "shrink-sizes"},
	{4, "16/4", 16, 4, true, "shrink-sizes"},
	{4, "24/6", 24, 6, true, "shrink-sizes"},
	{4, "32/8", 32, 8, true, "shrink-sizes"},
	{4, "52/13", 52, 13, true, "shrink-sizes"},
}

// Shrinks lists usual sizes of heat-shrink tube; they are from memory, their
// ratios were read (sources shrink-sizes, shrink-ratio).
func Shrinks() []Shrink { return slices.Clone(shrinks[:]) }

// RecoveredMM is the inside diameter to which a tube of a ratio shrinks: the
// named, expanded one over the ratio. ok is false unless the diameter is from
// 0 to 1e4 mm and the ratio from 1 to 10 (source shrink-ratio).
func RecoveredMM(expandedMM, ratio float64) (mm float64, ok bool) {
	if !(expandedMM >= 0 && expandedMM <= 1e4) || !(ratio >= 1 && ratio <= 10) {
		return 0, false
	}
	return expandedMM / ratio, true
}

const shrinkSlip = 0.90 // the object takes at most this share of the tube before (source shrink-ratio)

// ShrinkFor is the smallest tube of a ratio (2, 3, 4) that goes over leastMM
// to mostMM, the thinnest and thickest place of the object: it grips the
// thinnest and slips over the thickest with a tenth to spare. ok is false
// where none does: take a higher ratio. A hint, since the sizes are from
// memory (sources shrink-sizes, shrink-ratio).
func ShrinkFor(ratio int, leastMM, mostMM float64) (s Shrink, c Confidence, ok bool) {
	if !(leastMM > 0 && leastMM <= mostMM) {
		return Shrink{}, 0, false
	}
	for _, s := range shrinks {
		if s.Ratio == ratio && s.RecoveredMM < leastMM && mostMM <= shrinkSlip*s.ExpandedMM {
			return s, confidenceOf(s.Source), true
		}
	}
	return Shrink{}, 0, false
}

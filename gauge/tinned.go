package gauge

// tinnedClass5 holds the largest resistance at 20 C of IEC 60228 class 5
// tinned copper in mohm/m, in the order of class5 (source iec-60228-tinned).
var tinnedClass5 = [len(class5)]float64{
	40.1, 26.7, 20.0, 13.7, 8.21, 5.09, 3.39, 1.95, 1.24, 0.795, 0.565, 0.393, 0.277, 0.210, 0.164,
}

// TinnedSize is the tinned cable of a size: the same label, less copper.
// Metric sizes take the tinned column of IEC 60228 class 5; gauges are raised
// in resistance as the code table's coated column stands over its uncoated
// one, those below 18 AWG as 18 AWG (sources iec-60228-tinned, nec-table8).
// A size that is tinned, or has neither, comes back as it is.
func TinnedSize(s Size) Size {
	factor := tinnedFactor(s)
	if s.Tinned || factor == 0 {
		return s
	}
	s.AreaMM2 /= factor
	s.Name += " tinned"
	s.Tinned = true
	return s
}

// tinnedFactor is tinned over plain resistance; 0 where nobody printed it.
func tinnedFactor(s Size) float64 {
	if s.Metric {
		for i, row := range class5 {
			if row.mm2 == s.Nominal && s.Source == "iec-60228" {
				return tinnedClass5[i] / row.mohmPerM
			}
		}
		return 0
	}
	plain, ok := NECOhmPerM(min(s.AWG, 18), true, false)
	tinned, _ := NECOhmPerM(min(s.AWG, 18), true, true)
	if !ok {
		return 0
	}
	return tinned / plain
}

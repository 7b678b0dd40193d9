package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// listValues: published lists of current, resistance and diameter.
func listValues() []outside {
	out := tinnedValues()
	out = append(out, diameterValues()...)
	out = append(out, lawValues()...)
	return append(out, listCells()...)
}

// tinnedValues: tinned over plain is taken from the tables themselves, so
// these are look-ups; the uncoated rows elsewhere are computed.
func tinnedValues() (out []outside) {
	for awg, want := range map[int]float64{
		18: 8.45, 16: 5.29, 14: 3.26, 12: 2.05, 10: 1.29, 8: 0.809, 6: 0.510, 4: 0.321, 3: 0.254, 2: 0.201, 1: 0.160,
		0: 0.127, -1: 0.101, -2: 0.0797, -3: 0.0626,
	} {
		got := gauge.TinnedSize(gauge.StrandedAWG(awg)).OhmPerM(75) * ohmPerKft
		out = append(out, outside{"tinned " + gauge.AWGName(awg) + " at 75 C", "National Electrical Code, chapter 9 table 8, coated", got, want, 0.006 * want, false})
	}
	for awg, want := range map[int]float64{18: 8.08, 16: 5.08, 14: 3.19, 12: 2.01, 10: 1.26, 8: 0.786} {
		got, _ := gauge.NECOhmPerM(awg, false, true)
		out = append(out, outside{"tinned solid " + gauge.AWGName(awg) + " at 75 C", "National Electrical Code, chapter 9 table 8, coated", got * ohmPerKft, want, 1e-9, false})
	}
	plain := map[float64]float64{0.75: 26.0, 1: 19.5, 4: 4.95, 6: 3.30, 16: 1.21, 25: 0.780, 35: 0.554, 70: 0.272, 95: 0.206, 120: 0.161}
	for mm2, want := range plain {
		s, _ := gauge.MetricSize(mm2)
		out = append(out, outside{s.Name + " plain at 20 C", "IEC 60228 class 5, plain", s.OhmPerM(20) * 1000, want, 1e-9, false})
	}
	for mm2, want := range map[float64]float64{
		0.5: 40.1, 0.75: 26.7, 1: 20.0, 1.5: 13.7, 2.5: 8.21, 4: 5.09, 6: 3.39, 10: 1.95, 16: 1.24, 25: 0.795,
		35: 0.565, 50: 0.393, 70: 0.277, 95: 0.210, 120: 0.164,
	} {
		s, _ := gauge.MetricSize(mm2)
		out = append(out, outside{s.Name + " tinned at 20 C", "IEC 60228 class 5, tinned", gauge.TinnedSize(s).OhmPerM(20) * 1000, want, 1e-9, false})
	}
	return out
}

// diameterValues: strands and two nominal walls lie below the data sheet of
// GXL by 0.25 to 0.55 mm; the remembered 0.5 mm2 is 0.1 mm off the list.
func diameterValues() (out []outside) {
	gxl, _ := gauge.FamilyOf("GXL")
	for awg, want := range map[int]float64{20: 2.4, 18: 2.6, 16: 3.0, 14: 3.5, 12: 4.1, 10: 4.8, 8: 5.9} {
		d := gauge.DiameterOf(sized(awg), gxl)
		out = append(out, outside{"GXL outside, " + gauge.AWGName(awg), "cable maker's data sheet, mm", d.OutsideMM, want, 0, false})
		gpt, _ := gauge.FamilyOf("GPT") // same walls, computed
		out = append(out, outside{"general wall computed, " + gauge.AWGName(awg), "cable maker's data sheet of GXL less 0.25 to 0.55 mm", gauge.DiameterOf(sized(awg), gpt).OutsideMM, want - 0.4, 0.2, true})
	}
	for _, r := range gauge.ISOTable() {
		class, _ := gauge.FamilyOf("ISO-C")
		s, _ := gauge.ISOSize(r.MM2)
		if read := gauge.DiameterOf(s, class); read.Source == "thin-wall-list" {
			out = append(out, outside{s.Name + " thin wall outside", "cable maker's list against ISO 6722 from memory", read.OutsideMM, r.OutsideMM, 0.11, true})
		}
	}
	return out
}

// lawValues: the square-root rule against note 1. At 200 C the note takes
// nothing off, the rule 6 %: left out.
func lawValues() (out []outside) {
	for insulation, want := range map[float64]float64{60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 125: 0.89} {
		out = append(out, outside{
			fmt.Sprintf("engine space, %g C insulation", insulation), "33 CFR 183.425 table 5 note 1, from memory",
			gauge.AmbientFactor(insulation, 50, 30), want, 0.006, true,
		})
	}
	return out
}

// listCells: every row of the published lists and factors, as stored.
func listCells() (out []outside) {
	rows := map[string][][2]float64{
		"body-builder": {{0.5, 3.5}, {0.85, 7}, {1.25, 10.5}, {2, 14}, {3, 17.5}, {5, 21}, {8, 28}, {10, 35}, {15, 42}, {20, 56}, {30, 70}, {40, 87.5}, {60, 105}, {85, 140}},
		"thin-wall":    {{0.5, 11}, {0.75, 14}, {1, 16.5}, {1.5, 21}, {2, 25}, {2.5, 29}, {3, 33}, {4, 39}, {4.5, 42}, {6, 50}, {8.5, 63}, {10, 70}},
		"vde":          {{0.75, 15}, {1, 19}, {1.5, 21}, {2.5, 29}, {4, 39}, {6, 51}, {10, 73}, {16, 94}, {25, 129}, {35, 158}, {50, 198}, {70, 245}, {95, 292}, {120, 344}, {150, 391}, {185, 448}},
		"uk-pvc":       {{0.65, 5.75}, {1, 8.75}, {1.5, 12.75}, {2, 17.5}, {2.5, 21.75}, {3, 25.5}},
		"australian":   {{1.13, 20}, {1.84, 28}, {2.9, 37}, {4.59, 48}},
	}
	for name, cells := range rows {
		list, _ := gauge.AmpListOf(name)
		for _, c := range cells {
			out = append(out, outside{fmt.Sprintf("%s, %g mm2", list.Title, c[0]), list.Title, list.At(c[0], 0), c[1], 0, false})
		}
	}
	for loaded, want := range map[int]float64{5: 0.75, 7: 0.65, 10: 0.55, 14: 0.50, 19: 0.45, 24: 0.40, 40: 0.35, 61: 0.30} {
		out = append(out, outside{fmt.Sprintf("%d loaded cores", loaded), "VDE 0298-4, multicore cable", gauge.VDEBundleFactor(loaded), want, 0, false})
	}
	return append(out, outside{"eight wires of a space harness", "space agency parts list, (29 - N)/28, from memory", gauge.SpaceBundleFactor(8), 0.75, 1e-12, true})
}

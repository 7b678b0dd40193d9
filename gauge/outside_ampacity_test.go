package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// ampCell is one published cell: gauge, conductors loaded together (5 stands
// for "4 to 6", 12 for "7 to 24"), amperes.
type ampCell struct {
	awg, loaded int
	amps        float64
}

// bundled and bundledHot are a marine catalogue's 105 C cells, in air at 30 C
// and in engine spaces at 50 C.
var bundled = [...]ampCell{
	{18, 2, 20}, {16, 2, 25}, {12, 2, 45}, {10, 2, 60}, {6, 2, 120}, {4, 2, 160}, {1, 2, 245},
	{0, 2, 285}, {-2, 2, 385}, {-3, 2, 445}, {18, 3, 14}, {14, 3, 24.5}, {12, 3, 31.5}, {8, 3, 56},
	{6, 3, 84}, {2, 3, 147}, {1, 3, 171.5}, {-1, 3, 231}, {-2, 3, 269.5}, {16, 5, 15}, {14, 5, 21},
	{10, 5, 36}, {8, 5, 48}, {4, 5, 96}, {2, 5, 126}, {0, 5, 171}, {-1, 5, 198}, {-3, 5, 267},
	{18, 12, 10}, {16, 12, 12.5}, {12, 12, 22.5}, {10, 12, 30}, {6, 12, 60}, {4, 12, 80}, {1, 12, 122.5},
	{0, 12, 142.5}, {-2, 12, 192.5}, {-3, 12, 222.5},
}

var bundledHot = [...]ampCell{
	{16, 2, 21.3}, {14, 2, 29.8}, {10, 2, 51}, {8, 2, 68}, {4, 2, 136}, {2, 2, 178.5}, {0, 2, 242.3},
	{-1, 2, 280.5}, {-3, 2, 378.3}, {18, 3, 11.9}, {16, 3, 14.9}, {12, 3, 26.8}, {10, 3, 35.7}, {6, 3, 71.4},
	{4, 3, 95.2}, {1, 3, 145.8}, {0, 3, 169.6}, {-2, 3, 229.1}, {-3, 3, 264.8}, {18, 5, 10.2}, {14, 5, 17.9},
	{12, 5, 23}, {8, 5, 40.8}, {6, 5, 61.2}, {2, 5, 107.1}, {1, 5, 125}, {-1, 5, 168.3}, {-2, 5, 196.4},
	{16, 12, 10.6}, {14, 12, 14.9}, {10, 12, 25.5}, {8, 12, 34}, {4, 12, 68}, {2, 12, 89.3}, {0, 12, 121.1},
	{-1, 12, 140.3}, {-3, 12, 189.1},
}

func bundleValues() []outside {
	const source = "marine wire catalogue, 105 C ampacity, bundles and engine space (33 CFR 183.425 notes)"
	var out []outside
	for _, c := range bundled {
		amps, _, _ := gauge.Ampacity(sized(c.awg), rated(105), 30, c.loaded)
		out = append(out, outside{
			fmt.Sprintf("%s of %d loaded, 30 C", gauge.AWGName(c.awg), c.loaded), source, amps, c.amps, 0.06, c.loaded > 2,
		})
	}
	for _, c := range bundledHot {
		// printed with 0.85, the square-root rule gives 0.856: 0.8 % above
		amps, _, _ := gauge.Ampacity(sized(c.awg), rated(105), 50, c.loaded)
		out = append(out, outside{
			fmt.Sprintf("%s of %d loaded, 50 C", gauge.AWGName(c.awg), c.loaded), source, amps, c.amps, 0.06 + 0.008*c.amps, true,
		})
	}
	return out
}

func ambientValues() []outside {
	const vde = "VDE 0298-4 table 17 column 4, PVC 70 C, reference 30 C"
	out := []outside{
		{"engine space 105 C", "33 CFR 183.425 note 1, 0.85 printed", gauge.AmbientFactor(105, 50, 30), 0.85, 0.007, true},
	}
	for ambient, want := range map[float64]float64{10: 1.22, 15: 1.17, 20: 1.12, 25: 1.06, 30: 1.00} {
		out = append(out, outside{fmt.Sprintf("PVC 70 C at %g C", ambient), vde, gauge.AmbientFactor(70, ambient, 30), want, 0.006, true})
	}
	return out
}

// heatValues: the heat balance, nothing fitted. Published points and how far
// the model may lie from each list, as found: single PVC cores -12 to +6 %
// (outside diameters from memory), thin-wall vehicle cable -2 to +6 % (the
// 40 K rise is our reading of an unexplained list), aircraft -4 to +6 %.
func heatValues() []outside {
	var out []outside
	const thin = "thin-wall vehicle cable, maker's rating list, read as a rise of 40 K"
	for _, c := range []struct{ mm2, strandMM, strands, outsideMM, mohm, amps float64 }{
		{0.5, 0.20, 16, 1.7, 37.1, 11}, {0.75, 0.20, 24, 1.9, 24.7, 14}, {1, 0.20, 32, 2.1, 18.5, 16.5},
		{1.5, 0.30, 21, 2.4, 12.7, 21}, {2, 0.30, 28, 2.8, 9.42, 25}, {2.5, 0.30, 35, 3.0, 7.60, 29},
		{3, 0.30, 44, 3.4, 6.15, 33}, {4, 0.30, 56, 3.7, 4.71, 39}, {6, 0.30, 84, 4.3, 3.14, 50}, {10, 0.40, 80, 6.0, 1.82, 70},
	} {
		w := gauge.Cylinder{ConductorMM: stranded(c.strands, c.strandMM), OutsideMM: c.outsideMM, OhmPerM20: c.mohm / 1000}
		out = append(out, outside{fmt.Sprintf("thin wall %g mm2, 30 to 70 C", c.mm2), thin, w.AmpsIn(30, 70), c.amps, 0.06 * c.amps, true})
	}
	const vde = "VDE 0100-523 and 0298-4 group 3, single PVC core 70 C in air at 30 C"
	for _, c := range []struct{ mm2, outsideMM, mohm, amps float64 }{
		{1.5, 3.0, 13.3, 24}, {2.5, 3.6, 7.98, 32}, {4, 4.1, 4.95, 42}, {6, 4.7, 3.30, 54}, {10, 6.0, 1.91, 73}, {16, 7.1, 1.21, 98},
	} {
		s, _ := gauge.MetricSize(c.mm2)
		w := gauge.Cylinder{ConductorMM: 1.27 * sqrt(c.mm2), OutsideMM: c.outsideMM, OhmPerM20: s.OhmPerM(20)}
		out = append(out, outside{fmt.Sprintf("PVC core %g mm2", c.mm2), vde, w.AmpsIn(30, 70), c.amps, 0.13 * c.amps, true})
	}
	air := gauge.Cylinder{ConductorMM: 1.80, OutsideMM: 2.3, OhmPerM20: gauge.StrandedAWG(14).OhmPerM(20)}
	return append(out, outside{"14 AWG 200 C at 50 C in air", "FAA AC 43.13-1B, 11-68 example 2, chart value 47 A", air.AmpsIn(50, 200), 47, 0.06 * 47, true})
}

// stranded is the diameter over strands laid in a near-hexagon.
func stranded(n, strandMM float64) float64 { return 1.147 * strandMM * sqrt(n) }

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

// heatValues: the heat balance, nothing fitted, against every published
// point: single PVC cores within 12 % (outside diameters from memory),
// aircraft wire within 7 %, thin-wall vehicle cable within 6 % (the 40 K rise
// is our reading of an unexplained list).
func heatValues() (out []outside) {
	within := map[string]float64{"vde-group3": 0.12, "thin-wall-list": 0.06, "ac4313-curves-memory": 0.07, "ac4313-example-2": 0.07}
	for _, p := range gauge.HeatPoints() {
		src, _ := gauge.SourceOf(p.Source)
		out = append(out, outside{fmt.Sprintf("%s, %g to %g C", p.Name, p.AmbientC, p.ConductorC), src.Title, p.ModelA(), p.Amps, within[p.Source] * p.Amps, true})
	}
	return out
}

// pointValues: the body-builder guide pairs gauges with its metric rows; ours
// takes the row that is no more than 5 % larger, so 6 AWG has 10 mm2, not the
// 15 mm2 beside it there.
func pointValues() (out []outside) {
	for awg, want := range map[int]float64{20: 3.5, 18: 7, 16: 10.5, 14: 14, 12: 17.5, 10: 21, 8: 28} {
		amps, _, _ := gauge.AmpacityBodyBuilder.Ampacity(sized(awg), rated(125), 40, 1)
		out = append(out, outside{"body builder, " + gauge.AWGName(awg), "truck body-builder guide, metric table at 40 C", amps, want, 0, false})
	}
	for name, cells := range map[string]map[int]float64{
		"body-builder-gauge": {20: 14, 18: 18, 16: 24, 14: 34, 12: 42, 10: 58, 8: 80, 6: 110},
		"space":              {20: 3.7},
	} {
		list, _ := gauge.AmpListOf(name)
		for _, r := range list.Rows {
			out = append(out, outside{list.Title + ", " + gauge.AWGName(r.AWG), list.Title, r.Amps, cells[r.AWG], 0, false})
		}
	}
	return out
}

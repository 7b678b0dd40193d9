package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// bureau holds the resistance of solid copper wire at 20 C in ohm per 1000 ft
// by gauge, four digits, as remembered from the bureau's table.
var bureau = map[int]float64{
	-3: 0.04901, -2: 0.0618, -1: 0.07793, 0: 0.09827, 1: 0.1239, 2: 0.1563, 3: 0.197, 4: 0.2485, 5: 0.3133, 6: 0.3951,
	7: 0.4982, 8: 0.6282, 9: 0.7921, 10: 0.9989, 11: 1.26, 12: 1.588, 13: 2.003, 14: 2.525, 15: 3.184, 16: 4.016,
	17: 5.064, 18: 6.385, 19: 8.051, 20: 10.15, 21: 12.8, 22: 16.14, 23: 20.36, 24: 25.67, 25: 32.37, 26: 40.81,
	27: 51.47, 28: 64.9, 29: 81.83, 30: 103.2,
}

// lawTable is 33 CFR 183.425 table 5, read a second time: gauge, then amperes
// at 60, 75, 80, 90, 105, 125 and 200 C.
var lawTable = [...][8]float64{
	{18, 10, 10, 15, 20, 20, 25, 25},
	{16, 15, 15, 20, 25, 25, 30, 35},
	{14, 20, 20, 25, 30, 35, 40, 45},
	{12, 25, 25, 35, 40, 45, 50, 55},
	{10, 40, 40, 50, 55, 60, 70, 70},
	{8, 55, 65, 70, 70, 80, 90, 100},
	{6, 80, 95, 100, 100, 120, 125, 135},
	{4, 105, 125, 130, 135, 160, 170, 180},
	{3, 120, 145, 150, 155, 180, 195, 210},
	{2, 140, 170, 175, 180, 210, 225, 240},
	{1, 165, 195, 210, 210, 245, 265, 280},
	{0, 195, 230, 245, 245, 285, 305, 325},
	{-1, 225, 265, 285, 285, 330, 355, 370},
	{-2, 260, 310, 330, 330, 385, 410, 430},
	{-3, 300, 360, 385, 385, 445, 475, 510},
}

// saeLeast holds the least areas of SAE cable in circular mils, read a second
// time.
var saeLeast = map[int]float64{
	18: 1537, 16: 2336, 14: 3702, 12: 5833, 10: 9343, 8: 14810, 6: 24538, 4: 37360, 2: 62450, 1: 77790, 0: 98980,
	-1: 125100, -2: 158600, -3: 205500,
}

// tableValues: the AWG law with IACS copper against the bureau's resistances,
// within its four digits; and tables cell by cell.
func tableValues() (out []outside) {
	for awg, want := range bureau {
		got := gauge.Size{AreaMM2: gauge.AWGAreaMM2(awg)}.OhmPerM(20) * ohmPerKft
		out = append(out, outside{gauge.AWGName(awg) + " solid at 20 C", "bureau table of copper wire, 20 C, from memory", got, want, 0.0005 * want, true})
	}
	for _, row := range lawTable {
		for i, insulation := range []float64{60, 75, 80, 90, 105, 125, 200} {
			amps, _, _ := gauge.LawAmps(int(row[0]), insulation, 2, false)
			name := fmt.Sprintf("cell of %s at %g C", gauge.AWGName(int(row[0])), insulation)
			out = append(out, outside{name, "33 CFR 183.425 table 5", amps, row[i+1], 0, false})
		}
	}
	for awg, want := range saeLeast {
		out = append(out, outside{gauge.AWGName(awg) + " least area", "SAE J1128 and J1127 least areas, three copies", sized(awg).Cmil(), want, 1e-6, false})
	}
	return out
}

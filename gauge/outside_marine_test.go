package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// marine3 holds a second published 12 V, 3 % chart, which follows AWG areas:
// round trip in feet, amperes, gauge (1/0 is 0).
var marine3 = [...][3]int{
	{10, 5, 18}, {10, 10, 14}, {10, 20, 12}, {10, 25, 10}, {10, 40, 8}, {10, 50, 8}, {10, 70, 6}, {10, 80, 6},
	{10, 100, 4}, {15, 5, 16}, {15, 15, 10}, {15, 20, 10}, {15, 30, 8}, {15, 40, 6}, {15, 60, 4}, {15, 70, 4},
	{15, 90, 2}, {15, 100, 2}, {20, 10, 12}, {20, 15, 10}, {20, 25, 8}, {20, 30, 6}, {20, 50, 4}, {20, 60, 4},
	{20, 80, 2}, {20, 90, 2}, {25, 5, 14}, {25, 10, 10}, {25, 20, 8}, {25, 25, 6}, {25, 40, 4}, {25, 50, 4},
	{25, 70, 2}, {25, 80, 2}, {25, 100, 1}, {30, 5, 12}, {30, 15, 8}, {30, 20, 6}, {30, 30, 4}, {30, 40, 4},
	{30, 60, 2}, {30, 70, 2}, {30, 90, 0}, {30, 100, 0}, {40, 10, 8}, {40, 15, 6}, {40, 25, 4}, {40, 30, 4},
	{40, 50, 2}, {40, 60, 1}, {40, 80, 0}, {40, 90, -1}, {50, 5, 10}, {50, 10, 8}, {50, 20, 4}, {50, 25, 4},
	{50, 40, 2}, {50, 50, 1}, {50, 70, 0}, {50, 80, -1}, {50, 100, -2}, {60, 5, 10}, {60, 15, 6}, {60, 20, 4},
	{60, 30, 2}, {60, 40, 1}, {60, 60, -1}, {60, 70, -1}, {60, 90, -2}, {60, 100, -3}, {70, 10, 6}, {70, 15, 4},
	{70, 25, 2}, {70, 30, 2}, {70, 50, -1}, {70, 60, -1}, {70, 80, -2}, {70, 90, -3}, {80, 5, 8}, {80, 10, 6},
	{80, 20, 2}, {80, 25, 2}, {80, 40, 0}, {80, 50, -1}, {80, 70, -2}, {80, 80, -3}, {90, 10, 4}, {90, 15, 4},
	{90, 25, 1}, {90, 30, 0}, {90, 50, -2}, {90, 60, -2}, {100, 5, 8}, {100, 10, 4}, {100, 20, 2}, {100, 25, 1},
	{100, 40, -1}, {100, 50, -2}, {100, 70, -3},
}

// marine3Miss: cells off the AWG rule, with what the rule gives. Four sit
// where the printed size is the next SAE area (4 and 1 AWG are within 4 % of
// what is needed); 60 ft and 15 A is 2.4 % short and looks like a slip.
var marine3Miss = map[[2]int]int{{15, 90}: 4, {30, 90}: 1, {90, 30}: 1, {70, 50}: 0, {60, 15}: 4}

// marine10 is its 12 V, 10 % chart: from 60 A on it is raised to the 105 C
// ampacity.
var marine10 = [...][3]int{
	{10, 5, 18}, {10, 15, 18}, {10, 20, 16}, {10, 30, 14}, {10, 40, 14}, {10, 60, 10}, {10, 70, 8}, {10, 90, 6},
	{10, 100, 6}, {15, 10, 18}, {15, 15, 16}, {15, 25, 14}, {15, 30, 14}, {15, 50, 12}, {15, 60, 10},
	{15, 80, 8}, {15, 90, 6},
}

// marine10Miss: 50 A over 15 ft is 2.9 % short and above the 45 A of 12 AWG.
var marine10Miss = map[[2]int]int{{15, 50}: 10}

// marineValues: every published cell, misses stated apart.
func marineValues() []outside {
	const chart3, chart10 = "second published 12 V 3 % wire chart, by AWG areas", "its 12 V 10 % chart, ampacity from 60 A on"
	var out []outside
	for _, c := range marine3 {
		name := fmt.Sprintf("second chart 3 %% %d ft %d A", c[0], c[1])
		out = append(out, chartCell(name, chart3, ruledPick(c, 0.36), c, marine3Miss))
	}
	for _, c := range marine10 {
		name := fmt.Sprintf("second chart 10 %% %d ft %d A", c[0], c[1])
		got := ruledPick(c, 1.2)
		if amps := float64(c[1]); amps >= 60 {
			got = min(got, carryPick(0, amps))
		}
		out = append(out, chartCell(name, chart10, got, c, marine10Miss))
	}
	return out
}

// chartCell holds a cell against its printed gauge, or, where the print is not
// followed, against what the rule gives: a look-up that proves nothing.
func chartCell(name, source string, got float64, cell [3]int, miss map[[2]int]int) outside {
	if rule, ok := miss[[2]int{cell[0], cell[1]}]; ok {
		return outside{name + ", printed otherwise", source + ": a stated miss", got, float64(rule), 0, false}
	}
	return outside{name, source, got, float64(cell[2]), 0, true}
}

// ruledPick sizes a cell by AWG areas through the typed round trip.
func ruledPick(cell [3]int, volts float64) float64 {
	s, ok := gauge.AreaAWG.Pick(gauge.CmilFor(gauge.ConductorFt(float64(cell[0])), gauge.KRoom, float64(cell[1]), volts))
	if !ok {
		return 99
	}
	return float64(s.AWG)
}

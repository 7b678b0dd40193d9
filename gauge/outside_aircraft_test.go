package gauge_test

import (
	"fmt"
	"math"

	"legwork/gauge"
)

const ac = "FAA AC 43.13-1B, "

// aircraftValues: tables 11-3, 11-6 to 11-9 and the worked examples.
func aircraftValues() []outside {
	out := aircraftDrops()
	out = append(out, aircraftExamples()...)
	out = append(out, aircraftRebuilt()...)
	return append(out, aircraftCells()...)
}

// aircraftDrops: drops and runs through the resistances of table 11-9.
func aircraftDrops() []outside {
	drop := func(awg int, feet float64) float64 {
		s, _ := gauge.AircraftSize(awg)
		return gauge.DropOver(gauge.ConductorFt(feet), s, 20, 20, 28).Volts
	}
	run := func(awg int, volts float64) float64 {
		s, _ := gauge.AircraftSize(awg)
		return gauge.LongestRunM(s.OhmPerM(20), 20, volts) / gauge.MeterPerFoot
	}
	return []outside{
		{"table 11-9 wire, 107 ft of 6 AWG", ac + "table 11-7", drop(6, 107), 0.942, 0.001, true},
		{"table 11-9 wire, 90 ft of 4 AWG", ac + "table 11-7", drop(4, 90), 0.504, 0.001, true},
		{"table 11-9 wire, 88 ft of 12 AWG", ac + "table 11-7, printed 3.60, rounded", drop(12, 88), 3.60, 0.05, true},
		{"table 11-9 wire, 100 ft of 14 AWG", ac + "table 11-7", drop(14, 100), 6.12, 0.001, true},
		{"table 11-9 wire, 39 ft of 10 AWG", ac + "table 11-8", drop(10, 39), 0.98, 0.005, true},
		{"table 11-9 wire, 156 ft of 10 AWG", ac + "table 11-8", drop(10, 156), 3.93, 0.005, true},
		{"table 11-9 wire, 273 ft of 10 AWG", ac + "table 11-8", drop(10, 273), 6.88, 0.005, true},
		{"table 11-9 wire, 10 AWG within 1 V", ac + "table 11-8", run(10, 1), 39, 1, true},
		{"table 11-9 wire, 10 AWG within 0.5 V", ac + "table 11-8", run(10, 0.5), 19.5, 0.5, true},
		{"table 11-9 wire, 10 AWG within 4 V", ac + "table 11-8", run(10, 4), 156, 3, true},
		{"table 11-9 wire, 10 AWG within 7 V", ac + "table 11-8", run(10, 7), 273, 5, true},
		// printed 0.366 V: a misprint, the arithmetic of its own row gives this
		{"table 11-9 wire, 19.5 ft of 10 AWG, printed otherwise", ac + "table 11-8, second row recomputed", drop(10, 19.5), 0.4914, 1e-4, false},
	}
}

func aircraftExamples() []outside {
	altitude, _, _ := gauge.AltitudeFactor(20000)
	high, _, _ := gauge.AltitudeFactor(60000)
	eight, _, _ := gauge.AircraftBundleFactor(8, 0.6)
	many, _, _ := gauge.AircraftBundleFactor(35, 0.2)
	twelve, _, _ := gauge.AircraftBundleFactor(12, 1)
	free := func(awg int, riseK float64) float64 {
		for _, p := range gauge.CurvePoints() {
			if p.AWG == awg && p.RiseK == riseK {
				return p.Value
			}
		}
		return math.NaN()
	}
	const example1, example2 = ac + "11-69 example 1, from memory", ac + "11-69 example 2, from memory"
	small, large := free(22, 140)*many*high, free(20, 140)*many*high
	hot := gauge.AircraftConductorC(50, 200, 20, 26)
	return []outside{
		{"14 AWG at 20,000 ft", ac + "11-68 example 2", free(14, 150) * altitude, 42.77, 0.005, true},
		{"14 AWG at 20,000 ft, eight wires", ac + "11-68 example 2", free(14, 150) * altitude * eight, 26, 0.5, true},
		{"conductor by the root law", ac + "11-68 example 2, about 182 C", hot, 182, 0.5, true},
		{"run left at that temperature", ac + "11-68 example 2, about 9.5 ft", gauge.RunAtTemperatureM(15.5, hot), 9.5, 0.05, true},
		{"22 AWG of 35 wires", example1, small, 6.6, 0.1, true},
		{"20 AWG of 35 wires", example1, large, 8.8, 0.1, true},
		{"whole harness, of unrounded currents", example1, (25*small + 10*large) * 0.2, 50.6, 0.4, true},
		{"12 AWG of 12 wires, sea level", example2, free(12, 175) * twelve, 29.2, 0.1, true},
		{"12 AWG of 12 wires, sea level, all", example2, 12 * free(12, 175) * twelve, 350.4, 1, true},
		{"12 AWG of 12 wires, 20,000 ft", example2, free(12, 140) * twelve * altitude, 23.8, 0.3, true},
		{"12 AWG of 12 wires, 20,000 ft, all", example2, 12 * free(12, 140) * twelve * altitude, 285.6, 1.5, true},
		{"60,000 ft", ac + "figure 11-5, from memory", high, 0.79, 0, false},
		{"20 A continuous, 14 V bus", ac + "table 11-6, from memory", first(gauge.AircraftDropV(14)), 0.5, 0, false},
		{"continuous, 28 V bus", ac + "table 11-6, from memory", first(gauge.AircraftDropV(28)), 1, 0, false},
		{"continuous, 115 V bus", ac + "table 11-6, from memory", first(gauge.AircraftDropV(115)), 4, 0, false},
		{"continuous, 200 V bus", ac + "table 11-6, from memory", first(gauge.AircraftDropV(200)), 7, 0, false},
	}
}

func first(a, _ float64, _ bool) float64 { return a }

// aircraftRebuilt: the 200 C column of table 11-9 from the free-air points:
// x 0.53 for the bundle and 0.79 for the altitude, 70 C instead of 60. Within
// half a printed ampere, and 3 % for the square-root rule.
func aircraftRebuilt() (out []outside) {
	for awg, want := range map[int]float64{22: 6, 20: 9, 14: 18, 12: 25} {
		point := map[int][2]float64{22: {16.2, 140}, 20: {21.5, 140}, 14: {47, 150}, 12: {61, 140}}[awg]
		got := gauge.FreeAirAmps(point[0], point[1], 130) * 0.53 * 0.79
		out = append(out, outside{
			fmt.Sprintf("table 11-9 rebuilt, %d AWG", awg), ac + "table 11-9, 200 C, from figure 11-4a", got, want, 0.5 + 0.03*want, true,
		})
	}
	return out
}

// aircraftCells: look-ups of tables 11-9 and 11-3, and the table through the
// profile: in a place of 70 C and below, whatever the bundle, the cell itself.
func aircraftCells() (out []outside) {
	for _, c := range [][4]float64{
		{24, 2.5, 4, 5}, {22, 3, 5, 6}, {20, 4, 7, 9}, {18, 6, 9, 12}, {16, 7, 11, 14}, {14, 10, 14, 18}, {12, 13, 19, 25},
		{10, 17, 26, 32}, {8, 38, 57, 71}, {6, 50, 76, 97}, {4, 68, 103, 133}, {2, 95, 141, 179}, {1, 113, 166, 210},
		{0, 128, 192, 243}, {-1, 147, 222, 285}, {-2, 172, 262, 335}, {-3, 204, 310, 395},
	} {
		for i, ratedC := range []float64{105, 150, 200} {
			s := gauge.StrandedAWG(int(c[0]))
			got, _, _ := gauge.AmpacityAircraft.Ampacity(s, rated(ratedC), 70, 40)
			out = append(out, outside{fmt.Sprintf("table 11-9 %s at %g C", s.Name, ratedC), ac + "table 11-9", got, c[i+1], 0, false})
		}
	}
	for awg, want := range map[int]float64{24: 28.4, 22: 16.2, 20: 9.88, 18: 6.23, 16: 4.81, 14: 3.06, 12: 2.02, 10: 1.26, 8: 0.70, 6: 0.44, 4: 0.28, 2: 0.18, 1: 0.15, 0: 0.12, -1: 0.09, -2: 0.07, -3: 0.06} {
		s, _ := gauge.AircraftSize(awg)
		out = append(out, outside{"table 11-9 resistance, " + s.Name, ac + "table 11-9, ohm per 1000 ft", s.OhmPerM(20) * ohmPerKft, want, 1e-9, false})
	}
	for _, c := range [][3]float64{
		{22, 5, 5}, {20, 7.5, 5}, {18, 10, 10}, {16, 15, 10}, {14, 20, 15}, {12, 30, 20}, {10, 40, 30}, {8, 50, 50},
		{6, 80, 70}, {4, 100, 70}, {2, 125, 100}, {1, 0, 150}, {0, 0, 150},
	} {
		breaker, fuse, _ := gauge.AircraftDevice(int(c[0]))
		name := "device for " + gauge.AWGName(int(c[0]))
		out = append(out,
			outside{name + ", breaker", ac + "table 11-3, pairing from memory", breaker, c[1], 0, false},
			outside{name + ", fuse", ac + "table 11-3, pairing from memory", fuse, c[2], 0, false},
		)
	}
	return out
}

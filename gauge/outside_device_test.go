package gauge_test

import (
	"fmt"
	"math"

	"legwork/gauge"
)

func shortValues() []outside {
	const (
		table  = "BS 7671 and IEC 60364-5-54 k factors, copper"
		preece = "reprint of Preece's table, copper, melting current"
	)
	out := []outside{
		{"k PVC 70 C", table, gauge.K(70, 160), 115, 0.5, true},
		{"k PVC 90 C", table, gauge.K(90, 160), 100, 0.5, true},
		{"k cross-linked 90 C", table, gauge.K(90, 250), 143, 0.5, true},
		{"k rubber 60 C", table, gauge.K(60, 200), 141, 0.5, true},
		{"k rubber 85 C", table, gauge.K(85, 220), 134, 0.5, true},
		{"k silicone 180 C", table, gauge.K(180, 350), 132, 0.5, true},
		{"12 kA for 20 ms, k 143", "published cable-sizing line, 11.9 mm2", gauge.ShortAreaMM2(12000, 0.02, 143), 11.9, 0.1, true},
		{"melts at 100 A", preece, gauge.PreeceA(0.0457 * 25.4), 100, 0.5, true},
		{"melts at 50 A", preece, gauge.PreeceA(0.0288 * 25.4), 50, 0.5, true},
		{"melts at 80 A", preece, gauge.PreeceA(0.0394 * 25.4), 80, 0.5, true},
		{"melts at 200 A", preece, gauge.PreeceA(0.0725 * 25.4), 200, 0.5, true},
		{"ICEA against IEC, 90 to 250 C", "ICEA P-32-382 form, within 1 % of IEC 60949", gauge.ICEAK(90, 250) / gauge.K(90, 250), 1, 0.01, true},
	}
	return out
}

func fuseValues() []outside {
	const measuring = "measuring reference transcribing a blade-fuse data sheet"
	ten, _ := gauge.FuseOhm("blade", 10)
	road, _ := gauge.ProfileOf("road")
	chosen, _, _ := gauge.ChooseFuse("blade", 7.5, road)
	out := []outside{
		{"2.4 mV on a 10 A blade", measuring + ": 312 mA", gauge.FuseTestA(ten, 0.0024), 0.312, 0.001, true},
		{"0.77 mV on a 10 A blade", measuring + ": 100 mA", gauge.FuseTestA(ten, 0.00077), 0.100, 0.001, true},
		{"200 mV on a 10 A blade", measuring + ": 26.0 A, implausible", gauge.FuseTestA(ten, 0.2), 26.0, 0.1, true},
		{"fuse for 7.5 A", "fuse selection guide, 25 % rule", chosen, 10, 0, true},
	}
	// element warm at rating: published drop, within 9 % (type to type)
	for rating, mv := range map[float64]float64{1: 176, 2: 141, 4: 136, 10: 109} {
		cold, _ := gauge.FuseOhm("blade", rating)
		out = append(out, outside{
			fmt.Sprintf("%g A blade at its rating", rating), measuring + ", drop at rating in mV",
			1000 * rating * gauge.FuseOhmAt(cold, rating, rating), mv, 0.09 * mv, true,
		})
	}
	for wire, link := range map[int]float64{14: 18, 12: 16, 10: 14, 8: 12, 6: 10} {
		out = append(out, outside{gauge.AWGName(wire) + " link", "trade page on fusible links", float64(gauge.LinkAWG(wire)), link, 0, true})
	}
	return out
}

func relayValues() []outside {
	const note = "relay technical note on coil temperature"
	lamp, _ := gauge.SwitchRating("lamp", 2.5, 12)
	motor, _ := gauge.SwitchRating("motor", 8, 12)
	return []outside{
		{"320 ohm coil, 25 to 125 C", note, gauge.CoilFrom(320, 25, 125), 443.3, 0.1, true},
		{"13 V pull-in, 25 to 125 C", note, gauge.CoilFrom(13, 25, 125), 18.0, 0.05, true},
		{"290 ohm coil, 25 to 125 C", "relay application note, chart factor 1.39", gauge.CoilFrom(290, 25, 125), 403.31, 2, true},
		{"4 % for 10 K", "relay application note, temperature variations", gauge.CoilAt(1, 30), 1.04, 0.001, true},
		{"coil rise at nominal volts", "mini relay data sheet, 52 K", gauge.CoilRiseC(12), 52, 1e-9, false},
		{"motor share", "micro relay data sheet, 17 A of 30 A", 30 * gauge.MotorShareOfContact, 17, 1e-9, false},
		{"switch for a 2.5 A lamp", "FAA AC 43.13-1B table 11-4, factor 5", lamp, 12.5, 0, true},
		{"switch for an 8 A motor", "FAA AC 43.13-1B table 11-4, factor 2", motor, 16, 0, true},
	}
}

func batteryValues() []outside {
	var out []outside
	test, least := gauge.LoadTest(500)
	out = append(out,
		outside{"load test of 500 CCA", "battery course page citing SAE J537", test, 250, 0, true},
		outside{"load test least volts", "battery course page citing SAE J537", least, 9.6, 0, false},
		outside{"RC 100 min, drain", "vehicle service information: 25 mA", 1000 * gauge.DrainLimitA(100), 25, 1e-9, true},
		outside{"reading correction at 0 F", "battery tables: -0.192 V", gauge.ReadingCorrectionV(0), -0.192, 1e-9, true},
		outside{"reading correction at 100 F", "battery tables: +0.048 V", gauge.ReadingCorrectionV(100), 0.048, 1e-9, true},
		// a second, rounded table: a tenth of a volt is half a step of it
		outside{"charge at 12.4 V", "rounded table for flooded cells", gauge.StateOfCharge(12.4), 75, 7, true},
		outside{"charge at 12.2 V", "rounded table for flooded cells", gauge.StateOfCharge(12.2), 50, 7, true},
		outside{"charge at 12.0 V", "rounded table for flooded cells", gauge.StateOfCharge(12.0), 25, 9, true},
	)
	for cca, want := range map[float64]float64{600: 300, 770: 380, 750: 370, 625: 310} {
		amps, _ := gauge.LoadTest(cca)
		out = append(out, outside{fmt.Sprintf("catalogue load test of %g CCA", cca), "vehicle battery catalogue, rounded down to 10 A", 10 * math.Floor(amps/10), want, 0, true})
	}
	return out
}

// lookUps are cells read back from tables: they guard against slips of the
// pen, and prove no law.
func lookUps() []outside {
	var out []outside
	for cca, want := range map[float64][2]float64{500: {1500, 750}, 1000: {3000, 1500}, 1200: {5000, 2500}} {
		mainA, branchA, _ := gauge.BreakingCapacity(cca)
		out = append(out,
			outside{fmt.Sprintf("main device of %g CCA", cca), "ABYC E-11 table V, breaking capacity", mainA, want[0], 0, false},
			outside{fmt.Sprintf("branch device of %g CCA", cca), "ABYC E-11 table V, breaking capacity", branchA, want[1], 0, false},
		)
	}
	for volts, percent := range map[float64]float64{12.65: 100, 12.45: 75, 12.24: 50, 12.06: 25, 11.89: 0} {
		out = append(out, outside{fmt.Sprintf("charge at %g V", volts), "battery state-of-charge tables", gauge.StateOfCharge(volts), percent, 1e-9, false})
	}
	return out
}

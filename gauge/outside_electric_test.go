package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// electricValues are published values of relays, batteries and charging.
func electricValues() []outside {
	out := append(hotCoilValues(), crankTestValues()...)
	out = append(out, drainValues()...)
	out = append(out, chargeValues()...)
	return append(out, electricEchoes()...)
}

func hotCoilValues() []outside {
	const note = "temperature considerations for d.c. relays"
	lamp, _, _ := gauge.ContactA(30, "lamp")
	motor, _, _ := gauge.ContactA(30, "motor")
	inductive, _, _ := gauge.ContactA(25, "inductive")
	hot, _ := gauge.HotCoil(gauge.CoilCase{PullInV: 10, PlaceC: 20, CoilV: 11})
	return []outside{
		// inputs published, answer by the published linear form
		{"90 ohm coil, 20 to 85 C", note, gauge.CoilLinear(90, 85), 113.0, 0.05, true},
		{"6.5 V pull-in, 20 to 85 C", note, gauge.CoilLinear(6.5, 85), 8.16, 0.01, true},
		{"both forms at 85 C", note + ", within 0.1 %", gauge.CoilLinear(1, 85) / gauge.CoilAt(1, 85), 1, 0.001, true},
		{"lamp on a 30 A contact", "micro relay data sheet: 17 A", lamp, 17, 1e-9, true},
		{"motor on a 30 A contact", "micro relay data sheet: 17 A", motor, 17, 1e-9, true},
		{"inductive on a 25 A contact", "power relay data sheet: 10 A", inductive, 10, 1e-9, true},
		{"coil drive over pull-in", "state standard for equipment, 8: 110 %", hot.WantedV / hot.NeedV, 1.10, 1e-9, false},
		// 680 ohm on 120 ohm at 12 V: 68 V by the law, 65 V measured
		{"measured peak of a resistor", "measured traces, 65 V", gauge.SuppressPeakV(12, 120, 680), 65, 3.5, true},
	}
}

func crankTestValues() []outside {
	var out []outside
	for _, c := range []struct {
		test, source string
		ends, temp   float64
	}{
		{"SAE", "vehicle service information citing SAE J537: 7.2 V, -18 C", 7.2, -18},
		{"EN", "lexicon of cranking tests: 7.5 V", 7.5, -18},
		{"DIN", "lexicon of cranking tests: 9.0 V", 9.0, -18},
		{"IEC", "lexicon of cranking tests: 8.4 V", 8.4, -18},
		{"CA", "maker's note on cranking amperes: 7.2 V, 0 C", 7.2, 0},
	} {
		ohm, temp, _, _ := gauge.BatteryOhmBy(c.test, 500)
		out = append(out,
			outside{c.test + " test, volts at 500 A", c.source, gauge.CrankEMF - 500*ohm, c.ends, 1e-9, true},
			outside{c.test + " test, temperature", c.source, temp, c.temp, 0, false},
		)
	}
	for temp, volts := range map[float64]float64{21: 9.6, 16: 9.5, 10: 9.4, 4: 9.3, -1: 9.1, -7: 8.9, -12: 8.7, -18: 8.5} {
		got, _ := gauge.LoadTestLeastV(temp)
		out = append(out, outside{fmt.Sprintf("load test at %g C", temp), "vehicle service information, test volts by temperature", got, volts, 1e-9, false})
	}
	return out
}

func drainValues() []outside {
	bank, _ := gauge.BankShortA(2400, 6, 2)
	beyond, _ := gauge.BankBreakA(12e3)
	return []outside{
		{"RC 100 min in ampere-hours", "vehicle service bulletin: 60 Ah", gauge.AmpHours(100), 60, 1e-9, true},
		{"usable of 60 Ah", "vehicle service bulletin: 24 Ah", 0.4 * gauge.AmpHours(100), 24, 1e-9, true},
		{"six 6 V batteries of 2400 A at 12 V", "inverter manual: 7200 A", bank, 7200, 0, true},
		{"bank above 10 kA", "ABYC E-11 as quoted: 20 kA", beyond, 20e3, 0, false},
	}
}

func chargeValues() []outside {
	lamp, _ := gauge.AmpsOf(500, 13.8)
	bulb, _ := gauge.AmpsOf(21, 12)
	tenth, _ := gauge.ChargeBudget([]gauge.BudgetLoad{{Name: "all", Duty: gauge.Intermittent, Amps: 1700}}, 0, 0)
	warm, _ := gauge.RegulatorV(40)
	var sum float64
	for _, v := range []string{"starter, positive side", "starter, ground side"} {
		m, _ := gauge.MeterLimitOf(v)
		sum += m.Volts
	}
	out := []outside{
		{"500 W at 13.8 V", "text on vehicle loads: 36.2 A", lamp, 36.2, 0.05, true},
		{"21 W at 12 V", "measuring reference: 1.75 A", bulb, 1.75, 0.005, true},
		{"1.7 kW intermittent", "text on vehicle loads, section 14.4: 170 W", tenth.NeedA, 170, 1e-9, true},
		{"regulator at 40 C", "marine diesel data: -0.1 V for each 10 K from 14.4 V", warm, 14.2, 1e-9, true},
		{"starter, both sides", "starter tester manual: 0.8 V", sum, 0.8, 1e-9, true},
	}
	for rpm, amps := range map[float64]float64{1300: 16, 2500: 41, 5000: 48} {
		got, _, _ := gauge.HotOutputA(50, rpm)
		out = append(out, outside{fmt.Sprintf("50 A machine hot at %g 1/min", rpm), "marine diesel data", got, amps, 1e-9, false})
	}
	for temp, want := range map[float64][2]float64{-20: {14.0, 15.1}, 20: {13.7, 14.6}, 60: {13.2, 14.3}, 80: {12.9, 14.1}} {
		least, most, _ := gauge.RegulatorBand(temp)
		out = append(out,
			outside{fmt.Sprintf("regulated volts at %g C, least", temp), "vehicle service specifications", least, want[0], 1e-9, false},
			outside{fmt.Sprintf("regulated volts at %g C, most", temp), "vehicle service specifications", most, want[1], 1e-9, false},
		)
	}
	return out
}

// electricEchoes are cells read back.
func electricEchoes() []outside {
	var out []outside
	for percent, volts := range map[float64]float64{100: 12.65, 75: 12.45, 50: 12.24, 25: 12.06, 0: 11.89} {
		got, _ := gauge.VoltsAtCharge(percent)
		out = append(out, outside{fmt.Sprintf("volts at %g %%", percent), "battery state-of-charge tables", got, volts, 1e-9, false})
	}
	for _, s := range gauge.RestStates() {
		if want, ok := map[float64][2]float64{100: {1.265, -59.4}, 75: {1.225, -48.3}, 50: {1.190, -36.7}, 25: {1.155, -26.7}, 0: {1.120, -23.3}}[s.Percent]; ok && s.Gravity > 0 {
			out = append(out,
				outside{fmt.Sprintf("acid at %g %%", s.Percent), "battery state-of-charge tables", s.Gravity, want[0], 0, false},
				outside{fmt.Sprintf("freezes at %g %%", s.Percent), "battery state-of-charge tables", s.FreezeC, want[1], 0, false},
			)
		}
	}
	return out
}

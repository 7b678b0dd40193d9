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
	out = append(out, dropLimitValues()...)
	return append(out, electricEchoes()...)
}

// dropLimitValues are areas by drop, percentages, and limits that were read.
func dropLimitValues() []outside {
	one, _ := gauge.DropAreaMM2(0.018, 1.8, 8.3, 0.5)
	two, _ := gauge.DropAreaMM2(1/56.0, gauge.OneWayM(18).Conductor(gauge.ByWire), 2.1, 0.6)
	out := []outside{
		{"8.3 A over 1.8 m within 0.5 V", "workshop journal: 0.54 mm2", one, 0.54, 0.005, true},
		{"2.1 A, 18 m there and back, within 0.6 V", "chandlery note on wire: 2.25, so 2.5 mm2", two, 2.25, 0.01, true},
		{"and the size for it", "chandlery note on wire: 2.5 mm2", label(two), 2.5, 0, true},
		{"7 % of 12 V", "chandlery note on wire: 0.84 V", dropLimitOf("other loads (chandlery)").Percent / 100 * 12, 0.84, 1e-9, true},
	}
	for _, c := range []struct {
		name, source string
		at12, at24   float64
	}{
		{"lighting, lamps under 15 W", "workshop journal, table 1", 0.1, 0},
		{"lighting, lamps over 15 W", "workshop journal, table 1", 0.5, 0},
		{"headlamps", "workshop journal, table 1", 0.3, 0},
		{"charging cable B+ to battery", "workshop journal, table 2", 0.4, 0.8},
		{"alternator to separate regulator", "workshop journal, table 2", 0.1, 0.2},
		{"starter main cable", "workshop journal, table 2", 0.5, 1.0},
		{"starter control, single winding", "workshop journal, table 2", 1.4, 2.0},
		{"starter control, pull-in and hold-in winding", "workshop journal, table 2", 2.4, 2.8},
		{"other control, switch to relay/horn", "workshop journal, table 2", 0.5, 1.0},
		{"high-current joint", "vehicle repair manual quoting SAE figures", 0.1, 0},
		{"high-current cable", "vehicle repair manual quoting SAE figures", 0.2, 0},
		{"switch or solenoid contact", "vehicle repair manual quoting SAE figures", 0.3, 0},
		{"any circuit, fault threshold", "vehicle repair manual quoting SAE figures", 1.0, 0},
		{"ground", "encyclopedia article on voltage-drop tests", 0.1, 0},
		{"wire or cable", "encyclopedia article on voltage-drop tests", 0.2, 0},
		{"starter positive side", "starter tester manual", 0.5, 0},
		{"starter total both sides", "starter tester manual", 0.8, 0},
		{"alternator/starter/battery cables", "engine installation manual", 0, 0.6},
		{"other cables", "engine installation manual", 0, 1.2},
		{"navigation lamps", "chandlery note on wire", 0.6, 0},
		{"ISO 10133 vital (panel mains, nav lamps, blowers, bilge pumps)", "ISO 10133 clause 4.8", 0.36, 0.72},
	} {
		l := dropLimitOf(c.name)
		out = append(out, outside{"drop of " + c.name, c.source, 100*l.At12V + l.At24V, 100*c.at12 + c.at24, 1e-9, false})
	}
	for _, l := range gauge.DropLimits() { // where volts and percent stand beside each other they agree
		if l.Percent > 0 && l.At24V > 0 {
			out = append(out, outside{"percent and volts of " + l.Case, "engine installation manual or ISO 10133", l.Percent / 100 * 24, l.At24V, 1e-9, true})
		}
	}
	return out
}

func dropLimitOf(name string) gauge.DropLimit {
	for _, l := range gauge.DropLimits() {
		if l.Case == name {
			return l
		}
	}
	return gauge.DropLimit{}
}

// label is the first metric size of at least an area.
func label(mm2 float64) float64 {
	s, _ := gauge.SpliceOf(mm2)
	return s.Label
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

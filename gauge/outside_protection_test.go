package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// protectionValues are published values of fuses, shorts and first devices.
func protectionValues() []outside {
	out := append(windowValues(), kValues()...)
	out = append(out, pulseValues()...)
	out = append(out, placeValues()...)
	out = append(out, placeEchoes()...)
	return append(out, fuseEchoes()...)
}

func windowValues() []outside {
	const chip = "chip-fuse data sheet, derating example"
	least, _ := gauge.LeastFuseA(1.5, 0.7, 0.95)
	trade, _ := gauge.LeastFuseA(20, 0.80, 1)
	below, _ := gauge.LargestFuseA("blade", gauge.FuseCeilingA(25))
	far, _ := gauge.FarEndShort(12.6, "blade", 20, gauge.Ohms{Name: "path", Ohm: 12.6 / 60})
	return []outside{
		{"1.5 A at 0.7 and 0.95", chip + ": 2.255 A", least, 2.255, 0.001, true},
		{"fuse for 20 A with 25 % margin", "practitioners' article on fusing: 25 A", trade, 25, 1e-9, true},
		{"ceiling of 25 A ampacity below 50 V", "33 CFR 183.455(c)(1): 150 %", gauge.FuseCeilingA(25), 37.5, 0, true},
		{"and the standard size under it", "33 CFR 183.455(c)(1), next lower size", below, 35, 0, true},
		{"20 A fuse, 60 A at the far end", "ECSS-Q-ST-30-11C 6.17: 3 x rating", far.Times, gauge.WantedShort, 1e-9, true},
		{"link of 18 AWG in metric print", "trade article on fusible links", linkMM2(18), 0.8, 0, false},
		{"link of 16 AWG in metric print", "trade article on fusible links", linkMM2(16), 1.0, 0, false},
		{"link of 14 AWG in metric print", "trade article on fusible links", linkMM2(14), 2.0, 0, false},
		{"link of 12 AWG in metric print", "trade article on fusible links", linkMM2(12), 3.0, 0, false},
	}
}

func linkMM2(awg int) float64 {
	mm2, _ := gauge.LinkMM2(awg)
	return mm2
}

// kValues holds every published k against the law; the k above 300 mm2 is
// for an end temperature of 140 C in PVC. The published 78 for aluminum is
// among the misprints.
func kValues() []outside {
	const table = "BS 7671 and IEC 60364-5-54 k factors"
	var out []outside
	for _, r := range gauge.KRows() {
		k, _, _ := gauge.KOf(r.Metal, r.StartC, r.FinalC)
		name := fmt.Sprintf("%s %s from %g to %g C", r.Metal, r.Insulation, r.StartC, r.FinalC)
		out = append(out, outside{"k by metal, " + name, table, k, r.K, 0.55, true})
		if r.KAbove300 > 0 && r.Metal == "copper" {
			thick, _, _ := gauge.KOf(r.Metal, r.StartC, 140)
			out = append(out, outside{"k above 300 mm2, " + name, table, thick, r.KAbove300, 0.5, true})
		}
	}
	return append(out, outside{"ICEA k, copper 90 to 250 C", "ICEA P-32-382 form, 0.07195 A s^0.5 for each circular mil", gauge.ICEAK(90, 250) * gauge.MM2PerCmil, 0.07195, 0.0001, true})
}

func pulseValues() []outside {
	const guide = "fuse selection guide, chart 2"
	out := []outside{
		{"ramp of 6 A over 3 s", guide + ": ip^2 t / 3", a2s("ramp", 6, 3), 36, 1e-9, true},
		{"half sine of 4 A over 1 s", guide + ": ip^2 t / 2", a2s("half-sine", 4, 1), 8, 1e-9, true},
		{"quadratic of 5 A over 1 s", guide + ": ip^2 t / 5", a2s("quadratic", 5, 1), 5, 1e-9, true},
		{"decay of 4 A, 1 s", guide + ": ip^2 tau / 2", a2s("decay", 4, 1), 8, 1e-9, true},
		{"square of 4 A over 1 s", guide + ": ip^2 t", a2s("square", 4, 1), 16, 1e-9, true},
	}
	for pulses, share := range map[float64]float64{100: 0.48, 1000: 0.38, 10000: 0.29, 100000: 0.22} {
		got, _ := gauge.PulseShare(pulses)
		out = append(out, outside{fmt.Sprintf("%g pulses", pulses), "fuse selection guide, chart 1", got, share, 0, false})
	}
	return out
}

func a2s(shape string, peak, seconds float64) float64 {
	v, _ := gauge.PulseA2S(shape, peak, seconds)
	return v
}

// placeValues asks the books for their distances and exemptions.
func placeValues() []outside {
	var out []outside
	for _, c := range []struct {
		name, source, book string
		d                  gauge.FirstDevice
		inches             float64
	}{
		{"any source", "33 CFR 183.455(b)(1): 7 in", "33 CFR 183", gauge.FirstDevice{}, 7},
		{"sheathed all the way", "33 CFR 183.455(b)(2): 40 in", "33 CFR 183", gauge.FirstDevice{Sheathed: true}, 40},
		{"battery feed", "ABYC E-11 as quoted: 7 in", "ABYC E-11", gauge.FirstDevice{Battery: true}, 7},
		{"battery feed, sheathed", "ABYC E-11 as quoted: 72 in", "ABYC E-11", gauge.FirstDevice{Battery: true, Sheathed: true}, 72},
	} {
		v := verdictOf(c.book, c.d)
		out = append(out, outside{c.book + ", " + c.name, c.source, v.LimitM / 0.0254, c.inches, 1e-9, true})
	}
	starter := verdictOf("ABYC E-11", gauge.FirstDevice{Battery: true, Starter: true, LengthM: 3})
	return append(out, outside{"ABYC E-11, starting circuit exempt", "ABYC E-11 as quoted", truth(starter.Exempt && starter.OK), 1, 0, true})
}

func verdictOf(book string, d gauge.FirstDevice) gauge.PlaceVerdict {
	all, _ := gauge.PlaceVerdicts(d)
	for _, v := range all {
		if v.Book == book {
			return v
		}
	}
	return gauge.PlaceVerdict{}
}

func truth(is bool) float64 {
	if is {
		return 1
	}
	return 0
}

// placeEchoes are the limits of the rules that were read, cell by cell.
func placeEchoes() []outside {
	var out []outside
	for _, c := range []struct {
		id, source string
		want       float64
	}{
		{"source", "33 CFR 183.455(b)(1): 7 in (178 mm)", 0.1778},
		{"source-sheathed", "33 CFR 183.455(b)(2): 40 in (1016 mm)", 1.016},
		{"rating-below-50v", "33 CFR 183.455(c)(1): 150 %", 1.5},
		{"rating-from-50v", "33 CFR 183.455(c)(2): 100 %", 1},
		{"smallest", "33 CFR 183.425(d): 16 AWG", 16},
		{"abyc-source", "ABYC E-11 as quoted: 7 in", 0.1778},
		{"battery-sheathed", "ABYC E-11 as quoted: 72 in (1.83 m)", 1.8288},
		{"abyc-alternator", "ABYC E-11 as quoted: 40 in (1016 mm)", 1.016},
		{"abyc-banks", "ABYC E-11 (2025) as quoted: 500 Ah", 500},
		{"iso-smallest", "ISO 10133 clause 7.7: 1 mm2", 1},
		{"iso-support", "ISO 10133 clause 7.3: 450 mm", 0.45},
		{"iso-fuel", "ISO 10133 clause 5: 300 mm", 0.3},
		{"rating-coast-guard", "46 CFR 183.380: 150 %", 1.5},
		{"rating-coast-guard-electric", "46 CFR 111.50-3: 150 %", 1.5},
		{"rating-state", "state standard for equipment, 3.4: 125 %", 1.25},
		{"lamp-volts", "13 CCR 1249(c): 85 %", 0.85},
		{"load-side", "practitioners' article on fusing: 125 %", 1.25},
	} {
		p, _ := gauge.PlacementOf(c.id)
		out = append(out, outside{"rule " + c.id, c.source, p.Limit, c.want, 0, false})
	}
	return out
}

// fuseEchoes are cells of fuse tables read back.
func fuseEchoes() []outside {
	const measuring = "measuring reference transcribing blade-fuse data sheets"
	var out []outside
	for rating, mohm := range map[float64]float64{
		1: 123, 2: 53.5, 3: 31.1, 4: 22.8, 5: 17.85, 7.5: 10.91, 10: 7.70, 15: 4.80, 20: 3.38, 25: 2.52, 30: 1.97,
	} {
		ohm, _ := gauge.FuseOhm("blade", rating)
		out = append(out, outside{fmt.Sprintf("%g A blade, cold", rating), measuring, 1000 * ohm, mohm, 1e-9, false})
	}
	for _, c := range []struct {
		style      string
		rating, mo float64
		source     string
	}{
		{"mini", 10, 7.42, measuring}, {"maxi", 40, 1.4, measuring}, {"maxi", 50, 1.1, measuring},
		{"blade58", 30, 1.85, "loss budget of a bench supply quoting a 58 V blade data sheet"},
	} {
		ohm, _ := gauge.FuseOhm(c.style, c.rating)
		out = append(out, outside{fmt.Sprintf("%g A %s, cold", c.rating, c.style), c.source, 1000 * ohm, c.mo, 1e-9, false})
	}
	for style, want := range map[string][2]float64{
		"blade": {32, 1000}, "mini": {32, 1000}, "maxi": {32, 1000}, "blade58": {58, 1000}, "class-t": {125, 20000}, "strip": {32, 2700},
	} {
		volts, breaks, _, _ := gauge.FuseLimits(style)
		source := "ISO 8820-3, SAE J2576, UL 248-15 or inverter manual, by style"
		out = append(out,
			outside{style + " fuse, volts", source, volts, want[0], 0, false},
			outside{style + " fuse, breaks", source, breaks, want[1], 0, false},
		)
	}
	return out
}

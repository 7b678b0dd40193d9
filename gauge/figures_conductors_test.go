package gauge

import (
	"fmt"
	"math"
)

// OutsideSummary is set by the tests of published values: a line for each
// document.
var OutsideSummary func() [][]any

// outside prints what the tests hold against published values.
func (p *figurePage) outside() {
	p.WriteString("\n## Published values that the tests hold\n\nDerived: computed here from other figures. Echoed: stored, and read back. The furthest derived value tells how well the laws follow.\n\n" +
		"| document | values | derived | echoed | furthest |\n|---|---|---|---|---|\n")
	all, derived := 0, 0
	for _, r := range OutsideSummary() {
		fmt.Fprintf(p, "| %v | %v | %v | %v | %v |\n", r...)
		all, derived = all+r[1].(int), derived+r[2].(int)
	}
	fmt.Fprintf(p, "| all | %d | %d | %d | |\n", all, derived, all-derived)
}

func (p *figurePage) conductors() {
	p.table("Sizes by gauge", "Least conducting area, and the resistance of a meter at 20 C. 20 AWG and smaller, and 3 AWG, follow the AWG law over the strand lay; they may stand in a draft and are never chosen.",
		"size", "circular mils", "mm2", "mohm/m")
	for n := 30; n >= -3; n-- {
		if s, ok := AWGSize(n); ok {
			p.row(s.Source, s.Name, fmt.Sprintf("%.0f", s.Cmil()), fmt.Sprintf("%.4g", s.AreaMM2), fmt.Sprintf("%.4g", 1000*s.OhmPerM(20)))
		}
	}
	p.table("Metric sizes", "Largest resistance at 20 C, and the copper it amounts to.", "size", "mohm/m", "mm2 of copper")
	for _, s := range Ladder(true) {
		p.row(s.Source, s.Name, fmt.Sprintf("%.4g", 1000*s.OhmPerM(20)), fmt.Sprintf("%.4g", s.AreaMM2))
	}
	p.table("Ampacity", "Amperes in air at 30 C by insulation temperature.", "size", "60 C", "75 C", "80 C", "90 C", "105 C", "125 C", "200 C")
	for _, r := range table5 {
		cells := []any{AWGName(r.awg)}
		for _, a := range r.amps {
			cells = append(cells, a)
		}
		p.row("ampacity-33cfr183", cells...)
	}
	p.table("Ampacity where the table has none", "0.85 of the heat balance, amperes in air at 30 C, 125 C conductor.", "size", "A")
	gxl, _ := FamilyOf("GXL")
	for _, s := range append(smallGauges(), Ladder(true)...) {
		amps, _ := Ampacity30(s, gxl)
		p.row("heat-balance", s.Name, fmt.Sprintf("%.3g", amps))
	}
	p.table("Bundles", "Factor by conductors loaded together.", "loaded", "factor")
	for _, b := range []struct {
		loaded string
		n      int
	}{{"1 or 2", 2}, {"3", 3}, {"4 to 6", 4}, {"7 to 24", 7}, {"25 and more", 25}} {
		p.row("bundle-33cfr183", b.loaded, fmt.Sprintf("%.2f", BundleFactor(b.n)))
	}
	p.insulation()
	p.make()
	p.ruleBooks()
	p.aircraft()
	p.heat()
	p.constants()
	p.misprints()
}

func (p *figurePage) insulation() {
	p.table("Kinds of insulation", "Class temperature, and highest temperature at the end of a short (source k-factors, classes E to H iso-overload).", "name", "what", "class C", "short C")
	for _, f := range families {
		p.row(f.Source, f.Name, f.Title, f.TempC, f.ShortC)
	}
	p.table("Across a wire", "Outside diameter, over the strands, and wall, in mm.", "wire", "outside", "strands", "over strands", "wall")
	for _, name := range []string{"TXL", "GXL", "SXL", "SGX", "ISO-C"} {
		f, _ := FamilyOf(name)
		for _, s := range sizesOf(f) {
			d := DiameterOf(s, f)
			made, _ := StrandingOf(s)
			p.row(d.Source, s.Name+" "+name, fmt.Sprintf("%.2f", d.OutsideMM), made.Text, fmt.Sprintf("%.2f", d.ConductorMM), fmt.Sprintf("%.2f", d.WallMM))
		}
	}
}

// sizesOf are the sizes in which a family is usual.
func sizesOf(f Family) (out []Size) {
	from, to := 20, 8
	switch {
	case f.metric():
		for _, r := range thinWallCable {
			if s, ok := ISOSize(r.mm2); ok {
				out = append(out, s)
			}
		}
		return out
	case f.Name == "SGX":
		from, to = 6, -3
	}
	for n := from; n >= to; n-- {
		if s, ok := AWGSize(n); ok && n != 3 {
			out = append(out, s)
		}
	}
	return out
}

func (p *figurePage) make() {
	p.table("Plain and tinned", "Ohm per 1000 ft at 75 C as the code table prints it; strands 1: solid.", "size", "strands", "cmil", "plain", "tinned")
	for _, r := range necTable {
		p.row("nec-table8", AWGName(r.AWG), r.Strands, r.Cmil, r.OhmPerKft, r.CoatedPerKft)
	}
	p.table("Tinned metric sizes", "Largest resistance at 20 C.", "mm2", "mohm/m")
	for i, r := range class5 {
		p.row("iec-60228-tinned", r.mm2, tinnedClass5[i])
	}
	p.table("ISO 6722 as remembered", "Largest resistance at 20 C, largest thin-wall outside diameter; hints.", "mm2", "mohm/m", "outside mm")
	for _, r := range isoTable {
		p.row("iso-6722-memory", r.MM2, r.MohmPerM, r.OutsideMM)
	}
}

func (p *figurePage) ruleBooks() {
	p.table("Engine space", "Note 1: factor at 50 C by insulation, and the square-root rule beside it.", "insulation C", "printed", "rule")
	for _, c := range columnC {
		factor, _, _ := EngineSpaceFactor(c)
		key := "engine-33cfr183-memory"
		if c == 105 {
			key = "engine-33cfr183"
		}
		p.row(key, c, fmt.Sprintf("%.2f", factor), fmt.Sprintf("%.3f", AmbientFactor(c, EngineSpaceC, TableAmbientC)))
	}
	for _, l := range ampLists {
		p.table(l.Title, l.Basis+".", "size", "A", "lower copy")
		for _, r := range l.Rows {
			name := fmt.Sprintf("%g mm2", r.MM2)
			if l.ByAWG {
				name = AWGName(r.AWG)
			}
			p.row(l.Source, name, r.Amps, r.Low)
		}
	}
	p.table("Where rule-books disagree", "Amperes of one GXL or SGX wire, alone, at 40 C.", "size", "cfr", "aircraft", "body-builder", "thin-wall", "vde")
	for _, s := range Ladder(false) {
		cells := []any{s.Name}
		for _, r := range AmpacityRules() {
			amps, _, _ := r.Ampacity(s, FamilyFor(s), 40, 1)
			cells = append(cells, fmt.Sprintf("%.3g", amps))
		}
		p.row(s.Source, cells...)
	}
	p.table("Loaded cores", "VDE factor.", "cores", "factor")
	for _, r := range vdeMulticore {
		p.row("vde-multicore", r.loaded, r.factor)
	}
	p.table("ISO 10133 as remembered", "Amperes by area and insulation; hints.", "mm2", "60 C", "70 C", "85 to 90 C", "105 C", "125 C", "200 C")
	for _, r := range iso10133 {
		cells := []any{r.mm2}
		for _, a := range r.amps {
			cells = append(cells, a)
		}
		p.row("iso10133-ampacity", cells...)
	}
}

func (p *figurePage) aircraft() {
	p.table("Aircraft wire", "Amperes in bundles of 33 and more at 70 C and 60,000 ft: not derated again.", "size", "105 C", "150 C", "200 C", "ohm per 1000 ft", "cmil")
	for _, r := range aircraftTable {
		p.row("ac4313-table-11-9", AWGName(r.AWG), r.A105, r.A150, r.A200, r.OhmPerKft, r.Cmil)
	}
	p.table("Points of the aircraft curves", "The curves were not seen: amperes in free air by rise, factors by altitude and bundle.", "figure", "point", "rise K", "value")
	for _, c := range curvePoints {
		p.row(c.Source, c.Figure, c.Text, c.RiseK, c.Value)
	}
	p.table("Aircraft devices", "Largest breaker and fuse in amperes (0: none printed).", "size", "breaker", "fuse")
	for _, r := range aircraftDevice {
		p.row("ac4313-table-11-3", AWGName(r.awg), r.breakerA, r.fuseA)
	}
	p.table("Aircraft drops", "Volts.", "system", "continuous", "intermittent")
	for _, r := range aircraftDrop {
		p.row("ac4313-table-11-6", r.systemV, r.continuousV, r.intermittentV)
	}
}

func (p *figurePage) heat() {
	p.table("Heat balance against published points", "Nothing fitted. Outside diameters of aircraft wire and PVC cores are from memory.", "wire", "place C", "conductor C", "published A", "model A", "off", "model C at that current")
	for _, h := range HeatPoints() {
		tempC, _ := h.Wire.ConductorC(h.AmbientC, h.Amps)
		p.row(h.Source, h.Name, h.AmbientC, h.ConductorC, h.Amps, fmt.Sprintf("%.1f", h.ModelA()), fmt.Sprintf("%+.1f %%", 100*h.Off()), fmt.Sprintf("%.0f", tempC))
	}
}

func (p *figurePage) constants() {
	p.table("Constants of the drop rules", "What copper each stands for.", "constant", "value", "solid copper at C", "stranded at C")
	at := func(name, key string, k float64) {
		p.row(key, name, k, fmt.Sprintf("%.1f", KTempC(k, false)), fmt.Sprintf("%.1f", KTempC(k, true)))
	}
	at("K, 100 % IACS", "copper-iacs", KIACS)
	at("K, room", "circular-mil", KRoom)
	at("K, hot", "circular-mil-hot", KHot)
	// ohm mm2/m to ohm cmil/ft
	at("0.0164, metric form, as K", "metric-drop", math.Round(KMetric*1e-6/(MM2PerCmil*1e-6)*MeterPerFoot*1000)/1000)
}

func (p *figurePage) misprints() {
	p.table("Printed, and not followed", "The tests hold what is computed instead.", "where", "printed", "holds", "why")
	for _, m := range Misprints() {
		p.row(m.Source, m.Where, m.Printed, m.Holds, m.Why)
	}
}

func smallGauges() []Size {
	var out []Size
	for _, n := range lawAWG {
		if s, ok := AWGSize(n); ok && n >= 20 {
			out = append(out, s)
		}
	}
	return out
}

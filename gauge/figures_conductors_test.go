package gauge

import "fmt"

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
	p.table("Kinds of insulation", "Class temperature, and highest temperature at the end of a short (source k-factors).", "name", "what", "class C", "short C")
	for _, f := range families {
		p.row(f.Source, f.Name, f.Title, f.TempC, f.ShortC)
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

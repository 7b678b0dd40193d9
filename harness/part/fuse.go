package part

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "fuse",
	Title: "A fuse: blade, cartridge, glass tube, or bolted down.",
	Law: "A resistance that warms with its own current: R = cold R x (1 + 0.42 (i / rating)^2). Styles without a table of their own, bolt-down ones and glass among them: cold R = 56 mV / rating, a low figure that counts only among nominal ones. " +
		"A fuse without a rating has no resistance until legwork has chosen one.",
	Letter: "F",
	Settings: []Setting{
		bare("rating", "rated current; chosen by legwork when not said", Figure{Name: "current", Dim: quantity.Current, Min: 0.5, Max: 800, Doc: "rated current"}),
		oneOf("style", "how it is built and held", "blade", "mini", "maxi", "micro", "cartridge", "glass", "glass-slow", "torpedo", "bolt-down", "midi", "mega"),
	},
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"LINE"}, Doc: "side of the source"},
		{Name: "2", Aliases: []string{"LOAD"}, Doc: "side of the load"},
	},
	Bolted:   func(d *Device) bool { return slices.Contains([]string{"bolt-down", "midi", "mega"}, d.Word("style")) },
	Stamp:    func(d *Device, s *Stamper) { s.Add(FuseElement, "1", "2", fuseLaw(d, s, d.Word("style")), s.All()) },
	Symbol:   fuseSymbol(),
	Protects: func(d *Device) []Fuse { return protects(d, d.Word("style")) },
	Buys: func(d *Device) []Purchase {
		return buy(d.Word("style")+" fuse", d, ratingText(d))
	},
})

func fuseSymbol(more ...Stroke) Symbol {
	return Symbol{
		Half: 3, Columns: 1, Row: FuseRow, Pins: upDown("1", "2", 3), Body: Box{X1: -0.8, Y1: -2, X2: 0.8, Y2: 2},
		Strokes: append([]Stroke{line(0, -3, 0, 3), rect(-0.8, -2, 1.6, 4)}, more...),
	}
}

// fuseA is the rating that the draft gives, or else the one that legwork chose.
func fuseA(d *Device) float64 {
	if a := d.Num("rating"); a > 0 {
		return a
	}
	return d.FuseRatedA
}

// fuseLaw is the law of a protective element of that family.
func fuseLaw(d *Device, s *Stamper, family string) circuit.Law {
	rated := fuseA(d)
	if !(rated > 0) {
		return resistor(closedOhm)
	}
	cold, sure := gauge.FuseOhm(family, rated)
	if !(cold > 0) || !s.counts(sure) {
		return resistor(closedOhm)
	}
	return circuit.Law{Kind: circuit.Warming, Ohm: cold, Amp: rated, Rise: gauge.FuseRise}
}

// protects describes the one element of a fuse-like device. The rating is the
// draft's: 0 asks legwork to choose.
func protects(d *Device, family string) []Fuse {
	f := Fuse{In: "1", Out: "2", RatedA: d.Num("rating"), Family: family, At: d.At}
	if v := d.Value("rating"); v != nil && v.Said && !v.At.IsZero() {
		f.At = v.At
	}
	return []Fuse{f}
}

// ratingText prints the rating for a parts list.
func ratingText(d *Device) string {
	if a := fuseA(d); a > 0 {
		return quantity.Text(a, quantity.Current)
	}
	return "(rating to be chosen)"
}

package part

var _ = define(Kind{
	Name:   "cap",
	Title:  "The end of a wire that leads nowhere on purpose: cut off and capped, or bare.",
	Law:    "Nothing: no current flows.",
	Letter: "X",
	Settings: []Setting{
		oneOf("end", "how the end is left; open in place of an end makes a bare one", "capped", "bare"),
	},
	Terminals: []Terminal{{Name: "1", Landing: Joint, Quiet: true, Doc: "the end itself, called by the cap's own name"}},
	Self:      true,
	Stamp:     func(d *Device, s *Stamper) {},
	Symbol: Symbol{
		Half: 1, Columns: 1, Row: SwitchRow, Pins: []SymbolPin{pin("1", 0, -1)}, Body: Box{X1: -0.7, Y1: -0.2, X2: 0.7, Y2: 1},
		Strokes: []Stroke{line(0, -1, 0, -0.2), line(-0.7, 1, -0.7, -0.2, 0.7, -0.2, 0.7, 1)},
	},
	Others: []Symbol{{
		Name: "bare", Half: 1, Columns: 1, Row: SwitchRow, Pins: []SymbolPin{pin("1", 0, -1)}, Body: Box{X1: -0.6, Y1: -0.2, X2: 0.6, Y2: 1},
		Strokes: []Stroke{line(0, -1, 0, 0.4), line(-0.6, -0.2, 0.6, 1), line(-0.6, 1, 0.6, -0.2)},
	}},
	Form: func(d *Device) string {
		if d.Word("end") == "bare" {
			return "bare"
		}
		return ""
	},
	Buys: func(d *Device) []Purchase {
		if d.Word("end") == "bare" {
			return nil
		}
		return buy("end cap", d)
	},
})

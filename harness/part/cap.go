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
		Half: 1, Columns: 1, Row: SwitchRow, Body: Box{X1: -0.6, Y1: -0.6, X2: 0.6, Y2: 0.6},
		Strokes: []Stroke{line(0, -1, 0, 0), line(-0.6, 0, 0.6, 0)},
	},
	Buys: func(d *Device) []Purchase {
		if d.Word("end") == "bare" {
			return nil
		}
		return buy("end cap", d)
	},
})

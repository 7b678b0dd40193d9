package part

import "legwork/harness/quantity"

var _ = define(Kind{
	Name:   "resistor",
	Title:  "A resistor in the wiring: ballast, dropping or terminating.",
	Law:    "v = i R.",
	Letter: "R",
	Settings: []Setting{
		{Name: "resistance", Bare: true, Must: true, Doc: "its resistance", Figures: []Figure{ohms("resistance", "resistance")}},
		bare("power", "largest power", Figure{Name: "power", Dim: quantity.Power, Min: 0, Max: 10000, Doc: "largest power"}),
	},
	Terminals: []Terminal{{Name: "1", Aliases: []string{"LINE"}, Doc: "one side"}, {Name: "2", Aliases: []string{"LOAD"}, Doc: "other side"}},
	Stamp: func(d *Device, s *Stamper) {
		s.Add(Element, "1", "2", resistor(d.Num("resistance")), s.All())
	},
	Symbol: resistorSymbol("1", "2"),
	Passes: func(d *Device) []Path { return []Path{{A: "1", B: "2", Ohm: d.Num("resistance")}} },
	Buys: func(d *Device) []Purchase {
		return buy("resistor", d, quantity.Text(d.Num("resistance"), quantity.Resistance))
	},
})

func resistorSymbol(a, b string) Symbol {
	return Symbol{
		Half: 3, Columns: 1, Row: LoadRow, Pins: upDown(a, b, 3), Body: Box{X1: -0.8, Y1: -2, X2: 0.8, Y2: 2},
		Strokes: append(leads(3, 2), rect(-0.8, -2, 1.6, 4)),
	}
}

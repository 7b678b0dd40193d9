package part

import "legwork/gauge"

var _ = define(Kind{
	Name:     "gauge",
	Title:    "A dash instrument.",
	Law:      "A resistance from + to -: rated volts / rated current. S only leaks: what the needle shows is not played.",
	Letter:   "P",
	Settings: loadSettings(),
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"IGN"}, Doc: "feed"},
		{Name: "-", Aliases: []string{"GND"}, Doc: "return; the metal when the instrument grounds to it"},
		{Name: "S", Aliases: []string{"SIG"}, Doc: "from the sender", Quiet: true},
	},
	Ground: "-",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "+", "-", resistor(d.rated(gauge.UsualInstrumentA).ohm()), s.All())
		s.Add(LeakElement, "S", "-", leak(), s.All())
	},
	Symbol: Symbol{
		Half: 4, Columns: 2, Row: LoadRow, Body: Box{X1: -2, Y1: -2, X2: 0.4, Y2: 2, Col2: 1},
		Pins: []SymbolPin{pin("+", 0, -4), pinAt("S", 1, 0, -4), pin("-", 0, 4)},
		Strokes: append(leads(4, 2), circle(0, 0, 2), line(-1, 1, 1.1, -1.1), line(0.4, -1.1, 1.1, -1.1, 1.1, -0.4),
			stroke(Thin, Point{X: 2}, at(1, 0, 0), at(1, 0, -4))),
	},
	Assumes: usual(gauge.UsualInstrumentA, "usual-instrument"),
	Draws: func(d *Device) []Draw {
		return []Draw{d.draw(d.rated(gauge.UsualInstrumentA), "+", "-", ElectronicLoad)}
	},
	Buys: func(d *Device) []Purchase { return buy("instrument", d) },
})

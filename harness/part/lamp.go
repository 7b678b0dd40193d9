package part

import "legwork/gauge"

// usualLampA is a 21 W signal lamp at the usual volts.
const usualLampA = gauge.UsualLampW / gauge.LampRatedV

var _ = define(Kind{
	Name:     "lamp",
	Title:    "A lamp.",
	Law:      "A resistance: R = rated volts / rated current. A cold filament's first current is only judged against contacts (inrush), not played.",
	Letter:   "P",
	Settings: loadSettings(),
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"+"}, Doc: "feed"},
		{Name: "2", Aliases: []string{"-"}, Doc: "return; the metal when the lamp grounds to it"},
	},
	Ground: "2",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "1", "2", resistor(d.rated(usualLampA).ohm()), s.All())
	},
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("1", "2", 4), Body: Box{X1: -2, Y1: -2, X2: 2, Y2: 2},
		Strokes: append(leads(4, 2), circle(0, 0, 2), line(-1.414, -1.414, 1.414, 1.414), line(-1.414, 1.414, 1.414, -1.414)),
	},
	Assumes: usual(usualLampA, "usual-lamp"),
	Draws: func(d *Device) []Draw {
		return []Draw{eitherWay(d.draw(d.rated(usualLampA), "1", "2", LampLoad))}
	},
	Buys: func(d *Device) []Purchase { return buy("lamp", d) },
})

package part

import "legwork/gauge"

// usualHeaterA is a 120 W element at the usual volts.
const usualHeaterA = gauge.UsualHeaterW / gauge.LampRatedV

var _ = define(Kind{
	Name:     "heater",
	Title:    "A heating element: glow plug, seat, window, sensor heater.",
	Law:      "A resistance: R = rated volts / rated current.",
	Letter:   "E",
	Settings: loadSettings(),
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"+"}, Doc: "feed"},
		{Name: "2", Aliases: []string{"-"}, Doc: "return; the metal when the heater grounds to it"},
	},
	Ground: "2",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "1", "2", resistor(d.rated(usualHeaterA).ohm()), s.All())
	},
	Symbol:  resistorSymbol("1", "2"),
	Assumes: usual(usualHeaterA, "usual-heater"),
	Draws: func(d *Device) []Draw {
		return []Draw{eitherWay(d.draw(d.rated(usualHeaterA), "1", "2", ResistiveLoad))}
	},
	Buys: func(d *Device) []Purchase { return buy("heater", d) },
})

package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
)

// usualLampA is a 21 W signal lamp at the usual volts.
const usualLampA = gauge.UsualLampW / gauge.LampRatedV

var _ = define(Kind{
	Name:  "lamp",
	Title: "A lamp: filament, or LED.",
	Law: "Filament: a resistance, R = rated volts / rated current; its cold first current is only judged against contacts (inrush), not played. " +
		"LED with its driver or resistor: the rated current down to the least volts it needs, below in proportion; it minds which side is fed.",
	Letter:   "P",
	Settings: loadSettings(oneOf("sort", "what makes the light", "filament", "led")),
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"+"}, Doc: "feed"},
		{Name: "2", Aliases: []string{"-"}, Doc: "return; the metal when the lamp grounds to it"},
	},
	Ground: "2",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "1", "2", lampLaw(d), s.All())
	},
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("1", "2", 4), Body: Box{X1: -2, Y1: -2, X2: 2, Y2: 2},
		Strokes: append(leads(4, 2), circle(0, 0, 2), line(-1.414, -1.414, 1.414, 1.414), line(-1.414, 1.414, 1.414, -1.414)),
	},
	Others: []Symbol{{
		Name: "led", Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("1", "2", 4), Body: Box{X1: -2, Y1: -2, X2: 3.4, Y2: 2},
		Strokes: append(leads(4, 1.6), line(-1.6, -1.6, 1.6, -1.6), line(-1.6, -1.6, 0, 1.6), line(1.6, -1.6, 0, 1.6), line(-1.6, 1.6, 1.6, 1.6),
			line(1.8, 0.2, 3.2, -1.2), line(2.2, 1.2, 3.4, 0),
			fill(3.2, -1.2, 2.55, -0.95, 2.95, -0.55), fill(3.4, 0, 2.75, 0.25, 3.15, 0.65)),
	}},
	Assumes: usual(usualLampA, "usual-lamp"),
	Draws: func(d *Device) []Draw {
		if d.Word("sort") == "led" {
			w := d.draw(d.rated(usualLampA), "1", "2", ElectronicLoad)
			w.Constant = true
			return []Draw{w}
		}
		return []Draw{eitherWay(d.draw(d.rated(usualLampA), "1", "2", LampLoad))}
	},
	Form: func(d *Device) string {
		if d.Word("sort") == "led" {
			return "led"
		}
		return ""
	},
	Buys: func(d *Device) []Purchase { return buy("lamp", d, d.Word("sort")) },
})

// lampLaw is the law of a lamp of its sort.
func lampLaw(d *Device) circuit.Law {
	r := d.rated(usualLampA)
	if d.Word("sort") == "led" {
		return constant(r.amps, d.kneeV())
	}
	return resistor(r.ohm())
}

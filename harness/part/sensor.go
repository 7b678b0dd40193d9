package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
)

var _ = define(Kind{
	Name:     "sensor",
	Title:    "A sensor: temperature, pressure, speed, position, level.",
	Law:      "Small resistances: from + to - what it draws, from S to - 2.5 kohm. What it says on S is not played: legwork shows whether it is fed, not what it measures.",
	Letter:   "B",
	Settings: loadSettings(),
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"IGN"}, Doc: "feed or reference volts", Quiet: true},
		{Name: "-", Aliases: []string{"GND"}, Doc: "return; the metal when the sensor grounds to it"},
		{Name: "S", Aliases: []string{"SIG"}, Doc: "signal", Quiet: true},
	},
	Ground: "-",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "+", "-", resistor(d.rated(gauge.UsualSensorA).ohm()), s.All())
		s.Add(Element, "S", "-", circuit.Law{Kind: circuit.Resistor, Ohm: gauge.UsualSignalOhm}, s.All())
	},
	Symbol: sensorSymbol(),
	Others: []Symbol{
		{Name: "temperature-up", Half: 3, Columns: 2, Row: SensorRow, Pins: bothUp("S", "-"), Body: upBody,
			Strokes: append(upLeads(2, 6), rect(2, -0.4, 4, 1.6), line(2, 1.9, 2.8, 1.9), line(2.8, 1.9, 5.4, -1.1), text("ϑ−", 1.1, 2.1))},
		{Name: "speed-up", Half: 3, Columns: 2, Row: SensorRow, Pins: bothUp("S", "-"), Body: upBody,
			Strokes: append(upLeads(1.9, 6.1), arc(1.9, 0.4, 3.3, 0.4, 0.7, true), arc(3.3, 0.4, 4.7, 0.4, 0.7, true), arc(4.7, 0.4, 6.1, 0.4, 0.7, true),
				line(1.9, 1, 6.1, 1), line(1.9, 1.35, 6.1, 1.35))},
	},
	Assumes: usual(gauge.UsualSensorA, "usual-sensor"),
	Draws: func(d *Device) []Draw {
		return []Draw{d.draw(d.rated(gauge.UsualSensorA), "+", "-", ElectronicLoad)}
	},
	Buys: func(d *Device) []Purchase { return buy("sensor", d) },
})

var upBody = Box{X1: -0.4, Y1: 0, X2: 0.4, Y2: 1.9, Col2: 1}

// bothUp puts both pins on top, one column apart.
func bothUp(a, b string) []SymbolPin { return []SymbolPin{pin(a, 0, -3), pinAt(b, 1, 0, -3)} }

// upLeads are the lines of such a symbol, to a body from x1 to x2.
func upLeads(x1, x2 float64) []Stroke {
	return []Stroke{
		line(0, -3, 0, 0.4), line(0, 0.4, x1, 0.4),
		stroke(Thin, Point{X: x2, Y: 0.4}, at(1, 0, 0.4)), stroke(Thin, at(1, 0, 0.4), at(1, 0, -3)),
	}
}

// sensorSymbol is a box that is fed from above, with its signal beside.
func sensorSymbol() Symbol {
	return Symbol{
		Half: 3, Columns: 2, Row: SensorRow, Body: Box{X1: -1.6, Y1: -1.6, X2: 0.4, Y2: 1.6, Col2: 1},
		Pins: []SymbolPin{pin("+", 0, -3), pinAt("S", 1, 0, -3), pin("-", 0, 3)},
		Strokes: append(leads(3, 1.6), rect(-1.6, -1.6, 3.2, 3.2), line(-1, 1, 1, -1), line(0.4, -1, 1, -1, 1, -0.4),
			stroke(Thin, Point{X: 1.6}, at(1, 0, 0), at(1, 0, -3))),
	}
}

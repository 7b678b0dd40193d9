package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:   "diode",
	Title:  "A diode in the wiring.",
	Law:    "Conducts from A to K: above its forward volts in proportion to what is over them; below, and the other way, a leak of 10 Mohm.",
	Letter: "R",
	Settings: []Setting{
		bare("rating", "largest current", Figure{Name: "current", Dim: quantity.Current, Min: 0.01, Max: 500, Doc: "largest current"}.or(gauge.UsualDiodeA, "usual-diode")),
		bare("forward", "forward volts", volts("volts", "forward volts").or(gauge.DiodeV, "diode")),
	},
	Terminals: []Terminal{{Name: "A", Aliases: []string{"+"}, Doc: "anode"}, {Name: "K", Aliases: []string{"-"}, Doc: "cathode: the side of the bar"}},
	Stamp: func(d *Device, s *Stamper) {
		s.Add(Element, "A", "K", diodeLaw(d.Num("forward"), d.Num("rating")), s.All())
	},
	Symbol: Symbol{
		Half: 3, Columns: 1, Row: SwitchRow, Pins: upDown("A", "K", 3), Body: Box{X1: -1, Y1: -0.9, X2: 1, Y2: 0.9},
		Strokes: []Stroke{line(0, -3, 0, 3), fill(-1, -0.9, 1, -0.9, 0, 0.9), line(-1, 0.9, 1, 0.9)},
	},
	Passes: func(d *Device) []Path { return []Path{{A: "A", B: "K", OneWay: true}} },
	Buys:   func(d *Device) []Purchase { return buy("diode", d, ratingOf(d)) },
})

// diodeLaw conducts from its first terminal to its second; at its rated
// current it has 0.1 V more than where it begins.
func diodeLaw(forwardV, ratedA float64) circuit.Law {
	return circuit.Law{Kind: circuit.Diode, Volt: forwardV, Ohm: (gauge.DiodeRatedV - gauge.DiodeV) / ratedA, LeakOhm: gauge.DiodeLeakOhm}
}

// ratingOf prints a rating that the draft gives.
func ratingOf(d *Device) string {
	if d.Said("rating") {
		return quantity.Text(d.Num("rating"), quantity.Current)
	}
	return ""
}

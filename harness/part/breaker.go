package part

import "legwork/harness/quantity"

var _ = define(Kind{
	Name:   "breaker",
	Title:  "A circuit breaker.",
	Law:    "A fixed way through: its own resistance is small and not known well enough to count.",
	Letter: "Q",
	Settings: []Setting{
		bare("rating", "rated current; chosen by legwork when not said", Figure{Name: "current", Dim: quantity.Current, Min: 0.5, Max: 800, Doc: "rated current"}),
		oneOf("reset", "how it comes back: by hand, by itself, or by itself once the load is off", "manual", "automatic", "modified"),
	},
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"LINE"}, Doc: "side of the source"},
		{Name: "2", Aliases: []string{"LOAD"}, Doc: "side of the load"},
	},
	Stamp: func(d *Device, s *Stamper) { s.Add(FuseElement, "1", "2", resistor(closedOhm), s.All()) },
	Symbol: Symbol{
		Half: 3, Columns: 1, Row: FuseRow, Pins: upDown("1", "2", 3), Body: Box{X1: -1.8, Y1: -2, X2: 0.8, Y2: 2},
		Strokes: []Stroke{
			line(0, -3, 0, -1.4), line(0, 1.4, 0, 3), dot(0, -1.4, 0.22), blade(0, -1.4, -1.3, 1.1), closed(0, -1.4, -0.12, 1.4),
			line(-0.25, 1.15, 0.25, 1.65), line(-0.25, 1.65, 0.25, 1.15), rect(-1.6, -0.5, 0.7, 0.7),
		},
	},
	Protects: func(d *Device) []Fuse { return protects(d, "breaker") },
	Buys: func(d *Device) []Purchase {
		return buy("breaker", d, ratingText(d), d.Word("reset")+" reset")
	},
})

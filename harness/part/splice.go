package part

var _ = define(Kind{
	Name:      "splice",
	Title:     "A splice: wires crimped or welded together.",
	Law:       "One point. A good crimp loses nothing that counts.",
	Letter:    "X",
	Terminals: []Terminal{{Name: "1", Landing: Joint, Doc: "the splice itself"}},
	Self:      true,
	Joins:     true,
	Stamp:     func(d *Device, s *Stamper) {},
	Symbol: Symbol{
		Half: 1, Columns: 1, Row: ConnectorRow, Body: Box{X1: -2, Y1: -0.3, X2: 2, Y2: 0.3},
		Strokes: []Stroke{bold(-2, 0, 2, 0), dot(0, 0, 0.36), line(0, -1, 0, 1)},
	},
	Buys: func(d *Device) []Purchase { return buy("splice", d) },
})

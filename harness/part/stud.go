package part

import "legwork/harness/quantity"

var _ = define(Kind{
	Name:   "stud",
	Title:  "A stud: rings under one nut, on metal or insulated.",
	Law:    "One point, and one with the metal that it sits on. Each ring is a bolted joint of 0.3 mohm.",
	Letter: "X",
	Settings: []Setting{
		bare("thread", "its thread: M8, No10", Figure{Name: "thread", Dim: quantity.Thread, Min: 2, Max: 20, Doc: "thread"}),
		bare("diameter", "its thread in inches: 1/4in", Figure{Name: "diameter", Dim: quantity.Length, Min: 0.002, Max: 0.02, Doc: "thread diameter"}),
	},
	Terminals: []Terminal{{Name: "1", Landing: Post, Doc: "the stud itself"}},
	Self:      true,
	Joins:     true,
	Stamp:     func(d *Device, s *Stamper) {},
	Symbol: Symbol{
		Half: 2, Columns: 1, Row: SensorRow, Pins: []SymbolPin{pin("1", 0, -2)}, Body: Box{X1: -2, Y1: -1, X2: 2, Y2: 1.6},
		Strokes: []Stroke{
			line(0, -2, 0, 1), circle(0, -0.6, 0.55), dot(0, -0.6, 0.2), bold(-2, 1, 2, 1),
			line(-1.6, 1, -2.1, 1.8), line(-0.5, 1, -1, 1.8), line(0.6, 1, 0.1, 1.8), line(1.7, 1, 1.2, 1.8),
		},
	},
	Others: []Symbol{{
		Name: "earth", Half: 2, Columns: 1, Row: SensorRow, Pins: []SymbolPin{pin("1", 0, -2)}, Body: Box{X1: -1.5, Y1: 0, X2: 1.5, Y2: 1.2},
		Strokes: []Stroke{line(0, -2, 0, 0), line(-1.5, 0, 1.5, 0), line(-1, 0.6, 1, 0.6), line(-0.5, 1.2, 0.5, 1.2)},
	}},
})

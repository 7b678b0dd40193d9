package part

var _ = define(Kind{
	Name:   "box",
	Title:  "A fuse and relay box; its bus bars are its terminals.",
	Law:    "A bus and the terminals on it are one point. A wire on a bus is a ring under a nut: a joint of 0.3 mohm.",
	Letter: "A",
	Lines:  &Lines{Shape: BusLines, Head: "bus", Landing: Post},
	Joins:  true,
	Stamp:  func(d *Device, s *Stamper) {},
	Symbol: Symbol{
		Half: 1, Columns: 1, Row: FuseRow, Body: Box{X1: -2, Y1: -0.3, X2: 2, Y2: 0.3},
		Strokes: []Stroke{bold(-2, 0, 2, 0), line(0, -1, 0, 0), dot(0, 0, 0.36)},
	},
	Buys: func(d *Device) []Purchase { return buy("fuse and relay box", d) },
})

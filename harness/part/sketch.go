package part

// The pieces that symbols are written with. Coordinates are modules; a run of
// numbers is x, y, x, y ... in the first column.

// pts turns a run of numbers into points of the first column.
func pts(xy ...float64) []Point {
	out := make([]Point, 0, len(xy)/2)
	for i := 0; i+1 < len(xy); i += 2 {
		out = append(out, Point{X: xy[i], Y: xy[i+1]})
	}
	return out
}

// at is a point of a later column.
func at(col int, x, y float64) Point { return Point{X: x, Y: y, Col: col} }

func stroke(kind StrokeKind, points ...Point) Stroke { return Stroke{Kind: kind, Points: points} }

func line(xy ...float64) Stroke   { return stroke(Thin, pts(xy...)...) }
func bold(xy ...float64) Stroke   { return stroke(Bold, pts(xy...)...) }
func dashed(xy ...float64) Stroke { return stroke(Dashed, pts(xy...)...) }
func blade(xy ...float64) Stroke  { return stroke(Blade, pts(xy...)...) }
func closed(xy ...float64) Stroke { return stroke(Closed, pts(xy...)...) }
func fill(xy ...float64) Stroke   { return stroke(Fill, pts(xy...)...) }

// rect is a rectangle by its corner and size.
func rect(x, y, w, h float64) Stroke { return stroke(Rect, pts(x, y, w, h)...) }

func circle(x, y, r float64) Stroke { return Stroke{Kind: Circle, Points: pts(x, y), R: r} }
func dot(x, y, r float64) Stroke    { return Stroke{Kind: Dot, Points: pts(x, y), R: r} }

// dotAt is a dot in a later column.
func dotAt(col int, x, y, r float64) Stroke {
	return Stroke{Kind: Dot, Points: []Point{at(col, x, y)}, R: r}
}

// arc goes from one point to the other, bulging to the right of travel or to
// the left.
func arc(x1, y1, x2, y2, r float64, right bool) Stroke {
	return Stroke{Kind: Arc, Points: pts(x1, y1, x2, y2), R: r, Right: right}
}

func text(s string, x, y float64) Stroke { return Stroke{Kind: Text, Points: pts(x, y), S: s} }

func pin(name string, x, y float64) SymbolPin { return SymbolPin{Name: name, X: x, Y: y} }

func pinAt(name string, col int, x, y float64) SymbolPin {
	return SymbolPin{Name: name, Col: col, X: x, Y: y}
}

// upDown is the usual pair of pins: a on top, b below.
func upDown(a, b string, half float64) []SymbolPin {
	return []SymbolPin{pin(a, 0, -half), pin(b, 0, half)}
}

// leads are the two lines from the pins to a body that reaches from -edge to
// +edge.
func leads(half, edge float64) []Stroke {
	return []Stroke{line(0, -half, 0, -edge), line(0, edge, 0, half)}
}

// contact is a make contact between pins a and b with something that moves it.
func contact(name, a, b string, left float64, mover ...Stroke) Symbol {
	return Symbol{
		Name: name, Half: 4, Columns: 1, Row: SwitchRow, Pins: upDown(a, b, 4), Body: Box{X1: left, Y1: -1.8, X2: 0.4, Y2: 1.8},
		Strokes: append([]Stroke{
			line(0, -4, 0, -1.6), line(0, 1.6, 0, 4), dot(0, -1.6, 0.22), blade(0, -1.6, -1.5, 1.3), closed(0, -1.6, -0.12, 1.75),
		}, mover...),
	}
}

// changeOver is a contact that rests on b and moves to a.
func changeOver(name, common, moved, rest string, left float64, mover ...Stroke) Symbol {
	return Symbol{
		Name: name, Half: 4, Columns: 1, Row: SwitchRow, Body: Box{X1: left, Y1: -1.8, X2: 0.4, Y2: 1.8},
		Pins: []SymbolPin{pin(common, 0, -4), pin(moved, 0, 4), pin(rest, -2.4, 4)},
		Strokes: append([]Stroke{
			line(0, -4, 0, -1.6), line(0, 1.4, 0, 4), dot(0, -1.6, 0.22), blade(0, -1.6, -1.55, 1.5),
			line(-2.4, 1.4, -1.3, 1.4), line(-2.4, 1.4, -2.4, 4), closed(0, -1.6, -0.1, 1.5),
		}, mover...),
	}
}

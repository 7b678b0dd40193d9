package part

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

// sensorForm is the same box with its pins above side by side; the return of
// the first one is below.
func sensorForm(name string, up ...string) Symbol {
	y := Symbol{
		Name: name, Half: 3, Columns: len(up), Row: SensorRow, Body: Box{X1: -1.6, Y1: -1.6, X2: 0.4, Y2: 1.6, Col2: len(up) - 1},
		Strokes: append(leads(3, 1.6), rect(-1.6, -1.6, 3.2, 3.2), line(-1, 1, 1, -1), line(0.4, -1, 1, -1, 1, -0.4)),
	}
	for i, p := range up {
		y.Pins = append(y.Pins, pinAt(p, i, 0, -3))
		if height := 1.2 - 2.4*float64(i)/float64(len(up)); i > 0 {
			y.Strokes = append(y.Strokes, stroke(Thin, Point{X: 1.6, Y: height}, at(i, 0, height), at(i, 0, -3)))
		}
	}
	y.Pins = append(y.Pins, pin(map[string]string{"+": "-", "H+": "H-"}[up[0]], 0, 3))
	return y
}

// inductiveSymbol is a coil between its two terminals.
func inductiveSymbol() Symbol {
	return Symbol{
		Name: "inductive", Half: 3, Columns: 1, Row: SensorRow, Pins: upDown("S+", "S-", 3), Body: Box{X1: -1.2, Y1: -2, X2: 1.2, Y2: 2},
		Strokes: append(leads(3, 2), arc(0, -2, 0, -0.7, 0.7, true), arc(0, -0.7, 0, 0.6, 0.7, true), arc(0, 0.6, 0, 2, 0.7, true), line(-0.6, -2, -0.6, 2), line(-1, -2, -1, 2)),
	}
}

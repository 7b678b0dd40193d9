package diagram

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// spot is a place on a symbol: modules, plus c column pitches to the right.
type spot struct{ x, y, c float64 }

// mark is one stroke of a form; a Rect holds two opposite corners.
type mark struct {
	kind  part.StrokeKind
	pts   []spot
	r     float64
	right bool
	s     string
}

// form is a symbol as it will be drawn: turned, mirrored or laid down.
type form struct {
	name   string
	half   float64
	cols   int
	row    part.Row
	pins   []formPin
	body   [2]spot
	marks  []mark
	lying  bool // both pins up, the body lies between two columns
	polar  bool // turning it means mirroring, not swapping its pins
	simple bool // two pins in one column, one up, one down
}

type formPin struct {
	name  string
	col   int
	dx, y float64
}

// symbolOf picks the symbol that the device's settings ask for.
func symbolOf(d *model.Device) part.Symbol {
	k := d.Kind
	if k.Form != nil {
		want := k.Form(d.Device)
		for _, s := range k.Others {
			if s.Name == want && want != "" {
				return s
			}
		}
	}
	return k.Symbol
}

// toForm reads a symbol of the part package.
func toForm(s part.Symbol) form {
	f := form{name: s.Name, half: s.Half, cols: max(s.Columns, 1), row: s.Row}
	f.body = [2]spot{{s.Body.X1, s.Body.Y1, 0}, {s.Body.X2, s.Body.Y2, float64(s.Body.Col2)}}
	for _, p := range s.Pins {
		f.pins = append(f.pins, formPin{p.Name, p.Col, p.X, p.Y})
		f.cols = max(f.cols, p.Col+1)
	}
	for _, st := range s.Strokes {
		m := mark{kind: st.Kind, r: st.R, right: st.Right, s: st.S}
		for _, q := range st.Points {
			m.pts = append(m.pts, spot{q.X, q.Y, float64(q.Col)})
		}
		if st.Kind == part.Rect && len(m.pts) == 2 {
			m.pts[1] = spot{m.pts[0].x + m.pts[1].x, m.pts[0].y + m.pts[1].y, m.pts[0].c + m.pts[1].c}
		}
		f.marks = append(f.marks, m)
	}
	f.simple = len(f.pins) == 2 && f.cols == 1 && f.pins[0].y*f.pins[1].y < 0 && f.pins[0].dx == 0 && f.pins[1].dx == 0
	return f
}

// outlined reports whether the symbol has a dash-dot outline with room inside.
func (f form) outlined() bool {
	for _, m := range f.marks {
		if m.kind == part.Unit {
			return true
		}
	}
	return false
}

// swapped lets the two pins of a simple form change places.
func (f form) swapped() form {
	if f.polar {
		return f.mirrored()
	}
	f.pins = []formPin{{f.pins[1].name, 0, 0, f.pins[0].y}, {f.pins[0].name, 0, 0, f.pins[1].y}}
	return f
}

// mirrored turns a form upside down.
func (f form) mirrored() form {
	turn := func(q spot) spot { return spot{q.x, -q.y, q.c} }
	g := f.mapped(turn)
	g.body = [2]spot{{f.body[0].x, -f.body[1].y, f.body[0].c}, {f.body[1].x, -f.body[0].y, f.body[1].c}}
	g.pins = nil
	for _, p := range f.pins {
		g.pins = append(g.pins, formPin{p.name, p.col, p.dx, -p.y})
	}
	return g
}

// lyingDeep is how far below the middle of the row a lying body sits, modules.
const lyingDeep = 1.5

// laid gives the form with both pins up: the body lies between two columns.
// The upper pin of the standing form comes first.
func (f form) laid() form {
	first, second := f.pins[0], f.pins[1]
	if first.y > 0 {
		first, second = second, first
	}
	g := f.mapped(func(q spot) spot { return spot{q.y, lyingDeep + q.x, 0.5} })
	reach := f.half
	g.marks = append(g.marks,
		mark{kind: part.Thin, pts: []spot{{0, -f.half, 0}, {0, lyingDeep, 0}, {-reach, lyingDeep, 0.5}}},
		mark{kind: part.Thin, pts: []spot{{reach, lyingDeep, 0.5}, {0, lyingDeep, 1}, {0, -f.half, 1}}})
	g.pins = []formPin{{first.name, 0, 0, -f.half}, {second.name, 1, 0, -f.half}}
	g.cols, g.lying, g.simple = 2, true, false
	g.body = [2]spot{{-0.4, lyingDeep + min(f.body[0].x, -0.4), 0}, {0.4, lyingDeep + max(f.body[1].x, 0.4), 1}}
	return g
}

// mapped moves every mark; both uses are reflections, so arcs change side.
func (f form) mapped(move func(spot) spot) form {
	g := f
	g.marks = nil
	for _, m := range f.marks {
		n := mark{kind: m.kind, r: m.r, right: !m.right, s: m.s}
		for _, q := range m.pts {
			if m.kind == part.Text {
				q.y -= textRise(m.s)
			}
			q = move(q)
			if m.kind == part.Text {
				q.y += textRise(m.s)
			}
			n.pts = append(n.pts, q)
		}
		g.marks = append(g.marks, n)
	}
	return g
}

// textRise is how far the base line of a symbol's text lies under its middle,
// modules.
func textRise(s string) float64 { return symbolTextMM(s) * 0.36 / module }

// symbolTextMM is the font size of a text in a symbol: a lone capital is
// large.
func symbolTextMM(s string) float64 {
	if len(s) == 1 && strings.ToUpper(s) == s {
		return sizeLarge
	}
	return sizeSmall
}

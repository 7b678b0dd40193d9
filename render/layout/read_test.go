package layout_test

import (
	"encoding/xml"
	"math"
	"strconv"
	"strings"

	"legwork/render/scene"
)

// element is one XML element of a finished sheet with its children.
type element struct {
	XMLName xml.Name
	Attrs   []xml.Attr `xml:",any,attr"`
	Text    string     `xml:",chardata"`
	Kids    []element  `xml:",any"`
}

func (e *element) get(name string) string {
	for _, a := range e.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func (e *element) num(name string) float64 {
	v, _ := strconv.ParseFloat(e.get(name), 64)
	return v
}

// outline is a line or a closed area on paper: its corners, with a margin for
// the width of a stroke.
type outline struct {
	corners []scene.Point
	closed  bool
	class   string
	group   *element
}

type words struct {
	text  string
	box   scene.Box
	group *element
	layer string
}

type leg struct {
	id, name string
	lengthM  float64
	wires    string
	longMM   float64
	faked    bool
}

// sheet is what is on paper.
type sheet struct {
	root     element
	texts    []words
	outlines []outline
	legs     []leg
	ids      map[string]int
	cards    []scene.Box
	devs     map[string]bool
}

func read(svg string, look func(string) scene.Style) (*sheet, error) {
	s := &sheet{ids: map[string]int{}, devs: map[string]bool{}}
	if err := xml.Unmarshal([]byte(svg), &s.root); err != nil {
		return nil, err
	}
	for i := range s.root.Kids {
		k := &s.root.Kids[i]
		if k.XMLName.Local == "g" {
			s.walk(k, k, k.get("class"), look)
		}
	}
	return s, nil
}

func (s *sheet) walk(e, group *element, layer string, look func(string) scene.Style) {
	if id := e.get("id"); id != "" {
		s.ids[id]++
	}
	if v := e.get("data-dev"); v != "" {
		s.devs[v] = true
	}
	if e.get("class") == "leg" {
		s.legs = append(s.legs, legOf(e))
	}
	switch e.XMLName.Local {
	case "g":
		group = e
	case "text":
		at := map[string]scene.Anchor{"middle": scene.Middle, "end": scene.End}[e.get("text-anchor")]
		st := look(e.get("class"))
		s.texts = append(s.texts, words{e.Text, scene.TextBox(e.Text, e.num("x"), e.num("y"), at, st.SizeMM, st.Bold), group, layer})
	case "title", "desc":
	default:
		o := outlineOf(e, group)
		if o.class == "card" {
			s.cards = append(s.cards, scene.Box{X1: e.num("x"), Y1: e.num("y"), X2: e.num("x") + e.num("width"), Y2: e.num("y") + e.num("height")})
		} else if layer != "frame" {
			s.outlines = append(s.outlines, o)
		}
	}
	for i := range e.Kids {
		s.walk(&e.Kids[i], group, layer, look)
	}
}

func outlineOf(e, group *element) outline {
	o := outline{class: e.get("class"), group: group}
	p := func(x, y float64) { o.corners = append(o.corners, scene.Point{X: x, Y: y}) }
	switch e.XMLName.Local {
	case "line":
		p(e.num("x1"), e.num("y1"))
		p(e.num("x2"), e.num("y2"))
	case "polygon", "polyline":
		o.closed = e.XMLName.Local == "polygon"
		for _, f := range strings.Fields(e.get("points")) {
			x, y, _ := strings.Cut(f, ",")
			fx, _ := strconv.ParseFloat(x, 64)
			fy, _ := strconv.ParseFloat(y, 64)
			p(fx, fy)
		}
	case "rect":
		x, y, w, h := e.num("x"), e.num("y"), e.num("width"), e.num("height")
		o.closed = true
		p(x, y)
		p(x+w, y)
		p(x+w, y+h)
		p(x, y+h)
	case "circle":
		o.closed = true
		for i := range 16 {
			sin, cos := math.Sincos(float64(i) * math.Pi / 8)
			p(e.num("cx")+e.num("r")*cos, e.num("cy")+e.num("r")*sin)
		}
	}
	return o
}

// legOf reads a leg: how long its bundle is drawn, and whether it is said not
// to be to scale.
func legOf(e *element) leg {
	l := leg{id: e.get("id"), name: e.get("data-leg"), wires: e.get("data-wires"), lengthM: e.num("data-length-m")}
	for i := range e.Kids {
		switch k := &e.Kids[i]; k.get("class") {
		case "bundle":
			c := outlineOf(k, e).corners
			l.longMM = math.Hypot(c[1].X-c[0].X, c[1].Y-c[0].Y)
		case "gap-fill":
			l.faked = true
		}
	}
	return l
}

// hits reports whether an outline touches a box.
func (o outline) hits(b scene.Box) bool {
	return meet(o.corners, []scene.Point{{X: b.X1, Y: b.Y1}, {X: b.X2, Y: b.Y1}, {X: b.X2, Y: b.Y2}, {X: b.X1, Y: b.Y2}})
}

// meet reports whether two convex outlines touch, by separating axes.
func meet(a, b []scene.Point) bool {
	for _, c := range [][]scene.Point{a, b} {
		for i := range c {
			p, q := c[i], c[(i+1)%len(c)]
			axis := scene.Point{X: q.Y - p.Y, Y: p.X - q.X}
			lo1, hi1 := shadow(a, axis)
			lo2, hi2 := shadow(b, axis)
			if hi1 <= lo2+1e-9 || hi2 <= lo1+1e-9 {
				return false
			}
		}
	}
	return true
}

func shadow(points []scene.Point, axis scene.Point) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, p := range points {
		d := p.X*axis.X + p.Y*axis.Y
		lo, hi = min(lo, d), max(hi, d)
	}
	return lo, hi
}

package diagram_test

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"

	"legwork/render/scene"
)

// The reader takes the finished SVG apart again, as plain XML, so that the
// checks see what is on paper and not what the layout believes.

type lineMark struct {
	x1, y1, x2, y2 float64
	width          float64
	class          string
}

// wireMark is one straight leg of a wire; first and last say which of its own
// ends are ends of the wire.
type wireMark struct {
	id, number  string
	line        lineMark
	first, last bool
}

type pinMark struct {
	name string
	x, y float64
	dev  string
}

type jointMark struct {
	name string
	bars []lineMark // bar or, for a stud or a short joint, a point
}

type bodyMark struct {
	dev string
	box scene.Box
}

type textMark struct {
	text          string
	box           scene.Box
	size          float64
	wire, dev     string
	layer, inside string // layer; class of the group it stands in
}

type xrefMark struct {
	wire, joint string
	box         scene.Box
}

type sheetMarks struct {
	title, desc string
	ids         map[string]int
	wires       []wireMark
	pins        []pinMark
	joints      []jointMark
	leads       []lineMark
	bodies      []bodyMark
	texts       []textMark
	xrefs       []xrefMark
	borders     []lineMark // of sections
	rings       []lineMark // around the cores of cables
	centers     []lineMark // centering marks
	width, high float64
}

// element is one XML element with its children.
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
	v, err := strconv.ParseFloat(e.get(name), 64)
	if err != nil {
		return 0
	}
	return v
}

func (e *element) has(class string) bool {
	for w := range strings.FieldsSeq(e.get("class")) {
		if w == class {
			return true
		}
	}
	return false
}

// around is what the groups around an element say.
type around struct{ layer, group, wire, dev string }

func readSheet(svg string, look func(class string) scene.Style) (*sheetMarks, error) {
	var root element
	if err := xml.Unmarshal([]byte(svg), &root); err != nil {
		return nil, err
	}
	s := &sheetMarks{ids: map[string]int{}, width: parseMM(root.get("width")), high: parseMM(root.get("height"))}
	for i := range root.Kids {
		k := &root.Kids[i]
		switch k.XMLName.Local {
		case "title":
			s.title = k.Text
		case "desc":
			s.desc = k.Text
		case "style":
			continue
		}
		s.read(k, around{layer: k.get("class")}, look)
	}
	return s, nil
}

func parseMM(s string) float64 {
	v, _ := strconv.ParseFloat(strings.TrimSuffix(s, "mm"), 64)
	return v
}

func (s *sheetMarks) read(e *element, c around, look func(string) scene.Style) {
	if id := e.get("id"); id != "" {
		s.ids[id]++
	}
	if e.XMLName.Local == "g" {
		c.group = e.get("class")
		if v := e.get("data-wire"); v != "" {
			c.wire = v
		}
		if v := e.get("data-dev"); v != "" {
			c.dev = v
		}
		if v := e.get("data-pin"); v != "" && c.dev == "" {
			c.dev = strings.SplitN(v, ".", 2)[0]
		}
	}
	s.readShape(e, c, look)
	for i := range e.Kids {
		s.read(&e.Kids[i], c, look)
	}
	switch {
	case e.has("node"):
		s.joints = append(s.joints, readJoint(e))
	case e.has("xref"):
		s.xrefs = append(s.xrefs, xrefMark{e.get("data-wire"), e.get("data-joint"), firstRect(e)})
	case e.has("wire"):
		s.wires = append(s.wires, legsOf(e, look)...)
	case e.has("dev"):
		var b scene.Box
		fmt.Sscanf(e.get("data-body"), "%f %f %f %f", &b.X1, &b.Y1, &b.X2, &b.Y2)
		s.bodies = append(s.bodies, bodyMark{e.get("data-dev"), b})
	}
}

func (s *sheetMarks) readShape(e *element, c around, look func(string) scene.Style) {
	switch e.XMLName.Local {
	case "circle":
		if v := e.get("data-pin"); v != "" {
			s.pins = append(s.pins, pinMark{v, e.num("cx"), e.num("cy"), c.dev})
		}
	case "line":
		if c.layer == "leads" && e.has("sy") {
			s.leads = append(s.leads, readLine(e))
		}
		if c.group == "section" && e.get("x1") == e.get("x2") {
			s.borders = append(s.borders, readLine(e))
		}
		if c.layer == "frame" && e.get("class") == "l70" {
			s.centers = append(s.centers, readLine(e))
		}
		if c.group == "cable" {
			s.rings = append(s.rings, readLine(e))
		}
	case "text":
		at := scene.Start
		switch e.get("text-anchor") {
		case "middle":
			at = scene.Middle
		case "end":
			at = scene.End
		}
		st := look(e.get("class"))
		s.texts = append(s.texts, textMark{
			text: e.Text, box: scene.TextBox(e.Text, e.num("x"), e.num("y"), at, st.SizeMM, st.Bold), size: st.SizeMM,
			wire: c.wire, dev: c.dev, layer: c.layer, inside: c.group,
		})
	}
}

func readLine(e *element) lineMark {
	return lineMark{x1: e.num("x1"), y1: e.num("y1"), x2: e.num("x2"), y2: e.num("y2"), class: e.get("class")}
}

// readJoint takes the bars of a joint; one without a bar is the point where
// its ring stands.
func readJoint(e *element) jointMark {
	j := jointMark{name: e.get("data-joint")}
	for i := range e.Kids {
		k := &e.Kids[i]
		if k.XMLName.Local == "line" && (k.has("bar") || k.has("rail")) {
			j.bars = append(j.bars, readLine(k))
		}
	}
	if len(j.bars) == 0 {
		for i := range e.Kids {
			if k := &e.Kids[i]; k.XMLName.Local == "line" {
				l := readLine(k)
				l.y2, l.x2 = l.y1, l.x1
				j.bars = append(j.bars, l)
			}
		}
	}
	return j
}

func firstRect(e *element) scene.Box {
	for i := range e.Kids {
		if k := &e.Kids[i]; k.XMLName.Local == "rect" {
			return scene.Box{X1: k.num("x"), Y1: k.num("y"), X2: k.num("x") + k.num("width"), Y2: k.num("y") + k.num("height")}
		}
	}
	return scene.Box{}
}

// legsOf reads the casing of a wire: one line, or the legs of a bent one.
func legsOf(e *element, look func(string) scene.Style) []wireMark {
	for i := range e.Kids {
		k := &e.Kids[i]
		if !k.has("case") {
			continue
		}
		lines := []lineMark{readLine(k)}
		if k.XMLName.Local == "polyline" {
			lines = readBent(k)
		}
		var out []wireMark
		for n, l := range lines {
			l.width = look(k.get("class")).WidthMM
			out = append(out, wireMark{e.get("id"), e.get("data-wire"), l, n == 0, n == len(lines)-1})
		}
		return out
	}
	return []wireMark{{id: e.get("id"), number: e.get("data-wire"), first: true, last: true}}
}

func readBent(e *element) []lineMark {
	var out []lineMark
	var px, py float64
	for i, f := range strings.Fields(e.get("points")) {
		var x, y float64
		fmt.Sscanf(f, "%f,%f", &x, &y)
		if i > 0 {
			out = append(out, lineMark{x1: px, y1: py, x2: x, y2: y, class: e.get("class")})
		}
		px, py = x, y
	}
	return out
}

// box of a level or upright line with its width; its ends are cut square.
func (l lineMark) box() scene.Box {
	h, v := l.width/2, 0.0
	if l.y1 == l.y2 {
		h, v = 0, l.width/2
	}
	return scene.Box{X1: math.Min(l.x1, l.x2) - h, Y1: math.Min(l.y1, l.y2) - v, X2: math.Max(l.x1, l.x2) + h, Y2: math.Max(l.y1, l.y2) + v}
}

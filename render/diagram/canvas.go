package diagram

import "legwork/render/scene"

// canvas is one sheet while it is drawn. Texts that may stand in several
// places are kept until everything else is known.
type canvas struct {
	p    *plan
	g    *page
	segs map[*bar]map[*panel]*segment

	sections, bars, leads, wires, dots, symbols, links, labels, frame, legend *scene.Node

	taken []scene.Box // what texts keep clear of
	ways  []way       // where the wires run, for the labels beside them
	said  []way       // the labels that stand beside wires
	jobs  []job
	ids   map[string]int
}

// line is one line of a text.
type line struct {
	text string
	size float64
	bold bool
	mut  bool
}

func (l line) width() float64 { return scene.Width(l.text, l.size, l.bold) }

func (l line) class() string {
	c := "t"
	switch l.size {
	case sizeName:
		c += " t3"
	case sizeLarge:
		c += " t4"
	case sizeTiny:
		c += " t1"
	}
	if l.bold {
		c += " b"
	}
	if l.mut {
		c += " mut"
	}
	return c
}

// choice is one place where a text may stand: x, y of its first base line.
type choice struct {
	lines []line
	x, y  float64
	at    scene.Anchor
	cost  float64 // added to what it covers: for places that are free but poor
}

// job is a text to be placed: the first free of its choices, or else the one
// that covers least.
type job struct {
	rank    int
	class   string
	data    []scene.Attr
	choices []choice
}

const (
	lineStep  = 2.9 // mm from base line to base line
	nameStep  = 3.6
	clearance = 0.25
)

func (c choice) boxes() []scene.Box {
	var out []scene.Box
	y := c.y
	for i, l := range c.lines {
		if i > 0 {
			y += lineStep
			if l.size >= sizeName {
				y += nameStep - lineStep
			}
		}
		out = append(out, scene.TextBox(l.text, c.x, y, c.at, l.size, l.bold))
	}
	return out
}

func (p *plan) newCanvas(g *page) *canvas {
	c := &canvas{p: p, g: g, segs: map[*bar]map[*panel]*segment{}, ids: map[string]int{}}
	for _, layer := range []struct {
		node **scene.Node
		name string
	}{
		{&c.sections, "sections"}, {&c.bars, "bars"}, {&c.leads, "leads"}, {&c.wires, "wires"}, {&c.dots, "dots"}, {&c.symbols, "symbols"},
		{&c.links, "links"}, {&c.labels, "labels"}, {&c.frame, "frame"}, {&c.legend, "legend"},
	} {
		*layer.node = scene.G(layer.name)
	}
	for _, s := range g.tall.segs {
		if c.segs[s.bar] == nil {
			c.segs[s.bar] = map[*panel]*segment{}
		}
		c.segs[s.bar][s.panel] = s
	}
	return c
}

// id makes an id that is unique on the sheet: a second one of the same name
// gets a number.
func (c *canvas) id(prefix, name string) string {
	id := scene.ID(prefix, name)
	c.ids[id]++
	for n := c.ids[id]; n > 1; n++ {
		try := id + "_" + string(rune('0'+n%10))
		if n > 9 {
			try = id + "_" + string(rune('0'+n/10%10)) + string(rune('0'+n%10))
		}
		if c.ids[try] == 0 {
			c.ids[try]++
			return try
		}
	}
	return id
}

// take keeps a box clear of texts.
func (c *canvas) take(x1, y1, x2, y2 float64) {
	c.taken = append(c.taken, scene.Box{X1: min(x1, x2), Y1: min(y1, y2), X2: max(x1, x2), Y2: max(y1, y2)})
}

// takeLine keeps a line of some width clear.
func (c *canvas) takeLine(x1, y1, x2, y2, width float64) {
	h := width / 2
	c.take(min(x1, x2)-h, min(y1, y2)-h, max(x1, x2)+h, max(y1, y2)+h)
}

// put draws a text at once and keeps it clear.
func (c *canvas) put(layer *scene.Node, l line, x, y float64, at scene.Anchor) {
	if l.text == "" {
		return
	}
	layer.Add(scene.Words(l.class(), x, y, at, l.text))
	c.taken = append(c.taken, scene.TextBox(l.text, x, y, at, l.size, l.bold))
}

func small(text string) line  { return line{text: text, size: sizeSmall} }
func strong(text string) line { return line{text: text, size: sizeSmall, bold: true} }
func faint(text string) line  { return line{text: text, size: sizeSmall, mut: true} }
func name(text string) line   { return line{text: text, size: sizeName, bold: true} }
func fitted(l line, w float64) line {
	l.text = scene.Fit(l.text, l.size, l.bold, w)
	return l
}

package diagram

import (
	"legwork/harness/part"
	"legwork/render/scene"
)

// view turns places on an item's form into places on the sheet.
type view struct {
	it   *item
	y    float64
	sign float64 // -1: the item is drawn from right to left
}

func (c *canvas) viewOf(it *item) view {
	v := view{it, c.g.tall.slotY[it.slot], 1}
	if it.flip {
		v.sign = -1
	}
	return v
}

// x gives the place of a column; a half column is midway between two.
func (v view) x(col float64) float64 {
	i := int(col)
	x := v.it.cols[min(i, len(v.it.cols)-1)].track().x
	if f := col - float64(i); f > 0 && i+1 < len(v.it.cols) {
		x += f * (v.it.cols[i+1].track().x - x)
	}
	return x
}

func (v view) at(s spot) (x, y float64) {
	return v.x(s.c) + v.sign*s.x*module, v.y + s.y*module
}

// body gives the box of the symbol's body.
func (v view) body() scene.Box {
	x1, y1 := v.at(v.it.form.body[0])
	x2, y2 := v.at(v.it.form.body[1])
	return scene.Box{X1: min(x1, x2), Y1: y1, X2: max(x1, x2), Y2: y2}
}

// drawItem draws one symbol with its terminals and asks for its texts.
func (c *canvas) drawItem(it *item) {
	v := c.viewOf(it)
	g := scene.G("dev")
	id := it.dev.Name
	if it.sub != "" {
		id += "-" + it.sub
	}
	g.ID = c.id("d-", id)
	g.Title = describe(it.dev)
	b := v.body()
	g.Data = []scene.Attr{{Name: "dev", Value: it.dev.Name}, {Name: "body", Value: boxText(b)}}
	for _, m := range it.form.marks {
		c.drawMark(g, v, m)
	}
	c.takeBody(it, b)
	for _, q := range it.pins {
		c.drawPin(g, v, q)
	}
	dashed(it.dev, g)
	c.symbols.Add(g)
	c.nameItem(it, v, b)
}

// takeBody keeps texts off a symbol: off all of its body, or only off the
// outline where it has one (its strokes are kept clear by themselves).
func (c *canvas) takeBody(it *item, b scene.Box) {
	if !it.form.outlined() {
		c.taken = append(c.taken, b)
		return
	}
	c.takeLine(b.X1, b.Y1, b.X2, b.Y1, 0.3)
	c.takeLine(b.X1, b.Y2, b.X2, b.Y2, 0.3)
	c.takeLine(b.X1, b.Y1, b.X1, b.Y2, 0.3)
	c.takeLine(b.X2, b.Y1, b.X2, b.Y2, 0.3)
}

// drawMark draws one stroke of a symbol.
func (c *canvas) drawMark(g *scene.Node, v view, m mark) {
	xy := make([]float64, 0, 2*len(m.pts))
	for _, s := range m.pts {
		x, y := v.at(s)
		xy = append(xy, x, y)
	}
	if len(xy) == 0 {
		return
	}
	if m.kind != part.Text && m.kind != part.Unit {
		c.takePoints(xy)
	}
	switch m.kind {
	case part.Thin, part.Blade:
		g.Add(scene.Line("sy", xy...))
	case part.Bold:
		g.Add(scene.Line("syb", xy...))
	case part.Dashed:
		g.Add(scene.Line("link", xy...))
	case part.Fill:
		g.Add(scene.Area("syf", xy...))
	case part.Circle:
		g.Add(scene.Ring("syw", xy[0], xy[1], m.r*module))
	case part.Dot:
		g.Add(scene.Ring("syf", xy[0], xy[1], m.r*module))
	case part.Text:
		c.drawSymbolText(g, m, xy[0], xy[1])
	}
	if len(xy) < 4 {
		return
	}
	switch m.kind {
	case part.Rect:
		g.Add(scene.Frame("sy", xy[0], xy[1], xy[2], xy[3]))
	case part.Unit:
		g.Add(scene.Frame("unit", xy[0], xy[1], xy[2], xy[3]))
	case part.Arc:
		g.Add(scene.Bow("sy", xy[0], xy[1], xy[2], xy[3], m.r*module, m.right == (v.sign > 0)))
	}
}

// takePoints keeps the box around the points of a stroke clear.
func (c *canvas) takePoints(xy []float64) {
	x1, y1, x2, y2 := xy[0], xy[1], xy[0], xy[1]
	for i := 2; i+1 < len(xy); i += 2 {
		x1, x2 = min(x1, xy[i]), max(x2, xy[i])
		y1, y2 = min(y1, xy[i+1]), max(y2, xy[i+1])
	}
	c.take(x1-0.2, y1-0.2, x2+0.2, y2+0.2)
}

func (c *canvas) drawSymbolText(g *scene.Node, m mark, x, y float64) {
	l := line{text: m.s, size: symbolTextMM(m.s)}
	at := scene.Middle
	if m.right {
		at = scene.Start
		l.mut = true
	}
	c.put(g, line{text: m.s, size: l.size, mut: l.mut}, x, y, at)
}

// drawPin draws the terminal circle, and the thin line to the joint or metal
// that the terminal itself sits on.
func (c *canvas) drawPin(g *scene.Node, v view, q *pin) {
	if q.term == nil {
		return
	}
	x := v.x(float64(q.col)) + v.sign*q.dx*module
	y := v.y + q.y*module
	c.takeLine(x, min(v.y, y), x, max(v.y, y), 0.4)
	if to, joined := c.pinEnd(q); joined {
		c.lead(x, y, to)
	} else if words, ok := c.p.stray(q); ok {
		c.drawStray(q, x, y, words)
	}
	if len(q.term.Ends) == 0 && q.term.Metal != nil || isEmptyRest(q.term) {
		return
	}
	circle := scene.Ring("term", x, y, termR)
	circle.Data = []scene.Attr{{Name: "pin", Value: shown(q.term)}}
	g.Add(circle)
	c.take(x-termR, y-termR, x+termR, y+termR)
}

// pinEnd gives the height of the bar that a pin sits on.
func (c *canvas) pinEnd(q *pin) (y float64, ok bool) {
	j := c.p.meets[q.term.ID]
	switch {
	case q.term.Metal != nil && !q.up():
		if j != nil {
			return c.g.tall.studY, true
		}
		return c.g.tall.metalY, true
	case j == nil:
		return 0, false
	case j.kind == railJoint && q.up():
		return c.g.tall.heightOf(j), true
	case j.kind == localJoint && !q.loose:
		if s := c.segs[j.barIn(q.item.sect)][q.item.cols[q.col].track().panel]; s != nil {
			return s.y, true
		}
	}
	return 0, false
}

// lead draws a line inside a device, from a terminal to its bar.
func (c *canvas) lead(x, y1, y2 float64) {
	cut := railMM/2 + 0.1
	if y2 < y1 {
		cut = -cut
	}
	c.leads.Add(scene.Line("halo hthin", x, y1, x, y2-cut), scene.Line("sy", x, y1, x, y2))
	c.takeLine(x, y1, x, y2, 0.4)
	if y2 != c.g.tall.metalY {
		c.dots.Add(scene.Ring("dot", x, y2, 0.8))
	}
}

package layout

import (
	"fmt"
	"math"

	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"
)

// paint draws a card in its box, with a rule on the edge that faces the tree.
func (c *card) paint(b scene.Box, cols int, low bool) *scene.Node {
	g := scene.G("at", scene.Frame("card", b.X1, b.Y1, b.X2, b.Y2))
	g.Data = []scene.Attr{{Name: "place", Value: c.place.Name}}
	rule := b.Y1
	if low {
		rule = b.Y2
	}
	g.Add(scene.Line("edge", b.X1, rule, b.X2, rule))
	x, y := b.X1+cardPad, b.Y1+4.9
	g.Add(scene.Words("t t3 b", x, y, scene.Start, c.title))
	from := x + scene.Width(c.title, large, true) + 2
	if about := scene.Fit(c.about, small, false, b.X2-cardPad-from); about != "" {
		g.Add(scene.Words("t mut", from, y, scene.Start, about))
	}
	for i, col := range c.columns(cols) {
		yy := b.Y1 + headH
		for _, r := range col {
			r.paint(g, x+(colW+colGap)*float64(i), yy)
			yy += r.high()
		}
	}
	return g
}

// paint draws one row with its upper left corner at a point.
func (r row) paint(g *scene.Node, x, y float64) {
	base := y + 2.5
	g.Add(deviceMark(r.dev, r.mark, x+1.5, y+1.6, 1.5))
	name := scene.Fit(r.name, small, true, colW*0.35)
	g.Add(scene.Words("t b", x+4, base, scene.Start, name))
	from := x + 4 + scene.Width(name, small, true) + 1.5
	right := scene.Fit(r.right, small, false, colW*0.6)
	if r.label != "" {
		g.Add(scene.Words("t", from, base, scene.Start, r.label))
	}
	g.Add(scene.Words("t mut", x+colW, base, scene.End, right))
	yy := y + rowH
	for _, h := range r.halfs {
		h.paint(g, r.dev, x+4, yy)
		yy += dotRow * float64(h.lines())
	}
	for i, n := range r.notes {
		g.Add(scene.Words("t mut", x+4, yy+2+noteH*float64(i), scene.Start, n))
	}
}

// paint draws the name of a half and a dot for each of its cavities: the
// colors of the wire there, or an empty ring.
func (h half) paint(g *scene.Node, d *model.Device, x, y float64) {
	g.Add(scene.Words("t mut", x, y+2, scene.Start, scene.Fit(h.name, small, false, halfText-1.5)))
	for i, w := range h.cavities {
		cx := x + halfText + dotPitch*(float64(i%h.wide())+0.5) - 1.3
		cy := y + dotRow*float64(i/h.wide()) + 1.2
		g.Add(dot(d, h, i, w, cx, cy))
	}
}

func dot(d *model.Device, h half, i int, w *model.Wire, x, y float64) *scene.Node {
	name := d.Name + "." + h.line.CavityName(i+1)
	g := scene.G("dot")
	g.Data = []scene.Attr{{Name: "pin", Value: name}}
	if w == nil {
		g.Title = name + ", empty"
		return g.Add(scene.Ring("empty", x, y, 0.85))
	}
	base, tracer := diagram.Paints(w)
	g.Title = fmt.Sprintf("%s, wire %s, %s", name, w.Number, w.Color.Shown)
	ring := "cavity"
	if w.Existing {
		ring += " old"
	}
	g.Add(scene.Ring("f"+base, x, y, 1), scene.Ring(ring+" hollow", x, y, 1))
	if tracer != "" {
		l := scene.Line("stripe c"+tracer, x-0.62, y+0.62, x+0.62, y-0.62)
		g.Add(l)
	}
	return g
}

// overflow lays the cards without room out on further sheets, in columns, as
// many as it takes.
func (a *attempt) overflow() [][]*scene.Node {
	r := a.blank.Room
	var pages [][]*scene.Node
	var now []*scene.Node
	x, y := r.X1, r.Y1
	step := colW + 2*cardPad + 5
	for _, c := range a.left {
		for _, part := range c.cut(r.Y2 - r.Y1) {
			w, h := part.size(1)
			if y > r.Y1 && y+h > r.Y2 {
				x, y = x+step, r.Y1
			}
			if x+colW+2*cardPad > r.X2 {
				pages, now = append(pages, now), nil
				x, y = r.X1, r.Y1
			}
			now = append(now, part.paint(scene.Box{X1: x, Y1: y, X2: x + max(w, colW+2*cardPad), Y2: y + h}, 1, false))
			y += h + 4
		}
	}
	if len(now) > 0 {
		pages = append(pages, now)
	}
	return pages
}

// cut parts a card into pieces that are no higher than a sheet.
func (c *card) cut(most float64) []*card {
	_, h := c.size(1)
	n := int(math.Ceil(h / (most - 2*headH)))
	if n <= 1 || len(c.rows) < 2 {
		return []*card{c}
	}
	var out []*card
	for i, rows := range c.columns(n) {
		part := &card{c.place, c.title, c.about, rows}
		if i > 0 {
			part.about = "(goes on)"
		}
		out = append(out, part)
	}
	return out
}

package diagram

import (
	"fmt"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/size"
	"legwork/render/scene"
)

func boxText(b scene.Box) string {
	return fmt.Sprintf("%.2f %.2f %.2f %.2f", b.X1, b.Y1, b.X2, b.Y2)
}

// nameItem asks for the designation of a symbol and for the names of its pins.
func (c *canvas) nameItem(it *item, v view, b scene.Box) {
	lines := []line{fitted(name(calledOn(it.dev)), 20)}
	if val := c.valueOf(it); val != "" {
		lines = append(lines, fitted(small(val), 14))
	}
	x := v.x(0)
	mid := v.y + 1.2
	if len(lines) > 1 {
		mid -= 1.4
	}
	place := func(x, y float64, at scene.Anchor) choice { return choice{lines: lines, x: x, y: y, at: at} }
	tall := nameStep * float64(len(lines)-1)
	left := place(b.X1-1.2, mid, scene.End)
	upper := place(x-1.4, b.Y1-1.4-tall, scene.End)
	right := place(b.X2+1.4, mid, scene.Start)
	lower := place(b.X1, b.Y2+3.6, scene.Start)
	over := place(b.X1, b.Y1-1-tall, scene.Start)
	rest := []choice{
		place(x+1.4, b.Y1-1.4-tall, scene.Start), place(b.X2+1.4, b.Y1+1, scene.Start), place(b.X1-1.2, b.Y1+1, scene.End),
		place(b.X2+1.4, b.Y2, scene.Start), place(b.X1-1.2, b.Y2, scene.End), place(x-1.4, b.Y2+3.6, scene.End), place(x+1.4, b.Y2+3.6, scene.Start),
	}
	var ch []choice
	switch {
	case it.form.cols > 1 && it.form.lying:
		ch = []choice{place(v.x(0.5), b.Y1-1.2-tall, scene.Middle), place(v.x(0.5), b.Y2+3.6, scene.Middle), left, right}
	case it.form.cols > 1:
		ch = []choice{place(b.X1-1, b.Y1+4, scene.End), over, lower, place(x-1.4, b.Y1-1-tall, scene.End), left, right}
	case it.form.row == part.FuseRow || it.form.row == part.ConnectorRow:
		ch = []choice{left, right}
	case it.mate != nil && it.sub != "coil" || it.form.name == "" && it.dev.Kind.Switches != nil && it.mate == nil:
		ch = []choice{place(b.X2+0.8, v.y-1.2, scene.Start), right, upper, left}
	default:
		ch = []choice{upper, left, right}
	}
	c.jobs = append(c.jobs, job{rank: 0, class: "name", data: []scene.Attr{{Name: "dev", Value: it.dev.Name}}, choices: append(ch, rest...)})
	c.namePins(it, v)
}

// valueOf is the line under a designation: rating of a fuse, cavity of a
// connector, the other path of a relay that stands apart.
func (c *canvas) valueOf(it *item) string {
	k := it.dev.Kind
	switch {
	case k.Couples != nil:
		for _, q := range it.pins {
			if q.term != nil {
				return q.term.Name[strings.LastIndexByte(q.term.Name, '.')+1:]
			}
		}
	case k.Protects != nil:
		if link, _, ok := size.LinkOf(it.dev, 0); ok {
			return link.Name
		}
		if a := c.ratedA(it); a > 0 {
			return quantity.Text(a, quantity.Current)
		}
	case it.mate != nil && !c.besides(it):
		if t := it.mate.cols[0].track(); t.path > 0 {
			return it.mate.sub + " " + c.pathText(t)
		}
	}
	return c.p.stateOf(it)
}

func (c *canvas) ratedA(it *item) float64 {
	if s := c.p.in.Sizes; s != nil {
		for _, f := range s.Fuses {
			if f.Device == it.dev && f.RatedA > 0 {
				return f.RatedA
			}
		}
	}
	for _, f := range it.dev.Kind.Protects(it.dev.Device) {
		return f.RatedA
	}
	return 0
}

// namePins writes the terminal names where they tell something: at relays,
// and at symbols with more than two pins or with units of their own.
func (c *canvas) namePins(it *item, v view) {
	telling := hasCavity(it) || it.mate != nil || it.form.cols > 1 || len(it.pins) > 2 || it.form.row == part.SensorRow
	if !telling || it.dev.Kind.Couples != nil || it.dev.Kind.Protects != nil {
		return
	}
	for _, q := range it.pins {
		if !attached(q.term) || q.term.Metal != nil && len(q.term.Ends) == 0 {
			continue
		}
		x, y := v.x(float64(q.col))+v.sign*q.dx*module, v.y+q.y*module
		l := []line{fitted(faint(pinWords(q.term)), 16)}
		in := y + 2.9
		if !q.up() {
			in = y - 1.3
		}
		if b := v.body(); it.form.outlined() && q.up() {
			in = b.Y1 + 2.5
		} else if it.form.outlined() {
			in = b.Y2 - 0.9
		}
		c.jobs = append(c.jobs, job{rank: 1, class: "pin", data: []scene.Attr{{Name: "pin", Value: shown(q.term)}}, choices: []choice{
			{lines: l, x: x + 0.9, y: in, at: scene.Start}, {lines: l, x: x - 0.9, y: in, at: scene.End},
			{lines: l, x: x - 1.2, y: y + 1, at: scene.End}, {lines: l, x: x - 2.4, y: y + 1, at: scene.End}, // labels of wires stand at the right
			{lines: l, x: x + 1.2, y: y + 1, at: scene.Start}, {lines: l, x: x + 2.4, y: y + 1, at: scene.Start},
		}})
	}
}

// pinWords is the name of a terminal with the cavity of the plug that it sits
// in, where the draft says one that is not the name itself.
func pinWords(t *model.Terminal) string {
	if t.Cavity == "" || t.Cavity == t.Name {
		return t.Name
	}
	return t.Name + " " + t.Cavity
}

func hasCavity(it *item) bool {
	for _, q := range it.pins {
		if q.term != nil && q.term.Cavity != "" {
			return true
		}
	}
	return false
}

// besides reports whether the two parts of a device are neighbors on the
// sheet, so that the dashed link can be drawn.
func (c *canvas) besides(it *item) bool {
	m := it.mate
	if m == nil || m.slot != it.slot || m.cols[0].track().panel != it.cols[0].track().panel || it.cols[0].track().panel == nil {
		return false
	}
	for _, a := range it.cols {
		for _, b := range m.cols {
			if d := a.track().index - b.track().index; d == 1 || d == -1 {
				return true
			}
		}
	}
	return false
}

// drawMates draws the dashed link between coil and contact.
func (c *canvas) drawMates(a *panel) {
	for _, it := range a.sect.items {
		if it.mate == nil || it.sub == "coil" || it.cols[0].track().panel != a || !c.besides(it) {
			continue
		}
		from, to := c.viewOf(it.mate).body(), c.viewOf(it)
		y, aim := to.y, to.x(0)-0.55*module
		if it.form.lying {
			y, aim = to.y+0.75*module, to.x(0.5)-to.sign*0.15*module
		}
		x := from.X2
		if aim < from.X1 {
			x = from.X1
		}
		n := scene.Line("link", x, y, aim, y)
		n.Data = []scene.Attr{{Name: "dev", Value: it.dev.Name}}
		c.links.Add(n)
		c.takeLine(x, y, aim, y, 0.25)
	}
}

// strokeNames names the stroke classes in the legend, in either system.
func strokeNames(metric bool) []string {
	if metric {
		return []string{"to 1", "1.5-2.5", "4-6", "10-16", "25 up"}
	}
	return []string{"to 18", "16-14", "12-10", "8-6", "4 up"}
}

package diagram

import "legwork/render/scene"

// strayMM is the length of the line from a stray pin to its box.
const (
	strayMM   = 4.5
	strayRoom = 12.0
)

// stray reports whether a pin sits on a joint, or on metal, that its side does
// not face: a pin that looks down on a rail, one that looks up on a stud, one
// that would have to pass its own symbol. Such a pin gets a short line with the joint's name in a box.
func (p *plan) stray(q *pin) (words string, ok bool) {
	if q.term == nil {
		return "", false
	}
	j := p.meets[q.term.ID]
	switch {
	case q.term.Metal != nil && q.up():
		if j != nil {
			return j.name, true
		}
		return q.term.Metal.Name, true
	case j != nil && j.kind == railJoint && !q.up():
		return j.tag, true
	case j != nil && q.loose:
		return j.name, true
	}
	return "", false
}

// drawStray draws the line and the box of a stray pin.
func (c *canvas) drawStray(q *pin, x, y float64, words string) {
	down := 1.0
	if q.up() {
		down = -1
	}
	end := y + down*strayMM
	l := fitted(strong(words), 13)
	w := max(l.width()+2, 5)
	top := min(end, end+down*4.2)
	g := scene.G("xref", scene.Frame("box", x-w/2, top, x+w/2, top+4.2), scene.Words(l.class(), x, top+3, scene.Middle, l.text))
	g.Title = shown(q.term) + " sits on " + words
	name := words
	if j := c.p.meets[q.term.ID]; j != nil {
		name = j.name
	}
	g.Data = []scene.Attr{{Name: "joint", Value: name}}
	c.symbols.Add(g)
	c.leads.Add(scene.Line("sy", x, y, x, end))
	c.takeLine(x, y, x, end, 0.4)
	c.take(x-w/2, top, x+w/2, top+4.2)
}

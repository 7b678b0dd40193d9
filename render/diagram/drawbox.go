package diagram

import (
	"legwork/render/scene"
)

// drawBox ends a cut wire with the number of the path where it goes on and
// the name of its far end.
func (c *canvas) drawBox(s *strand, x, y1, y2 float64) {
	other := s.far()
	text, far := "?", ""
	if other != nil {
		text = c.pathText(other.col.track())
		far = other.endName()
	}
	l := strong(text)
	l.size = sizeName
	w := max(l.width()+2.4, 7.5)
	top := y2
	if s.upper.box {
		top = y1 - 5
	}
	g := scene.G("xref", scene.Frame("box", x-w/2, top, x+w/2, top+5), scene.Words(l.class(), x, top+3.75, scene.Middle, l.text))
	g.Data = []scene.Attr{{Name: "wire", Value: s.run.w.Number}}
	g.Title = "wire " + s.run.w.Number + " goes on at path " + text + ", to " + far
	c.take(x-w/2, top, x+w/2, top+5)
	c.symbols.Add(g)
	if far == "" {
		return
	}
	words := []line{fitted(faint(far), 20)}
	c.jobs = append(c.jobs, job{rank: 4, class: "far", choices: []choice{
		{lines: words, x: x + w/2 + 0.9, y: top + 3.4, at: scene.Start},
		{lines: words, x: x - w/2 - 0.9, y: top + 3.4, at: scene.End},
		{lines: words, x: x, y: top + 7.4, at: scene.Middle},
		{lines: words, x: x, y: top - 1, at: scene.Middle},
		{lines: words, x: x + 1.6, y: top - 1, at: scene.Start},
		{lines: words, x: x + 1.6, y: top + 7.4, at: scene.Start},
	}})
}

// far gives the other half of a cut wire.
func (s *strand) far() *strand {
	for _, o := range s.run.broken {
		if o != s {
			return o
		}
	}
	return nil
}

// endName names the real end of a stub.
func (s *strand) endName() string {
	t := s.upper
	if t.box {
		t = s.lower
	}
	switch {
	case t.pin != nil && t.pin.term != nil:
		return shown(t.pin.term)
	case t.joint != nil:
		return t.joint.name
	}
	return ""
}

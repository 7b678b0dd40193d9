package diagram

import (
	"legwork/harness/model"
	"legwork/render/scene"
)

// tread is a place at the foot of a track: a stud, or metal that a device
// grounds to.
type tread struct {
	t     *track
	x     float64 // of a strap's ends, beside the track
	stud  *joint
	metal *model.Metal
}

// treads lists what stands on metal on this sheet, left to right.
func (c *canvas) treads() []tread {
	var out []tread
	for _, a := range c.g.panels {
		for _, t := range a.tracks {
			if s := strapOn(t); s != nil {
				left, right := c.strapEnds(s)
				out = append(out, left, right)
			} else if d, ok := c.treadOf(a, t); ok {
				out = append(out, d)
			}
		}
	}
	return out
}

func (c *canvas) treadOf(a *panel, t *track) (tread, bool) {
	for _, s := range a.sect.strands {
		if s.col.track() != t {
			continue
		}
		if j := s.lower.joint; j != nil && j.kind == studJoint {
			return tread{t, t.x, j, j.metal}, true
		}
	}
	for _, it := range t.items {
		for _, q := range it.pins {
			if q.term != nil && q.term.Metal != nil && !q.up() && it.cols[q.col].track() == t {
				return tread{t, t.x, c.p.meets[q.term.ID], q.term.Metal}, true
			}
		}
	}
	return tread{}, false
}

// drawFoot draws studs and the metal that they stand on.
func (c *canvas) drawFoot() {
	all := c.treads()
	for i := 0; i < len(all); {
		k := i + 1
		for k < len(all) && all[k].stud == all[i].stud && all[i].stud != nil && all[k].t.panel == all[i].t.panel && all[k].t.index <= all[k-1].t.index+1 {
			k++
		}
		if all[i].stud != nil {
			c.drawStud(all[i:k])
		}
		i = k
	}
	for i := 0; i < len(all); {
		k := i + 1
		for k < len(all) && all[k].metal == all[i].metal {
			k++
		}
		from, to := drawLeft, c.g.right
		if i > 0 {
			from = (all[i-1].x+all[i].x)/2 + 1
		}
		if k < len(all) {
			to = (all[k-1].x+all[k].x)/2 - 1
		}
		c.drawMetal(all[i].metal, max(from, all[i].x-8, all[i].t.panel.x1+0.5), min(to, all[k-1].x+12))
		i = k
	}
}

// drawStud draws one stud under a run of neighboring tracks: a bar, a ring, a
// line to the metal.
func (c *canvas) drawStud(run []tread) {
	j := run[0].stud
	x1, x2, y := run[0].x, run[len(run)-1].x, c.g.tall.studY
	g := scene.G("node")
	g.ID = c.id("b-", j.name)
	g.Title = "stud " + j.name
	g.Data = []scene.Attr{{Name: "joint", Value: j.name}}
	if x2 > x1 {
		g.Add(scene.Line("bar", x1, y, x2, y))
		c.takeLine(x1, y, x2, y, barMM)
	}
	if j.metal != nil {
		g.Add(scene.Line("sy", x1, y, x1, c.g.tall.metalY), scene.Ring("term", x1, y+2.6, 1.1), scene.Ring("syf", x1, y+2.6, 0.45))
		c.take(x1-1.2, y, x1+1.2, c.g.tall.metalY)
	} else if x2 == x1 {
		x1, x2 = x1-2, x2+2
		g.Add(scene.Line("bar", x1, y, x2, y))
		c.takeLine(x1, y, x2, y, barMM)
	}
	dashed(j.dev, g)
	c.dots.Add(g)
	l := []line{fitted(name(j.name), 15)}
	c.jobs = append(c.jobs, job{rank: 1, class: "name", data: []scene.Attr{{Name: "joint", Value: j.name}}, choices: []choice{
		{lines: l, x: x1 + 1.9, y: y + 4.1, at: scene.Start}, {lines: l, x: x1 - 1.9, y: y + 3.9, at: scene.End},
		{lines: l, x: x1 + 1.9, y: y + 4.6, at: scene.Start}, {lines: l, x: x1 - 1.9, y: y + 4.6, at: scene.End}, // under a thick strap
	}})
}

// drawMetal draws a stretch of metal with its name in the hatching.
func (c *canvas) drawMetal(m *model.Metal, x1, x2 float64) {
	if m == nil {
		return
	}
	y := c.g.tall.metalY
	g := scene.G("metal-run")
	g.Data = []scene.Attr{{Name: "metal", Value: m.Name}}
	g.Title = "metal " + m.Name
	g.Add(scene.Line("metal", x1, y, x2, y))
	c.takeLine(x1, y, x2, y, railMM)
	l := strong(m.Label)
	if m.Label == "" || l.width() > x2-x1-2 {
		l = strong(m.Name)
	}
	l = fitted(l, max(x2-x1-2, 4))
	free := x1 + 1.2 + l.width() + 0.8
	for x := x1 + 1.8; x <= x2; x += 1.8 {
		if x-1.2 < free && x > x1+0.6 {
			continue
		}
		g.Add(scene.Line("l25", x, y+0.6, x-1.3, y+2.7))
	}
	c.bars.Add(g)
	c.put(c.bars, l, x1+1.2, y+3.4, scene.Start)
}

package diagram

import (
	"fmt"
	"strings"

	"legwork/render/scene"
)

// draw turns the finished plan into one scene for each sheet.
func (p *plan) draw() []Sheet {
	p.captions()
	var out []Sheet
	for _, g := range p.sheets {
		c := p.newCanvas(g)
		c.draw()
		title := "Current paths"
		if g.last >= g.first && g.last > 0 {
			title = fmt.Sprintf("Current paths %d to %d", g.first, g.last)
		}
		out = append(out, Sheet{Name: fmt.Sprintf("paths-%d", g.number), Title: title, Scene: c.scene(title)})
	}
	return out
}

func (c *canvas) draw() {
	c.drawFrame()
	c.drawSections()
	c.drawRails()
	c.drawSegments()
	c.drawFoot()
	for _, a := range c.g.panels {
		for _, it := range a.sect.items {
			if it.cols[0].track().panel == a && !it.unit {
				c.drawItem(it)
			}
		}
		c.drawUnits(a)
		for _, s := range a.sect.strands {
			if s.col.track().panel == a {
				c.drawStrand(s)
			}
		}
		c.drawMates(a)
		c.drawRings(a)
	}
	c.drawLegend()
	c.drawIndex()
	c.drawTitle()
	c.placeLabels()
}

func (c *canvas) scene(title string) *scene.Scene {
	p := c.p
	s := &scene.Scene{
		Name: fmt.Sprintf("paths-%d", c.g.number), Lang: "en", WidthMM: p.paper.w, HeightMM: p.paper.h, Styles: c.p.styles(),
		Title: fmt.Sprintf("Current-path diagram%s, sheet %d of %d: %s", p.inStep(), c.g.number, len(p.sheets), p.title()),
		Desc:  c.describe(), FocusClasses: []string{"wire"},
	}
	s.Nodes = []*scene.Node{
		scene.Frame("paper", 0, 0, p.paper.w, p.paper.h),
		c.sections, c.bars, c.leads, c.wires, c.dots, c.symbols, c.links, c.labels, c.frame, c.legend,
	}
	return s
}

// describe says in words what the sheet shows.
func (c *canvas) describe() string {
	var b strings.Builder
	if c.p.now != nil {
		b.WriteString("Conductors are drawn by their state: " + c.p.now.title() + ". ")
	}
	var tags []string
	for _, j := range c.p.rails {
		tags = append(tags, j.tag)
	}
	if len(tags) > 0 {
		b.WriteString("Supply rails at the top (" + strings.Join(tags, ", ") + "), ")
	}
	b.WriteString("metal at the foot, numbered current paths from left to right. ")
	for _, a := range c.g.panels {
		from, to := a.tracks[0].path, a.tracks[len(a.tracks)-1].path
		fmt.Fprintf(&b, "Paths %d to %d: %s. ", from, to, a.title())
	}
	return strings.TrimSpace(b.String())
}

func (a *panel) title() string {
	if a.more {
		return a.sect.title + " (continued)"
	}
	return a.sect.title
}

// drawSections draws the stretches of the sheet, their titles, and the base
// line with numbered paths.
func (c *canvas) drawSections() {
	base := c.g.tall.baseY
	bottom := base + numberCell + textCell
	for _, a := range c.g.panels {
		g := scene.G("section")
		g.ID = c.id("sec-", a.sect.title)
		g.Title = a.title()
		if a.shade {
			g.Add(scene.Frame("sec", a.x1, drawTop, a.x2, bottom))
		}
		g.Add(scene.Line("l25", a.x1, drawTop, a.x1, bottom))
		c.take(a.x1-0.1, drawTop, a.x1+0.1, bottom)
		for i, t := range scene.Wrap(a.title(), sizeName, true, a.x2-a.x1-3, 2) {
			c.put(g, name(t), a.x1+1.5, titleLine+4.2*float64(i), scene.Start)
		}
		c.sections.Add(g)
	}
	c.take(c.g.right-0.1, drawTop, c.g.right+0.1, bottom)
	c.sections.Add(
		scene.Line("l25", c.g.right, drawTop, c.g.right, bottom), scene.Line("l25", drawLeft, drawTop, c.g.right, drawTop),
		scene.Line("l70", drawLeft, base, c.g.right, base), scene.Line("l25", drawLeft, base+numberCell, c.g.right, base+numberCell),
		scene.Line("l70", drawLeft, bottom, c.g.right, bottom))
	c.put(c.sections, faint("path"), drawLeft-1.5, base+4.2, scene.End)
	for _, a := range c.g.panels {
		c.drawPaths(a)
	}
}

// drawPaths writes number and caption of every path of a panel.
func (c *canvas) drawPaths(a *panel) {
	base := c.g.tall.baseY
	for i, t := range a.tracks {
		x1, x2 := a.x1, a.x2
		if i > 0 {
			x1 = (a.tracks[i-1].x + t.x) / 2
			c.sections.Add(scene.Line("l18", x1, base, x1, base+numberCell+textCell))
		}
		if i+1 < len(a.tracks) {
			x2 = (t.x + a.tracks[i+1].x) / 2
		}
		w := 2*min(t.x-x1, x2-t.x) - 0.8
		c.put(c.sections, name(fmt.Sprint(t.path)), t.x, base+4.4, scene.Middle)
		for k, text := range scene.Wrap(t.caption, sizeSmall, false, w, 2) {
			c.put(c.sections, small(text), t.x, base+numberCell+3+lineStep*float64(k), scene.Middle)
		}
	}
}

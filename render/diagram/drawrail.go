package diagram

import (
	"fmt"
	"slices"
	"strings"

	"legwork/render/scene"
)

// touch lists the heights of a joint's ends on the sheet: x and whether a wire
// or the line of a pin ends there.
type touch struct {
	x    float64
	wire bool
}

// touches finds where a rail is used on this sheet.
func (c *canvas) touches(j *joint) []touch {
	var out []touch
	for _, a := range c.g.panels {
		for _, s := range a.sect.strands {
			if s.col.track().panel == a && (s.upper.joint == j || s.lower.joint == j) {
				x := s.col.track().x
				if s.bridges() {
					x = bridgeAt(s, j)
				}
				out = append(out, touch{x, true})
			}
		}
	}
	for _, q := range c.p.pinsOf(j) {
		if t := q.item.cols[q.col].track(); t.page == c.g && q.up() {
			out = append(out, touch{t.x, false})
		}
	}
	slices.SortFunc(out, func(a, b touch) int {
		if a.x < b.x {
			return -1
		}
		return 1
	})
	return out
}

// goesOn reports whether the joint is used on a later sheet.
func (c *canvas) goesOn(j *joint) bool {
	for _, s := range c.p.strands {
		if g := s.col.track().page; (s.upper.joint == j || s.lower.joint == j) && g != nil && g.number > c.g.number {
			return true
		}
	}
	for _, q := range c.p.pinsOf(j) {
		if g := q.item.cols[q.col].track().page; g != nil && g.number > c.g.number {
			return true
		}
	}
	return false
}

// drawRails draws the supply rails as far as they are used, with their tags.
func (c *canvas) drawRails() {
	for _, j := range c.p.rails {
		at := c.touches(j)
		if len(at) == 0 {
			continue
		}
		y, x2 := c.g.tall.heightOf(j), at[len(at)-1].x
		on := c.goesOn(j)
		if on {
			x2 = c.g.right
		}
		g := scene.G("node rail-node")
		g.ID = c.id("b-", j.name)
		g.Title = "rail " + j.tag + ": " + j.name + ", " + j.about
		g.Data = []scene.Attr{{Name: "joint", Value: j.name}}
		g.Add(scene.Line("rail"+c.p.railPaint(j), drawLeft, y, x2, y))
		c.takeLine(drawLeft, y, x2, y, railMM)
		if on {
			g.Add(scene.Area("dot", x2+2, y, x2-0.3, y-1.3, x2-0.3, y+1.3))
		}
		c.bars.Add(g)
		c.tagOf(j, y)
		for _, t := range at {
			if !t.wire {
				c.dots.Add(scene.Ring("dot", t.x, y, tapMM))
			}
		}
		c.railWords(j, y, x2)
	}
}

const tagW = 15.6

// tagOf draws the black tag of a rail: its name, and its number small.
func (c *canvas) tagOf(j *joint, y float64) {
	x1 := drawLeft - 1 - tagW
	box := scene.Frame("tag", x1, y-2.1, x1+tagW, y+2.1)
	box.R = 0.8
	word := line{text: j.tag, size: 3, bold: true}
	num := small(j.small)
	if j.small != "" && word.width()+num.width() > tagW-2.6 {
		num.text = ""
	}
	word = fitted(word, tagW-2)
	g := scene.G("tagged", box)
	if num.text == "" {
		g.Add(scene.Words("t tg b inv", x1+tagW/2, y+1.1, scene.Middle, word.text))
	} else {
		g.Add(scene.Words("t tg b inv", x1+1.1, y+1.1, scene.Start, word.text), scene.Words("t inv", x1+tagW-1.1, y+0.95, scene.End, num.text))
	}
	c.taken = append(c.taken, scene.Box{X1: x1, Y1: y - 2.1, X2: x1 + tagW, Y2: y + 2.1})
	c.bars.Add(g)
}

// railWords says above the rail what it is: at the first free place.
func (c *canvas) railWords(j *joint, y, x2 float64) {
	var ch []choice
	for _, t := range []string{j.words() + ": " + j.about, j.words(), j.name} {
		for x := drawLeft + 1.2; x < max(x2-10, drawLeft+2); x += 2.5 {
			ch = append(ch, choice{lines: []line{faint(t)}, x: x, y: y - 1.6, at: scene.Start})
		}
	}
	c.jobs = append(c.jobs, job{rank: 30, class: "about", choices: ch})
}

// words gives the name of a joint with the label that the draft gives it.
func (j *joint) words() string {
	if j.self && j.dev != nil && j.dev.Label != "" && j.name == j.dev.Name {
		return j.name + " " + j.dev.Label
	}
	return j.name
}

// drawSegments draws the bars of local joints.
func (c *canvas) drawSegments() {
	for _, s := range c.g.tall.segs {
		if s.panel.page != c.g {
			continue
		}
		j := s.bar.joint
		x1, x2 := s.left(), s.right()
		if x2-x1 < 0.1 {
			x1, x2 = x1-2, x2+2
		}
		g := scene.G("node")
		g.ID = c.id("b-", j.name)
		g.Title = "joint " + j.name
		g.Data = []scene.Attr{{Name: "joint", Value: j.name}}
		end := x2
		if len(s.others) > 0 {
			end = s.right() + 3
		}
		g.Add(scene.Line("bar", x1, s.y, end, s.y))
		if j.self {
			dashed(j.dev, g)
		}
		c.takeLine(x1, s.y, end, s.y, barMM)
		if len(s.others) > 0 {
			c.bars.Add(c.alsoAt(s, end))
		}
		c.bars.Add(g)
		c.nameBar(s, x1, end)
	}
}

// alsoAt boxes the numbers of the other paths at which the joint is drawn.
func (c *canvas) alsoAt(s *segment, x float64) *scene.Node {
	text := c.elsewhere(s)
	l := fitted(strong(text), 8.4)
	w := max(l.width()+2, 5)
	box := scene.Frame("box", x, s.y-2.1, x+w, s.y+2.1)
	c.take(x, s.y-2.1, x+w, s.y+2.1)
	g := scene.G("xref", box, scene.Words(l.class(), x+w/2, s.y+0.95, scene.Middle, l.text))
	g.Title = s.bar.joint.name + " is also at " + text
	g.Data = []scene.Attr{{Name: "joint", Value: s.bar.joint.name}}
	return g
}

// elsewhere gives the path of the joint's home, the piece with most ends on
// it; the home lists its other pieces.
func (c *canvas) elsewhere(s *segment) string {
	home := s
	for _, o := range s.others {
		if o.weight() > home.weight() || o.weight() == home.weight() && o.places[0].path < home.places[0].path {
			home = o
		}
	}
	if home != s {
		return c.pathText(home.places[0])
	}
	var here []int
	var away []string
	for _, o := range s.others {
		if t := o.places[0]; t.page == c.g {
			here = append(here, t.path)
		} else {
			away = append(away, c.pathText(t))
		}
	}
	if len(here) > 0 {
		away = append([]string{ranges(here)}, away...)
	}
	return strings.Join(away, " ")
}

// pathText is the number of a path, with its sheet where that is another.
func (c *canvas) pathText(t *track) string {
	if t.page != nil && t.page != c.g {
		return fmt.Sprintf("%d/%d", t.page.number, t.path)
	}
	return fmt.Sprint(t.path)
}

func (c *canvas) nameBar(s *segment, x1, x2 float64) {
	l := []line{fitted(name(s.bar.joint.name), 24)}
	ch := []choice{
		{lines: l, x: x1 - 1.6, y: s.y + 1.25, at: scene.End}, {lines: l, x: x1 - 2.6, y: s.y + 1.25, at: scene.End},
		{lines: l, x: x1 + 1.2, y: s.y - 1.3, at: scene.Start},
		{lines: l, x: x1 + 1.2, y: s.y + 3.8, at: scene.Start},
		{lines: l, x: x2 + 1.6, y: s.y + 1.25, at: scene.Start},
		{lines: l, x: x2 - 1.6, y: s.y - 1.3, at: scene.End},
		{lines: l, x: x1 - 1.6, y: s.y - 1.3, at: scene.End},
		{lines: l, x: x1 - 1.6, y: s.y + 3.8, at: scene.End},
		{lines: l, x: x2 - 1.6, y: s.y + 3.8, at: scene.End},
	}
	for x := x1 + 2; x < x2; x += 2 {
		ch = append(ch, choice{lines: l, x: x, y: s.y - 1.3, at: scene.Start}, choice{lines: l, x: x, y: s.y + 3.8, at: scene.Start})
	}
	c.jobs = append(c.jobs, job{rank: 2, class: "name", data: []scene.Attr{{Name: "joint", Value: s.bar.joint.name}}, choices: ch})
}

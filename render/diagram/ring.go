package diagram

import (
	"math"
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/render/scene"
)

// Measures of the ring around the cores of a cable, mm. A ring around
// conductors is the sign for cores of one cable, a dashed one for a shield
// (IEC 60617, from memory); flat, so that it fits between labels.
const (
	ringHalf  = 1.5 // half height
	ringReach = 2.4 // beyond the outer cores
	ringRoom  = 5.0 // that a core gets beside its label
)

// core is one core of a cable as it stands on a panel.
type core struct {
	s      *strand
	x      float64
	index  int
	y1, y2 float64
}

// drawRings rings the cores of every cable on a panel: one ring for each run
// of neighboring tracks in which they stand side by side.
func (c *canvas) drawRings(a *panel) {
	for _, k := range c.p.m.Cables {
		var cores []core
		for _, s := range a.sect.strands {
			if t := s.col.track(); s.run.w.Cable == k && t.panel == a && !s.run.strap && !s.bridges() {
				y1, y2 := c.strandEnds(s)
				cores = append(cores, core{s, t.x, t.index, y1, y2})
			}
		}
		slices.SortStableFunc(cores, func(a, b core) int {
			if a.index != b.index {
				return a.index - b.index
			}
			return int(math.Copysign(1, a.y1-b.y1))
		})
		for len(cores) > 0 {
			cores = c.ringFirst(k, cores)
		}
	}
}

// ringFirst rings the first core with those that follow it side by side, and
// gives the rest.
func (c *canvas) ringFirst(k *model.Cable, cores []core) []core {
	run, rest := cores[:1], cores[1:]
	y1, y2 := cores[0].y1, cores[0].y2
	for len(rest) > 0 {
		n, last := rest[0], run[len(run)-1]
		if n.index != last.index+1 || min(y2, n.y2)-max(y1, n.y1) < 2*ringHalf+2 {
			break
		}
		y1, y2 = max(y1, n.y1), min(y2, n.y2)
		run, rest = cores[:len(run)+1], rest[1:]
	}
	c.drawRing(k, run, y1, y2)
	return rest
}

// drawRing draws one ring where it covers least between two heights.
func (c *canvas) drawRing(k *model.Cable, run []core, y1, y2 float64) {
	x1, x2 := run[0].x-ringReach, run[len(run)-1].x+ringReach
	y, least := (y1+y2)/2, math.Inf(1)
	for at := y2 - ringHalf - 1.2; at >= y1+ringHalf+1; at -= 0.5 {
		if cost := c.covered(scene.Box{X1: x1, Y1: at - ringHalf, X2: x2, Y2: at + ringHalf}, c.field()); cost < least-1e-9 {
			y, least = at, cost
		}
	}
	class := "ring"
	if k.Shielded {
		class = "link ring"
	}
	top, low := y-ringHalf, y+ringHalf
	g := scene.G("cable",
		scene.Line(class, x1+ringHalf, top, x2-ringHalf, top), scene.Line(class, x1+ringHalf, low, x2-ringHalf, low),
		scene.Bow(class, x1+ringHalf, top, x1+ringHalf, low, ringHalf, true), scene.Bow(class, x2-ringHalf, top, x2-ringHalf, low, ringHalf, false))
	g.Data = []scene.Attr{{Name: "cable", Value: k.Name}}
	g.Title = "cable " + k.Name + ": " + cableWords(k)
	for _, o := range run {
		if o.s.run.w.Drain {
			g.Add(scene.Ring("syf", o.x, top, 0.9))
		}
	}
	c.links.Add(g)
	c.takeLine(x1, top, x2, top, 0.5)
	c.takeLine(x1, low, x2, low, 0.5)
	c.takeLine(x1, top, x1, low, 0.5)
	c.takeLine(x2, top, x2, low, 0.5)
	c.nameRing(k, x1, x2, y)
}

func (c *canvas) nameRing(k *model.Cable, x1, x2, y float64) {
	who := []line{fitted(strong(k.Name), 18)}
	both := []line{who[0], fitted(faint(cableWords(k)), 24)}
	var ch []choice
	for _, lines := range [][]line{both, who} {
		dy := 0.9 - 1.4*float64(len(lines)-1)
		ch = append(ch, choice{lines: lines, x: x2 + 1, y: y + dy, at: scene.Start}, choice{lines: lines, x: x1 - 1, y: y + dy, at: scene.End})
	}
	for x := x1 + 3; x < x2-4; x += 2 {
		ch = append(ch, choice{lines: who, x: x, y: y + 0.9, at: scene.Start})
	}
	c.jobs = append(c.jobs, job{rank: 2, class: "cable-name", data: []scene.Attr{{Name: "cable", Value: k.Name}}, choices: ch})
}

// cableWords says what a cable is beside its name.
func cableWords(k *model.Cable) string {
	var out []string
	if k.Shielded {
		out = append(out, "shielded")
	}
	if k.Twisted {
		out = append(out, "twisted")
	}
	if len(out) == 0 {
		return "cable"
	}
	return strings.Join(out, ", ")
}

// ringed is the room that a strand takes for the ring of its cable.
func (s *strand) ringed() float64 {
	if s.run.w.Cable != nil {
		return ringRoom
	}
	return 0
}

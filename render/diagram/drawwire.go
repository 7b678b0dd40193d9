package diagram

import (
	"fmt"

	"legwork/harness/model"
	"legwork/render/scene"
)

// stubMM is how far a cut wire goes before its box.
const stubMM = 9.5

// label gives the two lines at a wire: its number, and size with color or its
// state.
func (p *plan) label(w *model.Wire) []line {
	if p.now != nil {
		return []line{fitted(strong(w.Number), 18), small(p.now.label(w))}
	}
	return p.plainLabel(w)
}

func (p *plan) plainLabel(w *model.Wire) []line {
	out := []line{fitted(strong(w.Number), 18)}
	if data := p.wireData(w); data != "" {
		out = append(out, fitted(small(data), 19))
	}
	return out
}

// wireData is size and color: the bare number in the draft's own system of
// sizes, with the unit where a size is of the other one.
func (p *plan) wireData(w *model.Wire) string {
	data := ""
	if s, ok := p.sizeOf(w); ok {
		switch {
		case s.metric && p.m.Metric:
			data = trimFloat(s.areaMM2)
		case !s.metric && !p.m.Metric:
			data = awgText(s.awg)
		case s.metric:
			data = trimFloat(s.areaMM2) + " mm²"
		default:
			data = awgText(s.awg) + " AWG"
		}
	}
	k := colorText(w.Color)
	if w.Drain {
		k = "drain"
	}
	if k != "" {
		if data != "" {
			data += " "
		}
		data += k
	}
	return data
}

func trimFloat(v float64) string { return fmt.Sprintf("%.4g", v) }

// awgText prints a gauge number: 0 is 1/0, -1 is 2/0.
func awgText(n int) string {
	if n <= 0 {
		return fmt.Sprintf("%d/0", 1-n)
	}
	return fmt.Sprint(n)
}

func colorText(c model.Color) string {
	if c.Base == "" || c.Tracer == "" {
		return c.Base
	}
	return c.Base + "/" + c.Tracer
}

// tipY gives the height of a strand's end; a box has none of its own.
func (c *canvas) tipY(s *strand, t tip) float64 {
	tall := c.g.tall
	switch {
	case t.pin != nil:
		return tall.slotY[t.pin.item.slot] + t.pin.y*module
	case t.bar != nil:
		if g := c.segs[t.bar][s.col.track().panel]; g != nil {
			return g.y
		}
	case t.joint != nil && t.joint.kind == railJoint:
		return c.g.tall.heightOf(t.joint)
	case t.joint != nil:
		return tall.studY
	}
	return 0
}

// strandEnds gives the heights of both ends of an upright strand.
func (c *canvas) strandEnds(s *strand) (y1, y2 float64) {
	y1, y2 = c.tipY(s, s.upper), c.tipY(s, s.lower)
	if s.upper.box {
		y1 = y2 - stubMM
	}
	if s.lower.box {
		y2 = y1 + stubMM
	}
	return y1, y2
}

// drawStrand draws a wire, or half of one with its box.
func (c *canvas) drawStrand(s *strand) {
	x := s.col.track().x
	if s.run.strap {
		c.drawStrap(s)
		return
	}
	if s.bridges() {
		c.drawBridge(s)
		return
	}
	y1, y2 := c.strandEnds(s)
	width := c.p.strokeMM(s.run.w)
	c.wires.Add(c.wireNode(s.run.w, []float64{x, y1, x, y2}, c.haloEnds(s)))
	c.takeLine(x, y1, x, y2, width+casing)
	c.endDot(s, s.upper, x, y1, width)
	c.endDot(s, s.lower, x, y2, width)
	if s.upper.box || s.lower.box {
		c.drawBox(s, x, y1, y2)
	}
	from, to := y1, y2
	if s.upper.joint != nil && s.upper.joint.kind == railJoint && y2 > c.g.tall.railY+c.g.tall.room {
		from = c.g.tall.railY + 1
	}
	lines := c.p.label(s.run.w)
	settings := [][]line{lines}
	if len(lines) == 2 {
		settings = append(settings, []line{{text: lines[0].text + " · " + lines[1].text, size: sizeSmall}})
	}
	choices := beside(x, (width+casing)/2, from, to, settings...)
	c.jobs = append(c.jobs, job{rank: 5 + int(min((to-from)/10, 9)), class: "wl", data: []scene.Attr{{Name: "wire", Value: s.run.w.Number}}, choices: choices})
}

// haloEnds says how much of the halo is left out at both ends, so that it does
// not eat the bar that the wire belongs to.
func (c *canvas) haloEnds(s *strand) (ends [2]float64) {
	for i, t := range []tip{s.upper, s.lower} {
		switch {
		case t.joint != nil && t.joint.kind == railJoint:
			ends[i] = railMM/2 + 0.1
		case t.joint != nil || t.bar != nil:
			ends[i] = barMM/2 + 0.1
		}
	}
	return ends
}

func (c *canvas) endDot(s *strand, t tip, x, y, width float64) {
	if t.joint != nil || t.bar != nil {
		r := 0.55 + 0.35*width
		if t.joint != nil && t.joint.kind == railJoint {
			r = max(r, tapMM)
		}
		c.dots.Add(scene.Ring("dot", x, y, r))
		c.take(x-r, y-r, x+r, y+r)
	}
}

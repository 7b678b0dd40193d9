package diagram

import (
	"fmt"
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/render/scene"
)

// wireNode draws the conductor through the points x, y, x, y ...: something
// wide to point at, halo, casing, insulation, tracer.
func (c *canvas) wireNode(w *model.Wire, p []float64, cutHalo [2]float64) *scene.Node {
	c.passWay(w.Number, p, c.p.strokeMM(w)+casing)
	g := scene.G("wire")
	g.ID = c.id("w-", w.Number)
	data := c.p.wireData(w)
	g.Title = "wire " + w.Number + ": " + shown(w.From) + " to " + shown(w.To)
	if data != "" {
		g.Title += ", " + data
	}
	g.Data = []scene.Attr{{Name: "wire", Value: w.Number}, {Name: "from", Value: shown(w.From)}, {Name: "to", Value: shown(w.To)}}
	if s, ok := c.p.sizeOf(w); ok {
		g.Data = append(g.Data, scene.Attr{Name: "size", Value: s.name})
	}
	g.Data = append(g.Data, scene.Attr{Name: "color", Value: colorText(w.Color)})
	g.Add(scene.Line("hit", p...))
	if c.p.now != nil {
		c.p.now.paint(g, w, p, haloOf(p, cutHalo))
		return g
	}
	k, _ := strokeOf(c.p.areaOf(w))
	n, dash := fmt.Sprint(k), wireDash(w)
	paint, tracer := paintsOf(w)
	g.Add(scene.Line("halo h"+n, haloOf(p, cutHalo)...), scene.Line("case k"+n+dash, p...), scene.Line("ins w"+n+" c"+paint+dash, p...))
	if tracer != "" {
		g.Add(scene.Line("tr r"+n+" c"+tracer+dash, p...))
	}
	return g
}

// strokeMM is how wide a wire is drawn, without its casing: by its size, or by
// its state.
func (p *plan) strokeMM(w *model.Wire) float64 {
	if p.now != nil {
		return lookOf(p.now.classOf(w)).width
	}
	_, width := strokeOf(p.areaOf(w))
	return width
}

// haloOf is the way of a wire without its two ends, where they are upright.
func haloOf(p []float64, cut [2]float64) []float64 {
	h := slices.Clone(p)
	k := len(p) - 2
	if p[0] == p[2] {
		h[1] += math.Copysign(cut[0], p[3]-p[1])
	}
	if p[k] == p[k-2] {
		h[k+1] += math.Copysign(cut[1], p[k-1]-p[k+1])
	}
	return h
}

// paintsOf gives the paint classes of insulation and tracer; a tracer of ""
// is none. A drain is bare metal.
func paintsOf(w *model.Wire) (paint, tracer string) {
	switch c := w.Color; {
	case w.Drain:
		return paintOf(""), ""
	case c.Base == "GNYE":
		return "GN", "YE"
	case c.Tracer == "GNYE":
		return paintOf(c.Base), "GN"
	case c.Tracer != "":
		return paintOf(c.Base), paintOf(c.Tracer)
	}
	return paintOf(w.Color.Base), ""
}

// paintOf gives the paint class of a color letter; what has none is drawn gray.
func paintOf(letters string) string {
	if _, ok := colorPaint[letters]; ok {
		return letters
	}
	return "GY"
}

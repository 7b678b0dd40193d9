package diagram

import (
	"strconv"
	"strings"

	"legwork/render/scene"
)

func itoa(n int) string { return strconv.Itoa(n) }

const band = 5.0 // of the reference zones, mm

// drawFrame draws the border and keeps its centering marks clear.
func (c *canvas) drawFrame() {
	s := c.p.paper
	c.frame.Add(s.border()...)
	mid := (s.margin + s.h - s.margin) / 2
	c.takeLine(s.w-s.margin-band, mid, s.w-s.margin, mid, 0.7)
	c.takeLine(s.left, mid, s.left+band, mid, 0.7)
}

// border gives border, centering marks and reference zones of 50 mm counted
// from the middle of the sheet (ISO 5457, from memory).
func (s paper) border() []*scene.Node {
	x1, y1, x2, y2 := s.left, s.margin, s.w-s.margin, s.h-s.margin
	f := scene.G("")
	f.Add(scene.Frame("l70", x1, y1, x2, y2), scene.Frame("l18", x1-band, y1-band, x2+band, y2+band))
	mx, my := (x1+x2)/2, (y1+y2)/2
	// The lower mark ends at the frame: legend and title block stand there.
	f.Add(scene.Line("l70", mx, y1-band, mx, y1+band), scene.Line("l70", mx, y2+band, mx, y2),
		scene.Line("l70", x1-band, my, x1+band, my), scene.Line("l70", x2+band, my, x2-band, my))
	edges := zones(x1, x2)
	for i := range len(edges) - 1 {
		at := (edges[i] + edges[i+1]) / 2
		for _, y := range []float64{y1 - 1.6, y2 + band - 1.6} {
			f.Add(scene.Words(faint("").class(), at, y, scene.Middle, itoa(i+1)))
		}
		if i > 0 {
			f.Add(scene.Line("l18", edges[i], y1-band, edges[i], y1), scene.Line("l18", edges[i], y2, edges[i], y2+band))
		}
	}
	edges = zones(y1, y2)
	for i := range len(edges) - 1 {
		at := (edges[i]+edges[i+1])/2 + 0.9
		for _, x := range []float64{x1 - band/2, x2 + band/2} {
			f.Add(scene.Words(faint("").class(), x, at, scene.Middle, zoneLetter(i)))
		}
		if i > 0 {
			f.Add(scene.Line("l18", x1-band, edges[i], x1, edges[i]), scene.Line("l18", x2, edges[i], x2+band, edges[i]))
		}
	}
	return f.Kids
}

// zones cuts an edge into stretches of 50 mm from its middle; what is left at
// the ends is added to the last whole one when it is short.
func zones(from, to float64) []float64 {
	mid := (from + to) / 2
	half := []float64{}
	for d := 50.0; mid+d < to-20; d += 50 {
		half = append(half, d)
	}
	out := []float64{from}
	for i := len(half) - 1; i >= 0; i-- {
		out = append(out, mid-half[i])
	}
	out = append(out, mid)
	for _, d := range half {
		out = append(out, mid+d)
	}
	return append(out, to)
}

// zoneLetter skips I and O, which read as figures.
func zoneLetter(i int) string {
	const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
	return string(letters[i%len(letters)])
}

func (p *plan) title() string { return NameOf(p.m) }

// supplement is the second title: how the sheet is drawn, and with what
// options where there are any.
func (p *plan) supplement() string {
	extra := p.in.Title.Extra
	if extra == "" {
		extra = "Drawn de-energized, key off"
	}
	return WithOptions(p.m, extra)
}

func (c *canvas) drawTitle() {
	c.frame.Add(c.p.paper.titleBlock(Heading{
		Title: c.p.in.Title, Kind: "Current-path diagram", Name: c.p.title(), Extra: c.p.supplement(), Sheet: c.g.number, Sheets: len(c.p.sheets),
	}))
}

// titleBlock gives the title block, 180 mm wide, with the fields of ISO 7200.
func (s paper) titleBlock(h Heading) *scene.Node {
	t := h.Title
	x2, y2 := s.w-s.margin, s.h-s.margin
	x, y := x2-blockW, y2-blockH
	g := scene.G("title-block", scene.Frame("l70", x, y, x2, y2))
	sheet := itoa(h.Sheet) + " / " + itoa(h.Sheets)
	cells := []struct {
		x, y, w, h   float64
		field, value string
		size         float64
		bold         bool
	}{
		{0, 0, 45, 12, "Customer", t.Customer, sizeName, false},
		{45, 0, 90, 12, "Document type", h.Kind, sizeName, false},
		{135, 0, 45, 12, "Document number", t.Number, sizeName, true},
		{0, 12, 45, 11.5, "Created by", t.CreatedBy, sizeName, false},
		{45, 12, 90, 11.5, "Title", h.Name, sizeLarge, true},
		{135, 12, 15, 11.5, "Rev.", t.Revision, sizeName, true},
		{150, 12, 30, 11.5, "Date of issue", t.Date, sizeName, false},
		{0, 23.5, 45, 11.5, "Approved by", t.ApprovedBy, sizeName, false},
		{45, 23.5, 90, 11.5, "Supplementary title", h.Extra, sizeName, false},
		{135, 23.5, 15, 11.5, "Lang.", "en", sizeName, false},
		{150, 23.5, 30, 11.5, "Sheet", sheet, sizeName, true},
	}
	for _, k := range cells {
		g.Add(scene.Frame("l25", x+k.x, y+k.y, x+k.x+k.w, y+k.y+k.h))
		field := line{text: k.field, size: sizeTiny, mut: true}
		g.Add(scene.Words(field.class(), x+k.x+1, y+k.y+2.5, scene.Start, k.field))
		v := line{text: k.value, size: k.size, bold: k.bold}
		if v.width() > k.w-2 && k.size > sizeName {
			v.size = sizeName
		}
		if lines := strings.Split(k.value, "\n"); len(lines) > 1 {
			for i, s := range lines {
				l := fitted(small(s), k.w-2)
				g.Add(scene.Words(l.class(), x+k.x+1, y+k.y+k.h-4.5+3.2*float64(i), scene.Start, l.text))
			}
			continue
		}
		v = fitted(v, k.w-2)
		if v.text != "" {
			g.Add(scene.Words(v.class(), x+k.x+1, y+k.y+k.h-1.8, scene.Start, v.text))
		}
	}
	return g
}

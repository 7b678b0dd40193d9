package diagram

import (
	"fmt"
	"math"

	"legwork/render/scene"
)

const (
	legendX   = 22.0
	legendRow = 3.25
	indexX    = 108.0
)

// drawLegend says how to read the sheet.
func (c *canvas) drawLegend() {
	y := c.p.paper.h - 44 + 1.4
	unit := "AWG"
	if c.p.m.Metric {
		unit = "mm²"
	}
	c.legend.Add(scene.Words(strong("").class(), legendX, y, scene.Start, "Reading this sheet"))
	text := []string{
		"Colored vertical line: one wire. Beside it number, " + unit + ", color (IEC 60757).",
		"Black horizontal bar: one joint, as rail, splice, stud or shared terminal.",
		"Thin black line: inside a device. A line cut at a bar is not joined to it.",
		"Boxed number: the path where it goes on; 2/29 is sheet 2, path 29.",
		"Torn edge: more of the unit is drawn at other paths.",
		"Small numbers at rails: DIN 72552. Contacts are drawn at rest.",
	}
	for i, t := range text {
		l := fitted(small(t), indexX-legendX-2)
		c.legend.Add(scene.Words(l.class(), legendX, y+3.8+legendRow*float64(i), scene.Start, l.text))
	}
	yk := y + 3.8 + legendRow*float64(len(text)) + 1.4
	x := legendX
	for i, n := range strokeNames(c.p.m.Metric) {
		w := strokes[i].widthMM
		k := fmt.Sprint(i)
		c.legend.Add(scene.Line("case k"+k, x, yk-0.9, x+5, yk-0.9), scene.Line("ins w"+k+" cBU", x, yk-0.9, x+5, yk-0.9),
			scene.Words(small("").class(), x+6.2, yk, scene.Start, n))
		x += 7.6 + scene.Width(n, sizeSmall, false) + 1.2
		_ = w
	}
	c.legend.Add(scene.Words(small("").class(), x-0.6, yk, scene.Start, unit))
}

// drawIndex lists the devices of the sheet with their paths, in columns.
func (c *canvas) drawIndex() {
	list := c.indexOf()
	if len(list) == 0 {
		return
	}
	s := c.p.paper
	y := s.h - 44 + 1.4
	rows := int(math.Floor((s.h-s.margin-1-y)/2.9)) - 1
	right := s.w - s.margin - blockW - 2
	cols := min(max((len(list)+rows-1)/rows, 3), int((right-indexX)/28))
	w := (right - indexX) / float64(cols)
	if len(list) > rows*cols {
		more := len(list) - rows*cols + 1
		list = append(list[:rows*cols-1:rows*cols-1], entry{"", fmt.Sprintf("and %d more devices", more), ""})
	}
	for i, e := range list {
		x := indexX + w*float64(i/rows)
		if i%rows == 0 {
			c.legend.Add(scene.Words(strong("").class(), x, y, scene.Start, "Device"), scene.Words(strong("").class(), x+w-3, y, scene.End, "path"))
		}
		yy := y + 3 + 2.9*float64(i%rows)
		who := fitted(strong(e.name), w*0.4)
		paths := fitted(small(e.paths), w*0.42)
		room := w - 4.5 - max(who.width()+1, 8) - paths.width()
		c.legend.Add(scene.Words(who.class(), x, yy, scene.Start, who.text), scene.Words(paths.class(), x+w-3, yy, scene.End, paths.text))
		if label := fitted(small(e.label), room); e.label != "" && room > 3 {
			c.legend.Add(scene.Words(label.class(), x+max(who.width()+1, 8), yy, scene.Start, label.text))
		}
	}
}

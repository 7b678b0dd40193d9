package diagram

import (
	"fmt"
	"math"

	"legwork/render/scene"
)

const (
	legendX   = 22.0
	legendRow = 2.9
	railsX    = 80.0
	indexX    = 129.0
	indexRow  = 2.9
)

// drawLegend says how to read the sheet.
func (c *canvas) drawLegend() {
	y := c.p.paper.legendY() + 1.4
	unit := "AWG"
	if c.p.m.Metric {
		unit = "mm²"
	}
	c.legend.Add(scene.Words(strong("").class(), legendX, y, scene.Start, c.p.keyTitle()))
	text := c.p.readingLines(unit)
	for i, t := range text {
		l := fitted(small(t), railsX-legendX-1)
		c.legend.Add(scene.Words(l.class(), legendX, y+3.4+legendRow*float64(i), scene.Start, l.text))
	}
	yk := y + 3.4 + legendRow*float64(len(text)) + 0.9
	if c.p.now != nil {
		c.drawStateKey(yk - 0.9)
		return
	}
	x := legendX
	for i, n := range strokeNames(c.p.m.Metric) {
		k := fmt.Sprint(i)
		c.legend.Add(scene.Line("case k"+k, x, yk-0.9, x+2.8, yk-0.9), scene.Line("ins w"+k+" cBU", x, yk-0.9, x+2.8, yk-0.9),
			scene.Words(small("").class(), x+3.4, yk, scene.Start, n))
		x += 3.4 + scene.Width(n, sizeSmall, false) + 1.4
	}
	c.legend.Add(scene.Words(small("").class(), x-0.6, yk, scene.Start, unit))
}

// readingLines are the sentences of the legend; what the harness has none of
// is not explained.
func (p *plan) readingLines(unit string) []string {
	if p.now != nil {
		return p.stateLines()
	}
	text := []string{
		"Colored line: one wire; " + unit + ", color (IEC 60757).",
		"Black bar: one joint: rail, splice, stud, terminal.",
		"Thin black line: inside a device.",
		"A bar cut by a line is not joined to it.",
		"Boxed number: goes on at that path; 2/29: sheet 2.",
		"Torn edge: more of the unit at other paths.",
		"Contacts stand as in off, without volts.",
		"Rail numbers: DIN 72552.",
	}
	if p.hasExisting() {
		text[2] = "Thin black: inside a device. Dashed: existing."
	}
	if len(p.m.Cables) > 0 {
		text = append(text, "Ring: cores of one cable; dashed: shielded.")
	}
	return text
}

// drawRailList says of every rail of the sheet what it is and when it is live.
func (c *canvas) drawRailList() {
	y := c.p.paper.legendY() + 1.4
	var used []*joint
	wide := 0.0
	for _, j := range c.p.rails {
		if len(c.touches(j)) > 0 {
			used = append(used, j)
			wide = max(wide, fitted(strong(j.tag), 12).width())
		}
	}
	if len(used) > 0 {
		c.legend.Add(scene.Words(strong("").class(), railsX, y, scene.Start, "Rail"))
	}
	for n, j := range used {
		tag := fitted(strong(j.tag), 12)
		about := fitted(small(j.name+", "+j.about), indexX-railsX-wide-3.5)
		if l := small(j.words() + ", " + j.about); l.width() <= indexX-railsX-wide-3.5 {
			about = l // when it is live tells more than the label
		}
		yy := y + 0.1 + indexRow*float64(n+1)
		c.legend.Add(scene.Words(tag.class(), railsX, yy, scene.Start, tag.text), scene.Words(about.class(), railsX+wide+1.5, yy, scene.Start, about.text))
	}
	_, bottom := c.p.paper.legendBox()
	from := 0
	if len(used) > 0 {
		from = len(used) + 1
		if from < 8 {
			from++ // a free row between
		}
	}
	rows := int(math.Floor((bottom - y) / indexRow))
	c.drawSpares(y+0.1+indexRow*float64(from), rows-from+1)
}

// drawIndex lists the devices of the sheet with their paths, in columns.
func (c *canvas) drawIndex() {
	c.drawRailList()
	list := c.indexOf()
	if len(list) == 0 {
		return
	}
	s := c.p.paper
	y := s.legendY() + 1.4
	right, bottom := s.legendBox()
	rows := int(math.Floor((bottom - y) / indexRow))
	cols := (len(list) + rows - 1) / rows
	if cols > int((right-indexX)/24) {
		for i := range list {
			list[i].label = ""
		}
	}
	cols = min(max(cols, 2), int((right-indexX)/16))
	w := (right - indexX) / float64(cols)
	if len(list) > rows*cols {
		list[rows*cols-1] = entry{fmt.Sprintf("+ %d more", len(list)-rows*cols+1), "", ""}
		list = list[:rows*cols]
	}
	for i, e := range list {
		x := indexX + w*float64(i/rows)
		if i%rows == 0 {
			c.legend.Add(scene.Words(strong("").class(), x, y, scene.Start, "Device"), scene.Words(strong("").class(), x+w-3, y, scene.End, "path"))
		}
		c.indexLine(e, x, y+0.1+indexRow*float64(i%rows+1), w)
	}
}

func (c *canvas) indexLine(e entry, x, y, w float64) {
	who := fitted(strong(e.name), w*0.45)
	from := max(who.width()+1, 6)
	paths := fitted(small(e.paths), w-4-from)
	c.legend.Add(scene.Words(who.class(), x, y, scene.Start, who.text), scene.Words(paths.class(), x+w-3, y, scene.End, paths.text))
	room := w - 4 - from - paths.width()
	if label := fitted(small(e.label), room); e.label != "" && room > 3 {
		c.legend.Add(scene.Words(label.class(), x+from, y, scene.Start, label.text))
	}
}

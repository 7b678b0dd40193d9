package diagram

import (
	"slices"
	"strconv"
	"strings"

	"legwork/harness/model"
	"legwork/render/scene"
)

// sparesOf lists the cavities of a device that the draft keeps empty on
// purpose, as words: "3-4, 7". A cavity of two halves is spare when both are.
func sparesOf(d *model.Device) string {
	spare, used := []string{}, map[string]bool{}
	for _, t := range d.Terminals {
		cavity := cavityOf(t)
		switch {
		case cavity == "":
		case attached(t):
			used[cavity] = true
		case t.Pin >= 0 && t.Pin < len(d.Pins) && d.Pins[t.Pin].Quiet && !slices.Contains(spare, cavity):
			spare = append(spare, cavity)
		}
	}
	var numbers []int
	var words []string
	for _, s := range spare {
		if n, err := strconv.Atoi(s); err == nil && !used[s] {
			numbers = append(numbers, n)
		} else if !used[s] {
			words = append(words, s)
		}
	}
	if len(numbers) > 0 {
		words = append([]string{ranges(numbers)}, words...)
	}
	return strings.Join(words, ", ")
}

// cavityOf is the cavity that a terminal sits in: of an inline connector the
// part of its name behind the half, else what the draft says.
func cavityOf(t *model.Terminal) string {
	if t.Device.Kind.Couples != nil {
		return t.Name[strings.LastIndexByte(t.Name, '.')+1:]
	}
	return t.Cavity
}

// drawSpares lists spare cavities of the devices on the sheet, from a row of
// the rail list down.
func (c *canvas) drawSpares(y float64, rows int) {
	var lines [][2]line
	for _, d := range c.p.m.Devices {
		if text := sparesOf(d); text != "" && c.shows(d) {
			who := fitted(strong(d.Name), 14)
			lines = append(lines, [2]line{who, fitted(small(text), indexX-railsX-who.width()-3)})
		}
	}
	if len(lines) == 0 || rows < 2 {
		return
	}
	c.legend.Add(scene.Words(strong("").class(), railsX, y, scene.Start, "Spare cavities"))
	for i, l := range lines[:min(len(lines), rows-1)] {
		yy := y + indexRow*float64(i+1)
		c.legend.Add(scene.Words(l[0].class(), railsX, yy, scene.Start, l[0].text), scene.Words(l[1].class(), railsX+l[0].width()+1.5, yy, scene.Start, l[1].text))
	}
}

// shows reports whether any of the device is on the sheet.
func (c *canvas) shows(d *model.Device) bool {
	return slices.ContainsFunc(c.p.items, func(it *item) bool {
		return it.dev == d && slices.ContainsFunc(it.cols, func(q *col) bool { return q.track().page == c.g })
	})
}

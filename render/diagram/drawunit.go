package diagram

import (
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/render/scene"
)

const (
	unitReach = 9.2 // outline beyond the outer pins, where tracks leave room
	waveDeep  = 0.9
	waveLong  = 5.0
)

// drawUnits draws the fragments of units on a panel: one for each run of
// neighboring pins of the same unit and row.
func (c *canvas) drawUnits(a *panel) {
	type key struct {
		dev  *model.Device
		slot int
	}
	var keys []key
	at := map[key][]*item{}
	for _, it := range a.sect.items {
		if !it.unit || it.cols[0].track().panel != a {
			continue
		}
		k := key{it.dev, it.slot}
		if at[k] == nil {
			keys = append(keys, k)
		}
		at[k] = append(at[k], it)
	}
	for _, k := range keys {
		list := at[k]
		slices.SortStableFunc(list, func(x, y *item) int { return x.cols[0].track().index - y.cols[0].track().index })
		for i := 0; i < len(list); {
			n := i + 1
			for n < len(list) && list[n].cols[0].track().index <= list[n-1].cols[0].track().index+1 {
				n++
			}
			c.drawFragment(list[i:n])
			i = n
		}
	}
}

// torn reports whether more of the unit is drawn elsewhere.
func (c *canvas) torn(pins []*item) bool {
	n := 0
	for _, it := range c.p.items {
		if it.dev == pins[0].dev {
			n++
		}
	}
	return n > len(pins)
}

// unitReach keeps the fragments of two units on neighboring tracks apart.
func (c *canvas) unitReach() float64 { return min(unitReach, c.g.pitch/2-waveDeep-0.1) }

func (c *canvas) drawFragment(pins []*item) {
	v := c.viewOf(pins[0])
	reach := c.unitReach()
	x1, x2 := v.x(0)-reach, pins[len(pins)-1].cols[0].track().x+reach
	y1, y2 := v.y-unitHalf*module, v.y+unitHalf*module
	dev := pins[0].dev
	g := scene.G("dev")
	g.ID = c.id("d-", dev.Name)
	g.Title = describe(dev)
	g.Data = []scene.Attr{{Name: "dev", Value: dev.Name}, {Name: "body", Value: boxText(scene.Box{X1: x1, Y1: y1, X2: x2, Y2: y2})}}
	if c.torn(pins) {
		g.Add(scene.Area("box-fill", x1, y1, x2, y1, x2, y2, x1, y2), scene.Line("sy", x1, y1, x2, y1), scene.Line("sy", x1, y2, x2, y2),
			scene.Line("sy", wave(x1, y1, y2)...), scene.Line("sy", wave(x2, y1, y2)...))
	} else {
		g.Add(scene.Frame("syw", x1, y1, x2, y2))
	}
	c.take(x1-waveDeep, y1, x1, y2)
	c.take(x2, y1, x2+waveDeep, y2)
	c.take(x1, y1-0.1, x2, y1+0.1)
	c.take(x1, y2-0.1, x2, y2+0.1)
	for i, it := range pins {
		c.drawPin(g, c.viewOf(it), it.pins[0])
		c.nameUnitPin(it, v.y, outer{i == 0, i == len(pins)-1})
	}
	dashed(dev, g)
	c.symbols.Add(g)
	c.nameFragment(dev, x1, x2, v.y)
}

// wave is a torn edge from y1 down to y2.
func wave(x, y1, y2 float64) []float64 {
	var out []float64
	const steps = 40
	for i := range steps + 1 {
		y := y1 + (y2-y1)*float64(i)/steps
		out = append(out, x+waveDeep*math.Sin(2*math.Pi*(y-y1)/waveLong), y)
	}
	return out
}

// outer says at which sides of its fragment a pin is the last one.
type outer struct{ left, right bool }

// nameUnitPin writes name and role of a unit's terminal inside the outline.
func (c *canvas) nameUnitPin(it *item, mid float64, at outer) {
	q := it.pins[0]
	x := it.cols[0].track().x
	word := name(q.term.Name)
	if room := c.g.pitch - 1.5; word.width() > room {
		word = fitted(strong(q.term.Name), room)
	}
	limit := c.unitReach() - waveDeep - 0.4 // from a pin to the edge beside it
	room := c.g.pitch - 0.8
	if at.left && at.right {
		room = min(room, 2*limit)
	} else if at.left || at.right {
		room = min(room, limit+c.g.pitch/2-0.4) // it moves towards the pin beside it
	}
	role := fitted(small(c.underPin(it, room)), room)
	under := x
	if over := role.width()/2 - limit; over > 0 && at.left {
		under += over
	} else if over > 0 && at.right {
		under -= over
	}
	y, step := mid-unitHalf*module+4.3, 3.0
	if !q.up() {
		y, step = mid+unitHalf*module-1.9, -3.7
	}
	g := scene.G("pin")
	g.Data = []scene.Attr{{Name: "pin", Value: shown(q.term)}}
	c.put(g, word, x, y, scene.Middle)
	c.put(g, role, under, y+step, scene.Middle)
	c.labels.Add(g)
}

// underPin is the line beside the name of a unit's terminal: its cavity and its
// role; the cavity alone where both are too long.
func (c *canvas) underPin(it *item, room float64) string {
	cavity, role := it.pins[0].term.Cavity, roleOf(it)
	if on := c.p.outputText(it); on != "" {
		return firstFit(room, cavity+" "+role+": "+on, role+": "+on, on)
	}
	switch both := cavity + " " + role; {
	case cavity == "" || cavity == it.pins[0].term.Name:
		return role
	case small(both).width() <= room:
		return both
	}
	return cavity
}

// roleOf is the role that the draft gives a unit's terminal.
func roleOf(it *item) string {
	t := it.pins[0].term
	if t.Pin < 0 || t.Pin >= len(it.dev.Pins) {
		return ""
	}
	n := it.dev.Pins[t.Pin].Line
	if n < 0 || n >= len(it.dev.Lines) || it.dev.Lines[n].Role == nil {
		return ""
	}
	return it.dev.Lines[n].Role.Word
}

func (c *canvas) nameFragment(dev *model.Device, x1, x2, mid float64) {
	who := fitted(name(dev.Name), x2-x1-5)
	g := scene.G("name")
	g.Data = []scene.Attr{{Name: "dev", Value: dev.Name}}
	c.put(g, who, x1+2, mid+1.25, scene.Start)
	if room := x2 - x1 - 5.5 - who.width(); room > 9 && dev.Label != "" {
		c.put(g, fitted(faint(dev.Label), room), x1+3.2+who.width(), mid+1.25, scene.Start)
	}
	c.labels.Add(g)
}

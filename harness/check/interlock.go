package check

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// cut is what current can come to with one switch held open, whatever else is
// closed: a relay's contact counts as closed only if its coil can be fed and
// led back so as well, a controller's output if its feeds are live.
type cut struct {
	p           *Pass
	not         *model.Device // nil for none
	shut        *model.Device // its contacts count as closed; nil for none
	from        []bool        // nets that are taken to be fed
	waits       []bool        // by device ID: as if held open; nil for none
	plus, minus []bool        // by net, as in reach
}

// without gives what is left with a switch held open.
func (p *Pass) without(sw *model.Device) *cut { return p.cutFrom(sw, p.graph().sources) }

// cutFrom is without, with other nets than those of the sources taken to be fed.
func (p *Pass) cutFrom(sw *model.Device, from []bool) *cut {
	return (&cut{p: p, not: sw, from: from}).grown()
}

// with gives what can be come to with the contacts of one device closed.
func (p *Pass) with(sw *model.Device) *cut {
	return (&cut{p: p, shut: sw, from: p.graph().sources}).grown()
}

// grown marks all that can be come to.
func (c *cut) grown() *cut {
	n := len(c.p.Nets.Members)
	c.plus, c.minus = make([]bool, n), make([]bool, n)
	c.grow()
	return c
}

// grow marks what can be come to beyond what is marked.
func (c *cut) grow() {
	g := c.p.graph()
	for grew := true; grew; {
		grew = c.spread(c.plus, g.on, c.from)
		grew = c.spread(c.minus, g.back, g.grounds) || grew
	}
}

// spread marks what can be come to from a set of nets as contacts now stand; it
// reports whether that is more than before.
func (c *cut) spread(seen []bool, ways [][]way, from []bool) bool {
	grew := false
	var todo []int
	for n := range seen {
		if from[n] && !seen[n] {
			seen[n], grew = true, true
		}
		if seen[n] {
			todo = append(todo, n)
		}
	}
	for len(todo) > 0 {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		for _, w := range ways[at] {
			if w.to >= 0 && !seen[w.to] && c.closes(w, at) {
				seen[w.to], grew = true, true
				todo = append(todo, w.to)
			}
		}
	}
	return grew
}

// closes reports whether a way can be closed with the switch open.
func (c *cut) closes(w way, from int) bool {
	if w.device == c.not || c.waits != nil && c.waits[w.device.ID] {
		return false
	}
	if w.output {
		return c.alive(w.device)
	}
	if w.device == c.shut {
		return true
	}
	contact := false
	for _, k := range w.device.Switches() {
		a, b := c.p.netOf(w.device, k.A), c.p.netOf(w.device, k.B)
		if !(a == from && b == w.to || a == w.to && b == from) {
			continue
		}
		if contact = true; k.CoilA == "" || k.AtRest || c.works(w.device, k.CoilA, k.CoilB) {
			return true
		}
	}
	return !contact
}

// works reports whether a load or a coil can be fed at one end and led back at
// the other.
func (c *cut) works(d *model.Device, plus, minus string) bool {
	a, b := c.p.netOf(d, plus), c.p.netOf(d, minus)
	return a >= 0 && b >= 0 && (c.plus[a] && c.minus[b] || c.plus[b] && c.minus[a])
}

// alive reports whether a controller's feeds are live.
func (c *cut) alive(d *model.Device) bool {
	for _, w := range d.Draws() {
		if !w.Asleep && !c.works(d, w.Plus, w.Minus) {
			return false
		}
	}
	return true
}

// inTheWay reports whether the switch lies on a way by which a load is fed or
// led back, or on one to the coils whose contacts lie there. An input that a
// controller reads is no such way, nor is what the switch itself feeds.
func (c *cut) inTheWay(d *model.Device, w part.Draw) bool {
	p, g := c.p, c.p.graph()
	seen := [2]map[int]bool{{}, {}}
	type spot struct{ net, side int }
	todo := []spot{{p.netOf(d, w.Plus), 0}, {p.netOf(d, w.Minus), 1}}
	for len(todo) > 0 {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at.net < 0 || seen[at.side][at.net] || g.sources[at.net] || g.grounds[at.net] {
			continue
		}
		seen[at.side][at.net] = true
		ways, comes := g.back, c.plus
		if at.side == 1 {
			ways, comes = g.on, c.minus
		}
		for _, x := range ways[at.net] {
			if x.device == c.not {
				if comes[x.to] {
					return true
				}
				continue
			}
			todo = append(todo, spot{x.to, at.side})
			for _, k := range x.device.Switches() {
				if k.CoilA != "" && !k.AtRest {
					todo = append(todo, spot{p.netOf(x.device, k.CoilA), 0}, spot{p.netOf(x.device, k.CoilB), 1})
				}
			}
		}
	}
	return false
}

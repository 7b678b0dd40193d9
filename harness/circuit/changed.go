package circuit

import (
	"math"
	"slices"
)

// resolve finds voltage and root of unknown k, and of those that it hangs on.
func (c *Changed) resolve(k int32) {
	c.way = c.way[:0]
	for !c.known[k] {
		c.way = append(c.way, k)
		s, i := c.entry(k)
		column := s.column(i)
		if len(column) == 0 {
			break
		}
		k = column[0]
	}
	for j := len(c.way) - 1; j >= 0; j-- {
		k := c.way[j]
		s, i := c.entry(k)
		c.x[k], c.root[k] = s.read(i, k, c.x, c.root)
		c.known[k] = true
		c.reached = append(c.reached, k)
	}
}

// entry is where the elimination of unknown k is kept.
func (c *Changed) entry(k int32) (*fronts, int32) {
	if i := c.slot[k]; i >= 0 {
		return &c.kept, i
	}
	return &c.l.kept, k
}

func (c *Changed) rootOf(k int32) int32 {
	if !c.known[k] {
		c.resolve(k)
	}
	return c.root[k]
}

// V is the voltage of node n against the reference; ok is false if n floats now,
// or is no node. Asking for one node costs its way down the elimination only.
func (c *Changed) V(n Node) (volts float64, ok bool) { return c.Across(n, 0) }

// Across is the voltage of a against b; ok is false if they do not hang together now.
func (c *Changed) Across(a, b Node) (volts float64, ok bool) {
	p, q := c.l.point(a), c.l.point(b)
	if p < 0 || q < 0 || c.rootOf(p) != c.rootOf(q) {
		return 0, false
	}
	return c.x[p] - c.x[q], true
}

// Floats are the nodes, ascending, that had a voltage against the reference
// before and have none now: the changes cut them off. Nil if there are none.
func (c *Changed) Floats() []Node {
	var loose []Node
	end := int32(len(c.x) - 1)
	if !c.cuts() {
		return nil
	}
	for n, k := range c.l.at {
		if c.l.root[k] == end && c.rootOf(k) != end {
			loose = append(loose, Node(n))
		}
	}
	return loose
}

// cuts is true if a part that hung on the reference may float: its last unknown
// was eliminated anew then, for it lies on the way of the changed branch.
func (c *Changed) cuts() bool {
	end := int32(len(c.x) - 1)
	for _, k := range c.who {
		if c.l.root[k] == end && c.rootOf(k) != end {
			return true
		}
	}
	return false
}

// I is the current through branch b from A to B after the changes, in amperes:
// 0 through one that was opened, is off, or is a regulator without a way back.
// Through the link that Short put in its place it is what the node law leaves,
// right to the rounding of the currents there; ok is false if b does not exist,
// or if links form a loop, where it has no one answer.
func (c *Changed) I(b Branch) (amps float64, ok bool) {
	l := c.l
	if b < 0 || int(b) >= len(l.g) {
		return 0, false
	}
	if i := c.linkOf(b); i >= 0 {
		return c.throughLink(i)
	}
	if c.isOff(b) {
		return 0, true
	}
	return c.byLine(b), true
}

func (c *Changed) byLine(b Branch) float64 {
	e := c.l.ends[b]
	c.rootOf(e[0])
	c.rootOf(e[1])
	return c.l.g[b]*(c.x[e[0]]-c.x[e[1]]) - c.l.s[b]
}

func (c *Changed) linkOf(b Branch) int {
	return slices.IndexFunc(c.ties, func(t tie) bool { return t.b == b })
}

// throughLink finds the current of one ideal link by taking others away whose
// current is settled by the node law at one end, until its own is.
func (c *Changed) throughLink(want int) (amps float64, ok bool) {
	settled, through := make([]bool, len(c.ties)), make([]float64, len(c.ties))
	for i, t := range c.ties {
		if !math.IsInf(t.g, 1) {
			settled[i] = true
			c.rootOf(t.lo)
			c.rootOf(t.hi)
			through[i] = t.g * (c.x[t.a] - c.x[t.lo+t.hi-t.a])
		}
	}
	for moved := true; moved && !settled[want]; {
		moved = false
		for i, t := range c.ties {
			if settled[i] || t.lo == t.hi {
				continue
			}
			for _, k := range [2]int32{t.lo, t.hi} {
				if !settled[i] && c.lastLinkAt(k, i, settled) {
					through[i], settled[i], moved = c.leftOver(k, i, through), true, true
				}
			}
		}
	}
	return through[want], settled[want]
}

// lastLinkAt is true if no other link at k is open, the reference left aside:
// a tree of links has another end.
func (c *Changed) lastLinkAt(k int32, i int, settled []bool) bool {
	if int(k) == len(c.x)-1 {
		return false
	}
	for j, t := range c.ties {
		if j != i && !settled[j] && t.lo != t.hi && (t.lo == k || t.hi == k) {
			return false
		}
	}
	return true
}

// leftOver is what has to flow through link i for the currents at k to cancel.
func (c *Changed) leftOver(k int32, i int, through []float64) float64 {
	out := 0.0
	for _, at := range c.l.touch.of(k) {
		b := Branch(at)
		if c.isOff(b) {
			continue
		}
		if c.l.ends[b][0] == k {
			out += c.byLine(b)
		} else {
			out -= c.byLine(b)
		}
	}
	for j, t := range c.ties {
		switch {
		case j == i || t.lo == t.hi || t.lo != k && t.hi != k:
		case t.a == k:
			out += through[j]
		default:
			out -= through[j]
		}
	}
	if c.ties[i].a == k {
		return -out
	}
	return out
}

package circuit

import (
	"fmt"
	"math"
	"slices"
)

// Change is one thing done to a Linear: made by Open, Short or Tie.
type Change struct {
	what changeKind
	b    Branch
	a, z Node
	ohm  float64
}

type changeKind uint8

const (
	opened changeKind = iota + 1
	shorted
	tied
)

// Open takes branch b out, without any leak.
func Open(b Branch) Change { return Change{what: opened, b: b} }

// Short puts an ideal link in the place of branch b: its ends become one point,
// even if b is off or opened by another change.
func Short(b Branch) Change { return Change{what: shorted, b: b} }

// Tie adds a resistor between two nodes, 0 to 1e15 ohm; 0 is an ideal link, any
// other below MinOhm counts as MinOhm. Parts that hung apart become one by it.
func Tie(a, b Node, ohm float64) Change { return Change{what: tied, a: a, z: b, ohm: ohm} }

// tie is a branch that a change has added between unknowns lo < hi.
type tie struct {
	lo, hi int32
	g      float64 // +Inf for an ideal link
	a      int32   // the end where its branch begins
	b      Branch  // the one in whose place it stands, else -1
}

// Changed is a Linear after some changes. Its room may be used again by
// ChangeInto; it is for one goroutine at a time, and reading counts.
type Changed struct {
	l       *Linear
	off     []Branch // taken out, or replaced by a tie
	cut     []Branch // regulators without a way back for their current
	ties    []tie
	kept    fronts
	who     []int32 // of each entry of kept: its unknown
	slot    []int32 // of each unknown: its entry in kept, -1 where nothing is new
	pending []int32 // unknowns to be eliminated anew, descending
	queued  []bool
	given   [][2]int32 // entry of kept, and the next one given to the same unknown
	first   []int32    // of each unknown: the last of given, -1 for none
	w       front
	x       []float64
	root    []int32
	known   []bool
	reached []int32 // those of known
	way     []int32
}

// Change works out the network after all the changes together. The error tells
// of a branch or node that does not exist, or of a resistance out of range.
func (l *Linear) Change(all ...Change) (*Changed, error) {
	c := new(Changed)
	if err := l.ChangeInto(c, all); err != nil {
		return nil, err
	}
	return c, nil
}

// ChangeInto is Change into a Changed that may have been used before. Only the
// unknowns on the ways of the changed branches down the elimination are
// eliminated anew, by the same sums of positive terms as in the first place:
// there is no small difference to divide by, so that a cut is a pivot of exactly
// 0, as it is in Solver. After an error c is of no use until the next call.
func (l *Linear) ChangeInto(c *Changed, all []Change) error {
	c.begin(l)
	for _, one := range all {
		if err := c.note(one); err != nil {
			return err
		}
	}
	c.work()
	for _, b := range l.push {
		e := l.ends[b]
		if !slices.Contains(c.off, b) && c.rootOf(e[0]) != c.rootOf(e[1]) {
			c.cut = append(c.cut, b)
		}
	}
	if len(c.cut) > 0 {
		c.clear()
		c.work()
	}
	return nil
}

func (c *Changed) begin(l *Linear) {
	if n := len(l.x); c.l != l || len(c.x) != n {
		*c = Changed{l: l, slot: make([]int32, n), first: make([]int32, n), queued: make([]bool, n),
			x: make([]float64, n), root: make([]int32, n), known: make([]bool, n), w: front{pos: make([]int32, n)}}
		for i := range n {
			c.slot[i], c.first[i], c.w.pos[i] = -1, -1, -1
		}
	}
	c.off, c.ties, c.cut = c.off[:0], c.ties[:0], c.cut[:0]
	c.clear()
}

// clear forgets what was eliminated and read, not what was changed.
func (c *Changed) clear() {
	for _, k := range c.who {
		c.slot[k] = -1
	}
	for _, k := range c.reached {
		c.known[k] = false
	}
	c.who, c.reached, c.given = c.who[:0], c.reached[:0], c.given[:0]
	c.kept.reset()
	end := int32(len(c.x) - 1)
	c.x[end], c.root[end], c.known[end] = 0, end, true
}

func (c *Changed) note(one Change) error {
	l := c.l
	if one.what == tied {
		a, z := l.point(one.a), l.point(one.z)
		switch {
		case a < 0 || z < 0:
			return fmt.Errorf("tie between nodes %d and %d of a network of %d", one.a, one.z, len(l.at))
		case !(one.ohm >= 0 && one.ohm <= maxOhm):
			return fmt.Errorf("tie of %g ohm, allowed 0 to %g", one.ohm, float64(maxOhm))
		}
		g := math.Inf(1)
		if one.ohm > 0 {
			g = 1 / max(one.ohm, MinOhm)
		}
		c.addTie(a, z, g, -1)
		return nil
	}
	if one.what == 0 || one.b < 0 || int(one.b) >= len(l.g) {
		return fmt.Errorf("change of branch %d of a network of %d", one.b, len(l.g))
	}
	if !slices.Contains(c.off, one.b) {
		c.off = append(c.off, one.b)
	}
	if one.what == shorted && c.linkOf(one.b) < 0 {
		e := l.ends[one.b]
		c.addTie(e[0], e[1], math.Inf(1), one.b)
	}
	return nil
}

func (c *Changed) addTie(a, z int32, g float64, b Branch) {
	c.ties = append(c.ties, tie{lo: min(a, z), hi: max(a, z), g: g, a: a, b: b})
}

// work eliminates anew what the changes reach, lowest unknown first.
func (c *Changed) work() {
	for _, list := range [2][]Branch{c.off, c.cut} {
		for _, b := range list {
			c.queue(c.l.ends[b][0])
			c.queue(c.l.ends[b][1])
		}
	}
	for _, t := range c.ties {
		c.queue(t.lo)
		c.queue(t.hi)
	}
	for len(c.pending) > 0 {
		k := c.pending[len(c.pending)-1]
		c.pending = c.pending[:len(c.pending)-1]
		c.queued[k] = false
		c.again(k)
	}
}

// queue puts an unknown in line; they are few, and mostly the lowest of all.
func (c *Changed) queue(k int32) {
	if c.queued[k] || int(k) == len(c.x)-1 {
		return
	}
	c.queued[k] = true
	i := len(c.pending)
	for i > 0 && c.pending[i-1] < k {
		i--
	}
	c.pending = slices.Insert(c.pending, i, k)
}

package circuit

import "slices"

// again eliminates unknown k anew, with what others handed on to it anew, and
// queues the one that it hands on to. The one of old is met on the way there at
// the latest: a tie adds to a row and takes nothing out of it.
func (c *Changed) again(k int32) {
	l, w := c.l, &c.w
	c.gatherRow(k)
	w.open()
	c.stampOwn(k)
	for _, kid := range l.kids.of(k) {
		if c.slot[kid] < 0 {
			w.merge(&l.kept, kid)
		}
	}
	for i := c.first[k]; i >= 0; i = c.given[i][1] {
		w.merge(&c.kept, c.given[i][0])
	}
	c.first[k] = -1
	at := int32(len(c.who))
	w.eliminate(&c.kept)
	c.slot[k] = at
	c.who = append(c.who, k)
	if len(w.row) > 0 {
		to := w.row[0]
		c.given = append(c.given, [2]int32{at, c.first[to]})
		c.first[to] = int32(len(c.given) - 1)
		c.queue(to)
	}
	for _, r := range w.row {
		w.pos[r] = -1
	}
}

// gatherRow finds whom k meets: those of old, and through ties new ones.
func (c *Changed) gatherRow(k int32) {
	w := &c.w
	w.row = append(w.row[:0], c.l.kept.column(k)...)
	if len(c.ties) == 0 {
		return
	}
	for _, r := range w.row {
		w.pos[r] = 0
	}
	old := len(w.row)
	meet := func(r int32) {
		if w.pos[r] < 0 && r != k {
			w.pos[r] = 0
			w.row = append(w.row, r)
		}
	}
	for _, t := range c.ties {
		if t.lo == k && int(t.hi) < len(c.x)-1 {
			meet(t.hi)
		}
	}
	for i := c.first[k]; i >= 0; i = c.given[i][1] {
		for _, r := range c.kept.column(c.given[i][0]) {
			meet(r)
		}
	}
	if len(w.row) > old {
		slices.Sort(w.row)
	}
}

// stampOwn lays the branches whose other end is eliminated after k. Where one of
// them is changed the sum is made anew, not corrected.
func (c *Changed) stampOwn(k int32) {
	l, w := c.l, &c.w
	if c.isEnd(k) {
		c.stampEach(k)
	} else {
		column := l.f.column(int(k))
		for i, g := range l.own[l.f.ptr[k]:l.f.ptr[k+1]] {
			if g != 0 {
				w.link[w.pos[column[i]]] = g
			}
		}
		w.ref, w.cur = l.ownRef[k], l.ownIn[k]
	}
	for _, t := range c.ties {
		switch {
		case t.lo != k || t.lo == t.hi:
		case int(t.hi) == len(c.x)-1:
			w.ref += t.g
		default:
			w.link[w.pos[t.hi]] += t.g
		}
	}
}

func (c *Changed) isEnd(k int32) bool {
	for _, list := range [2][]Branch{c.off, c.cut} {
		for _, b := range list {
			if e := c.l.ends[b]; e[0] == k || e[1] == k {
				return true
			}
		}
	}
	return false
}

func (c *Changed) stampEach(k int32) {
	l, w := c.l, &c.w
	for _, i := range l.touch.of(k) {
		b := Branch(i)
		if c.isOff(b) {
			continue
		}
		e := l.ends[b]
		other := e[0] + e[1] - k
		if e[0] == k {
			w.cur += l.s[b]
		} else {
			w.cur -= l.s[b]
		}
		switch {
		case other < k:
		case int(other) == len(c.x)-1:
			w.ref += l.g[b]
		default:
			w.link[w.pos[other]] += l.g[b]
		}
	}
}

// isOff is true for a branch that was taken out or replaced, or cannot push.
func (c *Changed) isOff(b Branch) bool {
	return slices.Contains(c.off, b) || slices.Contains(c.cut, b)
}

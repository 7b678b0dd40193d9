package diagram

// Heights in tenths of a row, for finding what shares a track: the row s is
// 10 s, the gap under it 10 s + 5, the rails 0, the studs foot.
const foot = 10*lastSlot + 15

// span is a stretch of a track that something takes. A bar at one of its ends
// is a place where another span may follow only if it is the same bar.
type span struct {
	top, bottom int
	upper, low  *bar
}

// col is a column of an item or a strand: a member of the union-find whose
// classes become tracks.
type col struct {
	parent *col
	spans  []span
	order  int
	at     *track // of a root
}

func (c *col) root() *col {
	for c.parent != nil {
		c = c.parent
	}
	return c
}

// track is one current path: everything that stands in one vertical line.
type track struct {
	order   int
	index   int // place in its section
	items   []*item
	strands []*strand
	x       float64
	path    int
	page    *page
	panel   *panel
	caption string
}

// join makes one class of two, unless something of both takes the same place.
func join(a, b *col) bool {
	a, b = a.root(), b.root()
	if a == b {
		return true
	}
	for _, s := range a.spans {
		for _, t := range b.spans {
			if clash(s, t) {
				return false
			}
		}
	}
	if b.order < a.order {
		a, b = b, a
	}
	b.parent = a
	a.spans = append(a.spans, b.spans...)
	return true
}

func clash(s, t span) bool {
	if s.top < t.bottom && t.top < s.bottom {
		return true
	}
	return s.bottom == t.top && s.low != nil && t.upper != nil && s.low != t.upper ||
		t.bottom == s.top && t.low != nil && s.upper != nil && t.low != s.upper
}

// track groups columns and strands into tracks. A wire whose ends can't share
// one is cut.
func (p *plan) track() {
	for {
		p.makeCols()
		bad := p.joinStrands()
		if bad == nil {
			break
		}
		p.cut(bad)
		p.makeBars()
	}
	p.joinBars()
	p.joinUnits()
	for _, s := range p.sections {
		p.makeTracks(s)
	}
}

func (p *plan) makeCols() {
	n := 0
	fresh := func(sp ...span) *col {
		n++
		return &col{spans: sp, order: n}
	}
	for _, it := range p.items {
		it.cols = nil
		for c := range it.form.cols {
			it.cols = append(it.cols, fresh(it.spans(c, p)...))
		}
	}
	for _, s := range p.strands {
		sp := span{top: s.top(), bottom: s.bottom(), upper: s.upper.bar, low: s.lower.bar}
		s.col = fresh(sp)
	}
}

// spans gives what the item takes of the track of its column c: its row, and
// the way of each pin to its joint or to metal.
func (it *item) spans(c int, p *plan) []span {
	mid := 10 * it.slot
	body := span{top: mid - 3, bottom: mid + 3}
	if it.unit {
		body = span{top: mid, bottom: mid + 3}
		if it.pins[0].up() {
			body = span{top: mid - 3, bottom: mid}
		}
	}
	out := []span{body}
	for _, q := range it.pins {
		if q.col != c || q.term == nil {
			continue
		}
		j := p.meets[q.term.ID]
		_, away := p.stray(q)
		switch {
		case away && q.up():
			out = append(out, span{top: mid - 7, bottom: mid - 3})
		case away:
			out = append(out, span{top: mid + 3, bottom: mid + 7})
		case q.up() && j != nil && j.kind == railJoint:
			out = append(out, span{top: 0, bottom: mid - 3})
		case !q.up() && q.term.Metal != nil:
			out = append(out, span{top: mid + 3, bottom: foot})
		case j != nil && j.kind == localJoint && !q.loose:
			b := j.barIn(it.sect)
			if q.up() {
				out = append(out, span{top: 10*b.gap + 5, bottom: mid - 3, upper: b})
			} else {
				out = append(out, span{top: mid + 3, bottom: 10*b.gap + 5, low: b})
			}
		}
	}
	return out
}

func (j *joint) barIn(s *section) *bar {
	for _, b := range j.gaps {
		if b.sect == s {
			return b
		}
	}
	return nil
}

func (s *strand) top() int {
	switch u := s.upper; {
	case u.pin != nil:
		return 10*u.pin.item.slot + 3
	case u.bar != nil:
		return 10*u.bar.gap + 5
	case u.box:
		if s.lower.pin != nil {
			return 10*(s.lower.pin.item.slot-1) + 3
		}
		return foot - 12
	case u.joint != nil && u.joint.kind == studJoint:
		return foot - 1
	}
	return 0
}

func (s *strand) bottom() int {
	switch l := s.lower; {
	case l.pin != nil:
		return 10*l.pin.item.slot - 3
	case l.bar != nil:
		return 10*l.bar.gap + 5
	case l.box:
		if s.upper.pin != nil {
			return 10*(s.upper.pin.item.slot+1) - 3
		}
		return s.top() + 7
	case l.joint != nil && l.joint.kind == railJoint:
		return 1
	}
	return foot
}

package diagram

// level gives every item its row and every bar its gap, so that all wires run
// downwards. Wires that go round in a circle are cut.
func (p *plan) level() {
	for range 1 + len(p.runs) + len(p.pins) {
		vs := p.vertices()
		order, loop := sorted(vs)
		if loop != nil {
			p.untie(*loop)
			continue
		}
		latest(order)
		earliest(order)
		p.closeUp(order)
		bad := p.violations(vs)
		if len(bad) == 0 {
			break
		}
		for _, l := range bad {
			p.untie(l)
		}
	}
}

// untie takes a link out of the picture: a wire is cut, a pin boxed.
func (p *plan) untie(l link) {
	switch {
	case l.strand != nil && !l.strand.run.cut:
		p.cut(l.strand.run)
	case l.pin != nil:
		l.pin.loose = true
	}
	p.makeBars()
}

func (p *plan) vertices() []*vertex {
	var vs []*vertex
	ofItem, ofBar := map[*item]*vertex{}, map[*bar]*vertex{}
	for _, it := range p.items {
		want, may := wantOf(it)
		v := &vertex{item: it, want: want, may: may}
		ofItem[it] = v
		vs = append(vs, v)
	}
	for _, j := range p.joints {
		for _, b := range j.gaps {
			v := &vertex{bar: b, hangs: len(b.uppers) == 0}
			for _, m := range b.lowers {
				v.hangs = v.hangs || m.pin != nil
			}
			ofBar[b] = v
			vs = append(vs, v)
		}
	}
	at := func(t tip) *vertex {
		if t.pin != nil {
			return ofItem[t.pin.item]
		}
		return ofBar[t.bar]
	}
	for _, s := range p.strands {
		a, b := at(s.upper), at(s.lower)
		if a == nil || b == nil {
			continue
		}
		diff := 1
		if b.bar != nil {
			diff = 0
		}
		a.next = append(a.next, link{to: b, diff: diff, strand: s})
	}
	for _, j := range p.joints {
		for _, b := range j.gaps {
			for _, m := range b.uppers {
				if m.pin != nil {
					ofItem[m.pin.item].next = append(ofItem[m.pin.item].next, link{to: ofBar[b], pin: m.pin})
				}
			}
			for _, m := range b.lowers {
				if m.pin != nil {
					ofBar[b].next = append(ofBar[b].next, link{to: ofItem[m.pin.item], diff: 1, pin: m.pin})
				}
			}
		}
	}
	p.sourceRows(vs)
	return vs
}

// sourceRows lets a unit's pin that feeds something stand above the row of
// what it feeds.
func (p *plan) sourceRows(vs []*vertex) {
	for _, v := range vs {
		if v.item == nil || !v.item.unit || v.item.pins[0].up() || !feeds(v.item) {
			continue
		}
		for _, l := range v.next {
			switch {
			case l.to.item == nil || l.to.item.unit:
			case l.to.want == 3:
				v.want, v.may = 1, []int{1, 5}
			case l.to.want == 5 && v.want == 5:
				v.want, v.may = 3, []int{1, 3, 5}
			}
		}
	}
}

// feeds reports whether the unit's pin sources current.
func feeds(it *item) bool {
	if it.dev.Kind.Drives == nil {
		return false
	}
	for _, o := range it.dev.Kind.Drives(it.dev.Device) {
		if o.Pin == it.sub && !o.Sinks {
			return true
		}
	}
	return false
}

// sorted puts the vertices in an order in which every link points forward, or
// gives a link that lies on a circle: of a wire, if there is one.
func sorted(vs []*vertex) ([]*vertex, *link) {
	for _, v := range vs {
		for _, l := range v.next {
			l.to.before++
		}
	}
	var order, ready []*vertex
	for _, v := range vs {
		if v.before == 0 {
			ready = append(ready, v)
		}
	}
	for len(ready) > 0 {
		v := ready[0]
		ready = ready[1:]
		order = append(order, v)
		for _, l := range v.next {
			if l.to.before--; l.to.before == 0 {
				ready = append(ready, l.to)
			}
		}
	}
	if len(order) == len(vs) {
		return order, nil
	}
	var last *link
	for _, v := range vs {
		if v.before == 0 {
			continue
		}
		for _, l := range v.next {
			if l.to.before > 0 && (last == nil || l.strand != nil) {
				last = &l
			}
		}
	}
	return order, last
}

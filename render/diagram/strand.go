package diagram

// strand is a wire as one straight line, or half of a wire that had to be cut:
// then one tip is a boxed path number.
type strand struct {
	run          *run
	upper, lower tip
	sect         *section
	col          *col
}

// tip is where a strand ends.
type tip struct {
	pin   *pin
	joint *joint // rail or stud
	bar   *bar   // local joint
	box   bool
}

// bar is a local joint in one section.
type bar struct {
	joint  *joint
	sect   *section
	gap    int // under slot gap
	uppers []*member
	lowers []*member
}

// member is what ends at a bar: a strand, or a pin of the joint itself.
type member struct {
	strand *strand
	pin    *pin
}

func (e end) tip() tip { return tip{pin: e.pin, joint: e.joint} }

// level orders ends from the top: rails, then whatever stands between, then
// studs.
func (p *plan) rankOf(e end) float64 {
	j := e.joint
	switch {
	case j == nil:
		return 1
	case j.kind == railJoint:
		return float64(j.rank) / 100
	case j.kind == studJoint:
		return 3
	}
	return 2 - p.flow.height(j.terms[0])
}

// makeStrands decides how a run is drawn. A run that can't be straight is cut.
func (p *plan) makeStrands(r *run) {
	if j, k := r.ends[0].joint, r.ends[1].joint; j != nil && k != nil && j.kind == studJoint && k.kind == studJoint {
		r.strap = true
		p.addStrand(&strand{run: r, upper: r.ends[0].tip(), lower: r.ends[1].tip(), sect: p.sectionFor(r)})
		return
	}
	up, down, ok := p.upright(r)
	if !ok {
		p.cut(r)
		return
	}
	sect := p.sectionFor(r)
	for _, e := range r.ends {
		if e.pin != nil {
			sect = e.pin.item.sect
		}
	}
	p.addStrand(&strand{run: r, upper: up.tip(), lower: down.tip(), sect: sect})
}

// sectionFor gives the section of a run by its circuit. A strap outside any
// circuit goes where the first wire at one of its studs goes.
func (p *plan) sectionFor(r *run) *section {
	if !r.strap || r.w.Circuit != nil && r.w.Circuit.Name != looseName {
		return p.sectionOf(r.w.Circuit)
	}
	for _, e := range r.ends {
		for _, t := range e.joint.terms {
			for _, o := range t.Ends {
				if k := o.Wire.Circuit; k != nil && k.Name != looseName {
					return p.sectionOf(o.Wire.Circuit)
				}
			}
		}
	}
	return p.sectionOf(nil)
}

// upright finds which end of the run is up; ok is false where the two sides
// don't face each other.
func (p *plan) upright(r *run) (up, down end, ok bool) {
	a, b := r.ends[0], r.ends[1]
	if a.pin == nil && a.joint == nil || b.pin == nil && b.joint == nil {
		return a, b, false
	}
	if a.pin != nil && b.pin != nil {
		if a.pin.item.sect != b.pin.item.sect || a.pin.item == b.pin.item {
			return a, b, false
		}
		if a.pin.up() {
			a, b = b, a
		}
		return a, b, !a.pin.up() && b.pin.up()
	}
	if a.joint != nil && a.joint == b.joint {
		return a, b, false
	}
	if a.pin != nil {
		a, b = b, a
	}
	if b.pin == nil {
		if p.rankOf(a) > p.rankOf(b) {
			a, b = b, a
		}
		return a, b, true
	}
	switch a.joint.kind {
	case railJoint:
		return a, b, b.pin.up()
	case studJoint:
		return b, a, !b.pin.up()
	}
	if b.pin.up() {
		return a, b, true
	}
	return b, a, true
}

// cut replaces a run's strand by two stubs with boxes.
func (p *plan) cut(r *run) {
	r.cut = true
	p.strands = remove(p.strands, func(s *strand) bool { return s.run == r })
	for _, sect := range p.sections {
		sect.strands = remove(sect.strands, func(s *strand) bool { return s.run == r })
	}
	r.broken = nil
	for _, e := range r.ends {
		if e.pin == nil && e.joint == nil {
			continue
		}
		s := &strand{run: r, sect: p.sectionFor(r)}
		if e.pin != nil {
			s.sect = e.pin.item.sect
		}
		if e.pin != nil && e.pin.up() || e.joint != nil && e.joint.kind == studJoint {
			s.upper, s.lower = tip{box: true}, e.tip()
		} else {
			s.upper, s.lower = e.tip(), tip{box: true}
		}
		r.broken = append(r.broken, s)
		p.addStrand(s)
	}
}

func (p *plan) addStrand(s *strand) {
	p.strands = append(p.strands, s)
	s.sect.strands = append(s.sect.strands, s)
}

func remove(list []*strand, drop func(*strand) bool) []*strand {
	kept := list[:0]
	for _, s := range list {
		if !drop(s) {
			kept = append(kept, s)
		}
	}
	return kept
}

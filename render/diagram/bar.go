package diagram

// makeBars collects, for each local joint and section, what ends at it there.
func (p *plan) makeBars() {
	find := map[*joint]map[*section]*bar{}
	at := func(j *joint, s *section) *bar {
		if find[j] == nil {
			find[j] = map[*section]*bar{}
		}
		b := find[j][s]
		if b == nil {
			b = &bar{joint: j, sect: s}
			find[j][s] = b
			j.gaps = append(j.gaps, b)
		}
		return b
	}
	for _, j := range p.joints {
		j.gaps = nil
		if j.kind != localJoint {
			continue
		}
		for _, q := range p.pinsOf(j) {
			if q.loose {
				continue
			}
			at(j, q.item.sect).join(&member{pin: q}, !q.up())
		}
	}
	for _, s := range p.strands {
		for i, t := range []*tip{&s.upper, &s.lower} {
			if t.joint != nil && t.joint.kind == localJoint {
				t.bar = at(t.joint, s.sect)
				t.bar.join(&member{strand: s}, i == 1)
			}
		}
	}
}

func (b *bar) join(m *member, fromAbove bool) {
	if fromAbove {
		b.uppers = append(b.uppers, m)
	} else {
		b.lowers = append(b.lowers, m)
	}
}

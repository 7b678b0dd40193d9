package circuit

// prepare brings what is derived from laws and switches up to date.
func (s *Solver) prepare() error {
	if s.err != nil {
		return s.err
	}
	if !s.stale {
		return nil
	}
	if err := s.check(); err != nil {
		return err
	}
	if s.rekinded {
		s.sortByKind()
	}
	if s.switched {
		s.findParts()
	}
	s.stampStraight()
	s.stampBent()
	s.stale, s.switched, s.rekinded = false, false, false
	return nil
}

// check looks at the laws once after each change of one; switching changes none.
func (s *Solver) check() error {
	if !s.unchecked {
		return nil
	}
	for b := range s.laws {
		if err := s.laws[b].check(Branch(b), s.nodes); err != nil {
			return err
		}
	}
	s.unchecked = false
	return nil
}

// sortByKind lists the branches that need more than one stamp.
func (s *Solver) sortByKind() {
	s.bents = s.bents[:0]
	s.gov.regs = s.gov.regs[:0]
	for b, l := range s.laws {
		s.index[b] = -1
		switch l.Kind {
		case Resistor, Source:
		case Regulator:
			s.index[b] = int32(len(s.gov.regs))
			s.gov.regs = append(s.gov.regs, regulator{b: Branch(b), a: s.ends[b][0], z: s.ends[b][1]})
		default:
			s.index[b] = int32(len(s.bents))
			s.bents = append(s.bents, bent{b: Branch(b), a: s.ends[b][0], z: s.ends[b][1], place: s.place[b]})
		}
	}
	s.gov.allot()
}

func (s *Solver) stampStraight() {
	clear(s.baseLink)
	clear(s.baseRef)
	clear(s.baseIn)
	for b := range s.laws {
		s.gain[b], s.emf[b] = 0, 0
		if s.open[b] || s.index[b] >= 0 {
			continue
		}
		l := &s.laws[b]
		g := l.conductance()
		s.gain[b] = g
		stamp(s.baseLink, s.baseRef, s.place[b], g)
		if l.Kind == Source {
			s.emf[b] = l.Volt
			s.baseIn[s.ends[b][0]] += g * l.Volt
			s.baseIn[s.ends[b][1]] -= g * l.Volt
		}
	}
}

func stamp(link, ref []float64, place int32, g float64) {
	switch {
	case place >= 0:
		link[place] += g
	case place != noPlace:
		ref[^place] += g
	}
}

func (s *Solver) stampBent() {
	for i := range s.bents {
		e := &s.bents[i]
		e.setLaw(s.laws[e.b])
		e.open = s.open[e.b]
	}
	for i := range s.gov.regs {
		r := &s.gov.regs[i]
		l := s.laws[r.b]
		r.volt, r.amp = l.Volt, l.Amp
		r.sa, r.sz = s.at[l.SenseA], s.at[l.SenseB]
		r.able = !s.open[r.b] && r.a != r.z && s.part[r.a] == s.part[r.z] && s.part[r.sa] == s.part[r.sz]
	}
	s.gov.rank()
}

// pass eliminates the network with the lines as they lie and finds its
// voltages, regulators included. It is false if there is no stable answer.
func (s *Solver) pass() bool {
	s.passes++
	copy(s.f.link, s.baseLink)
	copy(s.f.ref, s.baseRef)
	for i := range s.bents {
		e := &s.bents[i]
		stamp(s.f.link, s.f.ref, e.place, e.g)
	}
	if !s.f.eliminate() {
		return false
	}
	s.inject()
	s.f.solve(s.x)
	s.unsettled = !s.gov.act(s.f, s.x)
	s.push()
	return true
}

// inject sets x to the currents pushed into each unknown, regulators left out.
func (s *Solver) inject() {
	copy(s.x, s.baseIn)
	for i := range s.bents {
		if e := &s.bents[i]; e.s != 0 {
			s.x[e.a] += e.s
			s.x[e.z] -= e.s
		}
	}
}

// push solves again with what the regulators push, if they push at all.
func (s *Solver) push() {
	pushing := false
	for i := range s.gov.regs {
		pushing = pushing || s.gov.regs[i].pushed != 0
	}
	if !pushing {
		return
	}
	s.inject()
	for i := range s.gov.regs {
		r := &s.gov.regs[i]
		s.x[r.a] += r.pushed
		s.x[r.z] -= r.pushed
	}
	s.f.solve(s.x)
}

// sharpen takes away what rounding left between senses and set points.
func (s *Solver) sharpen() {
	if s.gov.correct(s.x) {
		s.push()
	}
}

package circuit

// prepare brings what is derived from laws and switches up to date.
func (s *Solver) prepare() error {
	if s.err != nil {
		return s.err
	}
	if !s.stale {
		return nil
	}
	if s.rekinded {
		s.sortByKind()
	}
	if err := s.renew(); err != nil {
		return err
	}
	if s.switched {
		s.findParts()
	}
	s.stampStraight()
	s.switchBent()
	s.stale, s.switched, s.rekinded = false, false, false
	return nil
}

// renew takes over the laws that are new, if they are sound.
func (s *Solver) renew() error {
	for _, b := range s.fresh {
		if err := s.laws[b].check(b, s.nodes); err != nil {
			return err
		}
	}
	for _, b := range s.fresh {
		s.take(b)
	}
	s.fresh = s.fresh[:0]
	s.gov.rank()
	return nil
}

func (s *Solver) take(b Branch) {
	l := s.laws[b]
	s.gain[b], s.emf[b] = 0, 0
	switch l.Kind {
	case Resistor:
		s.gain[b] = l.conductance()
	case Source:
		s.gain[b], s.emf[b] = l.conductance(), l.Volt
	case Regulator:
		r := &s.gov.regs[s.index[b]]
		r.volt, r.amp = l.Volt, l.Amp
		r.sa, r.sz = s.at[l.SenseA], s.at[l.SenseB]
		for _, u := range [...]int32{r.a, r.z, r.sa, r.sz} {
			s.f.touch(u)
		}
	default:
		e := &s.bents[s.index[b]]
		e.setLaw(l)
		s.f.touch(min(e.a, e.z))
	}
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
	s.fresh = s.fresh[:0]
	for b := range s.laws {
		s.fresh = append(s.fresh, Branch(b))
	}
}

// stampStraight lays the straight branches and eliminates the unknowns that no
// bent one reaches: that much is the same in every pass.
func (s *Solver) stampStraight() {
	f := s.f
	clear(f.link)
	clear(f.ref)
	clear(s.baseIn)
	for b, g := range s.gain {
		if g == 0 || s.open[b] {
			continue
		}
		stamp(f.link, f.ref, s.place[b], g)
		if e := s.emf[b]; e != 0 {
			s.baseIn[s.ends[b][0]] += g * e
			s.baseIn[s.ends[b][1]] -= g * e
		}
	}
	f.eliminateStill() // never past settling: straight conductances are positive
	f.gather(s.baseIn, 0, f.still)
	s.baseLink = append(s.baseLink[:0], f.link[f.ptr[f.still]:]...)
	s.baseRef = append(s.baseRef[:0], f.ref[f.still:]...)
}

func stamp(link, ref []float64, place int32, g float64) {
	switch {
	case place >= 0:
		link[place] += g
	case place != noPlace:
		ref[^place] += g
	}
}

func (s *Solver) switchBent() {
	for i := range s.bents {
		e := &s.bents[i]
		e.open = s.open[e.b]
	}
	for i := range s.gov.regs {
		r := &s.gov.regs[i]
		r.able = !s.open[r.b] && r.a != r.z && s.part[r.a] == s.part[r.z] && s.part[r.sa] == s.part[r.sz]
	}
}

// pass eliminates the network with the lines as they lie and finds its
// voltages, regulators included. It is false if there is no stable answer.
func (s *Solver) pass() bool {
	s.passes++
	f := s.f
	copy(f.link[f.ptr[f.still]:], s.baseLink)
	copy(f.ref[f.still:], s.baseRef)
	for i := range s.bents {
		e := &s.bents[i]
		stamp(f.link, f.ref, e.place, e.g)
	}
	if !f.eliminateRest() {
		return false
	}
	s.inject()
	s.findVolts()
	s.unsettled = !s.gov.act(f, s.x)
	s.push()
	return true
}

// inject sets x to the currents pushed into each unknown, regulators left out.
func (s *Solver) inject() {
	still := s.f.still
	copy(s.x[still:], s.baseIn[still:])
	for i := range s.bents {
		if e := &s.bents[i]; e.s != 0 {
			s.x[e.a] += e.s
			s.x[e.z] -= e.s
		}
	}
}

// findVolts turns the currents in x into voltages, still unknowns left out.
func (s *Solver) findVolts() {
	f := s.f
	f.gather(s.x, f.still, f.n)
	s.x[f.n] = 0
	f.spread(s.x, f.still, f.n)
}

// complete finds the voltages of the still unknowns as well.
func (s *Solver) complete() {
	f := s.f
	copy(s.x[:f.still], s.baseIn[:f.still])
	f.spread(s.x, 0, f.still)
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
	s.findVolts()
}

// sharpen takes away what rounding left between senses and set points.
func (s *Solver) sharpen() {
	if s.gov.correct(s.x) {
		s.push()
	}
}

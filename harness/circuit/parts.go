package circuit

// findParts numbers what hangs together through branches that are on: 0 is what
// is tied to the reference, then 1, 2, ... in the order of the lowest node. A
// regulator ties nothing together, for it has no conductance. The list is made
// anew each time, because solutions keep it.
func (s *Solver) findParts() {
	f := newForest(s.f.n + 1)
	for b, e := range s.ends {
		if !s.open[b] && s.laws[b].Kind != Regulator {
			f.unite(e[0], e[1])
		}
	}
	s.part = make([]int32, s.f.n+1)
	for i := range s.part {
		s.part[i] = -1
	}
	count := int32(0)
	for _, u := range s.at {
		r := f.root(u)
		if s.part[r] < 0 {
			s.part[r] = count
			count++
		}
	}
	for u := range s.part {
		s.part[u] = s.part[f.root(int32(u))]
	}
}

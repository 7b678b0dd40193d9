package circuit

// findParts numbers what hangs together through branches that are on: 0 is what
// is tied to the reference, then 1, 2, ... in the order of the lowest node. A
// regulator ties nothing together, for it has no conductance.
func (s *Solver) findParts() {
	if s.lasting == nil {
		s.joinLasting()
	}
	f := s.sets
	copy(f, s.lasting)
	for _, b := range s.moved {
		if !s.open[b] && s.ties(b) {
			f.unite(s.ends[b][0], s.ends[b][1])
		}
	}
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

// joinLasting finds what the branches tie together that were never switched:
// that much holds until another one is.
func (s *Solver) joinLasting() {
	if s.sets == nil {
		s.sets, s.part = make(forest, s.f.n+1), make([]int32, s.f.n+1)
	}
	f := newForest(s.f.n + 1)
	for b, e := range s.ends {
		if !s.moves[b] && s.ties(Branch(b)) {
			f.unite(e[0], e[1])
		}
	}
	for i := range f {
		f[i] = f.root(int32(i))
	}
	s.lasting = f
}

func (s *Solver) ties(b Branch) bool { return s.index[b] < 0 || s.laws[b].Kind != Regulator }

// forest is a union-find over 0..n-1. The root of a set is always its lowest
// member, so that sets are numbered the same way however they were united.
type forest []int32

func newForest(n int) forest {
	f := make(forest, n)
	f.scatter()
	return f
}

// scatter makes every member a set of its own.
func (f forest) scatter() {
	for i := range f {
		f[i] = int32(i)
	}
}

func (f forest) root(i int32) int32 {
	for f[i] != i {
		f[i] = f[f[i]]
		i = f[i]
	}
	return i
}

func (f forest) unite(i, j int32) {
	i, j = f.root(i), f.root(j)
	switch {
	case i < j:
		f[j] = i
	case j < i:
		f[i] = j
	}
}

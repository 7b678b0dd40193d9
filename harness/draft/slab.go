package draft

// slab hands out small slices from large blocks: a draft of ten thousand
// wires is some hundred thousand words, and one allocation each would be most
// of the reading time.
type slab[T any] struct{ free []T }

const slabLen = 512

// copyOf gives a copy of src that nothing else shares or can append into.
func (s *slab[T]) copyOf(src []T) []T {
	n := len(src)
	if n == 0 {
		return nil
	}
	if n > len(s.free) {
		s.free = make([]T, max(n, slabLen))
	}
	out := s.free[:n:n]
	s.free = s.free[n:]
	copy(out, src)
	return out
}

// one gives a pointer to a fresh copy of v.
func (s *slab[T]) one(v T) *T {
	if len(s.free) == 0 {
		s.free = make([]T, slabLen)
	}
	p := &s.free[0]
	s.free = s.free[1:]
	*p = v
	return p
}

package circuit

import (
	"math"
	"slices"
)

// fronts is what eliminated unknowns hand on, each to the first that it meets:
// entry i meets row[ptr[i]:ptr[i+1]], ascending, and leaves conductances between
// them (mesh, all pairs), to the reference (toRef), and currents (amps). Kept
// whole, it lets a few unknowns be eliminated anew without taking anything away
// from a sum, which would cost digits just where a part comes loose.
type fronts struct {
	ptr, meshPtr []int32
	row          []int32
	share        []float64 // of the voltage at each of row
	toRef, amps  []float64 // beside share
	mesh         []float64
	per, cur     []float64 // 1/total, 0 without; current gathered
	held         []bool    // the reference is met directly
}

func (s *fronts) reset() {
	s.ptr, s.meshPtr = append(s.ptr[:0], 0), append(s.meshPtr[:0], 0)
	s.row, s.share, s.toRef, s.amps = s.row[:0], s.share[:0], s.toRef[:0], s.amps[:0]
	s.mesh, s.per, s.cur, s.held = s.mesh[:0], s.per[:0], s.cur[:0], s.held[:0]
}

// grow makes room for a whole pattern.
func (s *fronts) grow(p *pattern) {
	mesh, n, row := 0, p.n, len(p.row)
	for k := range n {
		d := len(p.column(k))
		mesh += d * (d - 1) / 2
	}
	s.ptr, s.meshPtr = slices.Grow(s.ptr, n), slices.Grow(s.meshPtr, n)
	s.row, s.share = slices.Grow(s.row, row), slices.Grow(s.share, row)
	s.toRef, s.amps = slices.Grow(s.toRef, row), slices.Grow(s.amps, row)
	s.mesh = slices.Grow(s.mesh, mesh)
	s.per, s.cur, s.held = slices.Grow(s.per, n), slices.Grow(s.cur, n), slices.Grow(s.held, n)
}

func (s *fronts) column(i int32) []int32 { return s.row[s.ptr[i]:s.ptr[i+1]] }

// front is the unknown that is being eliminated, with those it meets.
type front struct {
	row                     []int32
	link, toRef, amps, mesh []float64
	ref, cur                float64
	pos                     []int32 // where an unknown stands in row; only for those in it
}

// open makes room for the unknowns in row and sets all sums to nothing.
func (w *front) open() {
	d := len(w.row)
	w.link, w.toRef, w.amps = resized(w.link, d), resized(w.toRef, d), resized(w.amps, d)
	w.mesh = resized(w.mesh, d*(d-1)/2)
	w.ref, w.cur = 0, 0
	for i, r := range w.row {
		w.pos[r] = int32(i)
	}
}

// resized is a list of n zeros in the room of an old one, if that is enough.
func resized[T int32 | float64](list []T, n int) []T {
	if cap(list) < n {
		return make([]T, n)
	}
	list = list[:n]
	clear(list)
	return list
}

// corner is where the pairs (p, p+1), (p, p+2), ... of row begin in mesh, less p+1.
func (w *front) corner(p int32) int32 {
	d := int32(len(w.row))
	return p*(2*d-p-1)/2 - p - 1
}

// merge takes over what entry i of s hands on to this front.
func (w *front) merge(s *fronts, i int32) {
	lo, hi := s.ptr[i], s.ptr[i+1]
	row, toRef, amps := s.row[lo:hi], s.toRef[lo:hi], s.amps[lo:hi]
	mesh := s.mesh[s.meshPtr[i]:s.meshPtr[i+1]]
	w.ref += toRef[0]
	w.cur += amps[0]
	for j, r := range row[1:] {
		p := w.pos[r]
		w.link[p] += mesh[j]
		w.toRef[p] += toRef[j+1]
		w.amps[p] += amps[j+1]
	}
	mesh = mesh[len(row)-1:]
	for j := 1; j < len(row)-1; j++ {
		at := w.corner(w.pos[row[j]])
		for k, r := range row[j+1:] {
			w.mesh[at+w.pos[r]] += mesh[k]
		}
		mesh = mesh[len(row)-j-1:]
	}
}

// eliminate is star to mesh: only sums, products and quotients of what is not
// negative. A conductance without end is an ideal link and merges two points.
func (w *front) eliminate(s *fronts) {
	total, ideal := w.ref, -1
	for i, g := range w.link {
		total += g
		if ideal < 0 && math.IsInf(g, 1) {
			ideal = i
		}
	}
	per := 0.0
	switch {
	case math.IsInf(w.ref, 1):
		s.share = append(s.share, make([]float64, len(w.link))...)
		for i, g := range w.link {
			w.toRef[i] += g
		}
	case ideal >= 0:
		w.become(s, int32(ideal))
	case total > 0:
		per = 1 / total
		w.spread(s, per)
	default:
		s.share = append(s.share, w.link...) // all 0: a part that floats ends here
	}
	s.row = append(s.row, w.row...)
	s.toRef, s.amps, s.mesh = append(s.toRef, w.toRef...), append(s.amps, w.amps...), append(s.mesh, w.mesh...)
	s.per, s.cur, s.held = append(s.per, per), append(s.cur, w.cur), append(s.held, w.ref > 0)
	s.ptr, s.meshPtr = append(s.ptr, int32(len(s.row))), append(s.meshPtr, int32(len(s.mesh)))
}

func (w *front) spread(s *fronts, per float64) {
	for i, g := range w.link {
		share := g * per
		s.share = append(s.share, share)
		w.toRef[i] += share * w.ref
		w.amps[i] += share * w.cur
		at := w.corner(int32(i))
		for j := i + 1; j < len(w.link); j++ {
			w.mesh[at+int32(j)] += share * w.link[j]
		}
	}
}

// become makes the front one point with the i-th of its row.
func (w *front) become(s *fronts, i int32) {
	for j, g := range w.link {
		share := 0.0
		if int32(j) == i {
			share = 1
		} else {
			w.mesh[w.corner(min(i, int32(j)))+max(i, int32(j))] += g
		}
		s.share = append(s.share, share)
	}
	w.toRef[i] += w.ref
	w.amps[i] += w.cur
}

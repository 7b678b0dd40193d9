package circuit

// factor holds the numbers of one elimination. The diagonal is never formed:
// link holds the conductance between unknowns, ref the one to the reference,
// and a node's total is their sum. Eliminating a node of total G adds
// g_a g_b / G between its neighbors and g_a g_ref / G to their reference term.
// While all conductances are positive nothing is ever subtracted, so that small
// leaks keep all their digits, and a part that floats ends in a pivot of exactly 0.
type factor struct {
	*pattern
	link, ref []float64 // as stamped, then as eliminated
	share     []float64 // link / total, beside link
	perTotal  []float64 // 1 / total, 0 where the part floats
	scratch   []float64 // all 0 between calls
}

func newFactor(p *pattern) *factor {
	return &factor{
		pattern: p,
		link:    make([]float64, len(p.row)), ref: make([]float64, p.n),
		share: make([]float64, len(p.row)), perTotal: make([]float64, p.n),
		scratch: make([]float64, p.n+1),
	}
}

// eliminateStill works on the unknowns that no bent law reaches: what comes of
// them holds for every pass.
func (f *factor) eliminateStill() bool { return f.eliminate(0, f.still, f.pair) }

// eliminateRest works on all others.
func (f *factor) eliminateRest() bool { return f.eliminate(f.still, f.n, f.pair[f.stillPairs:]) }

// eliminate works on what has been stamped into link and ref. It is false if a
// pivot is negative, which only negative conductances can bring about: then the
// network is past the point where it can settle.
func (f *factor) eliminate(from, to int, pair []int32) bool {
	for k := from; k < to; k++ {
		lo, hi := f.ptr[k], f.ptr[k+1]
		near, link, share := f.row[lo:hi], f.link[lo:hi], f.share[lo:hi]
		toRef := f.ref[k]
		total := toRef
		for _, g := range link {
			total += g
		}
		if !(total > 0) {
			if total != 0 || !allZero(link) {
				return false
			}
			f.perTotal[k] = 0
			clear(share)
			pair = pair[pairs(len(near)):]
			continue
		}
		per := 1 / total
		f.perTotal[k] = per
		if len(near) > wide {
			f.spreadWide(near, link, share, per, toRef)
			continue
		}
		for i, a := range near {
			s := link[i] * per
			share[i] = s
			f.ref[a] += s * toRef
			rest := link[i+1:]
			for j, g := range rest {
				f.link[pair[j]] += s * g
			}
			pair = pair[len(rest):]
		}
	}
	return true
}

// pairs is how many places a column of d neighbors has in the table of pairs.
func pairs(d int) int {
	if d > wide {
		return 0
	}
	return d * (d - 1) / 2
}

// spreadWide walks a neighbor's column beside the rest of this one to find where
// their links are kept.
func (f *factor) spreadWide(near []int32, link, share []float64, per, toRef float64) {
	for i, a := range near {
		s := link[i] * per
		share[i] = s
		f.ref[a] += s * toRef
		at := f.ptr[a]
		for j := i + 1; j < len(near); j++ {
			for f.row[at] != near[j] {
				at++
			}
			f.link[at] += s * link[j]
		}
	}
}

func allZero(list []float64) bool {
	for _, v := range list {
		if v != 0 {
			return false
		}
	}
	return true
}

// gather hands the currents injected at some unknowns (amperes) on to those
// that they meet. The reference is the last of the n+1 places of x.
func (f *factor) gather(x []float64, from, to int) {
	ptr, row, share := f.ptr, f.row, f.share
	for k := from; k < to; k++ {
		if v := x[k]; v != 0 {
			for p := ptr[k]; p < ptr[k+1]; p++ {
				x[row[p]] += share[p] * v
			}
		}
	}
}

// spread turns gathered currents into voltages, given those of all later
// unknowns. A floating part is measured from its own last node, which is put at 0.
func (f *factor) spread(x []float64, from, to int) {
	ptr, row, share := f.ptr, f.row, f.share
	for k := to - 1; k >= from; k-- {
		v := x[k] * f.perTotal[k]
		for p := ptr[k]; p < ptr[k+1]; p++ {
			v += share[p] * x[row[p]]
		}
		x[k] = v
	}
}

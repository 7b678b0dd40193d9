package circuit

// trail is what one ampere pushed in at one unknown and taken out at another
// leaves behind on the way down the elimination: only the unknowns on the two
// paths to the end are touched, some dozens even in a large harness.
type trail struct {
	at []int32 // ascending
	y  []float64
}

// trace follows one ampere in at a and out at z through the factor as it stands.
func (f *factor) trace(t *trail, a, z int32) {
	t.at, t.y = t.at[:0], t.y[:0]
	w := f.scratch
	w[a]++
	w[z]--
	for end := int32(f.n); ; {
		k := min(a, z)
		if k == end {
			break
		}
		if a == k {
			a = f.after(k)
		}
		if z == k {
			z = f.after(k)
		}
		v := w[k]
		w[k] = 0
		t.at, t.y = append(t.at, k), append(t.y, v)
		for p := f.ptr[k]; p < f.ptr[k+1]; p++ {
			w[f.row[p]] += f.share[p] * v
		}
	}
	w[f.n] = 0
}

// after is the first unknown that the elimination of k touches.
func (f *factor) after(k int32) int32 {
	if f.ptr[k] == f.ptr[k+1] {
		return int32(f.n)
	}
	return f.row[f.ptr[k]]
}

// between is by how many volts the ends of one trail part when an ampere takes
// the other: an ohm that works both ways (reciprocity).
func (f *factor) between(s, t *trail) float64 {
	sum, j := 0.0, 0
	for i, k := range s.at {
		for j < len(t.at) && t.at[j] < k {
			j++
		}
		if j == len(t.at) {
			break
		}
		if t.at[j] == k {
			sum += s.y[i] * t.y[j] * f.perTotal[k]
		}
	}
	return sum
}

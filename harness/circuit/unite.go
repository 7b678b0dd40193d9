package circuit

// forest is a union-find over 0..n-1. The root of a set is always its lowest
// member, so that sets are numbered the same way however they were united.
type forest []int32

func newForest(n int) forest {
	f := make(forest, n)
	for i := range f {
		f[i] = int32(i)
	}
	return f
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

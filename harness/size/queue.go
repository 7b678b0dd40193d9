package size

// ranked is what a queue orders.
type ranked[T any] interface {
	// before reports whether it is taken out ahead of another. Two that are
	// not before each other are the same, so that the order of putting them in
	// does not matter.
	before(T) bool
}

// queue is a binary heap of values, without the boxing of container/heap.
type queue[T ranked[T]] []T

func (q *queue[T]) push(x T) {
	h := append(*q, x)
	i := len(h) - 1
	for i > 0 {
		up := (i - 1) / 2
		if !x.before(h[up]) {
			break
		}
		h[i] = h[up]
		i = up
	}
	h[i] = x
	*q = h
}

// pop takes the first out of a queue that is not empty.
func (q *queue[T]) pop() T {
	h := *q
	first, n := h[0], len(h)-1
	x := h[n]
	h = h[:n]
	*q = h
	i := 0
	for {
		down := 2*i + 1
		if down >= n {
			break
		}
		if other := down + 1; other < n && h[other].before(h[down]) {
			down = other
		}
		if !h[down].before(x) {
			break
		}
		h[i] = h[down]
		i = down
	}
	if n > 0 {
		h[i] = x
	}
	return first
}

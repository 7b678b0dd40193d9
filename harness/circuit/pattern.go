package circuit

import "slices"

// pattern is the shape of the elimination, worked out once per network.
// Unknowns are numbered in the order in which they are eliminated. Unknown k
// meets the later unknowns row[ptr[k]:ptr[k+1]], ascending.
type pattern struct {
	n        int
	ptr, row []int32
	// pair lists, column by column, where the link between each two neighbors
	// of a narrow column is kept; a wide column finds them by a merge instead.
	pair []int32
	// still is how many unknowns are eliminated before the first one that any
	// bent law touches or that stands behind such a one; stillPairs is where
	// the table of pairs goes on from there.
	still, stillPairs int
}

// newPattern orders the graph on n points given by edges and returns its
// pattern together with the unknown of each point. Points that bent laws touch
// come last, as far as the order of elimination stays equally good.
func newPattern(n int, edges [][2]int32, bent []bool) (*pattern, []int32) {
	e, still := minimumDegree(neighbors(n, edges), bent).stillFirst(bent)
	at := make([]int32, n)
	for k, v := range e.order {
		at[v] = int32(k)
	}
	for i, v := range e.row {
		e.row[i] = at[v]
	}
	p := &pattern{n: n, ptr: e.ptr, row: e.row, still: still}
	for k := range n {
		slices.Sort(p.column(k))
	}
	for k := range n {
		p.addPairs(p.column(k))
	}
	p.countPairs()
	return p, at
}

// stillFirst moves up what no bent law touches and what stands behind no such
// node. That is another order of the same elimination: what a node meets later
// on stands behind it in both. It returns how many were moved up.
func (e elimination) stillFirst(bent []bool) (elimination, int) {
	n := len(e.order)
	at := make([]int32, n) // of each node in the order
	for k, v := range e.order {
		at[v] = int32(k)
	}
	moves := make([]bool, n)
	for k, v := range e.order {
		if moves[k] = moves[k] || bent[v]; moves[k] {
			for _, w := range e.row[e.ptr[k]:e.ptr[k+1]] {
				moves[at[w]] = true
			}
		}
	}
	o := elimination{order: make([]int32, 0, n), ptr: make([]int32, 1, n+1), row: make([]int32, 0, len(e.row))}
	move := func(late bool) {
		for k, v := range e.order {
			if moves[k] == late {
				o.order = append(o.order, v)
				o.row = append(o.row, e.row[e.ptr[k]:e.ptr[k+1]]...)
				o.ptr = append(o.ptr, int32(len(o.row)))
			}
		}
	}
	move(false)
	still := len(o.order)
	move(true)
	return o, still
}

// neighbors returns the neighbor lists of a graph, loops and repeats left out.
func neighbors(n int, edges [][2]int32) [][]int32 {
	adj := make([][]int32, n)
	for _, e := range edges {
		if e[0] != e[1] {
			adj[e[0]] = append(adj[e[0]], e[1])
			adj[e[1]] = append(adj[e[1]], e[0])
		}
	}
	for v := range adj {
		slices.Sort(adj[v])
		adj[v] = slices.Compact(adj[v])
	}
	return adj
}

func (p *pattern) column(k int) []int32 { return p.row[p.ptr[k]:p.ptr[k+1]] }

func (p *pattern) addPairs(near []int32) {
	if len(near) > wide {
		return
	}
	for i, a := range near {
		for _, b := range near[i+1:] {
			p.pair = append(p.pair, p.place(a, b))
		}
	}
}

// touch notes that a bent law stands in the column of an unknown.
func (p *pattern) touch(u int32) {
	if int(u) < p.still {
		p.still = int(u)
		p.countPairs()
	}
}

func (p *pattern) countPairs() {
	p.stillPairs = 0
	for k := range p.still {
		p.stillPairs += pairs(len(p.column(k)))
	}
}

// place is where the link between unknowns a < b is kept, or -1.
func (p *pattern) place(a, b int32) int32 {
	i, ok := slices.BinarySearch(p.column(int(a)), b)
	if !ok {
		return -1
	}
	return p.ptr[a] + int32(i)
}

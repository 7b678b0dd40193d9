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
}

// newPattern orders the graph on n points given by edges and returns its
// pattern together with the unknown of each point.
func newPattern(n int, edges [][2]int32) (*pattern, []int32) {
	e := minimumDegree(neighbors(n, edges))
	at := make([]int32, n)
	for k, v := range e.order {
		at[v] = int32(k)
	}
	for i, v := range e.row {
		e.row[i] = at[v]
	}
	p := &pattern{n: n, ptr: e.ptr, row: e.row}
	for k := range n {
		slices.Sort(p.column(k))
	}
	for k := range n {
		p.addPairs(p.column(k))
	}
	return p, at
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

// place is where the link between unknowns a < b is kept, or -1.
func (p *pattern) place(a, b int32) int32 {
	i, ok := slices.BinarySearch(p.column(int(a)), b)
	if !ok {
		return -1
	}
	return p.ptr[a] + int32(i)
}

package circuit

import "slices"

// elimination is what eliminating the nodes of a graph in some order leaves
// behind: for the k-th node eliminated, order[k], its neighbors at that moment
// are row[ptr[k]:ptr[k+1]], in no particular order.
type elimination struct {
	order, ptr, row []int32
}

// wide is the number of neighbors from which on marking the neighbors of
// neighbors is cheaper than searching for each pair.
const wide = 16

// orderer eliminates the node with the fewest neighbors; among equals one that
// no bent law reaches, else first come first served. Lists may hold dead nodes; degree counts the live ones.
type orderer struct {
	adj    [][]int32
	degree []int32
	dead   []bool
	mark   []int32
	bent   []bool    // touched by a bent law, or behind one that is gone
	bucket [][]int32 // bucket[2d]: nodes that had degree d when pushed; bucket[2d+1]: bent ones
	least  int
}

// minimumDegree orders a graph given as neighbor lists without repetition,
// which it uses up. Series and parallel runs fall out of it unaided: they are
// what has the fewest neighbors. Nodes that bent laws touch are marked in bent.
func minimumDegree(adj [][]int32, bent []bool) elimination {
	n := len(adj)
	o := &orderer{adj: adj, degree: make([]int32, n), dead: make([]bool, n), mark: make([]int32, n), bent: slices.Clone(bent)}
	for v := range adj {
		o.degree[v] = int32(len(adj[v]))
		o.mark[v] = -1
		o.push(int32(v))
	}
	e := elimination{order: make([]int32, 0, n), ptr: make([]int32, 1, n+1), row: make([]int32, 0, 3*n)}
	for len(e.order) < n {
		v := o.pop()
		start := len(e.row)
		for _, w := range o.adj[v] {
			if !o.dead[w] {
				e.row = append(e.row, w)
			}
		}
		if o.bent[v] {
			for _, w := range e.row[start:] {
				o.bent[w] = true
			}
		}
		o.remove(v, e.row[start:])
		e.order = append(e.order, v)
		e.ptr = append(e.ptr, int32(len(e.row)))
	}
	return e
}

// rank orders the nodes; the smallest goes first.
func (o *orderer) rank(v int32) int {
	d := 2 * int(o.degree[v])
	if o.bent[v] {
		d++
	}
	return d
}

func (o *orderer) push(v int32) {
	d := o.rank(v)
	for len(o.bucket) <= d {
		o.bucket = append(o.bucket, nil)
	}
	o.bucket[d] = append(o.bucket[d], v)
	o.least = min(o.least, d)
}

// pop skips entries that have been overtaken by a later push of the same node.
func (o *orderer) pop() int32 {
	for {
		queue := o.bucket[o.least]
		if len(queue) == 0 {
			o.least++
			continue
		}
		v := queue[0]
		o.bucket[o.least] = queue[1:]
		if !o.dead[v] && o.rank(v) == o.least {
			return v
		}
	}
}

// remove takes v out and makes its live neighbors neighbors of each other.
func (o *orderer) remove(v int32, near []int32) {
	o.dead[v] = true
	o.adj[v] = nil
	for _, a := range near {
		o.degree[a]--
	}
	for i, a := range near {
		if len(near) > wide {
			o.linkMarked(a, near[i+1:])
			continue
		}
		for _, b := range near[i+1:] {
			if !o.adjacent(a, b) {
				o.link(a, b)
			}
		}
	}
	for _, a := range near {
		o.push(a)
	}
}

func (o *orderer) link(a, b int32) {
	o.adj[a] = append(o.adj[a], b)
	o.adj[b] = append(o.adj[b], a)
	o.degree[a]++
	o.degree[b]++
}

func (o *orderer) linkMarked(a int32, rest []int32) {
	for _, b := range o.adj[a] {
		o.mark[b] = a
	}
	for _, b := range rest {
		if o.mark[b] != a {
			o.link(a, b)
		}
	}
}

// adjacent searches the shorter list from its end, where recent links stand:
// two hubs with many circuits between them are linked once and asked often.
func (o *orderer) adjacent(a, b int32) bool {
	if o.degree[b] < o.degree[a] {
		a, b = b, a
	}
	if len(o.adj[a]) > 2*int(o.degree[a])+8 {
		o.compact(a)
	}
	list := o.adj[a]
	for i := len(list) - 1; i >= 0; i-- {
		if list[i] == b {
			return true
		}
	}
	return false
}

func (o *orderer) compact(a int32) {
	live := o.adj[a][:0]
	for _, b := range o.adj[a] {
		if !o.dead[b] {
			live = append(live, b)
		}
	}
	o.adj[a] = live
}

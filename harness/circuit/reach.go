package circuit

import "slices"

// blocks are the biconnected pieces of a Linear, found by one walk from the
// reference, and then from the first unknown of each floating part. All that
// lies below the entry of a block, at it or behind it as seen from the reference,
// stands together in the order of the walk.
type blocks struct {
	when  []int32 // place of each unknown in the walk
	end   []int32 // place behind the last that was reached through it
	above []int32 // unknown that it was reached from, -1 at a start
	entry []int32 // first unknown, after its cut vertex, of the block in which it was reached
	order []int32 // the unknowns as they were reached
	alone []bool  // of each branch: it is a bridge
}

// newBlocks walks twice: regulators join what they push between, for where their
// current can't flow it ends; but they are no way to the reference.
func newBlocks(l *Linear) *blocks {
	m := walkBlocks(l, true)
	m.alone = walkBlocks(l, false).alone
	return m
}

func walkBlocks(l *Linear, regulators bool) *blocks {
	n := len(l.x)
	m := &blocks{when: make([]int32, n), end: make([]int32, n), above: make([]int32, n),
		entry: make([]int32, n), order: make([]int32, 0, n), alone: make([]bool, len(l.g))}
	for k := range n {
		m.when[k], m.above[k] = -1, -1
	}
	w := walk{blocks: m, l: l, all: regulators, low: make([]int32, n), next: make([]int32, n), by: make([]int32, n)}
	w.from(int32(n - 1))
	for k := range int32(n) {
		if m.when[k] < 0 {
			w.from(k)
		}
	}
	for _, k := range m.order { // entries from above downward
		p := m.above[k]
		if p < 0 || w.low[k] >= m.when[p] {
			m.entry[k] = k
		} else {
			m.entry[k] = m.entry[p]
		}
		if p >= 0 && w.low[k] > m.when[p] {
			m.alone[w.by[k]] = true
		}
	}
	return m
}

type walk struct {
	*blocks
	l     *Linear
	all   bool
	low   []int32 // least place that can be reached from below without the branch by which it was
	next  []int32 // branches looked at so far
	by    []int32 // branch by which it was reached
	stack []int32
}

func (w *walk) from(start int32) {
	w.visit(start, -1, -1)
	for len(w.stack) > 0 {
		k := w.stack[len(w.stack)-1]
		touch := w.l.touch.of(k)
		if int(w.next[k]) == len(touch) {
			w.stack = w.stack[:len(w.stack)-1]
			w.end[k] = int32(len(w.order))
			if p := w.above[k]; p >= 0 {
				w.low[p] = min(w.low[p], w.low[k])
			}
			continue
		}
		b := touch[w.next[k]]
		w.next[k]++
		if b == w.by[k] || w.l.g[b] == 0 && !w.all {
			continue
		}
		e := w.l.ends[b]
		if other := e[0] + e[1] - k; w.when[other] < 0 {
			w.visit(other, k, b)
		} else {
			w.low[k] = min(w.low[k], w.when[other])
		}
	}
}

func (w *walk) visit(k, above, by int32) {
	w.when[k] = int32(len(w.order))
	w.low[k], w.above[k], w.by[k] = w.when[k], above, by
	w.order = append(w.order, k)
	w.stack = append(w.stack, k)
}

// Bridge says whether opening branch b alone cuts something off: no other way
// leads from one end to the other. A bridge carries no current but what a
// regulator pushes across. False for a branch that is off or does not exist.
func (l *Linear) Bridge(b Branch) bool {
	return b >= 0 && int(b) < len(l.g) && l.pieces().alone[b]
}

// pieces walks the network when it is first asked for.
func (l *Linear) pieces() *blocks {
	if l.graph == nil {
		l.graph = newBlocks(l)
	}
	return l.graph
}

// Reach lists the nodes, ascending, whose voltage the changes can move, together
// or each alone: no other node's moves at all. A change of a branch moves what
// lies in its biconnected piece, seen from the reference, and behind it; a tie
// moves that of all the pieces on the way between its ends. A floating part
// that a tie ties to another counts whole, and with two such ties or more the
// whole network does. Changes that do not exist reach nothing.
func (l *Linear) Reach(all ...Change) []Node {
	m := l.pieces()
	var spans [][2]int32
	across := 0
	for _, one := range all {
		a, z, ok := l.endsOf(one)
		switch {
		case !ok:
		case l.root[a] == l.root[z] || one.what == opened:
			spans = m.between(spans, a, z)
		default:
			across++
			spans = m.whole(m.whole(spans, a), z)
		}
	}
	if across > 1 {
		spans = append(spans[:0], [2]int32{1, int32(len(m.order))})
	}
	return l.nodesIn(spans)
}

// endsOf are the unknowns between which a change lies.
func (l *Linear) endsOf(one Change) (a, z int32, ok bool) {
	if one.what == tied {
		a, z = l.point(one.a), l.point(one.z)
		return a, z, a >= 0 && z >= 0
	}
	if one.what == 0 || one.b < 0 || int(one.b) >= len(l.g) {
		return 0, 0, false
	}
	e := l.ends[one.b]
	off := l.g[one.b] == 0 && l.s[one.b] == 0
	return e[0], e[1], !off || one.what == shorted
}

// between adds what lies below the entries of the blocks on the way from a to z.
func (m *blocks) between(spans [][2]int32, a, z int32) [][2]int32 {
	for a != z && a >= 0 && z >= 0 {
		if m.when[a] < m.when[z] {
			a, z = z, a
		}
		in := m.entry[a]
		spans = append(spans, [2]int32{m.when[in], m.end[in]})
		if in == m.entry[z] {
			break
		}
		a = m.above[in]
	}
	return spans
}

// whole adds the part in which k lies, unless that is the one of the reference.
func (m *blocks) whole(spans [][2]int32, k int32) [][2]int32 {
	for m.above[k] >= 0 {
		k = m.above[k]
	}
	if m.when[k] == 0 {
		return spans
	}
	return append(spans, [2]int32{m.when[k], m.end[k]})
}

func (l *Linear) nodesIn(spans [][2]int32) []Node {
	slices.SortFunc(spans, func(a, b [2]int32) int { return int(a[0] - b[0]) })
	var found []Node
	done := int32(0)
	for _, s := range spans {
		for i := max(s[0], done); i < s[1]; i++ {
			for _, n := range l.nodes.of(l.graph.order[i]) {
				found = append(found, Node(n))
			}
		}
		done = max(done, s[1])
	}
	slices.Sort(found)
	return found
}

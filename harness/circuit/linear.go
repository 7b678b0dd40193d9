package circuit

import "math"

// Linear is a network of straight lines, i = g v - s for each branch, factored
// once: then right sides (Respond), single resistances (Ohm) and changes of a few
// branches (Change) cost little each. Of a network with bent laws it holds the
// lines of the last pass, which agree with the laws where the network stands
// and say, after a change, where it would go if no law left its line: constant
// power and warming as resistances, a diode on its side of the corner, a
// regulator as the current that it pushes.
//
// Nothing is ever subtracted in it, so that what Solver promises of its voltages
// holds here too, before and after any change: while all sources stand on the
// reference with one sign, each is right to a relative 1e-12 (200 nodes,
// conductances of a ratio of 1e10); else to about 1e-12 of the greatest e.m.f.
// A current is right to some units of rounding of g times the volts at its ends.
//
// A Linear does not change with its solver. Several Changed of one Linear may be
// worked on side by side; everything else is for one goroutine at a time.
type Linear struct {
	at     []int32
	ends   [][2]int32
	g, s   []float64 // of each branch; both 0 if it is off
	push   []Branch  // those with s and without g: regulators
	f      *factor   // share and perTotal only
	kept   fronts
	x      []float64
	root   []int32 // of each unknown: n if tied to the reference, else the last of its part
	kids   lists   // of each unknown: those that hand on to it
	touch  lists   // of each unknown: the branches at it
	nodes  lists   // of each unknown: its nodes
	own    []float64
	ownRef []float64
	ownIn  []float64
	graph  *blocks
}

// read finds voltage and root of unknown k, eliminated as entry i, from those of later ones.
func (s *fronts) read(i, k int32, x []float64, root []int32) (v float64, r int32) {
	v, r = s.per[i]*s.cur[i], -1
	if s.held[i] {
		r = int32(len(x) - 1)
	}
	for p := s.ptr[i]; p < s.ptr[i+1]; p++ {
		v += s.share[p] * x[s.row[p]]
		if r < 0 && s.share[p] > 0 {
			r = root[s.row[p]]
		}
	}
	if r < 0 {
		r = k
	}
	return v, r
}

// point is the unknown of a node, -1 if there is no such node.
func (l *Linear) point(n Node) int32 {
	if n < 0 || int(n) >= len(l.at) {
		return -1
	}
	return l.at[n]
}

// tied says whether two nodes exist and hang together; it returns their unknowns.
func (l *Linear) tied(a, b Node) (p, q int32, ok bool) {
	p, q = l.point(a), l.point(b)
	return p, q, p >= 0 && q >= 0 && l.root[p] == l.root[q]
}

// V is the voltage of node n against the reference; ok is false if n floats or is no node.
func (l *Linear) V(n Node) (volts float64, ok bool) { return l.Across(n, 0) }

// Across is the voltage of a against b; ok is false if they do not hang together.
func (l *Linear) Across(a, b Node) (volts float64, ok bool) {
	p, q, ok := l.tied(a, b)
	if !ok {
		return 0, false
	}
	return l.x[p] - l.x[q], true
}

// I is the current through branch b from A to B by its line, in amperes; 0 if it is off or does not exist.
func (l *Linear) I(b Branch) float64 {
	if b < 0 || int(b) >= len(l.g) {
		return 0
	}
	e := l.ends[b]
	return l.g[b]*(l.x[e[0]]-l.x[e[1]]) - l.s[b]
}

// Ohm is the resistance between two nodes with all sources dead, a regulator
// open: from 0 up, by a sum of squares. ok is false if they do not hang together.
func (l *Linear) Ohm(a, b Node) (ohm float64, ok bool) {
	p, q, ok := l.tied(a, b)
	if !ok {
		return 0, false
	}
	var t trail
	l.f.trace(&t, p, q)
	return math.Max(l.f.between(&t, &t), 0), true
}

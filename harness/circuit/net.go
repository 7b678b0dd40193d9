package circuit

import (
	"fmt"
	"slices"
)

// Net is a network under construction. Node 0 exists from the start and is the
// reference; everything else is added, nothing is taken away. A Net is not
// changed by the solvers made from it.
type Net struct {
	nodes    int
	ends     [][2]Node
	laws     []Law
	joined   [][2]Node
	firstErr error
}

// NewNet returns a network that holds nothing but the reference node 0.
func NewNet() *Net {
	return &Net{nodes: 1}
}

// AddNode adds a node and returns its number: 1, 2, 3 and so on.
func (n *Net) AddNode() Node {
	n.nodes++
	return Node(n.nodes - 1)
}

// Nodes is how many nodes there are, the reference counted.
func (n *Net) Nodes() int { return n.nodes }

// Branches is how many branches there are.
func (n *Net) Branches() int { return len(n.laws) }

// Ends are the nodes A and B of a branch; ok is false if there is no such branch.
func (n *Net) Ends(b Branch) (a, z Node, ok bool) {
	if b < 0 || int(b) >= len(n.ends) {
		return 0, 0, false
	}
	return n.ends[b][0], n.ends[b][1], true
}

// Law is the law of a branch as it was added, the zero one if there is no such branch.
func (n *Net) Law(b Branch) Law {
	if b < 0 || int(b) >= len(n.laws) {
		return Law{}
	}
	return n.laws[b]
}

// Add puts a branch from a to b and returns its number: 0, 1, 2 and so on. A
// node that does not exist is remembered as a fault that Solve returns.
func (n *Net) Add(a, b Node, law Law) Branch {
	at := Branch(len(n.laws))
	if !n.has(a) || !n.has(b) {
		n.fault(fmt.Errorf("branch %d lies between nodes %d and %d of a network of %d", at, a, b, n.nodes))
		a, b = 0, 0
	}
	n.ends = append(n.ends, [2]Node{a, b})
	n.laws = append(n.laws, law)
	return at
}

// Grow makes room for that many more branches, for a caller who knows.
func (n *Net) Grow(branches int) {
	n.ends, n.laws = slices.Grow(n.ends, branches), slices.Grow(n.laws, branches)
}

// Join makes a and b one point, as an ideal link would. What flows through the
// link itself is not known afterwards: a loop of such links has no one answer.
func (n *Net) Join(a, b Node) {
	if !n.has(a) || !n.has(b) {
		n.fault(fmt.Errorf("link between nodes %d and %d of a network of %d", a, b, n.nodes))
		return
	}
	n.joined = append(n.joined, [2]Node{a, b})
}

func (n *Net) has(a Node) bool { return a >= 0 && int(a) < n.nodes }

func (n *Net) fault(err error) {
	if n.firstErr == nil {
		n.firstErr = err
	}
}

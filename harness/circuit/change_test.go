package circuit

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

func linearOf(t *testing.T, n *Net) *Linear {
	t.Helper()
	l, err := NewSolver(n).Linearize()
	require.NoError(t, err)
	return l
}

// rebuilt is the network with the changes made in its plan, for a solver that
// starts from nothing. Branches keep their numbers; one that is shorted lies on
// between its joined ends, where it says nothing.
func rebuilt(n *Net, off []bool, all []Change) (*Net, []bool) {
	m := chain(n.Nodes() - 1)
	off = slices.Clone(off)
	for b, l := range n.laws {
		m.Add(n.ends[b][0], n.ends[b][1], l)
	}
	for _, j := range n.joined {
		m.Join(j[0], j[1])
	}
	for _, c := range all {
		switch {
		case c.what == opened:
			off[c.b] = true
		case c.what == shorted:
			m.Join(n.ends[c.b][0], n.ends[c.b][1])
		case c.ohm == 0:
			m.Join(c.a, c.z)
		default:
			m.Add(c.a, c.z, ohms(c.ohm))
		}
	}
	return m, append(off, make([]bool, m.Branches()-len(off))...)
}

func solvedOff(t *testing.T, n *Net, off []bool) (*Solver, *Solution) {
	t.Helper()
	s := NewSolver(n)
	for b, o := range off {
		s.SetOn(Branch(b), !o)
	}
	sol, err := s.Solve(context.Background())
	require.NoError(t, err)
	return s, sol
}

// randomChanges are one to six, ties between any two nodes among them.
func randomChanges(rng *rand.Rand, n *Net) []Change {
	var all []Change
	for range 1 + rng.IntN(6) {
		b := Branch(rng.IntN(n.Branches()))
		a, z := Node(rng.IntN(n.Nodes())), Node(rng.IntN(n.Nodes()))
		switch rng.IntN(8) {
		case 0:
			all = append(all, Short(b))
		case 1:
			all = append(all, Tie(a, z, 0))
		case 2:
			all = append(all, Tie(a, z, math.Pow(10, 6*rng.Float64()-3)))
		default:
			all = append(all, Open(b))
		}
		if rng.IntN(4) == 0 {
			return all
		}
	}
	return all
}

// mixedNet has trees (bridges), straps in parallel and in loops, islands, links.
func mixedNet(rng *rand.Rand, nodes int, ratio float64) (*Net, []bool) {
	n := chain(nodes)
	law := func() Law {
		r := 1e-3 * math.Pow(ratio, rng.Float64())
		if rng.IntN(6) == 0 {
			return source(rng.Float64()*14, r)
		}
		return ohms(r)
	}
	for a := 1; a <= nodes; a++ {
		if rng.IntN(9) > 0 {
			n.Add(Node(a), Node(rng.IntN(a)), law())
		}
	}
	for range 1 + rng.IntN(nodes) {
		a, z := Node(rng.IntN(nodes+1)), Node(rng.IntN(nodes+1))
		if b := rng.IntN(n.Branches() + 1); b < n.Branches() && rng.IntN(3) == 0 {
			a, z = n.ends[b][0], n.ends[b][1]
		}
		n.Add(a, z, law())
	}
	for range rng.IntN(3) {
		n.Join(Node(rng.IntN(nodes+1)), Node(rng.IntN(nodes+1)))
	}
	off := make([]bool, n.Branches())
	for b := range off {
		off[b] = rng.IntN(8) == 0
	}
	return n, off
}

// checkChange compares a change with a network built with it and solved anew:
// which nodes float, every voltage, every current, and what was said to be out of reach.
func checkChange(t *testing.T, l *Linear, c *Changed, n *Net, off []bool, all []Change) (loose int) {
	t.Helper()
	require.NoError(t, l.ChangeInto(c, all))
	m, moff := rebuilt(n, off, all)
	_, want := solvedOff(t, m, moff)
	reach := l.Reach(all...)
	var floats []Node
	for node := range Node(n.Nodes()) {
		v, ok := want.V(node)
		before, was := l.V(node)
		got, gotOK := c.V(node)
		require.Equal(t, ok, gotOK, "node %d after %v", node, all)
		require.InDelta(t, v, got, 1e-10, "node %d after %v", node, all)
		if was && !ok {
			floats = append(floats, node)
		}
		if _, in := slices.BinarySearch(reach, node); !in {
			require.Equal(t, was, ok, "node %d is out of reach of %v", node, all)
			require.InDelta(t, before, v, 1e-10, "node %d is out of reach of %v", node, all)
		}
		p := Node((int(node) + 1) % n.Nodes())
		across, ok := want.Across(node, p)
		got, gotOK = c.Across(node, p)
		require.Equal(t, ok, gotOK)
		require.InDelta(t, across, got, 1e-10)
	}
	require.Equal(t, floats, c.Floats())
	for b := range n.laws {
		if got, ok := c.I(Branch(b)); ok && c.linkOf(Branch(b)) < 0 {
			require.InDelta(t, want.I(Branch(b)), got, 1e-10+1e-10*l.g[b], "branch %d after %v", b, all)
		}
	}
	return len(floats)
}

func TestChangesAgainstNewSolving(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 4))
	loose, linked := 0, 0
	for range 250 {
		n, off := mixedNet(rng, 1+rng.IntN(40), 1e4)
		s, _ := solvedOff(t, n, off)
		l, err := s.Linearize()
		require.NoError(t, err)
		c := new(Changed)
		for range 8 {
			all := randomChanges(rng, n)
			loose += checkChange(t, l, c, n, off, all)
			linked += len(c.ties)
		}
	}
	require.Greater(t, loose, 1000, "the test has to cut nodes off")
	require.Greater(t, linked, 500, "and to add links")
}

// Columns wider than any table of pairs.
func TestChangesOfDenseNetworks(t *testing.T) {
	rng := rand.New(rand.NewPCG(32, 4))
	n := chain(wide + 9)
	for a := 1; a <= wide+9; a++ {
		for b := range a {
			n.Add(Node(a), Node(b), ohms(float64(1+rng.IntN(999))/64))
		}
	}
	n.Add(5, 0, source(12, 0.25))
	l, c := linearOf(t, n), new(Changed)
	for range 40 {
		checkChange(t, l, c, n, make([]bool, n.Branches()), randomChanges(rng, n))
	}
}

// Every node leaks to some volts through 1e12 ohm. Where the one wire of a part is
// opened, 1 - g R is 1e-5 to 1e-15, and a rank-1 formula, which divides by it,
// loses as many digits. Here every voltage is right to 1e-12 of itself, by
// rational numbers, after one change and after four.
func TestChangesKeepEveryDigit(t *testing.T) {
	rng := rand.New(rand.NewPCG(33, 4))
	worstRank1 := 0.0
	for range 12 {
		n := grounded(rng, 40, 1e10)
		for a := Node(1); a <= 40; a++ {
			n.Add(a, 0, source(1+9*rng.Float64(), 1e12))
		}
		l := linearOf(t, n)
		all := []Change{Open(Branch(rng.IntN(39)))}
		worstRank1 = max(worstRank1, checkDigits(t, l, n, all))
		all = append(all, Open(Branch(rng.IntN(39))), Open(Branch(rng.IntN(52))),
			Tie(Node(1+rng.IntN(40)), Node(1+rng.IntN(40)), 0.25))
		checkDigits(t, l, n, all)
	}
	require.Greater(t, worstRank1, 1e-6, "the test has to meet cases that are hard otherwise")
}

// checkDigits returns how wrong the rank-1 formula is for the first change.
func checkDigits(t *testing.T, l *Linear, n *Net, all []Change) (rank1 float64) {
	t.Helper()
	c, err := l.Change(all...)
	require.NoError(t, err)
	m := chain(n.Nodes() - 1)
	for at, law := range n.laws {
		if !slices.Contains(all, Open(Branch(at))) {
			m.Add(n.ends[at][0], n.ends[at][1], law)
		}
	}
	for _, one := range all {
		if one.what == tied {
			m.Add(one.a, one.z, ohms(one.ohm))
		}
	}
	b := all[0].b
	a, z := n.ends[b][0], n.ends[b][1]
	ohm, _ := l.Ohm(a, z)
	var r Response
	require.NoError(t, l.Respond(&r, []Push{{From: z, To: a, Amp: l.I(b) / (1 - l.g[b]*ohm)}}))
	for node, exactly := range exact(m) {
		want, _ := exactly.Float64()
		got, ok := c.V(Node(node))
		require.True(t, ok)
		require.InDelta(t, want, got, 1e-12*math.Abs(want))
		before, _ := l.V(Node(node))
		moved, _ := r.V(Node(node))
		if want != 0 {
			rank1 = max(rank1, math.Abs(before+moved-want)/math.Abs(want))
		}
	}
	return rank1
}

// All at once: every branch opened leaves nothing tied, and says so of every node.
func TestOpenEverything(t *testing.T) {
	n, off := mixedNet(rand.New(rand.NewPCG(34, 4)), 30, 1e3)
	s, _ := solvedOff(t, n, off)
	l, err := s.Linearize()
	require.NoError(t, err)
	var all []Change
	for b := range n.Branches() {
		all = append(all, Open(Branch(b)))
	}
	require.NotZero(t, checkChange(t, l, new(Changed), n, off, all))
}

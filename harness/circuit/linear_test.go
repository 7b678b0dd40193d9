package circuit

import (
	"context"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// asLines is the network of lines that l stands for, written as a plan: a line
// with an offset is a source, the current of a regulator one that is at its limit.
func asLines(n *Net, l *Linear) (*Net, []bool) {
	m := chain(n.Nodes() - 1)
	off := make([]bool, n.Branches())
	for b, e := range n.ends {
		a, z := e[0], e[1]
		switch g, s := l.g[b], l.s[b]; {
		case g == 0 && s == 0:
			m.Add(a, z, ohms(1))
			off[b] = true
		case g == 0:
			m.Add(a, z, Law{Kind: Regulator, Volt: 1e6, Amp: s, SenseA: a, SenseB: z})
		case s < 0:
			m.Add(z, a, source(-s/g, 1/g))
		default:
			m.Add(a, z, source(s/g, 1/g))
		}
	}
	return m, off
}

// The lines of a solved harness give its voltages and currents, and changes of
// them those of a network of the same lines: with alternators, and where the
// alternator loses its way back.
func TestLinesOfSolvedHarness(t *testing.T) {
	rng := rand.New(rand.NewPCG(35, 4))
	for seed := range uint64(4) {
		h := newHarnessLike(120, seed)
		s := NewSolver(h.Net)
		h.step(s, seed)
		sol := checkState(t, s)
		l, err := s.Linearize()
		require.NoError(t, err)
		for node := range Node(h.Nodes()) {
			want, ok := sol.V(node)
			got, gotOK := l.V(node)
			require.Equal(t, ok, gotOK)
			require.InDelta(t, want, got, 1e-11)
		}
		for b := range h.laws {
			require.InDelta(t, sol.I(Branch(b)), l.I(Branch(b)), 1e-8)
		}
		m, off := asLines(h.Net, l)
		c := new(Changed)
		for range 20 {
			checkChange(t, l, c, m, off, randomChanges(rng, m))
		}
		for _, b := range []Branch{0, 1, 2, 3, 4} { // the posts and straps of the first bank
			checkChange(t, l, c, m, off, []Change{Open(b)})
		}
	}
}

// An alternator that holds 14 V through 1 ohm into 7 ohm pushes 2 A. Opened, or
// with either of its wires off, it pushes nothing, and the cut-off side floats.
func TestRegulatorLosesItsWay(t *testing.T) {
	n := chain(2)
	alt := n.Add(1, 0, regulatorAcross(14, 100, 2, 0))
	wire := n.Add(1, 2, ohms(1))
	lamp := n.Add(2, 0, ohms(7))
	s := NewSolver(n)
	_, err := s.Linearize()
	require.EqualError(t, err, "branch 0 is bent and the network was not solved since its last change")
	_, err = s.Solve(context.Background())
	require.NoError(t, err)
	l, err := s.Linearize()
	require.NoError(t, err)
	near(t, 2, l.I(lamp), "14 V on 7 ohm")
	near(t, -2, l.I(alt), "a regulator that delivers counts negative")
	require.True(t, l.Bridge(wire), "though it carries 2 A: a regulator is no tie")
	c, err := l.Change(Open(wire))
	require.NoError(t, err)
	require.Equal(t, []Node{1}, c.Floats())
	for _, b := range []Branch{alt, wire, lamp} {
		amps, ok := c.I(b)
		require.True(t, ok)
		require.Zero(t, amps)
	}
	require.Equal(t, []Node{1, 2}, l.Reach(Open(wire)), "node 2 falls from 14 V to 0")
	s.SetOn(lamp, false)
	_, err = s.Linearize()
	require.Error(t, err, "changed since")
}

func TestFaultsOfChanges(t *testing.T) {
	n := chain(2)
	b := n.Add(1, 0, source(12, 1))
	l := linearOf(t, n)
	for want, change := range map[string]Change{
		"change of branch 7 of a network of 1":        Open(7),
		"change of branch -1 of a network of 1":       Short(-1),
		"change of branch 0 of a network of 1":        {},
		"tie between nodes 1 and 9 of a network of 3": Tie(1, 9, 1),
		"tie of -1 ohm, allowed 0 to 1e+15":           Tie(1, 0, -1),
	} {
		_, err := l.Change(change)
		require.EqualError(t, err, want)
	}
	c, err := l.Change()
	require.NoError(t, err)
	v, ok := c.V(1)
	require.True(t, ok && v == 12, "no change changes nothing")
	for _, node := range []Node{-1, 3} {
		_, ok = c.V(node)
		require.False(t, ok)
		_, ok = l.V(node)
		require.False(t, ok)
	}
	_, ok = c.I(9)
	require.False(t, ok)
	require.Zero(t, l.I(9))
	require.False(t, l.Bridge(9))
	require.Empty(t, l.Reach(Open(9), Tie(0, 9, 0), Change{}))
	require.Equal(t, []Node{1}, l.Reach(Open(b)))
	var r Response
	require.EqualError(t, l.Respond(&r, []Push{{0, 2, 1}}), "no way back for a current from node 0 to node 2")
	_, err = NewSolver(faulty()).Linearize()
	require.Error(t, err)
}

func faulty() *Net {
	n := NewNet()
	n.Add(0, 4, ohms(1))
	return n
}

// Answers add up: the lines' own, and what a push moves; an ohm works both ways.
func TestManyRightSides(t *testing.T) {
	rng := rand.New(rand.NewPCG(36, 4))
	for range 60 {
		n, off := mixedNet(rng, 30, 1e4)
		s, _ := solvedOff(t, n, off)
		l, err := s.Linearize()
		require.NoError(t, err)
		var r Response
		for range 10 {
			a, z := Node(rng.IntN(31)), Node(rng.IntN(31))
			ohm, ok := l.Ohm(a, z)
			err := l.Respond(&r, []Push{{From: z, To: a, Amp: 1}})
			require.Equal(t, ok, err == nil)
			if !ok {
				continue
			}
			rise, _ := r.Across(a, z)
			require.InDelta(t, rise, ohm, 1e-10, "an ampere through the ohms between")
			// 1000 V behind 1 Mohm push 1 mA less what the volts there hold back.
			before, _ := l.Across(a, z)
			m, moff := rebuilt(n, off, nil)
			b := m.Add(a, z, source(1000, 1e6))
			_, sol := solvedOff(t, m, append(moff, false))
			for node := range Node(31) {
				v, ok := l.V(node)
				moved, _ := r.V(node)
				want, _ := sol.V(node)
				require.Equal(t, ok, sol.Part(node) == 0)
				require.InDelta(t, want, v-sol.I(b)*moved, 1e-9)
			}
			after, _ := sol.Across(a, z)
			require.InDelta(t, after, before-sol.I(b)*ohm, 1e-9)
		}
	}
}

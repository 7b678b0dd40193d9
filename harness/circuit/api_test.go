package circuit

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// Faults of the caller come back as errors that name the branch; nothing panics.
func TestFaultsAreErrors(t *testing.T) {
	for _, c := range []struct {
		name, want string
		build      func(n *Net)
	}{
		{"no such node", "branch 0 lies between nodes 0 and 7 of a network of 2", func(n *Net) { n.Add(0, 7, ohms(1)) }},
		{"below nought", "branch 0 lies between nodes -1 and 1 of a network of 2", func(n *Net) { n.Add(-1, 1, ohms(1)) }},
		{"link to nowhere", "link between nodes 3 and 0 of a network of 2", func(n *Net) { n.Join(3, 0) }},
		{"no kind", "branch 0 has no law of kind 0", func(n *Net) { n.Add(0, 1, Law{}) }},
		{"not a number", "branch 0: Ohm is NaN, allowed 0 to 1e+15", func(n *Net) { n.Add(0, 1, ohms(math.NaN())) }},
		{"negative", "branch 1: Watt is -5, allowed 0 to 1e+09", func(n *Net) { n.Add(0, 1, ohms(1)); n.Add(0, 1, power(-5, 1)) }},
		{"endless", "branch 0: Volt is +Inf, allowed 0 to 1e+06", func(n *Net) { n.Add(0, 1, source(math.Inf(1), 1)) }},
		{"senses nowhere", "branch 0 senses node 9 of a network of 2", func(n *Net) { n.Add(0, 1, regulator14(14, 1, 9)) }},
	} {
		n := chain(1)
		c.build(n)
		s, err := NewSolver(n).Solve(context.Background())
		require.EqualError(t, err, c.want, c.name)
		require.Nil(t, s)
	}
}

func TestReadingWhatIsNotThere(t *testing.T) {
	n := chain(1)
	b := n.Add(1, 0, source(12, 1))
	s := solved(t, n)
	for _, node := range []Node{-1, 2} {
		_, ok := s.V(node)
		require.False(t, ok)
		_, ok = s.Across(node, node)
		require.False(t, ok)
		require.Equal(t, -1, s.Part(node))
	}
	for _, b := range []Branch{-1, 1} {
		require.Zero(t, s.I(b))
		require.Equal(t, Plain, s.Mode(b))
		_, ok := s.Limit(b)
		require.False(t, ok)
		_, _, ok = n.Ends(b)
		require.False(t, ok)
	}
	a, z, ok := n.Ends(b)
	require.True(t, ok && a == 1 && z == 0)
	empty := solved(t, NewNet())
	v, ok := empty.V(0)
	require.True(t, ok && v == 0, "the reference is 0 V of itself")
}

func TestModesHaveNames(t *testing.T) {
	seen := map[string]bool{}
	for m := Plain; m <= AtLimit+1; m++ {
		require.False(t, seen[m.String()], m.String())
		seen[m.String()] = true
	}
	require.True(t, seen["unknown"] && seen["at limit"])
}

func TestCanceled(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	n := chain(1)
	n.Add(1, 0, source(12, 1))
	_, err := NewSolver(n).Solve(ctx)
	require.ErrorIs(t, err, context.Canceled)
}

// A floating part has no volts against the reference but works within itself:
// an island with its own battery and lamp, 12 V over 1 + 5 ohm.
func TestIsland(t *testing.T) {
	n := chain(4)
	n.Add(1, 0, ohms(1))
	n.Add(2, 3, source(12, 1))
	lamp := n.Add(2, 3, ohms(5))
	cut := n.Add(3, 1, ohms(1))
	s := NewSolver(n)
	s.SetOn(cut, false)
	sol, err := s.Solve(context.Background())
	require.NoError(t, err)
	require.True(t, sol.Met)
	_, ok := sol.V(2)
	require.False(t, ok)
	v, ok := sol.Across(2, 3)
	require.True(t, ok)
	near(t, 10, v, "across the lamp")
	near(t, 2, sol.I(lamp), "through the lamp")
	require.Equal(t, []int{0, 0, 1, 1, 2}, []int{sol.Part(0), sol.Part(1), sol.Part(2), sol.Part(3), sol.Part(4)})
	_, ok = sol.Across(2, 1)
	require.False(t, ok, "nothing between parts")
}

// A load behind a lost ground floats up; it is not read as 0 V.
func TestLostGround(t *testing.T) {
	n := chain(2)
	n.Add(1, 0, source(12, 1))
	n.Add(1, 2, power(20, 7))
	ground := n.Add(2, 0, ohms(0.01))
	s := NewSolver(n)
	s.SetOn(ground, false)
	sol, err := s.Solve(context.Background())
	require.NoError(t, err)
	require.True(t, sol.Met)
	v, ok := sol.V(2)
	require.True(t, ok)
	require.Equal(t, 12.0, v)
	require.Empty(t, sol.Collapsed)
}

// Laws may change in value, and even in kind; a solution made before stays as it was.
func TestSetLaw(t *testing.T) {
	n := chain(1)
	n.Add(1, 0, source(12, 1))
	b := n.Add(1, 0, ohms(1))
	s := NewSolver(n)
	first, err := s.Solve(context.Background())
	require.NoError(t, err)
	for _, c := range []struct {
		law  Law
		volt float64
	}{
		{ohms(2), 8}, {ohms(5), 10}, {current(3, 1), 12 - (3 + 9e-6)}, {power(27, 1), 9}, {source(6, 1), 9},
		{regulator14(14, 3, 1), 14}, {ohms(1), 6},
	} {
		s.SetLaw(b, c.law)
		sol, err := s.Solve(context.Background())
		require.NoError(t, err)
		require.InDelta(t, c.volt, volts(t, sol, 1), 1e-10, "%+v", c.law)
	}
	require.Equal(t, 6.0, volts(t, first, 1))
	require.Equal(t, 6.0, first.I(b))
	s.SetLaw(99, ohms(1))
	s.SetOn(-4, false)
	require.Equal(t, 2, n.Nodes())
	require.Equal(t, 2, n.Branches())
}

// The same work into the same Solution takes no memory.
func TestNoAllocationInTheLoop(t *testing.T) {
	h := newHarnessLike(300, 5)
	s := NewSolver(h.Net)
	var sol Solution
	require.NoError(t, s.SolveInto(context.Background(), &sol))
	watt := 3.0
	allocs := testing.AllocsPerRun(20, func() {
		watt += 0.1
		s.SetLaw(h.loads[3], power(watt, 7))
		if err := s.SolveInto(context.Background(), &sol); err != nil {
			t.Fatal(err)
		}
	})
	require.Zero(t, allocs)
}

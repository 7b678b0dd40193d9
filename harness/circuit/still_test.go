package circuit

import (
	"context"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// Moving the still nodes up leaves an elimination of the same graph, with no
// column wider or narrower than before, and no still node behind a bent one.
func TestStillFirst(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 44))
	for range 40 {
		n := 2 + rng.IntN(60)
		edges := make([][2]int32, 2*n)
		for i := range edges {
			edges[i] = [2]int32{int32(rng.IntN(n)), int32(rng.IntN(n))}
		}
		bent := make([]bool, n)
		for i := range bent {
			bent[i] = rng.IntN(5) == 0
		}
		e := minimumDegree(neighbors(n, edges), bent)
		o, still := e.stillFirst(bent)
		require.Len(t, o.row, len(e.row))
		for k, met := range naive(n, edges, o.order) {
			got := slices.Clone(o.row[o.ptr[k]:o.ptr[k+1]])
			slices.Sort(got)
			require.True(t, slices.Equal(met, got))
			require.False(t, k < still && bent[o.order[k]])
		}
		if !slices.Contains(bent, true) {
			require.Equal(t, n, still)
		}
	}
}

// A network of bent loads at nearly every end still has still unknowns, and
// solving finds no bent law among them.
func TestMarksOfTheNetHold(t *testing.T) {
	s := NewSolver(newHarnessLike(1000, 1).Net)
	before := s.f.still
	require.Greater(t, before, s.f.n/10)
	_, err := s.Solve(context.Background())
	require.NoError(t, err)
	require.Equal(t, before, s.f.still, "the marks made from the net are those that its laws ask for")
}

// A branch that becomes bent after the solver was made is solved as in a
// solver that knew it from the start.
func TestStillBranchBends(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 45))
	for range 30 {
		n := grounded(rng, 12, 1e3)
		s := NewSolver(n)
		_, err := s.Solve(context.Background())
		require.NoError(t, err)
		b := Branch(rng.IntN(n.Branches()))
		law := Law{Kind: Warming, Ohm: 1, Amp: 1, Rise: 0.42}
		s.SetLaw(b, law)
		got, err := s.Solve(context.Background())
		require.NoError(t, err)
		n.laws[b] = law
		want, err := NewSolver(n).Solve(context.Background())
		require.NoError(t, err)
		for i := range n.nodes {
			v, ok := got.V(Node(i))
			w, okW := want.V(Node(i))
			require.Equal(t, okW, ok)
			require.InDelta(t, w, v, 1e-11)
		}
	}
}

package circuit

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// naive eliminates in the given order on sets and returns the neighbors met.
func naive(n int, edges [][2]int32, order []int32) [][]int32 {
	near := make([]map[int32]bool, n)
	for i := range near {
		near[i] = map[int32]bool{}
	}
	for _, e := range edges {
		if e[0] != e[1] {
			near[e[0]][e[1]], near[e[1]][e[0]] = true, true
		}
	}
	met := make([][]int32, 0, n)
	for _, v := range order {
		var list []int32
		for w := range near[v] {
			list = append(list, w)
			delete(near[w], v)
		}
		slices.Sort(list)
		for i, a := range list {
			for _, b := range list[i+1:] {
				near[a][b], near[b][a] = true, true
			}
		}
		met = append(met, list)
	}
	return met
}

// The order is a permutation, its columns are those of a plain elimination, and
// each node had the fewest neighbors of all that were left when it went.
func TestMinimumDegree(t *testing.T) {
	rng := rand.New(rand.NewPCG(30, 5))
	for _, c := range []struct{ nodes, edges int }{{1, 0}, {2, 5}, {12, 11}, {40, 60}, {60, 600}, {300, 420}} {
		edges := make([][2]int32, c.edges)
		for i := range edges {
			edges[i] = [2]int32{int32(rng.IntN(c.nodes)), int32(rng.IntN(c.nodes))}
		}
		e := minimumDegree(neighbors(c.nodes, edges), make([]bool, c.nodes))
		sorted := slices.Clone(e.order)
		slices.Sort(sorted)
		for i, v := range sorted {
			require.Equal(t, int32(i), v)
		}
		met := naive(c.nodes, edges, e.order)
		for k := range met {
			got := slices.Clone(e.row[e.ptr[k]:e.ptr[k+1]])
			slices.Sort(got)
			require.True(t, slices.Equal(met[k], got))
		}
		requireLeast(t, c.nodes, edges, e.order)
		again := minimumDegree(neighbors(c.nodes, edges), make([]bool, c.nodes))
		require.Equal(t, e, again, "the same each time")
	}
}

// requireLeast checks the first 20 choices by trying every other node in their place.
func requireLeast(t *testing.T, n int, edges [][2]int32, order []int32) {
	for k := range min(20, n) {
		taken := len(naive(n, edges, order)[k])
		for _, v := range order[k+1:] {
			other := append(slices.Clone(order[:k]), v)
			require.LessOrEqual(t, taken, len(naive(n, edges, other)[k]))
		}
		if n > 60 {
			return
		}
	}
}

// Series runs, stars and rings leave no fill: two entries a node at most.
func TestHarnessesHardlyFill(t *testing.T) {
	for _, wires := range []int{100, 1000, 10000} {
		s := NewSolver(newHarnessLike(wires, 1).Net)
		require.Less(t, float64(len(s.f.row))/float64(s.f.n), 2.5, "%d wires", wires)
		widest := 0
		for k := range s.f.n {
			widest = max(widest, len(s.f.column(k)))
		}
		require.LessOrEqual(t, widest, 8, "%d wires", wires)
		require.NotContains(t, s.f.pair, int32(-1), "every pair has its place")
	}
}

// A hub with 40,000 legs, every other tied to a second hub, orders at once.
func TestHubs(t *testing.T) {
	const legs = 40000
	edges := make([][2]int32, 0, 2*legs)
	for i := int32(2); i < legs; i++ {
		edges = append(edges, [2]int32{0, i})
		if i%2 == 0 {
			edges = append(edges, [2]int32{i, 1})
		}
	}
	p, _ := newPattern(legs, edges, make([]bool, legs))
	require.Less(t, len(p.row), 2*legs)
}

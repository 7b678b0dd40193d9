package circuit

import (
	"context"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// randomHarness is a tree of wires on a battery with loads, fuses and diodes of
// every kind at random; some of it overloaded, some of it not on the reference.
func randomHarness(rng *rand.Rand, nodes int, strain float64) *Net {
	n := chain(nodes)
	n.Add(1, 0, source(12.6, 0.01))
	for a := 2; a <= nodes; a++ {
		from := Node(1 + rng.IntN(a-1))
		if rng.IntN(4) == 0 {
			n.Add(from, Node(a), Law{Kind: Warming, Ohm: 0.005, Amp: 5 + 20*rng.Float64(), Rise: 0.42})
			continue
		}
		n.Add(from, Node(a), ohms(0.001+0.1*rng.Float64()))
	}
	for range nodes {
		a, b := Node(1+rng.IntN(nodes)), Node(0)
		if rng.IntN(8) == 0 {
			b = Node(1 + rng.IntN(nodes))
		}
		n.Add(a, b, randomLoad(rng, strain))
	}
	for range rng.IntN(4) {
		out := Node(1 + rng.IntN(nodes))
		n.Add(out, 0, regulator14(12+3*rng.Float64(), 60*rng.Float64(), out))
	}
	return n
}

func randomLoad(rng *rand.Rand, strain float64) Law {
	switch rng.IntN(5) {
	case 0:
		return ohms(1 + 20*rng.Float64())
	case 1:
		return current(strain*rng.Float64(), 9*rng.Float64())
	case 2, 3:
		return power(12*strain*rng.Float64(), 9*rng.Float64())
	}
	return Law{Kind: Diode, Volt: 0.4 + 0.4*rng.Float64(), Ohm: 0.02}
}

// The node law and every branch law hold on random networks with all laws, from
// hardly loaded to hopelessly overloaded (diodes straight to the reference among
// them); where every load can be fed, the passes stay few.
func TestRandomHarnesses(t *testing.T) {
	rng := rand.New(rand.NewPCG(20, 4))
	most, total, fed, collapsed := 0, 0, 0, 0
	for i := range 1500 {
		strain := []float64{0.1, 1, 4, 20}[i%4]
		sol := checkState(t, NewSolver(randomHarness(rng, 2+rng.IntN(40), strain)))
		collapsed += len(sol.Collapsed)
		if len(sol.Collapsed) == 0 {
			most, total, fed = max(most, sol.Passes), total+sol.Passes, fed+1
		}
	}
	require.Greater(t, collapsed, 100, "the test has to meet collapses")
	require.LessOrEqual(t, most, 80)
	require.LessOrEqual(t, float64(total)/float64(fed), 12.0)
	t.Logf("%d fed: %.1f passes each, at most %d; %d loads collapsed", fed, float64(total)/float64(fed), most, collapsed)
}

// No load that the plain slow secant iteration from open circuit can feed is
// ever called collapsed, and the two agree on the highest solution. Returns run
// through a tree of wires of their own.
func TestAgreesWithPlainIteration(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 4))
	compared := 0
	for range 400 {
		const size = 12
		n := chain(2 * size)
		n.Add(1, 0, source(12.6, 0.01))
		n.Add(1+size, 0, ohms(0.002))
		for a := 2; a <= size; a++ {
			n.Add(Node(1+rng.IntN(a-1)), Node(a), ohms(0.01+0.1*rng.Float64()))
			n.Add(Node(1+size+rng.IntN(a-1)), Node(a+size), ohms(0.1*rng.Float64()))
			law := power(24*rng.Float64(), 4)
			if rng.IntN(3) == 0 {
				law = current(2*rng.Float64(), 9)
			}
			n.Add(Node(a), Node(a+size), law)
		}
		want, ok := plainIteration(n)
		sol := checkState(t, NewSolver(n))
		if !ok {
			continue
		}
		compared++
		require.Empty(t, sol.Collapsed)
		for node := Node(1); node <= 2*size; node++ {
			require.InDelta(t, want[node], volts(t, sol, node), 1e-7)
		}
	}
	require.Greater(t, compared, 100)
}

// plainIteration replaces each load by its resistance at the last voltage until
// nothing moves; false if a constant-power load sinks to its knee.
func plainIteration(n *Net) ([]float64, bool) {
	v := make([]float64, n.nodes)
	across := make([]float64, len(n.laws))
	for b := range across {
		across[b] = 12.6
	}
	for range 5000 {
		plain := chain(n.nodes - 1)
		for b, l := range n.laws {
			u := across[b]
			switch {
			case l.Kind == ConstantPower && u <= l.Knee:
				return nil, false
			case l.Kind == ConstantPower:
				l = ohms(u * u / l.Watt)
			case l.Kind == ConstantCurrent:
				l = ohms(1 / (l.Amp/max(u, l.Knee) + l.leak()))
			}
			plain.Add(n.ends[b][0], n.ends[b][1], l)
		}
		sol, err := NewSolver(plain).Solve(context.Background())
		if err != nil {
			return nil, false
		}
		moved := 0.0
		for i := range v {
			v[i], _ = sol.V(Node(i))
		}
		for b, e := range n.ends {
			moved = max(moved, math.Abs(v[e[0]]-v[e[1]]-across[b]))
			across[b] = v[e[0]] - v[e[1]]
		}
		if moved < 1e-11 {
			return v, true
		}
	}
	return nil, false
}

// Numbering the nodes differently changes nothing beyond rounding.
func TestPermutation(t *testing.T) {
	rng := rand.New(rand.NewPCG(22, 4))
	for range 60 {
		n := randomHarness(rng, 25, 1)
		to := rng.Perm(25)
		move := func(a Node) Node {
			if a == 0 {
				return 0
			}
			return Node(to[a-1] + 1)
		}
		m := chain(25)
		for b, l := range n.laws {
			l.SenseA, l.SenseB = move(l.SenseA), move(l.SenseB)
			m.Add(move(n.ends[b][0]), move(n.ends[b][1]), l)
		}
		one, two := checkState(t, NewSolver(n)), checkState(t, NewSolver(m))
		require.Equal(t, one.Collapsed, two.Collapsed)
		for a := range n.Nodes() {
			v, ok := one.V(Node(a))
			w, also := two.V(move(Node(a)))
			require.Equal(t, ok, also)
			require.InDelta(t, v, w, 1e-12*math.Max(1, math.Abs(v)))
		}
	}
}

// The same network solved twice, or after something else, gives the same bits.
func TestRepeatable(t *testing.T) {
	h := newHarnessLike(400, 3)
	s := NewSolver(h.Net)
	h.step(s, 1)
	first := checkState(t, s)
	h.step(s, 2)
	checkState(t, s)
	h.step(s, 1)
	require.Equal(t, first.volts, checkState(t, s).volts)
	other := NewSolver(h.Net)
	h.step(other, 1)
	require.Equal(t, first.volts, checkState(t, other).volts)
}

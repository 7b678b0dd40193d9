package circuit

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// straightened is a network with every bent branch as the straight one that it
// works as in a solution: a resistance, or a current of its own.
func straightened(n *Net, s *Solver, sol *Solution) (*Net, map[Node]*big.Rat) {
	out := chain(n.nodes - 1)
	push := map[Node]*big.Rat{}
	flow := func(b int, amps *big.Rat) { // from A to B
		for i, sign := range []int64{-1, 1} {
			e := Node(n.ends[b][i])
			if push[e] == nil {
				push[e] = new(big.Rat)
			}
			push[e].Add(push[e], new(big.Rat).Mul(amps, big.NewRat(sign, 1)))
		}
	}
	rat := func(v float64) *big.Rat { return new(big.Rat).SetFloat64(v) }
	for b, l := range n.laws {
		a, z := Node(n.ends[b][0]), Node(n.ends[b][1])
		va, _ := sol.V(a)
		vz, _ := sol.V(z)
		mode := sol.Mode(Branch(b))
		leak := ohms(1 / l.leak())
		switch {
		case s.open[b]:
		case l.Kind == Resistor, l.Kind == Source:
			out.Add(a, z, l)
		case l.Kind == Warming:
			if i := sol.I(Branch(b)); i != 0 {
				out.Add(a, z, ohms((va-vz)/i))
			} else {
				out.Add(a, z, ohms(l.Ohm))
			}
		case l.Kind == Regulator:
			flow(b, rat(sol.I(Branch(b))))
		case l.Kind == ConstantPower && mode == Conducting:
			flow(b, rat(l.Watt/(va-vz)))
		case l.Kind == ConstantCurrent && mode == Conducting:
			out.Add(a, z, leak)
			flow(b, rat(l.Amp))
		case l.Kind == ConstantCurrent:
			out.Add(a, z, leak)
			out.Add(a, z, ohms(l.knee()/l.Amp))
		case l.Kind == Diode && mode == Conducting:
			out.Add(a, z, ohms(l.Ohm))
			flow(b, new(big.Rat).Mul(rat(l.Volt), new(big.Rat).Sub(rat(l.leak()), rat(1/l.Ohm))))
		default:
			out.Add(a, z, leak)
		}
	}
	return out, push
}

// Whole vehicles of up to 200 nodes at rest: fuses warm, diodes on or off, loads
// of every law, an alternator. Each branch is taken as the straight one that it
// works as, and the network solved in rational numbers.
func TestOperatingPointsAgainstRationalNumbers(t *testing.T) {
	most, points := 0, 0
	for _, wires := range []int{20, 40, 60, 80, 100} {
		h := newHarnessLike(wires, uint64(7*wires))
		most = max(most, h.nodes)
		s := NewSolver(h.Net)
		for seed := range uint64(4) {
			h.step(s, seed)
			sol, err := s.Solve(t.Context())
			require.NoError(t, err)
			straight, push := straightened(h.Net, s, sol)
			for node, want := range exactPushed(straight, push) {
				got, ok := sol.V(Node(node))
				require.Equal(t, want != nil, ok, "%d wires, step %d, node %d", wires, seed, node)
				if ok {
					w, _ := want.Float64()
					require.InDelta(t, w, got, 1e-11, "%d wires, step %d, node %d", wires, seed, node)
					points++
				}
			}
		}
	}
	require.Greater(t, most, 150)
	require.LessOrEqual(t, most, 240)
	t.Logf("%d voltages in networks of up to %d nodes", points, most)
}

// Loops of straps, wires of no length, several in parallel, and rings of them:
// next to nothing in a loop, and parts that hang on nothing. Right to the last
// digits, or said to float.
func TestLoopsAndNothing(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 3))
	for range 40 {
		const nodes = 40
		n := chain(nodes)
		thin := []float64{0, 1e-9, 1e-6, 1e-5, 3e-4, 1e-3}
		for a := 1; a <= nodes; a++ { // four rings of ten, none tied to the next
			next := a + 1
			if a%10 == 0 {
				next = a - 9
			}
			n.Add(Node(a), Node(next), ohms(thin[rng.IntN(len(thin))]))
			if rng.IntN(2) == 0 {
				n.Add(Node(next), Node(a), ohms(0))
			}
		}
		n.Add(3, 0, source(12.6, 0.01))
		n.Add(8, 0, ohms(1+20*rng.Float64()))
		n.Add(5, 12, ohms(1e7)) // the second ring hangs on a leak
		n.Add(17, 0, ohms(1e6))
		n.Add(25, 31, source(6, 0.5)) // the last two hang together, and on nothing
		sol := solved(t, n)
		require.True(t, sol.Met)
		require.LessOrEqual(t, worstRelative(t, n, sol), 1e-14)
		for a := Node(21); a <= 40; a++ {
			_, ok := sol.V(a)
			require.False(t, ok, "node %d floats", a)
		}
		across, ok := sol.Across(25, 31)
		require.True(t, ok, "both ends of a source float together")
		require.InDelta(t, 6, across, 1e-12)
	}
}

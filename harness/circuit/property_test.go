package circuit

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// checkState solves and checks what must hold of every answer, by means of its
// own: node law by true currents, the law of each branch, floating parts by
// graph search against exact zero pivots.
func checkState(t *testing.T, s *Solver) *Solution {
	t.Helper()
	sol, err := s.Solve(context.Background())
	require.NoError(t, err)
	require.True(t, sol.Met, "residual %g A after %d passes", sol.Residual, sol.Passes)
	sum := make([]float64, s.f.n+1)
	for b, e := range s.ends {
		i := sol.I(Branch(b))
		sum[e[0]] += i
		sum[e[1]] -= i
		checkLaw(t, s, sol, Branch(b))
	}
	for k, i := range sum[:s.f.n] {
		require.LessOrEqual(t, math.Abs(i), max(1e-6, 64*0x1p-52*s.scale[k]))
	}
	checkParts(t, s)
	return sol
}

// checkLaw states each law once more, apart from the code under test.
func checkLaw(t *testing.T, s *Solver, sol *Solution, b Branch) {
	t.Helper()
	l, e := s.laws[b], s.ends[b]
	v, i := sol.volts[e[0]]-sol.volts[e[1]], sol.I(b)
	if s.open[b] {
		require.Zero(t, i)
		return
	}
	switch l.Kind {
	case Warming:
		r := max(l.Ohm, MinOhm)
		require.InDelta(t, v, i*r*(1+l.Rise*(i/l.Amp)*(i/l.Amp)), 1e-9+1e-9*math.Abs(v))
	case ConstantCurrent:
		require.InDelta(t, l.Amp*min(1, v/l.knee()), i-v*l.leak(), 1e-9)
	case ConstantPower:
		if sol.Mode(b) == Conducting {
			require.InDelta(t, l.Watt, i*v, 1e-9*l.Watt)
		} else if _, out := slices.BinarySearch(sol.Collapsed, b); !out {
			require.LessOrEqual(t, v, l.knee()*(1+1e-8))
			require.InDelta(t, v*l.leak(), i, 1e-12)
		}
	case Diode:
		want, mode := v*l.leak(), Blocked
		if v > l.Volt {
			want, mode = l.Volt*l.leak()+(v-l.Volt)/max(l.Ohm, MinOhm), Conducting
		}
		require.InDelta(t, want, i, 1e-15+1e-12*math.Abs(want))
		if math.Abs(v-l.Volt) > 1e-12 {
			require.Equal(t, mode, sol.Mode(b))
		}
	case Regulator:
		checkRegulator(t, s, sol, b)
	}
}

func checkRegulator(t *testing.T, s *Solver, sol *Solution, b Branch) {
	t.Helper()
	l := s.laws[b]
	sensed, ok := sol.Across(l.SenseA, l.SenseB)
	switch sol.Mode(b) {
	case Regulating:
		require.InDelta(t, l.Volt, sensed, 1e-9)
		require.True(t, -sol.I(b) >= 0 && -sol.I(b) <= l.Amp)
	case AtLimit:
		require.Equal(t, -l.Amp, sol.I(b))
		require.LessOrEqual(t, sensed, l.Volt+1e-9)
	default:
		require.Zero(t, sol.I(b))
		require.True(t, !ok || sensed >= l.Volt-1e-9)
	}
}

func checkParts(t *testing.T, s *Solver) {
	t.Helper()
	zeros := map[int32]int{}
	for k, p := range s.f.perTotal {
		if p == 0 {
			zeros[s.part[k]]++
		}
	}
	floating := map[int32]int{}
	for _, p := range s.part[:s.f.n] {
		if p > 0 {
			floating[p] = 1
		}
	}
	require.Equal(t, floating, zeros, "one exact zero pivot in each floating part and none elsewhere")
}

// randomNet joins nodes at random; straight branches only.
func randomNet(rng *rand.Rand, nodes, branches int, ratio float64) *Net {
	n := chain(nodes)
	for range branches {
		a, b := Node(rng.IntN(nodes+1)), Node(rng.IntN(nodes+1))
		r := 1e-3 * math.Pow(ratio, rng.Float64())
		if rng.IntN(6) == 0 {
			n.Add(a, b, source(rng.Float64()*14, r))
			continue
		}
		n.Add(a, b, ohms(r))
	}
	return n
}

func TestFloatingPartsAgree(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 1))
	seen := 0
	for range 400 {
		nodes := 1 + rng.IntN(60)
		n := randomNet(rng, nodes, rng.IntN(2*nodes), 1e15)
		for range rng.IntN(4) {
			n.Join(Node(rng.IntN(nodes+1)), Node(rng.IntN(nodes+1)))
		}
		s := NewSolver(n)
		for b := range n.Branches() {
			s.SetOn(Branch(b), rng.IntN(4) > 0)
		}
		sol := checkState(t, s)
		seen += int(slices.Max(s.part))
		for node := range n.Nodes() {
			_, ok := sol.V(Node(node))
			require.Equal(t, ok, sol.Part(Node(node)) == 0)
		}
	}
	require.Greater(t, seen, 1000, "the test has to meet floating parts")
}

// In a straight network the answers to two sets of sources add up.
func TestSuperposition(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 2))
	for range 50 {
		n := randomNet(rng, 30, 70, 1e4)
		s := NewSolver(n)
		both := checkState(t, s)
		sum := make([]float64, len(both.volts))
		for half := range 2 {
			for b, l := range n.laws {
				if l.Kind == Source && b%2 == half {
					l.Volt = 0
				}
				s.SetLaw(Branch(b), l)
			}
			for k, v := range checkState(t, s).volts {
				sum[k] += v
			}
		}
		for k := range sum {
			if s.part[k] == 0 {
				require.InDelta(t, both.volts[k], sum[k], 1e-11)
			}
		}
	}
}

// A source moved from one branch to another swaps cause and effect (reciprocity).
func TestReciprocity(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 2))
	for range 50 {
		n := chain(20)
		for a := Node(1); a <= 20; a++ {
			for range 2 {
				n.Add(a, Node(rng.IntN(int(a))), ohms(math.Pow(10, 3*rng.Float64()-2)))
			}
		}
		p, q := n.Add(Node(rng.IntN(21)), 7, source(0, 1)), n.Add(Node(rng.IntN(21)), 3, source(0, 1))
		s := NewSolver(n)
		s.SetLaw(p, source(10, 1))
		there := checkState(t, s).I(q)
		s.SetLaw(p, source(0, 1))
		s.SetLaw(q, source(10, 1))
		require.InDelta(t, there, checkState(t, s).I(p), 1e-12)
	}
}

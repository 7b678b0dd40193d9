package circuit

import (
	"context"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// exact solves a straight network in rational numbers, from the same float64
// resistances and e.m.f.s, by elimination of the ordinary nodal matrix, and
// shares no code with the package. Nodes that float get nil.
func exact(n *Net) []*big.Rat { return exactPushed(n, nil) }

// exactPushed is exact with currents pushed into nodes besides.
func exactPushed(n *Net, push map[Node]*big.Rat) []*big.Rat {
	rows := make([]map[int]*big.Rat, n.nodes) // rows[i][j], diagonal included; row 0 unused
	rhs := make([]*big.Rat, n.nodes)
	for i := range rows {
		rows[i], rhs[i] = map[int]*big.Rat{}, new(big.Rat)
	}
	for node, amps := range push {
		rhs[node].Add(rhs[node], amps)
	}
	for b, l := range n.laws {
		g := new(big.Rat).Inv(new(big.Rat).SetFloat64(max(l.Ohm, MinOhm)))
		in := new(big.Rat)
		if l.Kind == Source {
			in.Mul(g, new(big.Rat).SetFloat64(l.Volt))
		}
		a, z := int(n.ends[b][0]), int(n.ends[b][1])
		if a == z {
			continue
		}
		rhs[a].Add(rhs[a], in)
		rhs[z].Sub(rhs[z], in)
		for _, e := range [][2]int{{a, z}, {z, a}} {
			add(rows[e[0]], e[0], g)
			add(rows[e[0]], e[1], new(big.Rat).Neg(g))
		}
	}
	return backSubstitute(rows, rhs, forwardEliminate(rows, rhs))
}

func add(row map[int]*big.Rat, j int, v *big.Rat) {
	if row[j] == nil {
		row[j] = new(big.Rat)
	}
	row[j].Add(row[j], v)
}

// forwardEliminate takes the shortest row next and leaves out column 0, the reference.
func forwardEliminate(rows []map[int]*big.Rat, rhs []*big.Rat) []int {
	done := make([]bool, len(rows))
	var order []int
	for range len(rows) - 1 {
		k := -1
		for i := 1; i < len(rows); i++ {
			if !done[i] && (k < 0 || len(rows[i]) < len(rows[k])) {
				k = i
			}
		}
		done[k] = true
		order = append(order, k)
		pivot := rows[k][k]
		if pivot == nil || pivot.Sign() == 0 {
			continue
		}
		for i := range rows[k] {
			if i == 0 || i == k || done[i] {
				continue
			}
			share := new(big.Rat).Quo(rows[i][k], pivot)
			for j, v := range rows[k] {
				if j != k {
					add(rows[i], j, new(big.Rat).Neg(new(big.Rat).Mul(share, v)))
				}
			}
			delete(rows[i], k)
			rhs[i].Sub(rhs[i], new(big.Rat).Mul(share, rhs[k]))
		}
	}
	return order
}

func backSubstitute(rows []map[int]*big.Rat, rhs []*big.Rat, order []int) []*big.Rat {
	x := make([]*big.Rat, len(rows))
	x[0] = new(big.Rat)
	for at := len(order) - 1; at >= 0; at-- {
		k := order[at]
		pivot := rows[k][k]
		if pivot == nil || pivot.Sign() == 0 {
			continue // floats
		}
		sum, known := new(big.Rat).Set(rhs[k]), true
		for j, v := range rows[k] {
			if j == k || v.Sign() == 0 {
				continue
			}
			if x[j] == nil {
				known = false
				break
			}
			sum.Sub(sum, new(big.Rat).Mul(v, x[j]))
		}
		if known {
			x[k] = sum.Quo(sum, pivot)
		}
	}
	return x
}

// grounded is a random network whose sources all stand on the reference with
// one sign, so that every voltage has to be right to its last digits, whatever
// the ratio of conductances.
func grounded(rng *rand.Rand, nodes int, ratio float64) *Net {
	n := chain(nodes)
	law := func() Law { return ohms(1e-3 * math.Pow(ratio, rng.Float64())) }
	for a := 2; a <= nodes; a++ {
		n.Add(Node(a), Node(1+rng.IntN(a-1)), law())
	}
	for range nodes / 3 {
		n.Add(Node(1+rng.IntN(nodes)), Node(1+rng.IntN(nodes)), law())
	}
	for range 3 {
		n.Add(Node(1+rng.IntN(nodes)), 0, source(1+13*rng.Float64(), 1e-3*math.Pow(ratio, rng.Float64())))
		n.Add(Node(1+rng.IntN(nodes)), 0, law())
	}
	return n
}

func worstRelative(t *testing.T, n *Net, sol *Solution) float64 {
	t.Helper()
	worst := 0.0
	for node, want := range exact(n) {
		got, ok := sol.V(Node(node))
		require.Equal(t, want != nil, ok, "node %d", node)
		if !ok || want.Sign() == 0 {
			require.Zero(t, got)
			continue
		}
		diff := new(big.Rat).Sub(new(big.Rat).SetFloat64(got), want)
		rel, _ := diff.Quo(diff, want).Float64()
		worst = max(worst, math.Abs(rel))
	}
	return worst
}

// Conductance ratios to 1e10: at most 1e-12 relative on every node.
func TestAgainstRationalNumbers(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 3))
	for i, nodes := range []int{3, 5, 8, 13, 21, 34, 55, 89, 144, 200} {
		for _, ratio := range []float64{1, 1e5, 1e10} {
			n := grounded(rng, nodes, ratio)
			sol := solved(t, n)
			worst := worstRelative(t, n, sol)
			require.LessOrEqual(t, worst, 1e-12, "case %d: %d nodes, ratio %g", i, nodes, ratio)
		}
	}
}

// Dense networks have columns wider than the table of pairs covers.
func TestDenseAgainstRationalNumbers(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 3))
	const nodes = wide + 8
	n := chain(nodes)
	for a := 1; a <= nodes; a++ {
		for b := range a {
			if rng.IntN(5) > 0 {
				n.Add(Node(a), Node(b), ohms(float64(1+rng.IntN(9999))/1024))
			}
		}
	}
	n.Add(7, 0, source(12, 0.25))
	require.LessOrEqual(t, worstRelative(t, n, solved(t, n)), 1e-13)
}

// With parts that float, and with sources that stand on neither side of the
// reference: then the guarantee is on the scale of the e.m.f.s, not entrywise.
func TestFloatingAgainstRationalNumbers(t *testing.T) {
	rng := rand.New(rand.NewPCG(10, 3))
	for range 60 {
		n := randomNet(rng, 24, 30, 1e4)
		s, err := NewSolver(n).Solve(context.Background())
		require.NoError(t, err)
		for node, want := range exact(n) {
			got, ok := s.V(Node(node))
			require.Equal(t, want != nil, ok, "node %d", node)
			if ok {
				w, _ := want.Float64()
				require.InDelta(t, w, got, 1e-10)
			}
		}
	}
}

// A network of 1e-4 to 1e3 ohm that hangs on one leak of 1e12 ohm and is fed
// through another: the case where a matrix that keeps its diagonal loses every digit.
func TestLeakAccuracy(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 3))
	for _, leak := range []float64{1e6, 1e9, 1e12} {
		const nodes = 200
		n := chain(nodes)
		wire := func(a, b int) { n.Add(Node(a), Node(b), ohms(math.Pow(10, 7*rng.Float64()-4))) }
		for a := 2; a <= nodes; a++ {
			wire(a, 1+rng.IntN(a-1))
			if a%4 == 0 {
				wire(a, 1+rng.IntN(a-1))
			}
		}
		n.Add(Node(1+rng.IntN(nodes)), 0, ohms(leak))
		n.Add(Node(1+rng.IntN(nodes)), 0, source(12.6, leak/3))
		sol := solved(t, n)
		for node := Node(1); node <= nodes; node++ {
			require.InEpsilon(t, 12.6*0.75, volts(t, sol, node), 1e-2, "3/4 of the e.m.f. but for the wires")
		}
		require.LessOrEqual(t, worstRelative(t, n, sol), 1e-14, "leak of %g ohm", leak)
	}
}

package circuit

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// tape hands out numbers from fuzzed bytes, zeros when it is used up.
type tape []byte

func (p *tape) next(n int) int {
	if len(*p) == 0 {
		return 0
	}
	b := (*p)[0]
	*p = (*p)[1:]
	return int(b) % n
}

// figure spreads over many decades, with zero among them.
func (p *tape) figure() float64 {
	if d := p.next(16); d > 0 {
		return float64(1+p.next(9)) * math.Pow(10, float64(d-10))
	}
	return 0
}

func (p *tape) net() *Net {
	n := chain(1 + p.next(8))
	node := func() Node { return Node(p.next(n.Nodes())) }
	for range 1 + p.next(20) {
		n.Add(node(), node(), Law{
			Kind: LawKind(1 + p.next(int(Regulator))), Ohm: p.figure(), Volt: p.figure(), Amp: p.figure(), Watt: p.figure(),
			Knee: p.figure(), Rise: p.figure(), LeakOhm: p.figure(), SenseA: node(), SenseB: node(),
		})
	}
	for range p.next(3) {
		n.Join(node(), node())
	}
	return n
}

// Whatever the network: no panic, no figure that is none, no endless loop, and
// parts found by search float exactly where pivots are zero.
func FuzzSolve(f *testing.F) {
	f.Add([]byte{})
	f.Add([]byte{3, 4, 1, 0, 1, 9, 5, 10, 2, 0, 0, 0, 0, 0, 0, 0, 1, 0, 4, 9, 1})
	f.Add([]byte("7 overloaded batteries and lamps in a ring of fuses, with diodes every way about"))
	f.Add([]byte("\x05\x0b\x01\x01\x00\x06\x01\x0a\x02\x00\x00\x00\x00\x00\x00\x04\x01\x00\x09\x01\x0b\x01\x0b\x02\x06\x01"))
	f.Fuzz(func(t *testing.T, data []byte) {
		p := tape(data)
		n := p.net()
		s := NewSolver(n)
		for range 3 {
			sol, err := s.Solve(context.Background())
			require.NoError(t, err)
			require.False(t, math.IsNaN(sol.Residual) || math.IsInf(sol.Residual, 0), "residual %g", sol.Residual)
			for _, v := range sol.volts {
				require.False(t, math.IsNaN(v) || math.IsInf(v, 0))
			}
			if !s.unsettled {
				checkParts(t, s)
			}
			s.SetOn(Branch(p.next(n.Branches())), p.next(2) == 0)
		}
	})
}

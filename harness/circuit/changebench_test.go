package circuit

import (
	"context"
	"fmt"
	"testing"
)

// One branch opened, and the volts at both its ends read, against a new solving
// of the same lines (again) and of the bent laws (bent); and what it costs to
// factor once.
func BenchmarkChange(b *testing.B) {
	for _, wires := range []int{1000, 10000} {
		h := newHarnessLike(wires, 1)
		s := NewSolver(h.Net)
		h.step(s, 1)
		if _, err := s.Solve(context.Background()); err != nil {
			b.Fatal(err)
		}
		l, err := s.Linearize()
		if err != nil {
			b.Fatal(err)
		}
		var live []Branch
		for at, g := range l.g {
			if g > 0 {
				live = append(live, Branch(at))
			}
		}
		b.Run(fmt.Sprintf("factor/%d", wires), func(b *testing.B) {
			for b.Loop() {
				_ = s.LinearizeInto(l)
			}
		})
		b.Run(fmt.Sprintf("change/%d", wires), func(b *testing.B) { benchChange(b, h.Net, l, live, false) })
		b.Run(fmt.Sprintf("changeAll/%d", wires), func(b *testing.B) { benchChange(b, h.Net, l, live, true) })
		b.Run(fmt.Sprintf("again/%d", wires), func(b *testing.B) { benchAgain(b, NewSolver(linesOf(h.Net, l)), live) })
		b.Run(fmt.Sprintf("bent/%d", wires), func(b *testing.B) { benchAgain(b, s, live) })
	}
}

func benchChange(b *testing.B, n *Net, l *Linear, live []Branch, whole bool) {
	b.ReportAllocs()
	c, i, redone := new(Changed), 0, 0
	for b.Loop() {
		at := live[i%len(live)]
		i += 7
		if err := l.ChangeInto(c, []Change{Open(at)}); err != nil {
			b.Fatal(err)
		}
		c.V(n.ends[at][0])
		c.V(n.ends[at][1])
		for node := Node(0); whole && int(node) < n.Nodes(); node++ {
			c.V(node)
		}
		redone += len(c.who)
	}
	b.ReportMetric(float64(redone)/float64(i/7), "unknowns")
}

// linesOf leaves out offsets, which spares the new solving work.
func linesOf(n *Net, l *Linear) *Net {
	m := chain(n.Nodes() - 1)
	for at, e := range n.ends {
		if l.g[at] > 0 {
			m.Add(e[0], e[1], ohms(1/l.g[at]))
		} else {
			m.Add(e[0], e[0], ohms(1))
		}
	}
	return m
}

// benchAgain solves with a branch opened, by a solver that knows the network.
func benchAgain(b *testing.B, s *Solver, live []Branch) {
	var sol Solution
	i := 0
	for b.Loop() {
		at := live[i%len(live)]
		i += 7
		s.SetOn(at, false)
		if err := s.SolveVolts(context.Background(), &sol); err != nil {
			b.Fatal(err)
		}
		s.SetOn(at, true)
	}
}

package circuit

import (
	"context"
	"fmt"
	"testing"
)

var sizes = []int{100, 1000, 10000}

func BenchmarkOrdering(b *testing.B) {
	for _, wires := range sizes {
		h := newHarnessLike(wires, 1)
		b.Run(fmt.Sprint(wires), func(b *testing.B) {
			for b.Loop() {
				NewSolver(h.Net)
			}
			s := NewSolver(h.Net)
			b.ReportMetric(float64(s.f.n), "unknowns")
			b.ReportMetric(float64(len(s.f.row)), "links")
			b.ReportMetric(float64(len(s.f.pair)), "pairs")
		})
	}
}

// One pass: stamp, eliminate, solve, regulators included.
func BenchmarkPass(b *testing.B) {
	for _, wires := range sizes {
		s := readySolver(b, wires)
		b.Run(fmt.Sprint(wires), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				s.pass()
			}
		})
	}
}

// Stamp and eliminate, and solve for one right side, without regulators.
func BenchmarkFactorAndSolve(b *testing.B) {
	for _, wires := range sizes {
		s := readySolver(b, wires)
		b.Run(fmt.Sprint(wires), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				s.stampStraight()
				s.f.eliminateRest()
				s.inject()
				s.findVolts()
				s.complete()
			}
		})
	}
}

func readySolver(b *testing.B, wires int) *Solver {
	s := NewSolver(newHarnessLike(wires, 1).Net)
	if _, err := s.Solve(context.Background()); err != nil {
		b.Fatal(err)
	}
	return s
}

// A whole step: switches thrown, a different alternator state, solved from open circuit.
func BenchmarkStep(b *testing.B) {
	for _, wires := range sizes {
		h := newHarnessLike(wires, 1)
		s := NewSolver(h.Net)
		b.Run(fmt.Sprint(wires), func(b *testing.B) {
			b.ReportAllocs()
			var sol Solution
			passes, seed := 0, uint64(0)
			for b.Loop() {
				h.step(s, seed%8)
				seed++
				if err := s.SolveInto(context.Background(), &sol); err != nil {
					b.Fatal(err)
				}
				passes += sol.Passes
			}
			b.ReportMetric(float64(passes)/float64(seed), "passes/step")
		})
	}
}

// The same behind 100 mohm each, so that loads drop out by the hundred: the dear case.
func BenchmarkCollapse(b *testing.B) {
	for _, wires := range sizes {
		h := newHarnessLike(wires, 1)
		for i, l := range h.laws {
			if l.Kind == Source {
				h.laws[i].Ohm = 0.1
			}
		}
		s := NewSolver(h.Net)
		b.Run(fmt.Sprint(wires), func(b *testing.B) {
			var sol Solution
			for b.Loop() {
				h.step(s, 1)
				if err := s.SolveInto(context.Background(), &sol); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(sol.Passes), "passes")
			b.ReportMetric(float64(len(sol.Collapsed)), "collapsed")
		})
	}
}

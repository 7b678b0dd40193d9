package harness_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/size"
	"legwork/harness/solve"
)

// benchDrafts are the sizes that are measured; docs/performance.md holds the
// figures and says how to repeat them.
var benchDrafts = []struct {
	name  string
	wires int // 0: the shipped truck
}{{"truck", 0}, {"150", 150}, {"1000", 1000}, {"10000", 10000}}

func eachBench(b *testing.B, f func(b *testing.B, text string)) {
	for _, d := range benchDrafts {
		text := ""
		if d.wires == 0 {
			text = shipped(b)["orchard-truck.draft"]
		} else {
			text = generated(d.wires, 1)
		}
		b.Run(d.name, func(b *testing.B) {
			b.ReportAllocs()
			f(b, text)
		})
	}
}

// BenchmarkCheck is everything from the text to the findings.
func BenchmarkCheck(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		for b.Loop() {
			_, err := harness.Parse("bench.draft", []byte(text)).Check(b.Context(), harness.Options{})
			require.NoError(b, err)
		}
	})
}

func BenchmarkParse(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		for b.Loop() {
			draft.Parse("bench.draft", []byte(text))
		}
	})
}

func BenchmarkBuild(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		f, _ := draft.Parse("bench.draft", []byte(text))
		for b.Loop() {
			model.Build(f)
		}
	})
}

func BenchmarkRoute(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		m := harness.Parse("bench.draft", []byte(text)).Model
		for b.Loop() {
			route.Measure(m)
		}
	})
}

// BenchmarkSolve plays all steps of one case with the chosen sizes, from a
// plan that is ready. No play has the conductors of the one before, whose
// solutions it would find.
func BenchmarkSolve(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		r := checked(b, "bench.draft", text)
		wires := make([]solve.Conductor, len(r.Sizes.Wires))
		for i, w := range r.Sizes.Wires {
			wires[i] = w.Conductor
		}
		p := solve.NewPlan(r.Model)
		for b.Loop() {
			wires[0].Ohm *= 1.0001
			_, err := p.Run(b.Context(), wires, solve.Case{Corner: part.HotSoak})
			require.NoError(b, err)
		}
	})
}

// BenchmarkSize chooses all sizes, plays of the steps included.
func BenchmarkSize(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		m := harness.Parse("bench.draft", []byte(text)).Model
		routes := route.Measure(m)
		p, _ := gauge.ProfileOf("road")
		for b.Loop() {
			_, err := size.Choose(b.Context(), m, routes, p, part.Start{})
			require.NoError(b, err)
		}
	})
}

// BenchmarkRules runs all rules on what is solved.
func BenchmarkRules(b *testing.B) {
	eachBench(b, func(b *testing.B, text string) {
		r := checked(b, "bench.draft", text)
		for b.Loop() {
			pass := &check.Pass{Model: r.Model, Nets: r.Model.Nets(), Routes: r.Routes, Sizes: r.Sizes, Profile: r.Profile}
			_, _, err := check.Run(b.Context(), pass)
			require.NoError(b, err)
		}
	})
}

package gauge_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// Closed forms of the tightest bundles of equal wires: what computed values
// are checked with.
func TestTightestByClosedForms(t *testing.T) {
	ring := func(n int) float64 { return 1 + 1/math.Sin(math.Pi/float64(n)) }
	for n, want := range map[int]float64{
		1: 1, 2: 2, 3: 1 + 2/math.Sqrt(3), 4: 1 + math.Sqrt2, 5: ring(5), 6: 3, 7: 3,
		8: ring(7), 9: ring(8), 11: ring(9), 13: 2 + math.Sqrt(5), 18: 1 + math.Sqrt2 + math.Sqrt(6), 19: 1 + math.Sqrt2 + math.Sqrt(6),
	} {
		got, ok := gauge.TightestOf(n)
		require.True(t, ok)
		require.InDelta(t, want, got, 6e-5, "%d wires", n)
	}
	last := 0.0
	for n := 1; n <= 19; n++ {
		f, _ := gauge.TightestOf(n)
		require.GreaterOrEqual(t, f, last)
		require.GreaterOrEqual(t, f+1e-4, math.Sqrt(float64(n)))
		lay, _ := gauge.LayUpFactor(n)
		if n != 12 { // 4.00 is among the misprints
			require.GreaterOrEqual(t, lay, f-0.006, "a laid-up bundle is no tighter, but for rounding: %d", n)
		}
		b, ok := gauge.BundleOf(many(n, 2)...)
		require.True(t, ok)
		require.True(t, b.Exact)
		require.InDelta(t, 2*f, b.FloorMM, 1e-9)
		last = f
	}
	for _, n := range []int{0, 20, -1} {
		_, ok := gauge.TightestOf(n)
		require.False(t, ok)
	}
	_, ok := gauge.LayUpFactor(62)
	require.False(t, ok)
	_, ok = gauge.TubingFactor(301)
	require.False(t, ok)
}

// Own geometry: Descartes gives 7.020 mm; a third wire below two thirds of
// two equal ones sits in the gap.
func TestThreeWires(t *testing.T) {
	b, _ := gauge.BundleOf(2.4, 4.5, 2.4)
	require.InDelta(t, 7.020, b.FloorMM, 0.001)
	require.InDelta(t, 6.76, b.RuleMM, 0.01, "the shop rule is too small here")
	require.InDelta(t, 7.020, b.MM, 0.001)
	require.True(t, b.Exact)
	gap, _ := gauge.BundleOf(5, 5, 3)
	require.InDelta(t, 10, gap.FloorMM, 1e-9)
	one, _ := gauge.BundleOf(3)
	require.InDelta(t, 3, one.MM, 0)
	equal, _ := gauge.BundleOf(1, 1, 1)
	require.InDelta(t, 1+2/math.Sqrt(3), equal.FloorMM, 1e-4)
}

// For any wires: floor <= packed, the bundle holds the two largest side by
// side and the area, a wire more is never a smaller floor, and the packing
// stays within a third of the area's bound.
func TestBundleProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		n := 2 + r.IntN(30)
		ds := make([]float64, n)
		sum := 0.0
		for i := range ds {
			ds[i] = 1 + 9*r.Float64()
			sum += ds[i] * ds[i]
		}
		b, ok := gauge.BundleOf(ds...)
		require.True(t, ok)
		require.GreaterOrEqual(t, b.PackedMM, b.FloorMM*(1-1e-9))
		require.GreaterOrEqual(t, b.MM, b.FloorMM)
		require.GreaterOrEqual(t, b.MM, b.PackedMM)
		require.GreaterOrEqual(t, b.FloorMM, math.Sqrt(sum))
		if n > 12 {
			require.Less(t, b.PackedMM, 1.4*math.Sqrt(sum), "%v", ds)
		}
		less, _ := gauge.BundleOf(ds[:n-1]...)
		require.LessOrEqual(t, less.FloorMM, b.FloorMM+1e-9)
		require.LessOrEqual(t, less.RuleMM, b.RuleMM)
		mirrored := make([]float64, n)
		for i := range ds {
			mirrored[n-1-i] = ds[i]
		}
		m, _ := gauge.BundleOf(mirrored...)
		require.InDelta(t, b.MM, m.MM, 1e-9, "order does not count")
	}
	// against the best known: the packing of equal wires is near it
	for n := 4; n <= 19; n++ {
		ds := many(n, 1)
		ds[0] = 1.0001 // not equal any more, so it is packed
		b, _ := gauge.BundleOf(ds...)
		best, _ := gauge.TightestOf(n)
		require.False(t, b.Exact)
		require.GreaterOrEqual(t, b.PackedMM, best-1e-3, "%d", n)
		require.LessOrEqual(t, b.PackedMM, 1.16*best, "%d", n)
	}
	for _, bad := range [][]float64{nil, {0}, {1, math.NaN()}, {1, math.Inf(1)}, {-1}, many(5001, 1)} {
		_, ok := gauge.BundleOf(bad...)
		require.False(t, ok)
	}
	big, ok := gauge.BundleOf(many(300, 1)...)
	require.True(t, ok)
	require.Zero(t, big.PackedMM)
	require.InDelta(t, 1.2*math.Sqrt(300), big.MM, 1e-9)
}

func TestCoverings(t *testing.T) {
	last := 0
	for mm := 1.0; mm < 28; mm += 0.5 {
		tube, ok := gauge.TubingFor(mm, 0.5)
		if ok {
			require.GreaterOrEqual(t, tube.Size, last)
			last = tube.Size
		}
		for _, kind := range []string{"tube", "loom", "braid"} {
			c, conf, ok := gauge.CoveringFor(kind, mm)
			if ok {
				require.Equal(t, kind, c.Kind)
				require.False(t, conf.MayDecide(), "sizes of coverings are from memory")
				require.True(t, c.InsideMM == 0 || c.InsideMM > mm)
			}
		}
	}
	loom, _, ok := gauge.CoveringFor("loom", 10) // 0.97 x 12.7 x sqrt(0.7) = 10.3
	require.True(t, ok)
	require.Equal(t, "1/2", loom.Name)
	_, _, ok = gauge.CoveringFor("loom", 100)
	require.False(t, ok)
	_, _, ok = gauge.CoveringFor("sock", 5)
	require.False(t, ok)
	_, ok = gauge.TubingFor(math.NaN(), 0.5)
	require.False(t, ok)
}

// 3.0 to 7.0 mm: 9/3 does not grip 3.0 mm; 4:1 12/3 neither; 8/2 is too
// tight at 7.2; so 3:1 has none and 4:1 takes 8/2 for 2.5 to 7 mm.
func TestShrink(t *testing.T) {
	s, c, ok := gauge.ShrinkFor(4, 2.5, 7)
	require.True(t, ok)
	require.Equal(t, "8/2", s.Name)
	require.False(t, c.MayDecide())
	_, _, ok = gauge.ShrinkFor(2, 2.5, 7)
	require.False(t, ok, "2:1 does not span it")
	two, _, ok := gauge.ShrinkFor(2, 4, 5)
	require.True(t, ok)
	require.Equal(t, "1/4", two.Name)
	for _, bad := range [][2]float64{{0, 1}, {5, 4}, {math.NaN(), 1}} {
		_, _, ok := gauge.ShrinkFor(3, bad[0], bad[1])
		require.False(t, ok)
	}
	for _, s := range gauge.Shrinks() {
		got, ok := gauge.RecoveredMM(s.ExpandedMM, float64(s.Ratio))
		require.True(t, ok)
		require.InDelta(t, s.RecoveredMM, got, 0.025*s.ExpandedMM, s.Name)
	}
}

// The next larger size, never the nearest, and more conductors never less.
func TestSpliceOf(t *testing.T) {
	s, ok := gauge.SpliceOf(2.5, 0.6) // 3.1: 4 mm2, though 2.5 is nearer
	require.True(t, ok)
	require.InDelta(t, 4, s.Label, 0)
	require.Equal(t, 12, s.AWG) // 3.309
	require.Len(t, s.Why, 3)
	same, _ := gauge.SpliceOf(2.5)
	require.InDelta(t, 2.5, same.Label, 0)
	one, _ := gauge.SpliceOf(gauge.AWGAreaMM2(10))
	require.Equal(t, 10, one.AWG)
	huge, ok := gauge.SpliceOf(100, 100)
	require.True(t, ok)
	require.False(t, huge.AWGOK || huge.LabelOK)
	last := 31
	for n := 1; n <= 40; n++ {
		s, _ := gauge.SpliceOf(many(n, 0.5)...)
		require.LessOrEqual(t, s.AWG, last)
		require.LessOrEqual(t, s.EvenAWG, s.AWG)
		require.GreaterOrEqual(t, gauge.AWGAreaMM2(s.AWG)*(1+1e-9), s.MM2)
		eq, _ := gauge.EquivalentAWG(s.AWG)
		require.Equal(t, eq, s.EvenAWG)
		last = s.AWG
	}
	for _, bad := range [][]float64{nil, {0}, {math.NaN()}, {1, 2000}} {
		_, ok := gauge.SpliceOf(bad...)
		require.False(t, ok)
	}
}

// What holds instead of the misprints of tables, by our own laws.
func TestDeviceMisprints(t *testing.T) {
	k, _, _ := gauge.KOf("aluminum", 70, 140)
	require.InDelta(t, 68, k, 0.2)
	require.InDelta(t, 401.75, gauge.CoilFrom(290, 25, 125), 0.1)
	p, _, _ := gauge.CrimpPullOf("ul486a", -1)
	require.InDelta(t, 300, gauge.LbfOf(p.N), 0.1)
	cell, _ := gauge.ContactLoading(24, 26)
	require.InDelta(t, 0.331, cell, 0.0005)
	six, _ := gauge.TubingFactor(6)
	tight, _ := gauge.TightestOf(6)
	require.Less(t, six, tight)
	twelve, _ := gauge.LayUpFactor(12)
	tight, _ = gauge.TightestOf(12)
	require.Less(t, twelve, tight)
	mixed, _ := gauge.BundleOf(append(many(15, 0.045*25.4), many(15, 0.135*25.4)...)...)
	require.InDelta(t, 0.661, mixed.RuleMM/25.4, 0.0005)
	require.Greater(t, mixed.FloorMM/25.4, 0.55)
}

func TestCrimps(t *testing.T) {
	decide := map[string]bool{"ul486a": true, "military": true, "space": true, "abyc": true, "ul486e": true}
	for _, s := range gauge.CrimpStandards() {
		last, any := 0.0, false
		for _, p := range gauge.CrimpPulls() {
			if p.Standard != s {
				continue
			}
			any = true
			require.GreaterOrEqual(t, p.N, last, "%s: a thicker wire holds no less", s)
			require.InEpsilon(t, p.Lbf, gauge.LbfOf(p.N), 0.06, "%s %g mm2", s, p.MM2)
			last = p.N
			src, ok := gauge.SourceOf(p.Source)
			require.True(t, ok)
			require.True(t, decide[s] || !src.Confidence.MayDecide(), s)
		}
		require.True(t, any, s)
	}
	p, c, ok := gauge.CrimpPullOf("military", 6)
	require.True(t, ok)
	require.InDelta(t, 300, p.Lbf, 0)
	require.False(t, c.MayDecide(), "not seen")
	pair, _, _ := gauge.CrimpPullPair("ul486a", 16, 20)
	require.InDelta(t, 13, pair.Lbf, 0, "judged as the smaller")
	metric, _, ok := gauge.CrimpPullMetric("iec60352", 2.5)
	require.True(t, ok)
	require.InDelta(t, 230, metric.N, 0)
	_, _, ok = gauge.CrimpPullOf("iec60352", 99)
	require.False(t, ok)
	_, _, ok = gauge.CrimpPullMetric("none", 1)
	require.False(t, ok)
	_, _, ok = gauge.CrimpByStrength(math.NaN())
	require.False(t, ok)
	_, why, _ := gauge.CrimpByStrength(1)
	require.Len(t, why, 2)
}

func TestStudsAndSleeves(t *testing.T) {
	for _, s := range gauge.Studs() {
		require.Greater(t, s.HoleMM, s.StudMM, s.Name)
		got, ok := gauge.StudOf(s.Name)
		require.True(t, ok)
		require.Equal(t, s, got)
	}
	_, ok := gauge.StudOf("M7")
	require.False(t, ok)
	require.Len(t, gauge.SleeveFor(16), 2, "red and blue")
	require.Len(t, gauge.SleeveFor(18), 1)
	require.Empty(t, gauge.SleeveFor(0))
	require.NotEmpty(t, gauge.SleeveColors())
	for field, n := range map[string]int{"boat": 4, "aircraft": 4, "naval": 3} {
		got, ok := gauge.MostOnStud(field)
		require.True(t, ok)
		require.Equal(t, n, got)
	}
	_, ok = gauge.MostOnStud("moon")
	require.False(t, ok)
	for i, s := range gauge.StripLengths() {
		src, _ := gauge.SourceOf(s.Source)
		require.Equal(t, i == 0, src.Confidence.MayDecide(), s.Terminal)
	}
}

func TestLayoutIsMonotonic(t *testing.T) {
	var bend, extra, marks, plus float64
	for mm := 1.0; mm < 15000; mm *= 1.07 {
		a, b, ok := gauge.BendRadiusMM(min(mm, 1e4))
		require.True(t, ok)
		require.True(t, a >= bend && b > a)
		e, _ := gauge.BendExtraMM(90, min(mm, 1e4))
		require.GreaterOrEqual(t, e, extra)
		n, _ := gauge.IDMarks(mm / 1000)
		require.GreaterOrEqual(t, float64(n), marks)
		p, _ := gauge.LengthToleranceM(mm / 1000)
		require.GreaterOrEqual(t, p, plus)
		bend, extra, marks, plus = a, e, float64(n), p
	}
	n, ok := gauge.ClipCount("vehicle", 0.9)
	require.True(t, ok)
	require.Equal(t, 4, n)
	_, ok = gauge.ClipCount("moon", 1)
	require.False(t, ok)
	tight, _ := gauge.TwistRatio(2, 25)
	loose, _ := gauge.TwistRatio(2, 50)
	require.Greater(t, tight, loose)
	take, _ := gauge.TwistRatio(2.0, 25.4) // own: 3.0 % of take-up
	require.InDelta(t, 1.030, take, 5e-4)
	half, _ := gauge.TapedMM(10, 0.13, true)
	edge, _ := gauge.TapedMM(10, 0.13, false)
	require.InDelta(t, 10.52, half, 1e-9)
	require.InDelta(t, 10.26, edge, 1e-9)
	tape, ok := gauge.TapeLengthM(1, 10, 0.13, 19) // pi x 10.26/9.5
	require.True(t, ok)
	require.InDelta(t, 3.393, tape, 0.001)
	last := math.Inf(1)
	for f := -40.0; f <= 100; f++ {
		ohm, ok := gauge.InsulationLimitOhm(f)
		require.True(t, ok)
		require.LessOrEqual(t, ohm, last)
		require.Positive(t, ohm)
		last = ohm
	}
	for percent := 0.0; percent < 100; percent++ {
		for _, awg := range []int{18, 20, 22, 24, 26, 28} {
			a, _ := gauge.ContactLoading(awg, percent)
			b, ok := gauge.ContactLoading(awg, percent+1)
			require.True(t, ok)
			require.LessOrEqual(t, b, a, "%d AWG at %g %%", awg, percent)
		}
	}
	_, ok = gauge.ContactLoading(18, 101)
	require.False(t, ok)
	_, ok = gauge.SharedContacts(0)
	require.False(t, ok)
	_, ok = gauge.TabA(4, 16)
	require.False(t, ok)
	allowed, ok := gauge.StrandsAllowed(19, 3, true)
	require.True(t, ok)
	require.Equal(t, 2, allowed)
	_, ok = gauge.StrandsAllowed(19, 4, false)
	require.False(t, ok)
	_, ok = gauge.StrandsPass(30, 0, 0)
	require.False(t, ok)
}

func TestSchemesOfColor(t *testing.T) {
	for _, scheme := range []string{"bs-au7", "din-72551", "abyc"} {
		seen := map[string]bool{}
		for _, c := range gauge.CircuitColors(scheme) {
			require.Equal(t, scheme, c.Scheme)
			require.NotEqual(t, c.Base, c.Tracer)
			require.False(t, seen[c.Base+"/"+c.Tracer], "%s %s", c.Base, c.Tracer)
			seen[c.Base+"/"+c.Tracer] = true
			_, ok := gauge.SourceOf(c.Source)
			require.True(t, ok)
		}
		require.Greater(t, len(seen), 15)
	}
	require.Nil(t, gauge.CircuitColors("plaid"))
	_, c, ok := gauge.CircuitColorOf("bs-au7", "black", "")
	require.True(t, ok)
	require.True(t, c.MayDecide())
	_, _, ok = gauge.CircuitColorOf("abyc", "plaid", "")
	require.False(t, ok)
	protective, ok := gauge.IECColors("GN", "YE")
	require.True(t, ok)
	require.Equal(t, "GNYE", protective)
	for _, bad := range [][]string{nil, {"XX"}, {"BK", "BN", "RD", "OG", "YE"}} {
		_, ok := gauge.IECColors(bad...)
		require.False(t, ok)
		_, ok = gauge.IECCable(append([]string{"?"}, bad...)...)
		require.False(t, ok)
	}
	for _, bad := range []string{"", "1234", "9x", "-1"} {
		_, ok := gauge.DigitColors(bad)
		require.False(t, ok, bad)
	}
	_, ok = gauge.OldRelayTerminal("Z9")
	require.False(t, ok)
	for _, p := range gauge.TrailerPins() {
		src, _ := gauge.SourceOf(p.Source)
		require.False(t, src.Confidence.MayDecide())
	}
	for _, l := range gauge.AllColorLetters() {
		if c, ok := gauge.ColorOf(l.Name); ok && l.IEC != "BU" {
			require.Equal(t, c.Code, l.IEC, l.Name)
		}
	}
	topics := map[string]int{}
	for _, r := range gauge.BuildRules("") {
		topics[r.Topic]++
		require.NotEmpty(t, r.Rule)
		require.NotEmpty(t, r.Value, r.Rule)
		_, ok := gauge.SourceOf(r.Source)
		require.True(t, ok, r.Source)
	}
	for topic, n := range topics {
		require.Len(t, gauge.BuildRules(topic), n)
	}
	require.Len(t, topics, 12)
	require.NotEmpty(t, gauge.Tapes())
	require.NotEmpty(t, gauge.TabSizes())
}

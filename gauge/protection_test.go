package gauge_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

func window(t *testing.T, profile string, load, wire float64) gauge.Window {
	t.Helper()
	p, ok := gauge.ProfileOf(profile)
	require.True(t, ok)
	return gauge.FuseWindow(gauge.WindowCase{Style: "blade", LoadA: load, WireA: wire, Profile: p})
}

// 8.5 A asks for 11.3 A; 18 AWG at 60 C carries 20.7 A: 15 and 20 A fit.
func TestFuseWindow(t *testing.T) {
	w := window(t, "road", 8.5, 20.7)
	require.True(t, w.OK, w.Trouble)
	require.Equal(t, []float64{15, 20}, w.Ratings)
	require.InDelta(t, 15, w.RatedA, 0)
	require.InDelta(t, 11.33, w.LeastA, 0.01)
	require.Len(t, w.Why, 3)
	// the same wire on a boat: 1.5 x 20.7 = 31.05
	require.Equal(t, []float64{15, 20, 25, 30}, window(t, "boat", 8.5, 20.7).Ratings)
	none := window(t, "road", 17, 20.7) // 22.7 to 20.7
	require.False(t, none.OK)
	require.Contains(t, none.Trouble, "22.67 A, for the load, to 20.7 A, for the wire")
	for _, bad := range [][2]float64{{0, 10}, {-1, 10}, {5, 0}, {math.NaN(), 5}, {5, math.Inf(1)}, {1e9, 1e9}} {
		require.NotEmpty(t, window(t, "road", bad[0], bad[1]).Trouble)
	}
}

// Heat and the first current only hint: the rating does not change, HintOK does.
func TestWindowHints(t *testing.T) {
	road, _ := gauge.ProfileOf("road")
	c := gauge.WindowCase{Style: "blade", LoadA: 11, WireA: 40, Profile: road} // 14.67 A
	require.True(t, gauge.FuseWindow(c).HintOK)
	c.AmbientC, c.Known = 85, true // / 0.88: 16.67 A
	hot := gauge.FuseWindow(c)
	require.InDelta(t, 15, hot.RatedA, 0)
	require.InDelta(t, 16.67, hot.HintA, 0.01)
	require.False(t, hot.HintOK)
	c.Known = false
	c.StartA, c.StartS = 66, 0.1 // gate at 2 x holds 0.10 s: 33 A
	start := gauge.FuseWindow(c)
	require.InDelta(t, 15, start.RatedA, 0)
	require.InDelta(t, 33, start.HintA, 1e-9)
	require.False(t, start.HintOK)
}

func TestNextSize(t *testing.T) {
	for _, c := range []struct{ ampacity, share, want float64 }{
		{25, 1.5, 25},    // a standard size itself
		{32, 1.5, 35},    // next larger, within 48
		{16, 1.25, 20},   // 20 is 125 % just so
		{15.9, 1.25, 15}, // 20 would be 126 %
	} {
		got, ok := gauge.NextSizeA("blade", c.ampacity, c.share)
		require.True(t, ok)
		require.InDelta(t, c.want, got, 0, "%g A", c.ampacity)
	}
	_, ok := gauge.NextSizeA("mega", 50, 1.5)
	require.False(t, ok, "the series starts at 100 A")
	_, ok = gauge.LargestFuseA("cork", 50)
	require.False(t, ok)
}

// The space of 12.6 V, 500 CCA (10.8 mohm), 5 m of 1.5 mm2, a 15 A blade and
// a body return: our own arithmetic, 81.1 mohm, 155 A, 10.4 x.
func TestFarEnd(t *testing.T) {
	f, ok := gauge.FarEndShort(12.6, "blade", 15,
		gauge.Ohms{Name: "battery", Ohm: 0.0108}, gauge.Ohms{Name: "wire", Ohm: 5 * 0.0127},
		gauge.Ohms{Name: "fuse", Ohm: 0.0048}, gauge.Ohms{Name: "body", Ohm: 0.002})
	require.True(t, ok)
	require.InDelta(t, 0.0811, f.SumOhm, 1e-9)
	require.InDelta(t, 155.4, f.ShortA, 0.1)
	require.InDelta(t, 10.36, f.Times, 0.01)
	require.True(t, f.Wanted && f.Fast)
	require.InDelta(t, 6, f.Gate.Share, 0)
	require.Len(t, f.Why, 7)
	// 155 A for 0.1 s against 1.5 mm2 of PVC from 70 C: 2403 of 29756 A2s
	square, _ := gauge.PulseA2S("square", f.ShortA, 0.1)
	require.InDelta(t, 2414, square, 2)
	require.InDelta(t, 29756, gauge.WithstandA2S(1.5, 70, 160), 200)
	for _, emf := range []float64{0, -12, 61, math.NaN()} {
		_, ok := gauge.FarEndShort(emf, "blade", 15, gauge.Ohms{Name: "x", Ohm: 1})
		require.False(t, ok)
	}
	_, ok = gauge.FarEndShort(12, "blade", 15)
	require.False(t, ok, "no resistance at all")
}

// A 15 A blade under a 60 A maxi: at 2 x 15 A it opens within 5 s and the
// maxi carries 30 A for ever; at 210 A 0.1 s against 0.2 s; at 360 A the
// maxi may open after 0.04 s already.
func TestSelectivity(t *testing.T) {
	maxi, blade := gauge.FuseAt{Style: "maxi", RatedA: 60}, gauge.FuseAt{Style: "blade", RatedA: 15}
	for amps, want := range map[float64]gauge.Order{
		10: gauge.NeitherOpens, 30: gauge.LowerFirst, 100: gauge.LowerFirst, 210: gauge.LowerFirst, 360: gauge.OrderUnknown, 5000: gauge.OrderUnknown,
	} {
		o, why, c, ok := gauge.Selective(maxi, blade, amps)
		require.True(t, ok)
		require.Equal(t, want, o, "%g A: %s", amps, o)
		require.NotEmpty(t, why)
		if o == gauge.LowerFirst {
			require.False(t, c.MayDecide(), "gates of a maxi are from memory")
		}
	}
	to, c := gauge.SelectiveTo(maxi, blade)
	require.InDelta(t, 210, to, 0.001)
	require.False(t, c.MayDecide())
	o, _, _, _ := gauge.Selective(blade, maxi, 100) // the wrong way round
	require.Equal(t, gauge.UpperFirst, o)
	blade.ClearA2S, maxi.MeltA2S = 300, 5000
	o, why, c, _ := gauge.Selective(maxi, blade, 5000)
	require.Equal(t, gauge.LowerFirst, o, "makers' figures settle it")
	require.Len(t, why, 2)
	require.True(t, c.MayDecide())
	same, _ := gauge.SelectiveTo(blade, blade)
	require.Zero(t, same)
	_, _, _, ok := gauge.Selective(maxi, blade, math.NaN())
	require.False(t, ok)
}

// The books disagree on a battery feed of 1.5 m without a sheath.
func TestPlaceVerdicts(t *testing.T) {
	all, ok := gauge.PlaceVerdicts(gauge.FirstDevice{LengthM: 1.5, Battery: true})
	require.True(t, ok)
	got := map[string]bool{}
	for _, v := range all {
		got[v.Book] = v.OK
		_, known := gauge.SourceOf(v.Why.Source)
		require.True(t, known)
	}
	require.Equal(t, map[string]bool{"33 CFR 183": true, "ABYC E-11": false, "ISO 10133": false}, got)
	_, ok = gauge.PlaceVerdicts(gauge.FirstDevice{LengthM: math.Inf(1)})
	require.False(t, ok)
	ids := map[string]bool{}
	for _, p := range gauge.Placements() {
		require.False(t, ids[p.ID], p.ID)
		ids[p.ID] = true
		require.NotEmpty(t, p.Document, p.ID)
		require.NotEmpty(t, p.Requirement, p.ID)
	}
	_, ok = gauge.PlacementOf("moon")
	require.False(t, ok)
}

func TestBreakersAndLinks(t *testing.T) {
	require.Len(t, gauge.Breakers(), 3)
	last := math.Inf(1)
	for _, g := range gauge.BreakerGates() {
		src, ok := gauge.SourceOf(g.Source)
		require.True(t, ok)
		require.False(t, src.Confidence.MayDecide())
		if g.MaxS > 0 {
			require.Less(t, g.MaxS, last)
			last = g.MaxS
		}
	}
	require.NotEmpty(t, gauge.LinkRules())
	_, ok := gauge.LinkMM2(10)
	require.False(t, ok)
}

// More heat, more pulses, more load: never a larger share, never a smaller fuse.
func TestProtectionIsMonotonic(t *testing.T) {
	last := 1.0
	for temp := -40.0; temp <= 125; temp++ {
		share, c, ok := gauge.FuseAmbientShare(temp)
		require.True(t, ok)
		require.False(t, c.MayDecide())
		require.LessOrEqual(t, share, last)
		last = share
	}
	_, _, ok := gauge.FuseAmbientShare(126)
	require.False(t, ok)
	rated := 0.0
	for load := 0.1; load < 30; load += 0.1 {
		w := window(t, "road", load, 1000)
		require.True(t, w.OK)
		require.GreaterOrEqual(t, w.RatedA, rated)
		rated = w.RatedA
	}
	for _, style := range gauge.FuseFamilies() { // a steeper gate is never slower
		gates := gauge.FuseGates(style)
		opens, holds := math.Inf(1), math.Inf(1)
		for i, g := range gates {
			require.True(t, i == 0 || g.Share > gates[i-1].Share)
			if g.MaxS > 0 {
				require.LessOrEqual(t, g.MaxS, opens)
				require.Greater(t, g.MaxS, g.MinS)
				opens = g.MaxS
			}
			if g.MinS > 0 {
				require.LessOrEqual(t, g.MinS, holds)
				holds = g.MinS
			}
		}
	}
}

func TestMetals(t *testing.T) {
	for _, m := range gauge.Metals() {
		last := 0.0
		for end := 80.0; end <= 400; end += 10 {
			k, _, ok := gauge.KOf(m.Name, 70, end)
			require.True(t, ok)
			require.Greater(t, k, last)
			last = k
		}
	}
	copper, c, _ := gauge.KOf("copper", 70, 160)
	require.InDelta(t, gauge.K(70, 160), copper, 1e-12)
	require.True(t, c.MayDecide())
	_, c, _ = gauge.KOf("aluminum", 70, 160)
	require.False(t, c.MayDecide())
	for _, bad := range [][2]float64{{70, 70}, {-300, 100}, {math.NaN(), 100}, {70, math.Inf(1)}} {
		_, _, ok := gauge.KOf("copper", bad[0], bad[1])
		require.False(t, ok)
	}
	_, _, ok := gauge.KOf("tin", 20, 100)
	require.False(t, ok)
	for _, e := range gauge.EndTemps() {
		require.Greater(t, e.ShortC, e.ClassC)
	}
}

package gauge_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

func limitOf(t *testing.T, j gauge.Judgement, name string) gauge.Limit {
	t.Helper()
	l, ok := j.Limit(name)
	require.True(t, ok, name)
	return l
}

func TestNothingAskedIsNothingJudged(t *testing.T) {
	j := gauge.JudgeWire(gauge.WireCase{Size: sized(10), Family: gauge.FamilyFor(sized(10)), AmbientC: 40})
	require.Empty(t, j.Limits)
	require.True(t, j.OK)
	require.Empty(t, j.Governs)
	require.InDelta(t, 40, j.TempC, 0)
	_, ok := j.Limit(gauge.FloorDrop)
	require.False(t, ok)
}

func TestProtectionLeavesTheBundleOut(t *testing.T) {
	s := sized(14)
	j := gauge.JudgeWire(gauge.WireCase{
		Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 30, Loaded: 7, HeatA: 21, FuseA: 40, ShortA: 20, FuseKind: "blade",
	})
	require.InDelta(t, 20, limitOf(t, j, gauge.FloorAmpacity).Got, 1e-9) // 40 A x 0.50
	require.False(t, limitOf(t, j, gauge.FloorAmpacity).OK)
	require.InDelta(t, 40, limitOf(t, j, gauge.FloorProtection).Got, 1e-9)
	require.True(t, limitOf(t, j, gauge.FloorProtection).OK)
	require.Equal(t, gauge.FloorAmpacity, j.Governs)
	require.True(t, limitOf(t, j, gauge.FloorShort).OK, "20 A never hurts a wire that carries 40 A")
	require.False(t, j.OK)
}

func TestBoatProfileLetsTheFuseExceed(t *testing.T) {
	boat, ok := gauge.ProfileOf("boat")
	require.True(t, ok)
	s := sized(12)
	c := gauge.WireCase{Size: s, Family: gauge.FamilyFor(s), Profile: boat, AmbientC: 30, FuseA: 75, FuseKind: "maxi"}
	// 33 CFR 183.455(c)(1): 150 % of 50 A
	require.InDelta(t, 75, limitOf(t, gauge.JudgeWire(c), gauge.FloorProtection).Got, 1e-9)
	require.True(t, gauge.JudgeWire(c).OK)
	c.Profile = road(t)
	require.False(t, gauge.Fits(c))
	c.Size, c.Profile, c.Single = sized(18), boat, true
	require.False(t, limitOf(t, gauge.JudgeWire(c), gauge.FloorMechanical).OK, "183.425: 16 AWG alone")
}

func TestShortIsHeldAgainstSureGates(t *testing.T) {
	s := sized(18)
	c := gauge.WireCase{Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 60, HeatA: 8, FuseA: 20, FuseKind: "blade", ShortA: 150}
	short := limitOf(t, gauge.JudgeWire(c), gauge.FloorShort)
	require.InDelta(t, 8000, short.Asked, 1e-9) // (2 x 20)^2 x 5 s
	require.InDelta(t, 14400, short.Got, 50)    // docs/decisions/0006-gauge-figures.md
	require.Equal(t, "A2s", short.Unit)
	require.True(t, short.OK)
	require.False(t, short.Hint)
	c.FuseA = 40 // 32000 A2s by the sure gate; the usual one would pass it
	short = limitOf(t, gauge.JudgeWire(c), gauge.FloorShort)
	require.False(t, short.OK)
	last := short.Why[len(short.Why)-1]
	require.Equal(t, "fuse-gates-fast", last.Source)
	require.Less(t, last.Value, short.Got)
}

func TestShortTooWeakToOpen(t *testing.T) {
	s := sized(18)
	c := gauge.WireCase{Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 60, FuseA: 20, FuseKind: "blade", ShortA: 36}
	short := limitOf(t, gauge.JudgeWire(c), gauge.FloorShort)
	require.False(t, short.OK)
	require.Equal(t, "A", short.Unit)
	require.InDelta(t, 40, short.Asked, 1e-9) // 2 x 20 A
	c.FuseKind, c.ShortA, c.FuseA = "bolt-down", 100, 60
	short = limitOf(t, gauge.JudgeWire(c), gauge.FloorShort)
	require.True(t, short.Hint, "bolt-down gates are from memory")
	require.False(t, short.OK)
}

func TestWhatCannotBeJudgedSaysSo(t *testing.T) {
	base := gauge.WireCase{Size: sized(10), Family: gauge.FamilyFor(sized(10)), Profile: road(t), AmbientC: 30, FuseA: 30}
	for name, change := range map[string]func(*gauge.WireCase){
		"unknown short":        func(c *gauge.WireCase) { c.FuseKind = "blade" },
		"device without law":   func(c *gauge.WireCase) { c.FuseKind, c.ShortA = "breaker", 500 },
		"glass opens too late": func(c *gauge.WireCase) { c.FuseKind, c.ShortA = "glass", 500 },
		"exempt":               func(c *gauge.WireCase) { c.Exempt = "starter cable" },
	} {
		c := base
		change(&c)
		j := gauge.JudgeWire(c)
		require.Len(t, j.NotJudged, 1, name)
		_, ok := j.Limit(gauge.FloorShort)
		require.False(t, ok, name)
	}
}

func TestMarginOfBothBounds(t *testing.T) {
	require.InDelta(t, 0.25, gauge.Limit{Got: 50, Asked: 40}.Margin(), 1e-12)
	require.InDelta(t, 0.25, gauge.Limit{Got: 40, Asked: 50, AtMost: true}.Margin(), 1e-12)
	require.Negative(t, gauge.Limit{Got: 60, Asked: 50, AtMost: true}.Margin())
}

// NaN and a size never set must fail, not pass.
func TestBrokenFiguresFail(t *testing.T) {
	s := sized(10)
	good := gauge.WireCase{Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 30, HeatA: 5, MaxOhm: 1, LengthM: 1, FuseA: 10, FuseKind: "blade", ShortA: 200}
	require.True(t, gauge.Fits(good))
	for name, spoil := range map[string]func(*gauge.WireCase){
		"heat":     func(c *gauge.WireCase) { c.HeatA = math.NaN() },
		"ohm":      func(c *gauge.WireCase) { c.MaxOhm = math.NaN() },
		"no drop":  func(c *gauge.WireCase) { c.MaxOhm = -0.001 },
		"length":   func(c *gauge.WireCase) { c.LengthM = math.NaN() },
		"ambient":  func(c *gauge.WireCase) { c.AmbientC = math.NaN() },
		"hot":      func(c *gauge.WireCase) { c.AmbientC = 125 },
		"fuse":     func(c *gauge.WireCase) { c.FuseA = math.NaN() },
		"short":    func(c *gauge.WireCase) { c.ShortA = math.NaN() },
		"size":     func(c *gauge.WireCase) { c.Size = gauge.Size{Metric: true, Source: "iec-60228"} },
		"unset":    func(c *gauge.WireCase) { c.Family = gauge.Family{} },
		"no class": func(c *gauge.WireCase) { c.Family = gauge.Family{Source: "family-read"} },
	} {
		c := good
		spoil(&c)
		require.False(t, gauge.Fits(c), name)
	}
}

// A larger size never fails where a smaller one passes, on either ladder.
func TestLargerNeverFails(t *testing.T) {
	for _, metric := range []bool{false, true} {
		for _, amps := range []float64{1, 6, 15, 40, 90} {
			passed := false
			for _, s := range gauge.Ladder(metric) {
				ok := gauge.Fits(gauge.WireCase{
					Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 70, Loaded: 4, LengthM: 5,
					HeatA: amps, FuseA: amps / 0.75, FuseKind: "blade", ShortA: 900, MaxOhm: 0.36 / amps, Wet: true,
				})
				require.False(t, passed && !ok, "%s fails at %g A after a smaller size passed", s.Name, amps)
				passed = passed || ok
			}
			require.True(t, passed, "%g A", amps)
		}
	}
}

func BenchmarkJudge(b *testing.B) {
	road, _ := gauge.ProfileOf("road")
	for name, s := range map[string]gauge.Size{"table": gauge.Ladder(false)[4], "model": gauge.Ladder(true)[4]} {
		c := gauge.WireCase{
			Size: s, Family: gauge.FamilyFor(s), Profile: road, AmbientC: 60, Loaded: 3, LengthM: 4,
			HeatA: 8.5, FuseA: 15, FuseKind: "blade", ShortA: 270, MaxOhm: 0.03,
		}
		b.Run(name+"/working", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				gauge.JudgeWire(c)
			}
		})
		b.Run(name+"/fits", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				gauge.Fits(c)
			}
		})
	}
}

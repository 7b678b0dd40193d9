package gauge

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// ratingCases asks wires of every size for much and for little.
func ratingCases(t *testing.T) []WireCase {
	t.Helper()
	p, ok := ProfileOf("road")
	require.True(t, ok)
	var list []WireCase
	for _, s := range append(Ladder(false), Ladder(true)...) {
		for _, amps := range []float64{0, 3, 12, 40, 150} {
			list = append(list,
				WireCase{Size: s, Family: FamilyFor(s), Profile: p, AmbientC: 60, HeatA: amps, FuseA: 20, FuseKind: "blade", ShortA: 300, LengthM: 3},
				WireCase{Size: s, Family: FamilyFor(s), Profile: p, AmbientC: 85, HeatA: amps, Loaded: 5, Exempt: "starter cable", Wet: true, MaxOhm: 0.01, LengthM: 3})
		}
	}
	return append(list, WireCase{})
}

// A rating answers as the judge does, which gives the working as well.
func TestRatingJudgesAsTheJudge(t *testing.T) {
	fits := 0
	for _, c := range ratingCases(t) {
		want, r := JudgeWire(c), RatingOf(c.Size, c.Family)
		got := r.Judge(&c)
		require.Equal(t, want.OK, got.OK)
		require.Equal(t, want.OK, r.Fits(&c))
		require.Equal(t, want.Governs, got.Governs)
		require.Equal(t, want.TempC, got.TempC)
		require.Equal(t, want.Case, got.Case)
		require.Len(t, got.Limits, len(want.Limits))
		first := ""
		for i, l := range want.Limits {
			require.Equal(t, l.Margin(), got.Limits[i].Margin())
			require.Empty(t, got.Limits[i].Why)
			if first == "" && !l.OK && !l.Hint {
				first = l.Name
			}
		}
		require.Equal(t, first, r.Fails(&c))
		if want.OK {
			fits++
		}
	}
	require.Greater(t, fits, 10)
	require.Less(t, fits, len(ratingCases(t))-10, "some fit and some don't")
}

// The ladder is climbed for every wire in every round of sizing.
func TestFitsAllocatesNothing(t *testing.T) {
	for _, c := range ratingCases(t) {
		r := RatingOf(c.Size, c.Family)
		require.Zero(t, testing.AllocsPerRun(10, func() { r.Fits(&c) }))
	}
}

func BenchmarkRatingFits(b *testing.B) {
	s, _ := AWGSize(14)
	p, _ := ProfileOf("road")
	c := WireCase{Profile: p, AmbientC: 60, HeatA: 8, FuseA: 20, FuseKind: "blade", ShortA: 300, LengthM: 3}
	r := RatingOf(s, FamilyFor(s))
	b.ReportAllocs()
	for b.Loop() {
		r.Fits(&c)
	}
}

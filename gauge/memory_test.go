package gauge

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// Figures of devices and building that rest on memory alone only hint.
func TestMemoryOnlyHints(t *testing.T) {
	n := 0
	for _, s := range slices.Concat(protectionSources, electricSources, buildSources) {
		if s.Where == memory {
			n++
			require.False(t, s.Confidence.MayDecide(), s.Key)
		}
	}
	require.Greater(t, n, 25)
}

// Tables are handed out as copies.
func TestTablesAreCopies(t *testing.T) {
	FuseStyles()[0].RatingsA[0] = 99
	require.InDelta(t, 1, FuseSeries("blade")[0], 0)
	Placements()[0].Document = "mine"
	require.NotEqual(t, "mine", Placements()[0].Document)
	CircuitColors("abyc")[0].Base = "plaid"
	require.NotEqual(t, "plaid", CircuitColors("abyc")[0].Base)
	BuildRules("crimp")[0].Rule = "mine"
	require.NotEqual(t, "mine", BuildRules("crimp")[0].Rule)
	CrimpPulls()[0].N = 0
	require.Positive(t, CrimpPulls()[0].N)
}

// Every row of every table names a source that exists: the page of figures
// would print "memory" for a slip of the pen.
func TestRowsNameSources(t *testing.T) {
	seen := func(key, row string) {
		_, ok := SourceOf(key)
		require.True(t, ok, "%s: %s", row, key)
	}
	for _, r := range fuseStyles {
		seen(r.Source, r.Name)
	}
	for _, r := range fuseColorings {
		seen(r.Source, r.Style)
	}
	for _, o := range openings {
		for _, g := range o.gates {
			seen(g.Source, o.family)
		}
	}
	for _, r := range reratings {
		seen(r.Source, r.Subject)
	}
	for _, r := range placements {
		seen(r.Source, r.ID)
	}
	for _, r := range placeRules {
		seen(r.source, r.book)
	}
	for _, r := range relayTypes {
		seen(r.Source, r.Name)
	}
	for _, r := range inrushFigures {
		seen(r.Source, r.Load)
	}
	for _, r := range crankFigures {
		seen(r.Source, r.Subject)
	}
	for _, r := range alternatorFigures {
		seen(r.Source, r.Subject)
	}
	for _, r := range tubings {
		seen(r.Source, "tubing")
	}
	for _, r := range coverings {
		seen(r.Source, r.Name)
	}
	for _, r := range shrinks {
		seen(r.Source, r.Name)
	}
	for _, r := range clips {
		seen(r.Source, r.Field)
	}
	for _, r := range sleeveColors {
		seen(r.Source, r.Color)
	}
	for _, r := range tabSizes {
		seen(r.Source, r.Series)
	}
	for _, r := range colorLetters {
		seen(r.Source, r.Name)
	}
	for _, r := range endTemps {
		seen(r.Source, r.Class)
	}
}

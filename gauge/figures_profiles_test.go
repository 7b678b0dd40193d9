package gauge

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func (p *figurePage) profileLimits() {
	p.table("Limits of the profiles", "Each with its own document; where it says a note, a longer one breaks no rule of that profile.", "profile", "limit", "value")
	for _, r := range profiles {
		for _, l := range r.Limits() {
			p.row(l.Source, r.Name, l.Title, l.Text)
		}
	}
	p.table("Where rule-books disagree", "What each says, and what legwork takes.", "question", "says", "taken")
	for _, d := range disagreements {
		for _, q := range d.Positions {
			p.row(q.Source, d.Topic, q.Says, d.Taken)
		}
	}
}

// Every limit of every profile is there, in one order, from a document that
// may decide; the printed value is the one that is used.
func TestProfileLimits(t *testing.T) {
	first := Profiles()[0].Limits()
	for _, p := range Profiles() {
		limits := p.Limits()
		require.Len(t, limits, len(first), p.Name)
		for i, l := range limits {
			require.Equal(t, first[i].ID, l.ID)
			require.Equal(t, first[i].Title, l.Title)
			require.True(t, l.Confidence().MayDecide(), "%s: %s rests on %q", p.Name, l.ID, l.Source)
			require.NotEmpty(t, l.Text)
			got, ok := p.LimitOf(l.ID)
			require.True(t, ok)
			require.Equal(t, l, got)
		}
		_, known := SourceOf(p.Source)
		require.True(t, known, p.Name)
	}
}

// Own figures of the profiles, from the documents that their limits name.
func TestProfileFigures(t *testing.T) {
	for _, c := range []struct {
		profile, limit string
		value          float64
		source         string
	}{
		{"road", LimitLoadOfFuse, 80, "load-on-fuse"},
		{"road", LimitFuseChoice, 4.0 / 3, "fuse-margin"},
		{"road", LimitFirstFuse, 7, "abyc-feed"},
		{"boat", LimitFuseOverWire, 150, "cfr-183-455-rating"}, // 33 CFR 183.455(c)(1)
		{"boat", LimitAlone, 16, "cfr-183-425-smallest"},       // 33 CFR 183.425(d)
		{"boat", LimitSheathed, 72, "abyc-feed"},
		{"aircraft", LimitDropOther, 100 * 0.5 / 14, "ac4313-table-11-6"},
		{"body-builder", LimitLoadOfFuse, 70, "body-builder-metric"}, // 10.5 A on 15 A
		{"fire", LimitFuseOverWire, 80, "fire-wire"},                 // wire 125 % of the fuse
		{"track", LimitFuseChoice, 1.5, "fuse-load-150"},
		{"track", LimitDropOther, 5, "drop-training"},
	} {
		p, ok := ProfileOf(c.profile)
		require.True(t, ok, c.profile)
		l, ok := p.LimitOf(c.limit)
		require.True(t, ok, c.limit)
		require.InDelta(t, c.value, l.Value, 1e-9, "%s %s", c.profile, c.limit)
		require.Equal(t, c.source, l.Source, "%s %s", c.profile, c.limit)
	}
	p, _ := ProfileOf("road")
	_, ok := p.LimitOf("no-such-limit")
	require.False(t, ok)
}

func TestDisagreementsAreCited(t *testing.T) {
	for _, d := range Disagreements() {
		require.NotEmpty(t, d.Taken, d.Topic)
		require.Greater(t, len(d.Positions), 1, d.Topic)
		for _, q := range d.Positions {
			_, ok := SourceOf(q.Source)
			require.True(t, ok, "%s: %s", d.Topic, q.Source)
		}
	}
}

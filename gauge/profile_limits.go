package gauge

import (
	"fmt"
	"math"
)

// ProfileLimit is one limit of a [Profile] with the document behind it.
type ProfileLimit struct {
	ID     string  // kebab case
	Title  string  // in words
	Value  float64 // in Unit
	Unit   string  // %, x, in, AWG; "" where Text says it all
	Text   string  // as printed
	Source string  // key of document and clause
}

// Confidence is how far the limit may be trusted.
func (l ProfileLimit) Confidence() Confidence { return confidenceOf(l.Source) }

// Ids of the limits of a profile.
const (
	LimitLoadOfFuse   = "load-of-fuse"
	LimitFuseChoice   = "fuse-choice"
	LimitFuseOverWire = "fuse-over-wire"
	LimitDropCritical = "drop-critical"
	LimitDropOther    = "drop-other"
	LimitFirstFuse    = "first-fuse"
	LimitSheathed     = "first-fuse-sheathed"
	LimitDry          = "smallest-dry"
	LimitWet          = "smallest-wet"
	LimitAlone        = "smallest-alone"
	LimitAmpacity     = "ampacity"
	LimitAreas        = "areas"
	LimitDropBy       = "drop-by"
)

const metersPerInch = 0.0254

// Limits lists the limits of a profile, each with its source, in one order
// for all profiles.
func (p Profile) Limits() []ProfileLimit {
	percent := func(id, title string, share float64) ProfileLimit {
		v := 100 * share
		return ProfileLimit{ID: id, Title: title, Value: v, Unit: "%", Text: fmt.Sprintf("%.3g %%", v)}
	}
	inches := func(id, title string, m float64) ProfileLimit {
		l := ProfileLimit{ID: id, Title: title, Value: math.Round(m/metersPerInch*1000) / 1000, Unit: "in"}
		l.Text = fmt.Sprintf("%.3g in", l.Value)
		if !p.NearMust {
			l.Text += ", a note"
		}
		return l
	}
	least := func(id, title string, s Smallest) ProfileLimit {
		return ProfileLimit{ID: id, Title: title, Value: float64(s.AWG), Unit: "AWG", Text: fmt.Sprintf("%s, %g mm2", AWGName(s.AWG), s.MM2)}
	}
	choice := 1 / p.ChooseAt
	out := []ProfileLimit{
		percent(LimitLoadOfFuse, "load on its fuse, most", p.LoadOfFuse),
		{ID: LimitFuseChoice, Title: "chosen fuse over load, least", Value: choice, Unit: "x", Text: fmt.Sprintf("%.3g x", choice)},
		percent(LimitFuseOverWire, "fuse over ampacity, most", p.FuseOverWire),
		percent(LimitDropCritical, "drop: control, pump, ignition", p.DropCritical),
		percent(LimitDropOther, "drop: others", p.DropOther),
		inches(LimitFirstFuse, "source to first fuse, most", p.FirstFuseM),
		inches(LimitSheathed, "the same in a sheath", p.SheathedM),
		least(LimitDry, "smallest wire, dry bundle", p.Dry),
		least(LimitWet, "smallest wire, wet", p.Wet),
		least(LimitAlone, "smallest wire, alone", p.Alone),
		{ID: LimitAmpacity, Title: "ampacity by", Text: p.Ampacity.String()},
		{ID: LimitAreas, Title: "areas by", Text: p.Area.String()},
		{ID: LimitDropBy, Title: "drop of one wire by", Text: p.DropBy.String()},
	}
	for i := range out {
		out[i].Source = p.citeOf(out[i].ID)
	}
	return out
}

// LimitOf finds a limit by its id.
func (p Profile) LimitOf(id string) (ProfileLimit, bool) {
	for _, l := range p.Limits() {
		if l.ID == id {
			return l, true
		}
	}
	return ProfileLimit{}, false
}

// usualCites are the documents behind a limit where a profile has no own.
var usualCites = [...][2]string{
	{LimitLoadOfFuse, "load-on-fuse"}, {LimitFuseChoice, "fuse-margin"}, {LimitFuseOverWire, "fuse-under-wire"},
	{LimitDropCritical, "drop-3"}, {LimitDropOther, "drop-10"}, {LimitFirstFuse, "abyc-feed"}, {LimitSheathed, "abyc-feed"},
}

// ownCites are those where it has.
var ownCites = [...][3]string{
	{"boat", LimitLoadOfFuse, "fuse-load-125"}, {"boat", LimitFuseOverWire, "cfr-183-455-rating"},
	{"aircraft", LimitLoadOfFuse, "fuse-margin"}, {"aircraft", LimitFuseOverWire, "profile-aircraft"},
	{"aircraft", LimitDropOther, "ac4313-table-11-6"},
	{"body-builder", LimitLoadOfFuse, "body-builder-metric"}, {"body-builder", LimitFuseChoice, "body-builder-metric"},
	{"body-builder", LimitFuseOverWire, "body-builder-metric"},
	{"fire", LimitFuseOverWire, "fire-wire"},
	{"track", LimitLoadOfFuse, "fuse-load-150"}, {"track", LimitFuseChoice, "fuse-load-150"}, {"track", LimitDropOther, "drop-training"},
	{"track", LimitFirstFuse, "fuse-everything"}, {"track", LimitSheathed, "fuse-everything"},
}

// citeOf is the key of the document behind a limit.
func (p Profile) citeOf(id string) string {
	switch id {
	case LimitDry, LimitWet, LimitAlone:
		return p.SizeSource
	case LimitAmpacity:
		return p.Ampacity.Source()
	case LimitAreas:
		return p.Area.Source()
	case LimitDropBy:
		return p.DropBy.Source()
	}
	for _, c := range ownCites {
		if c[0] == p.Name && c[1] == id {
			return c[2]
		}
	}
	for _, c := range usualCites {
		if c[0] == id {
			return c[1]
		}
	}
	return p.Source
}

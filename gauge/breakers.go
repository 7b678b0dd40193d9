package gauge

import "slices"

// Breaker is one type of circuit breaker.
type Breaker struct {
	Type     string
	Reset    string
	Behavior string
	Use      string
	Source   string
}

var breakers = [...]Breaker{
	{"1", "automatic", "cycles while the overload lasts", "behind another limiting device; cycling looks like a loose joint", "breaker-types"},
	{"2", "modified", "stays open while volts are present, resets when they go", "where cycling is unwanted", "breaker-types"},
	{"3", "manual", "stays open until pressed, trip-free", "what rules for boats ask for", "breaker-types"},
}

// Breakers lists the types of SAE J553, to 200 A at 12 and 24 V (source
// breaker-types).
func Breakers() []Breaker { return slices.Clone(breakers[:]) }

// breakerGates are much slower than those of a blade fuse.
var breakerGates = [...]Gate{
	{1.00, 360000, 0, "breaker-gates"},
	{1.35, 0, 3600, "breaker-gates"},
	{2.00, 5, 60, "breaker-gates"},
}

// BreakerGates lists the trip gates of blade breakers by rising current. They
// are from memory and only hint; the short of a wire behind a breaker is not
// judged by them (source breaker-gates).
func BreakerGates() []Gate { return slices.Clone(breakerGates[:]) }

// LinkRule is one rule on fusible links.
type LinkRule struct {
	Subject, Rule string
	Source        string
}

var linkRules = [...]LinkRule{
	{"size", "four gauge numbers smaller than the wire; odd sizes count", "fusible-link"},
	{"length", "about 6 in (150 mm)", "link-trade"},
	{"length, most", "9 in (230 mm); one answer only", "link-metric"},
	{"metric print", "0.8 mm2 is 18 AWG, 1.0 is 16, 2.0 is 14, 3.0 is 12", "link-metric"},
	{"place", "never in the cabin: it melts with sparks and smoke", "link-trade"},
	{"replacement", "same gauge and length; insulation that does not burn; no ordinary wire", "link-trade"},
}

// LinkRules lists rules on fusible links (sources fusible-link, link-trade,
// link-metric).
func LinkRules() []LinkRule { return slices.Clone(linkRules[:]) }

// LinkAWG is the gauge of a fusible link for a wire: four numbers smaller
// (source fusible-link). The wire's gauge is 0 or below from 1/0 on.
func LinkAWG(wireAWG int) int { return wireAWG + 4 }

// linkMM2 is the nominal area printed on metric links, by gauge.
var linkMM2 = [...]struct {
	awg int
	mm2 float64
}{{18, 0.8}, {16, 1.0}, {14, 2.0}, {12, 3.0}}

// LinkMM2 is the area in mm2 printed on a metric link that stands for a
// gauge; ok is false for a gauge without one (source link-metric).
func LinkMM2(linkAWG int) (mm2 float64, ok bool) {
	for _, row := range linkMM2 {
		if row.awg == linkAWG {
			return row.mm2, true
		}
	}
	return 0, false
}

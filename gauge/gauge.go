// Package gauge holds the figures of the trade, each with its source:
// conductors, copper, ampacity, drop, fuses, relays and batteries. It needs
// nothing else of legwork and is useful alone.
package gauge

// Confidence says how far a figure may be trusted.
type Confidence uint8

const (
	// Memory is recalled, not seen in a document.
	Memory Confidence = iota + 1
	// Low is unsure of digits, or sources disagree.
	Low
	// Medium was seen second-hand, or agrees with another figure.
	Medium
	// High was seen in the document itself.
	High
	// Computed is exact arithmetic on figures of grade High.
	Computed
)

// MayDecide reports whether a figure of this confidence may decide a size or
// a verdict. Memory and Low only hint.
func (c Confidence) MayDecide() bool { return c >= Medium }

// Source is one cited figure or table.
type Source struct {
	Key        string // kebab case, e.g. ampacity-33cfr183
	Title      string // document, clause, table
	Where      string // how it was seen: read, computed, memory
	Confidence Confidence
	Note       string
}

// Step is one line of working: what was done, with which equation, what came
// out, and the key of the source behind it.
type Step struct {
	Text     string
	Equation string
	Value    float64
	Unit     string
	Source   string
}

// Size is a conductor size.
type Size struct {
	Name    string // "10 AWG", "2.5 mm2"
	AWG     int    // gauge number; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3; only when Metric is false
	Metric  bool
	Nominal float64 // mm2 on the label, metric sizes
	AreaMM2 float64 // conducting area that its resistance is computed from
	Source  string
	Tinned  bool // see [TinnedSize]
}

// Family is a kind of insulation.
type Family struct {
	Name   string  // GXL, TXL, SXL, GPT, SGX ...
	Title  string  // what it is, in words
	TempC  float64 // class temperature of the conductor
	ShortC float64 // highest conductor temperature at the end of a short of up to 5 s
	Source string

	ShortSource string // source of ShortC, "" for k-factors
}

// Profile is a named set of limits with sources.
type Profile struct {
	Name         string // road, boat, aircraft
	Title        string
	LoadOfFuse   float64 // largest share of a fuse's rating that the load may take before a warning: 0.80
	ChooseAt     float64 // a chosen fuse is at least load / ChooseAt: 0.75
	FuseOverWire float64 // largest rating over the wire's ampacity
	DropCritical float64 // fraction of nominal volts: controller, pump, ignition
	DropOther    float64

	FirstFuseM      float64  // conductor from the source to the first device; road only notes it
	SheathedM       float64  // the same where the conductor is sheathed all the way
	NearMust        bool     // a longer one breaks the rule of this profile
	Dry, Wet, Alone Smallest // smallest wire in a dry bundle, in the wet, outside a bundle
	SizeSource      string   // source of the smallest sizes
	Source          string

	Ampacity AmpacityRule // rule-book of its ampacity
	Area     AreaRule     // areas that its drop charts stand on
	DropBy   DropRule     // how its charts reckon drop

	InsulationC float64 // class temperature that its charts take, 0: that of the family
}

// Smallest is the smallest wire of a profile, by gauge and by nominal area.
type Smallest struct {
	AWG int
	MM2 float64
}

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
}

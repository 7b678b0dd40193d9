// Package diag holds findings: what is wrong with a draft, where, by how
// much, and what to do. Every stage of legwork reports in this one type.
package diag

import (
	"cmp"
	"iter"
	"slices"
	"strconv"
)

// Severity orders findings from good to know to dangerous. The zero value is
// invalid on purpose, so that a forgotten severity shows.
type Severity int

const (
	// Note is worth knowing; nothing has to change.
	Note Severity = iota + 1
	// Warning works, but lies outside the recommended figure.
	Warning
	// Fault will not work, or can leave the vehicle stranded.
	Fault
	// Danger can burn or injure.
	Danger
)

var severityNames = [...]string{"invalid", "note", "warning", "fault", "danger"}

// String gives the severity's word: note, warning, fault or danger.
func (s Severity) String() string {
	if s < Note || s > Danger {
		return severityNames[0]
	}
	return severityNames[s]
}

// ParseSeverity reads the word that [Severity.String] writes; ok is false for
// any other word.
func ParseSeverity(word string) (s Severity, ok bool) {
	i := slices.Index(severityNames[:], word)
	return Severity(i), i > 0
}

// Span is a stretch of one line of a draft. Lines and columns count from 1,
// columns in characters as displayed; End is the column after the last
// character. Off and EndOff are byte offsets into the file, for fixes. The
// zero Span means "no place".
type Span struct {
	File           string
	Line, Col, End int
	Off, EndOff    int
}

// IsZero reports whether the span names no place.
func (s Span) IsZero() bool { return s.Line == 0 }

// String gives file:line:col.
func (s Span) String() string {
	if s.IsZero() {
		return s.File
	}
	return s.File + ":" + strconv.Itoa(s.Line) + ":" + strconv.Itoa(s.Col)
}

// Bound says on which side of a limit a value has to be.
type Bound string

const (
	// NoBound marks a value that is only shown.
	NoBound Bound = ""
	// AtMost marks a value that must not exceed its limit.
	AtMost Bound = "at most"
	// AtLeast marks a value that must reach its limit.
	AtLeast Bound = "at least"
)

// Value is one number of a finding against its limit, in the stated unit, so
// that reports and tests need not read the message.
type Value struct {
	Name  string
	Got   float64
	Limit float64 // meaningful when Bound is not NoBound
	Unit  string
	Bound Bound
}

// Related is another place that has to do with a finding.
type Related struct {
	At  Span
	Msg string
}

// Edit replaces the bytes of At by Text.
type Edit struct {
	At   Span
	Text string
}

// Fix is a way out: a verb phrase, and text edits where they can be given.
type Fix struct {
	Msg   string
	Edits []Edit
}

// Finding is one thing found by any stage. Msg is one line without a final
// period and uses the user's own names; Detail is a sentence or two on why
// and what to do.
type Finding struct {
	Rule     string // rule id in kebab case, e.g. fuse-above-wire
	Severity Severity
	At       Span // the word that the user would change
	Context  Span // what to show around it; zero: the line of At
	Msg      string
	Detail   string
	Values   []Value
	Related  []Related
	Fix      *Fix
}

// String gives "file:line:col: severity: message [rule]".
func (f Finding) String() string {
	where := ""
	if !f.At.IsZero() || f.At.File != "" {
		where = f.At.String() + ": "
	}
	return where + f.Severity.String() + ": " + f.Msg + " [" + f.Rule + "]"
}

// List is findings in report order.
type List []Finding

// Add appends findings.
func (l *List) Add(f ...Finding) { *l = append(*l, f...) }

// Sort puts findings in order of place, then severity (worst first), rule and
// message. The order does not depend on how they were found.
func (l List) Sort() {
	slices.SortStableFunc(l, func(a, b Finding) int {
		return cmp.Or(
			cmp.Compare(a.At.File, b.At.File),
			cmp.Compare(a.At.Line, b.At.Line),
			cmp.Compare(a.At.Col, b.At.Col),
			cmp.Compare(b.Severity, a.Severity),
			cmp.Compare(a.Rule, b.Rule),
			cmp.Compare(a.Msg, b.Msg),
		)
	})
}

// AtLeast yields the findings of severity s and worse, in list order.
func (l List) AtLeast(s Severity) iter.Seq[Finding] {
	return func(yield func(Finding) bool) {
		for _, f := range l {
			if f.Severity >= s && !yield(f) {
				return
			}
		}
	}
}

// Worst gives the highest severity in the list, 0 for an empty one.
func (l List) Worst() Severity {
	var worst Severity
	for _, f := range l {
		worst = max(worst, f.Severity)
	}
	return worst
}

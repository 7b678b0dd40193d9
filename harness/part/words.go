package part

import (
	"fmt"
	"strings"
)

// Written shows how a setting stands in a draft: "draws 5A [5V]".
func (s Setting) Written() string { return strings.Trim(s.written(), "`") }

// Describe tells a setting in lines of plain text: how it is written, what it
// means, what is taken when it is not said, its range and its source.
func (s Setting) Describe() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s: %s", s.Written(), s.Doc)
	if !strings.Contains(s.Doc, "when not said") && s.unsaid() != "" {
		fmt.Fprintf(&b, "\nwhen not said: %s", s.unsaid())
	}
	if len(s.Figures) > 0 {
		fmt.Fprintf(&b, "\nallowed: %s", s.allowed())
	}
	if src := s.sources(); src != "" {
		fmt.Fprintf(&b, "\nsource: %s", src)
	}
	return b.String()
}

// Table prints settings as a table of Markdown: how each is written, what it
// means, its default, range and source; "" for none.
func Table(all []Setting) string {
	var b strings.Builder
	settings(&b, "", all)
	return b.String()
}

// Also lists the words by which a terminal is called: its name, then its aliases.
func (t Terminal) Also() []string { return append([]string{t.Name}, t.Aliases...) }

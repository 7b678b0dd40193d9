package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

// dropSeconds takes out what a fault of the text itself brings about: a word
// that was read as nearly as could be is answered already, and what misses
// from a line that could not be read whole may well stand there.
func (b *builder) dropSeconds() {
	bad := map[line][]diag.Span{}
	missing := map[line]bool{}
	for _, f := range b.files {
		for s := range f.All() {
			if s.Bad {
				noteBad(s, bad, missing)
			}
		}
	}
	if len(missing) == 0 {
		return
	}
	b.found = slices.DeleteFunc(b.found, func(f diag.Finding) bool {
		at := lineOf(f.At)
		if f.Rule == missingRule && missing[at] {
			return true
		}
		return slices.ContainsFunc(bad[at], func(s diag.Span) bool { return f.At.Off < s.EndOff && s.Off < f.At.EndOff })
	})
}

func noteBad(s *draft.Stmt, bad map[line][]diag.Span, missing map[line]bool) {
	at := lineOf(s.Head.At)
	missing[at] = true
	if s.Level == 0 && s.Head.At.Col > 1 {
		bad[at] = append(bad[at], s.Head.At) // indented, but read at the margin
	}
	for _, it := range s.Items {
		if it.Bad {
			bad[at] = append(bad[at], it.At)
		}
	}
}

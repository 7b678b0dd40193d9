package model

import (
	"legwork/harness/diag"
	"legwork/harness/draft"
)

// Setup is what a model is built from besides the draft's own tree. The zero
// value includes and fits nothing.
type Setup struct {
	// Included gives the file behind each include statement, by the span of
	// its head. A statement without one was answered by the reader of files,
	// or names a file that is read already; it adds nothing. Nil where there is
	// no folder to read from.
	Included map[diag.Span]*draft.File
	// With names the options that are fitted; names that no option bears do nothing.
	With []string
	// Move puts another figure in the place of a guess.
	Move Move
}

// Move is a guess with another figure; Key 0 moves nothing.
type Move struct {
	Key int // of the guess
	To  float64
}

// include takes in the statements of a file, at the place where it is named.
func (b *builder) include(s *draft.Stmt) {
	if b.setup.Included == nil {
		b.say(includeRule, s.Head.At, "a draft that is not read from a folder can't include files")
		return
	}
	for _, child := range s.Children {
		b.sortChild(child, s, nil)
	}
	f := b.setup.Included[s.Head.At]
	if f == nil {
		return
	}
	b.files[f.Name] = f
	b.order[f.Name] = len(b.order)
	for _, inner := range f.Stmts {
		b.sort(inner, nil)
	}
}

// srcOf gives the text of the file that a span lies in.
func (b *builder) srcOf(at diag.Span) []byte {
	if f := b.files[at.File]; f != nil {
		return f.Src
	}
	return nil
}

package draft

import (
	"iter"
	"strings"
)

// Text gives the reference without its quotes, its parts joined by periods.
func (r Ref) Text() string {
	switch len(r.Parts) {
	case 0:
		return ""
	case 1:
		return r.Parts[0]
	}
	return strings.Join(r.Parts, ".")
}

// First gives the first part: the device of a terminal, "" when there is none.
func (r Ref) First() string {
	if len(r.Parts) == 0 {
		return ""
	}
	return r.Parts[0]
}

// Rest gives the parts after the first, joined by periods: the terminal of a
// device, "" for a name of one part.
func (r Ref) Rest() string {
	if len(r.Parts) < 2 {
		return ""
	}
	return strings.Join(r.Parts[1:], ".")
}

// Quoted reports whether the reference is one quoted part, so that a reserved
// word in it is a plain name.
func (r Ref) Quoted() bool { return len(r.Parts) == 1 && startsQuoted(r.Raw) }

// Word gives the text of a lone word that stands without quotes, such as a
// setting's name or a quantity; "" for a string or a list.
func (i Item) Word() string {
	if i.Quoted || len(i.List) != 1 {
		return ""
	}
	return i.Text
}

// Is reports whether the item is exactly this bare word.
func (i Item) Is(word string) bool { return word != "" && i.Word() == word }

// Ref gives the item's first reference; the zero Ref when it has none.
func (i Item) Ref() Ref {
	if len(i.List) == 0 {
		return Ref{}
	}
	return i.List[0]
}

// Words gives the text of every member of the list, quotes removed.
func (i Item) Words() []string {
	words := make([]string, len(i.List))
	for n, r := range i.List {
		words[n] = r.Text()
	}
	return words
}

// Word gives the head as text without quotes: "wire", "BAT".
func (s *Stmt) Word() string { return s.Head.Text() }

// Item gives item n, counted from 0; the zero Item beyond the last.
func (s *Stmt) Item(n int) Item {
	if n < 0 || n >= len(s.Items) {
		return Item{}
	}
	return s.Items[n]
}

// ParentWord gives the head of the statement above, "" at top level.
func (s *Stmt) ParentWord() string {
	if s.Parent == nil {
		return ""
	}
	return s.Parent.Word()
}

// All yields every statement of the file in the order of its lines, each
// parent before its children.
func (f *File) All() iter.Seq[*Stmt] {
	return func(yield func(*Stmt) bool) { walk(f.Stmts, yield) }
}

func walk(stmts []*Stmt, yield func(*Stmt) bool) bool {
	for _, s := range stmts {
		if !yield(s) || !walk(s.Children, yield) {
			return false
		}
	}
	return true
}

// Package draft reads and prints the draft language: one statement a line, a
// deeper-indented line belongs to the line above. It is purely lexical: what
// a word means is the model's business.
package draft

import "legwork/harness/diag"

// File is one draft as read: its statements as a tree, and every line, so
// that comments and blank lines are kept.
type File struct {
	Name  string
	Src   []byte
	Stmts []*Stmt // top level
	Lines []Line  // one for each line of Src; none when it could not be read at all

	oddIndent bool // some line's indent had a fault: tidy leaves every indent alone
}

// Line is one line of the source. Stmt is nil on a blank or comment line and
// on a line with a syntax fault that left nothing to read.
type Line struct {
	Stmt    *Stmt
	Text    string // the line as written, without its end
	Comment string // from "#" on, without trailing blanks; "" when there is none
	Bad     bool   // has a syntax fault: tidy keeps it byte for byte
}

// Stmt is one statement: a head word, its items, and the lines below it that
// are indented deeper.
type Stmt struct {
	Head     Ref
	Items    []Item
	Children []*Stmt
	Parent   *Stmt
	Level    int // 0 at top level
	Line     int // counts from 1
	At       diag.Span
	Bad      bool // the line had a syntax fault: what could be read is here, words may be missing
}

// Item is a string, or a list of references parted by commas. A lone word is
// a list of one reference of one part. Raw is the text as written.
type Item struct {
	Raw    string
	Quoted bool   // a lone string item; Text is its value
	Text   string // value without quotes for a lone word or string; Raw otherwise
	List   []Ref  // at least one; a string is a reference of one part
	At     diag.Span
	Bad    bool // touched by a syntax fault: what it says is the nearest reading
}

// Ref is a dotted name: "K1.87", "X2.rear.3". A word such as 12.6V reads as a
// reference of two parts; Raw keeps it whole.
type Ref struct {
	Raw   string
	Parts []string // quotes removed
	At    diag.Span
}

// IsList reports whether the item has more than one member.
func (i Item) IsList() bool { return len(i.List) > 1 }

// Package shop makes the papers of a harness as typed tables: what to cut,
// what to buy, what sits in which cavity, what a meter should read.
package shop

// Kind is what a column holds.
type Kind uint8

// The kinds of column.
const (
	Text Kind = iota
	Number
)

// Column is one column of a table.
type Column struct {
	Key  string // machine-readable name, snake case with the unit: cut_mm
	Name string // heading
	Unit string // printed in the heading, "" for none
	Kind Kind
}

// Cell is one value of a table. A Number column may hold a text instead,
// where there is no number to give; Reason then says why.
type Cell struct {
	Text     string
	Number   float64
	IsNumber bool
	Decimals int    // digits after the point when printed
	Reason   string // why there is no number, "" where there is one
}

// Table is one paper.
type Table struct {
	Name    string // word of the command line: cut
	Title   string
	Notes   []string // what the reader has to know, printed above the rows
	Columns []Column
	Rows    [][]Cell
}

// Word makes a cell that holds a text.
func Word(s string) Cell { return Cell{Text: s} }

// Figure makes a cell that holds a number, printed with so many digits after
// the point.
func Figure(v float64, decimals int) Cell {
	return Cell{Number: v, IsNumber: true, Decimals: decimals}
}

// NoFigure makes a cell of a number column without a number: what is printed
// in its place, and why.
func NoFigure(text, reason string) Cell { return Cell{Text: text, Reason: reason} }

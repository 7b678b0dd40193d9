// Package shop makes the papers of a harness as typed tables: what to cut,
// what sits in which cavity, what a meter should read.
package shop

// Kind is what a column holds.
type Kind uint8

const (
	Text Kind = iota
	Number
)

// Column is one column of a table.
type Column struct {
	Key  string // machine-readable name, snake case with the unit: length_mm
	Name string // heading
	Unit string // printed in the heading, "" for none
	Kind Kind
}

// Cell is one value of a table. A Number column may hold a text instead,
// where there is no number to give: Text then says why.
type Cell struct {
	Text     string
	Number   float64
	IsNumber bool
	Decimals int // digits after the point when printed
}

// Table is one paper.
type Table struct {
	Name    string // word of the command line: cut
	Title   string
	Notes   []string // what the reader has to know, printed above the rows
	Columns []Column
	Rows    [][]Cell
}

func text(s string) Cell { return Cell{Text: s} }

func number(v float64, decimals int) Cell {
	return Cell{Number: v, IsNumber: true, Decimals: decimals}
}

package draft

import (
	"slices"
	"strings"
	"unicode"
)

// named are the words that take a name behind them. A cell of a column is a
// setting with what belongs to it; the table serves the look alone, and a word
// that is not in it takes only figures.
var named = []string{
	"after", "at", "cavities", "color", "engine", "family", "fed-by", "from", "grounds-to", "ground-wanted", "in", "key",
	"label", "like", "note", "on", "option", "part", "plug", "profile", "seals", "suppress", "system",
	"terminals", "units", "via", "when",
}

// alone are the words that take nothing behind them: a figure there stands for
// itself.
var alone = []string{"existing", "sealed", "shielded", "twisted", "clamps", "fuel"}

// tied are the words that belong to the setting before them.
var tied = []string{"when", "sheet", "measured", "guess"}

// cutter cuts a statement into cells.
type cutter struct {
	s       *Stmt
	first   int // items before it are names in fixed places
	cells   []string
	name    bool // the cell still takes a name
	figures bool // the cell still takes figures
}

// cut gives the cells of a statement: its head, then each item that stands for
// itself, and each setting together with its figures and marks.
func cut(s *Stmt) row {
	c := cutter{s: s, first: places(s), cells: make([]string, 1, len(s.Items)+1)}
	c.cells[0] = s.Head.Raw
	for i, w := range joined(s, c.first) {
		if i > 0 && c.belongs(i, w) {
			c.cells[len(c.cells)-1] += " " + w
		} else {
			c.cells = append(c.cells, w)
		}
		c.note(w, i >= c.first && isKey(w))
	}
	gap := 1
	if p := s.ParentWord(); p == "module" || p == "keyswitch" {
		gap = colGap
	}
	return row{cells: c.cells, gap: gap}
}

// belongs reports whether word i goes into the cell before it.
func (c *cutter) belongs(i int, w string) bool {
	switch {
	case c.name, c.figures && isFigure(w):
		return true
	case strings.HasPrefix(c.cells[len(c.cells)-1], "marked") && !isKey(w) && w[0] != '"':
		return true
	case slices.Contains(tied, w):
		return w != "when" || c.s.ParentWord() != "module"
	}
	return c.runsOn(i)
}

// note keeps what the cell takes after word w. A name may be followed by a
// figure only as a distance: from G1 6in, at bay-tank 16in.
func (c *cutter) note(w string, key bool) {
	switch {
	case c.name:
		before, _, _ := strings.Cut(c.cells[len(c.cells)-1], " ")
		c.name, c.figures = false, before == "from" || before == "at" && strings.Contains(w, "-")
	case key && slices.Contains(named, w):
		c.name, c.figures = true, false
	case key:
		c.figures = !slices.Contains(alone, w)
	case !isFigure(w):
		c.figures = false
	}
}

// runsOn reports whether item i goes on with a row of names that fill the rest
// of their line: the members of a bus, the terminals of a key position.
func (c *cutter) runsOn(i int) bool {
	switch c.s.Word() {
	case "bus", "spare", "together":
		return i > 1
	}
	return c.s.ParentWord() == "keyswitch" && i < c.first
}

// isKey reports whether a word has the shape of a setting: small letters,
// perhaps with hyphens.
func isKey(w string) bool {
	if w == "" || w[0] < 'a' || w[0] > 'z' {
		return false
	}
	return !strings.ContainsFunc(w, func(r rune) bool { return !unicode.IsLower(r) && r != '-' })
}

// isFigure reports whether a word begins as a number does.
func isFigure(w string) bool {
	w = strings.TrimLeft(w, "+-")
	return w != "" && w[0] >= '0' && w[0] <= '9'
}

// print gives an item as tidy writes it: the members of a list parted by a
// comma and a blank.
func (i Item) print() string {
	if !i.IsList() {
		return i.Raw
	}
	raws := make([]string, len(i.List))
	for n, r := range i.List {
		raws[n] = r.Raw
	}
	return strings.Join(raws, ", ")
}

// Package sheet writes the papers' tables: aligned text, CSV and JSON.
package sheet

import (
	"bufio"
	"io"
	"strconv"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/shop"
)

// WriteText writes a table in aligned columns, numbers to the right. Lines are
// as long as the table is wide: it is cut by the reader's own pager or
// printer, never inside a figure. A text of the draft that could hide or
// reorder others is shown with escapes.
func WriteText(w io.Writer, t shop.Table) error {
	b := bufio.NewWriter(w)
	b.WriteString(t.Title + "\n")
	for _, n := range t.Notes {
		b.WriteString(diag.Clean(n) + "\n")
	}
	b.WriteString("\n")
	for _, line := range Lines(t) {
		b.WriteString(line + "\n")
	}
	return b.Flush()
}

// Lines gives the heading, the rule under it and the rows of a table as
// aligned lines without title and notes.
func Lines(t shop.Table) []string {
	grid := [][]string{headings(t)}
	for _, r := range t.Rows {
		grid = append(grid, printed(r))
	}
	widths := widthsOf(grid)
	list := []string{row(t, grid[0], widths), rule(widths)}
	for _, r := range grid[1:] {
		list = append(list, row(t, r, widths))
	}
	return list
}

// Bands parts a table into tables that are at most width columns wide, each
// with the first column in front, for a narrow terminal. A band holds one
// further column at least.
func Bands(t shop.Table, width int) []shop.Table {
	grid := [][]string{headings(t)}
	for _, r := range t.Rows {
		grid = append(grid, printed(r))
	}
	widths := widthsOf(grid)
	var list []shop.Table
	for from := 1; from < len(widths); {
		to, used := from, widths[0]
		for to < len(widths) && (to == from || used+2+widths[to] <= width) {
			used += 2 + widths[to]
			to++
		}
		list = append(list, band(t, from, to))
		from = to
	}
	return list
}

func band(t shop.Table, from, to int) shop.Table {
	out := shop.Table{Name: t.Name, Title: t.Title, Notes: t.Notes}
	out.Columns = append(append(out.Columns, t.Columns[0]), t.Columns[from:to]...)
	for _, r := range t.Rows {
		out.Rows = append(out.Rows, append([]shop.Cell{r[0]}, r[from:to]...))
	}
	return out
}

func headings(t shop.Table) []string {
	var list []string
	for _, c := range t.Columns {
		name := diag.Clean(c.Name)
		if c.Unit != "" {
			name += " " + c.Unit
		}
		list = append(list, name)
	}
	return list
}

func printed(cells []shop.Cell) []string {
	var list []string
	for _, c := range cells {
		if c.IsNumber {
			list = append(list, fixed(c))
		} else {
			list = append(list, diag.Clean(c.Text))
		}
	}
	return list
}

// fixed prints a number to its digits, never as -0.
func fixed(c shop.Cell) string {
	s := strconv.FormatFloat(c.Number, 'f', c.Decimals, 64)
	if strings.Trim(s, "-0.") == "" {
		return strings.TrimPrefix(s, "-")
	}
	return s
}

func widthsOf(grid [][]string) []int {
	widths := make([]int, len(grid[0]))
	for _, r := range grid {
		for i, s := range r {
			widths[i] = max(widths[i], diag.Columns(s))
		}
	}
	return widths
}

func row(t shop.Table, cells []string, widths []int) string {
	var line strings.Builder
	for i, s := range cells {
		if i > 0 {
			line.WriteString("  ")
		}
		pad := strings.Repeat(" ", widths[i]-diag.Columns(s))
		if t.Columns[i].Kind == shop.Number {
			line.WriteString(pad + s)
		} else {
			line.WriteString(s + pad)
		}
	}
	return strings.TrimRight(line.String(), " ")
}

func rule(widths []int) string {
	var parts []string
	for _, n := range widths {
		parts = append(parts, strings.Repeat("-", n))
	}
	return strings.Join(parts, "  ")
}

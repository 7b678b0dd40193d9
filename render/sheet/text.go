// Package sheet writes the papers' tables: aligned text, CSV and JSON.
package sheet

import (
	"bufio"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"legwork/harness/shop"
)

// WriteText writes a table in aligned columns, numbers to the right.
func WriteText(w io.Writer, t shop.Table) error {
	b := bufio.NewWriter(w)
	b.WriteString(t.Title + "\n")
	for _, n := range t.Notes {
		b.WriteString(n + "\n")
	}
	b.WriteString("\n")
	grid := [][]string{headings(t)}
	for _, r := range t.Rows {
		grid = append(grid, printed(r))
	}
	widths := widthsOf(grid)
	for i, r := range grid {
		writeRow(b, t, r, widths)
		if i == 0 {
			writeRule(b, widths)
		}
	}
	return b.Flush()
}

func headings(t shop.Table) []string {
	var list []string
	for _, c := range t.Columns {
		name := c.Name
		if c.Unit != "" {
			name += " " + c.Unit
		}
		list = append(list, name)
	}
	return list
}

func printed(row []shop.Cell) []string {
	var list []string
	for _, c := range row {
		list = append(list, cellText(c))
	}
	return list
}

// cellText prints a cell; a number with a text has the text behind it.
func cellText(c shop.Cell) string {
	if c.IsNumber {
		return fixed(c) + c.Text
	}
	return c.Text
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
			widths[i] = max(widths[i], utf8.RuneCountInString(s))
		}
	}
	return widths
}

func writeRow(b *bufio.Writer, t shop.Table, row []string, widths []int) {
	var line strings.Builder
	for i, s := range row {
		if i > 0 {
			line.WriteString("  ")
		}
		pad := strings.Repeat(" ", widths[i]-utf8.RuneCountInString(s))
		if t.Columns[i].Kind == shop.Number {
			line.WriteString(pad + s)
		} else {
			line.WriteString(s + pad)
		}
	}
	b.WriteString(strings.TrimRight(line.String(), " ") + "\n")
}

func writeRule(b *bufio.Writer, widths []int) {
	for i, n := range widths {
		if i > 0 {
			b.WriteString("  ")
		}
		b.WriteString(strings.Repeat("-", n))
	}
	b.WriteString("\n")
}

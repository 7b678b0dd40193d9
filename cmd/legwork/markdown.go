package main

import (
	"strings"

	"legwork/harness/shop"
	"legwork/render/sheet"
)

// page prints the Markdown of a page for a terminal: headings without their
// marks, prose wrapped, code as it is, tables aligned or, where they are too
// wide, as a list of their rows.
func (p *printer) page(markdown string) {
	var table [][]string
	for line := range strings.Lines(markdown + "\n") {
		line = strings.TrimRight(line, "\n")
		if strings.HasPrefix(line, "|") {
			table = append(table, cellsOf(line))
			continue
		}
		if len(table) > 0 {
			p.grid(table)
			table = nil
		}
		switch text := strings.TrimLeft(line, "#"); {
		case line == "" || strings.HasPrefix(line, "    "):
			p.line(line)
		case text != line:
			p.wrapped("", "  ", text)
		case strings.HasPrefix(line, "- "):
			p.wrapped("- ", "  ", plain(line[2:]))
		default:
			p.wrapped("", "", plain(line))
		}
	}
}

// plain takes the marks of code off a text.
func plain(text string) string { return strings.ReplaceAll(text, "`", "") }

// cellsOf parts one line of a Markdown table; a bar after a backslash belongs
// to its cell.
func cellsOf(line string) []string {
	const bar = "\x00"
	line = strings.Trim(strings.ReplaceAll(line, `\|`, bar), "|")
	var cells []string
	for _, c := range strings.Split(line, "|") {
		cells = append(cells, plain(strings.TrimSpace(strings.ReplaceAll(c, bar, "|"))))
	}
	return cells
}

// grid prints a table whose first row is its heading and whose second is the
// line of dashes under it.
func (p *printer) grid(rows [][]string) {
	if len(rows) < 2 {
		return
	}
	head, rows := rows[0], rows[2:]
	t := shop.Table{}
	for _, name := range head {
		t.Columns = append(t.Columns, shop.Column{Name: name})
	}
	for _, r := range rows {
		cells := make([]shop.Cell, len(head))
		for i := range cells {
			if i < len(r) {
				cells[i] = shop.Word(r[i])
			}
		}
		t.Rows = append(t.Rows, cells)
	}
	if len(sheet.Bands(t, p.width-2)) == 1 {
		p.table("  ", t)
		return
	}
	for _, r := range t.Rows {
		p.entry(head, r)
	}
}

// entry prints one row of a table that is too wide: its first cell, and under
// it the others that hold something, each behind its heading.
func (p *printer) entry(head []string, row []shop.Cell) {
	p.wrapped("  ", "    ", row[0].Text)
	for i, c := range row[1:] {
		if c.Text != "" {
			p.wrapped("      ", "        ", head[i+1]+": "+c.Text)
		}
	}
}

package main

import (
	"fmt"
	"io"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/shop"
	"legwork/render/sheet"
)

// leastWidth is the narrowest that texts are wrapped to.
const leastWidth = 40

// printer writes lines wrapped to a width and keeps the first error. What
// could hide or reorder text on a terminal is shown as an escape.
type printer struct {
	w     io.Writer
	width int
	err   error
}

func newPrinter(w io.Writer) *printer {
	return &printer{w: w, width: max(lookOf(w).width, leastWidth)}
}

func (p *printer) line(text string) {
	if p.err == nil {
		_, p.err = fmt.Fprintln(p.w, diag.Clean(strings.TrimRight(text, " ")))
	}
}

// wrapped prints text with first in front of its first line and rest in front
// of the others. A word longer than the line stands alone.
func (p *printer) wrapped(first, rest, text string) {
	line, bare := first, true
	for _, word := range strings.Fields(text) {
		if !bare && diag.Columns(line)+1+diag.Columns(word) > p.width {
			p.line(line)
			line, bare = rest, true
		}
		if !bare {
			line += " "
		}
		line += word
		bare = false
	}
	p.line(line)
}

// table prints a table with an indent, in bands where it is too wide.
func (p *printer) table(indent string, t shop.Table) {
	for i, band := range sheet.Bands(t, p.width-len(indent)) {
		if i > 0 {
			p.line("")
		}
		for _, line := range sheet.Lines(band) {
			p.line(indent + line)
		}
	}
}

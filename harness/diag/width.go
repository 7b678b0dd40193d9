package diag

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// cell is one character of a source line as shown, and the columns it takes
// on a terminal.
type cell struct {
	text  string
	width int
	off   int // byte offset in the line
}

const tabStop = 4

// cells lays out a line: tabs become blanks, and what could hide or reorder
// text becomes an escape such as <U+202E>.
func cells(line []byte) []cell {
	var out []cell
	at := 0
	for off := 0; off < len(line); {
		r, size := utf8.DecodeRune(line[off:])
		text, width := show(r, size, line[off])
		if r == '\t' {
			width = tabStop - at%tabStop
			text = "    "[:width]
		}
		out = append(out, cell{text, width, off})
		at += width
		off += size
	}
	return out
}

func show(r rune, size int, first byte) (text string, width int) {
	switch {
	case r == utf8.RuneError && size <= 1:
		text = fmt.Sprintf("<0x%02X>", first)
	case hidden(r):
		text = fmt.Sprintf("<U+%04X>", r)
	default:
		return string(r), runeWidth(r)
	}
	return text, len(text)
}

// hidden tells characters that a reader can't see for what they are: controls,
// bidi and zero-width marks, line separators, and blanks other than the blank.
func hidden(r rune) bool {
	return r != ' ' && (unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zs, unicode.Zl, unicode.Zp, unicode.Co, unicode.Cs))
}

// clean makes a text of a finding safe for a terminal: one line, nothing
// hidden.
func clean(s string) string {
	var out []byte
	for off := 0; off < len(s); {
		r, size := utf8.DecodeRuneInString(s[off:])
		if r == '\n' || r == '\t' || r == '\r' {
			r = ' '
		}
		text, _ := show(r, size, s[off])
		out = append(out, text...)
		off += size
	}
	return string(out)
}

// Clean makes a text safe for a terminal: on one line, with what could hide or
// reorder text shown as escapes such as <U+202E>.
func Clean(s string) string { return clean(s) }

// Columns gives the columns that a clean text takes on a terminal: two for wide
// characters, none for marks that stand on another one.
func Columns(s string) int { return columns(s) }

// columns gives the terminal columns of a clean text.
func columns(s string) int {
	n := 0
	for _, r := range s {
		n += runeWidth(r)
	}
	return n
}

// wrap breaks a text at its blanks into rows of at most width columns; a
// longer word stands alone.
func wrap(text string, width int) []string {
	var rows []string
	row, used := "", 0
	for _, word := range strings.Fields(text) {
		n := columns(word)
		if row != "" && used+1+n > width {
			rows = append(rows, row)
			row, used = "", 0
		}
		if row != "" {
			row += " "
			used++
		}
		row += word
		used += n
	}
	return append(rows, row)
}

func runeWidth(r rune) int {
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me):
		return 0
	case unicode.Is(wide, r):
		return 2
	}
	return 1
}

// wide holds the blocks whose characters take two columns: Unicode Standard
// Annex 11 (East Asian Width), classes W and F, joined where only unassigned
// or rare characters lie between. The ranges are from memory; a wrong one only
// moves a caret.
var wide = &unicode.RangeTable{
	R16: []unicode.Range16{
		{Lo: 0x1100, Hi: 0x115f, Stride: 1},
		{Lo: 0x2e80, Hi: 0x303e, Stride: 1},
		{Lo: 0x3041, Hi: 0x33ff, Stride: 1},
		{Lo: 0x3400, Hi: 0x4dbf, Stride: 1},
		{Lo: 0x4e00, Hi: 0xa4cf, Stride: 1},
		{Lo: 0xa960, Hi: 0xa97f, Stride: 1},
		{Lo: 0xac00, Hi: 0xd7a3, Stride: 1},
		{Lo: 0xf900, Hi: 0xfaff, Stride: 1},
		{Lo: 0xfe30, Hi: 0xfe6f, Stride: 1},
		{Lo: 0xff01, Hi: 0xff60, Stride: 1},
		{Lo: 0xffe0, Hi: 0xffe6, Stride: 1},
	},
	R32: []unicode.Range32{
		{Lo: 0x1f300, Hi: 0x1f64f, Stride: 1},
		{Lo: 0x1f680, Hi: 0x1f6ff, Stride: 1},
		{Lo: 0x1f900, Hi: 0x1f9ff, Stride: 1},
		{Lo: 0x20000, Hi: 0x3fffd, Stride: 1},
	},
}

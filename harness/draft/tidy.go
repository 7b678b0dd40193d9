package draft

import (
	"bytes"
	"strings"
)

// Tidy prints a draft in its canonical look: two blanks a level, lists with
// ", ", columns in a block of like statements, one blank line in place of
// several, LF. It changes blanks only, but for a figure that was parted from
// its unit. A line with a fault is kept byte for byte; where such a line's
// indent tells how others belong, every indent is kept. Printing what was
// printed changes nothing.
func Tidy(f *File) []byte {
	if len(f.Lines) == 0 {
		return bytes.Clone(f.Src)
	}
	t := printer{file: f, keepIndent: f.oddIndent || faultKeepsIndent(f)}
	t.layOut()
	var out bytes.Buffer
	out.Grow(len(f.Src) + len(f.Src)/4)
	blank := false
	for n := range f.Lines {
		ln := &f.Lines[n]
		if isBlank(ln) {
			blank = true
			continue
		}
		if blank && out.Len() > 0 {
			out.WriteByte('\n')
		}
		blank = false
		t.print(&out, n)
		out.WriteByte('\n')
	}
	return out.Bytes()
}

// isBlank reports whether a line holds nothing at all.
func isBlank(ln *Line) bool { return ln.Stmt == nil && ln.Comment == "" && !ln.Bad }

// indentOf gives the blanks and tabs before a line.
func indentOf(text string) string {
	return text[:len(text)-len(strings.TrimLeft(text, " \t"))]
}

// faultKeepsIndent reports whether a line that is kept as it is stands at
// another depth than tidy would give it. Moving its neighbors then would
// change what belongs to what.
func faultKeepsIndent(f *File) bool {
	for n := range f.Lines {
		ln := &f.Lines[n]
		if ln.Bad && ln.Stmt != nil && indentOf(ln.Text) != levelIndent(ln.Stmt.Level) {
			return true
		}
	}
	return false
}

func levelIndent(level int) string { return strings.Repeat("  ", level) }

// printer holds the layout of a file while it is printed.
type printer struct {
	file       *File
	keepIndent bool
	rows       []row // one for each line
}

// row is a statement cut into cells, with the widths of its block.
type row struct {
	cells   []string // cell 0 is the head
	gap     int      // blanks after the head
	widths  []int    // of the block's columns, nil outside a block
	head    int      // width of the head column, 0: its own
	comment int      // column of the block's comments from the indent, 0: behind the line
}

// print writes one line without its end.
func (t *printer) print(out *bytes.Buffer, n int) {
	ln := &t.file.Lines[n]
	if ln.Bad {
		out.WriteString(ln.Text)
		if strings.HasSuffix(ln.Text, "\r") { // else it would become part of the line's end
			out.WriteByte('\r')
		}
		return
	}
	if ln.Stmt == nil {
		out.WriteString(t.commentIndent(n))
		out.WriteString(ln.Comment)
		return
	}
	out.WriteString(t.indent(ln))
	used := t.rows[n].write(out)
	if ln.Comment != "" {
		pad(out, max(t.rows[n].comment-used, colGap))
		out.WriteString(ln.Comment)
	}
}

// indent gives the blanks before a statement.
func (t *printer) indent(ln *Line) string {
	if t.keepIndent {
		return indentOf(ln.Text)
	}
	return levelIndent(ln.Stmt.Level)
}

// pad writes n blanks.
func pad(out *bytes.Buffer, n int) {
	for range n {
		out.WriteByte(' ')
	}
}

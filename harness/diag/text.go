package diag

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"
)

// TextOptions says how [WriteText] prints. The zero value is plain text, 100
// columns wide, without source lines.
type TextOptions struct {
	// Source gives the bytes of a file, nil if they are not at hand: the
	// finding is then printed without its source line.
	Source func(file string) []byte
	// Color adds terminal colors.
	Color bool
	// Width is the number of columns to stay within; 0 means 100, less than
	// 40 means 40.
	Width int
	// Wrap breaks the first line of a finding at the width as well. Otherwise
	// it is left whole, so that tools can read it.
	Wrap bool
	// Related is how many related places of a finding are printed; 0 for all.
	Related int
}

// WriteText prints findings for people, in list order with an empty line
// between them: place, severity, message and rule; the source line with a
// caret under the word to change; the reason; the values against their
// limits; related places; the fix. Characters that could hide or reorder text
// are shown as escapes, wherever they come from. The error is the writer's.
func WriteText(w io.Writer, l List, o TextOptions) error {
	if o.Width == 0 {
		o.Width = 100
	}
	o.Width = max(o.Width, 40)
	p := &printer{w: bufio.NewWriter(w), o: o}
	for i, f := range l {
		if i > 0 {
			p.line("")
		}
		p.finding(f)
	}
	return p.w.Flush()
}

// printer holds the writer, which keeps the first error until Flush.
type printer struct {
	w     *bufio.Writer
	o     TextOptions
	lines map[string]*lineIndex
}

func (p *printer) line(s string) {
	p.w.WriteString(strings.TrimRight(s, " "))
	p.w.WriteByte('\n')
}

func (p *printer) finding(f Finding) {
	p.head(f)
	gutter := max(len(strconv.Itoa(max(f.At.Line, f.Context.Line))), 3)
	p.source(f, gutter)
	p.prose("why", f.Detail, gutter)
	for _, v := range f.Values {
		p.prose("value", v.String(), gutter)
	}
	for i, r := range f.Related {
		if n := len(f.Related) - i; p.o.Related > 0 && i == p.o.Related && n > 1 {
			p.prose("see", "and "+strconv.Itoa(n)+" more places", gutter)
			break
		}
		where := r.At.String()
		if where != "" {
			where += ": "
		}
		p.prose("see", where+r.Msg, gutter)
	}
	if f.Fix != nil {
		p.prose("fix", f.Fix.Msg, gutter)
	}
}

// head prints the first line: place, severity, message, rule.
func (p *printer) head(f Finding) {
	where := clean(f.At.String())
	if where != "" {
		where += ": "
	}
	word, rule := f.Severity.String()+":", " ["+clean(f.Rule)+"]"
	msg := clean(f.Msg)
	if whole := where + word + " " + msg + rule; p.o.Wrap && columns(whole) > p.o.Width {
		p.wrappedHead(f.Severity, where+word, whole)
		return
	}
	p.line(where + p.paint(severityColor(f.Severity), word) + " " + p.paint(bold, msg) + rule)
}

// wrappedHead prints a first line that is wider than the terminal on several,
// the further ones indented as far as the source line under them.
func (p *printer) wrappedHead(s Severity, lead, whole string) {
	const indent = "    "
	for i, row := range wrap(whole, p.o.Width-len(indent)) {
		rest, first := strings.CutPrefix(row, lead)
		switch {
		case i == 0 && first:
			word := s.String() + ":"
			row = strings.TrimSuffix(lead, word) + p.paint(severityColor(s), word) + p.paint(bold, rest)
		case i > 0:
			row = indent + p.paint(bold, row)
		}
		p.line(row)
	}
}

// source prints the line of the finding, and before it the line of its
// context if that is another one.
func (p *printer) source(f Finding, gutter int) {
	if p.o.Source == nil || f.At.IsZero() {
		return
	}
	src := p.o.Source(f.At.File)
	if src == nil {
		return
	}
	index := p.index(f.At.File, src)
	text, start, ok := index.line(f.At.Line)
	if !ok {
		return
	}
	width := p.o.Width - gutter - 3
	if c := f.Context; c.File == f.At.File && c.Line > 0 && c.Line < f.At.Line {
		if above, at, ok := index.line(c.Line); ok {
			shown, _ := excerpt(above, at, c, width)
			p.line(fmt.Sprintf("%*d | %s", gutter, c.Line, shown))
			if c.Line < f.At.Line-1 {
				p.line(strings.Repeat(" ", gutter) + " :")
			}
		}
	}
	shown, carets := excerpt(text, start, f.At, width)
	indent := len(carets) - len(strings.TrimLeft(carets, " "))
	p.line(fmt.Sprintf("%*d | %s", gutter, f.At.Line, shown))
	p.line(strings.Repeat(" ", gutter) + " | " + carets[:indent] +
		p.paint(severityColor(f.Severity), carets[indent:]))
}

// prose prints a labeled text, wrapped, with its further lines under its first.
func (p *printer) prose(label, text string, gutter int) {
	if text == "" {
		return
	}
	lead := strings.Repeat(" ", gutter) + " = " + label + ": "
	for i, row := range wrap(clean(text), p.o.Width-len(lead)) {
		if i > 0 {
			lead = strings.Repeat(" ", len(lead))
		}
		p.line(lead + row)
	}
}

const bold = "1"

func severityColor(s Severity) string {
	switch s {
	case Danger, Fault:
		return "1;31"
	case Warning:
		return "1;33"
	}
	return "1;36"
}

func (p *printer) paint(code, s string) string {
	if !p.o.Color {
		return s
	}
	return "\x1b[" + code + "m" + s + "\x1b[0m"
}

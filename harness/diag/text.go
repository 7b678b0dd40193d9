package diag

import (
	"bufio"
	"fmt"
	"io"
	"math"
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
	// 40 means 40. The first line of a finding is never broken, so that tools
	// can read it.
	Width int
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
	w *bufio.Writer
	o TextOptions
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
	for _, r := range f.Related {
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

func (p *printer) head(f Finding) {
	where := clean(f.At.String())
	if where != "" {
		where += ": "
	}
	word := p.paint(severityColor(f.Severity), f.Severity.String()+":")
	p.line(where + word + " " + p.paint(bold, clean(f.Msg)) + " [" + clean(f.Rule) + "]")
}

// source prints the line of the finding, and before it the line of its
// context if that is another one.
func (p *printer) source(f Finding, gutter int) {
	if p.o.Source == nil || f.At.IsZero() {
		return
	}
	src := p.o.Source(f.At.File)
	text, start, ok := line(src, f.At.Line)
	if !ok || src == nil {
		return
	}
	width := p.o.Width - gutter - 3
	if c := f.Context; c.File == f.At.File && c.Line > 0 && c.Line < f.At.Line {
		if above, at, ok := line(src, c.Line); ok {
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

// String gives the value against its limit: "drop 4.57 %, at most 3 %".
func (v Value) String() string {
	s := v.Name + " " + figure(v.Got, v.Unit)
	if v.Bound != NoBound {
		s += ", " + string(v.Bound) + " " + figure(v.Limit, v.Unit)
	}
	return s
}

// least is the smallest amount of anything that is printed as more than 0:
// below a billionth of a volt or an ampere stands only rounding.
const least = 1e-9

// figure prints four significant digits without an exponent, and never -0.
func figure(v float64, unit string) string {
	s := "unknown"
	if !math.IsNaN(v) && !math.IsInf(v, 0) {
		v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'e', 3, 64), 64)
		if math.Abs(v) < least {
			v = 0
		}
		s = strconv.FormatFloat(v, 'f', -1, 64)
	}
	if unit != "" {
		s += " " + unit
	}
	return s
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

package draft

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// strays are ASCII characters that have no use in a draft and are left out of
// the word they stand in.
const strays = "!$'*?@\\^`~"

// stray answers a run of one such character and gives its length.
func (l *line) stray(c byte) int {
	n := len(l.s) - l.pos - len(strings.TrimLeft(l.s[l.pos:], string(c)))
	msg := quoted(l.s[l.pos:l.pos+n]) + " cannot stand in a word: put a name that has it in quotes"
	switch c {
	case '@':
		msg = `a place is written with "at", without "@"`
	case '\\':
		if strings.TrimSpace(l.s[l.pos+n:]) == "" {
			msg = "one statement is one line: a backslash does not continue it"
		}
	case '~':
		msg = `a rough figure is written plain, with the word "guess" behind it`
	}
	l.fault(l.pos, l.pos+n, msg)
	return n
}

// sign answers the signs of other formats where a name is expected, and
// reports whether there was one. They are read as blanks.
func (l *line) sign() bool {
	c, n, _ := l.look(l.pos)
	from := l.pos
	switch {
	case c == '(' || c == '[' || c == '{':
		l.bracket(c, n)
		return true
	case c == ')' || c == ']' || c == '}':
		l.pos += n
		if i := strings.IndexByte(l.closers, c); i >= 0 {
			l.closers = l.closers[:i] + l.closers[i+1:]
			return true
		}
		l.fault(from, l.pos, quoted(l.s[from:l.pos])+" has no use here: what belongs to a line is indented below it")
	case c == '|' || c == '&':
		l.pos += n
		msg := `columns are parted by blanks, without "|"`
		if c == '&' {
			msg = `the members of a list are parted by commas, without "&"`
		}
		l.fault(from, l.pos, msg)
	default:
		n = max(l.arrow(from), l.operator(from))
		if n == 0 {
			return false
		}
		l.pos += n
		msg := operatorText(l.s[from:l.pos])
		if c == ':' && strings.TrimSpace(l.s[l.pos:]) == "" {
			msg = `what belongs to a line is indented below it, without ":"`
		}
		l.fault(from, l.pos, msg)
	}
	l.touched()
	return true
}

// arrow gives the length of an arrow such as -> or <-- at off, else 0.
func (l *line) arrow(off int) int {
	if off > 0 && l.s[off-1] == '.' && l.s[off] == '-' { // G1.-: the negative post
		return 0
	}
	s := l.s[off:]
	dashes := strings.TrimLeft(s, "<-=")
	n := len(s) - len(dashes)
	switch {
	case strings.HasPrefix(dashes, ">"):
		return n + 1
	case n > 1 && s[0] == '<':
		return n
	}
	return 0
}

// operator gives the length of a run of = : < > at off, else 0.
func (l *line) operator(off int) int {
	end := off
	for end < len(l.s) {
		c, n, _ := l.look(end)
		if c == 0 || strings.IndexByte("=:<>", c) < 0 {
			break
		}
		end += n
	}
	return end - off
}

func operatorText(sign string) string {
	switch {
	case strings.ContainsAny(sign, "\u2190\u2192\u2194\u21d2") || len(sign) > 1 && strings.ContainsAny(sign, "<>"):
		return "the two ends of a wire stand side by side, without an arrow"
	case strings.Contains(sign, "="):
		return `a setting is written without "=": its word, a blank, its figure`
	case strings.Contains(sign, ":"):
		return `a setting is written without ":": its word, a blank, its figure`
	}
	return quoted(sign) + " has no use here: write the figure alone"
}

// bracket answers an opening bracket, and passes over what it encloses when
// that is a remark.
func (l *line) bracket(c byte, n int) {
	from := l.pos
	l.pos += n
	closing := map[byte]string{'(': ")", '[': "]", '{': "}"}[c]
	inside, _, found := strings.Cut(l.s[l.pos:], closing)
	glued := from > 0 && wchars[l.s[from-1]]
	msg := quoted(l.s[from:l.pos]) + " has no use here: what belongs to a line is indented below it"
	switch {
	case found && glued:
		msg = "a terminal is written with a period, without brackets: DEVICE.TERMINAL"
	case found && c == '(':
		msg = "a remark stands behind # at the end of the line, a name in quotes: no brackets are needed"
	case found && c == '[':
		msg = "the members of a list are parted by commas and need no brackets"
	}
	if found && (c == '(' || glued) {
		l.pos += len(inside) + 1
		l.fault(from, l.pos, msg)
		l.touched()
		return
	}
	l.fault(from, from+n, msg)
	if found { // the partner is the same mistake
		l.closers += closing
	}
	l.touched()
}

// touched marks the item before a stray sign: it may be cut short.
func (l *line) touched() {
	if n := len(l.items); n > 0 {
		l.items[n-1].Bad = true
	}
}

// unknown words the finding on a character that has no use anywhere.
func (l *line) unknown(off int) string {
	r, _ := utf8.DecodeRuneInString(l.s[off:])
	return quoted(string(r)) + " (" + codePoint(r) + ") cannot stand in a word: put a name that has it in quotes"
}

// hidden reports whether a character shows nothing by itself.
func hidden(r rune) bool {
	return unicode.Is(unicode.C, r) || unicode.IsSpace(r) && r != ' '
}

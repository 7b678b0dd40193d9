package draft

import "strings"

// comma takes a comma at pos, and answers one that parts nothing.
func (l *line) comma(hasHead bool) bool {
	c, n, t := l.look(l.pos)
	if c != ',' {
		return false
	}
	from := l.pos
	l.pos += n
	switch {
	case !hasHead:
		l.fault(from, l.pos, "a word is expected before this comma")
	case len(l.items) == 0:
		l.fault(from, l.pos, "no comma is expected after the first word of a line")
	case l.afterComma:
		l.fault(from, l.pos, "one comma is expected between two names: this one is too many")
	default:
		l.twin(from, n, t)
		l.afterComma, l.commaAt, l.faultsAtComma = true, from, l.faults
	}
	return true
}

// openComma answers a list that ends with a comma.
func (l *line) openComma() {
	if !l.afterComma {
		return
	}
	l.touched()
	if l.faults == l.faultsAtComma {
		_, n, _ := l.look(l.commaAt)
		l.fault(l.commaAt, l.commaAt+n, "a name is expected after this comma")
	}
}

// semicolon takes a semicolon at pos and reports whether another statement
// follows in the same line.
func (l *line) semicolon(hasHead bool) (again bool) {
	c, _, _ := l.look(l.pos)
	if c != ';' {
		return false
	}
	from := l.pos
	for c == ';' {
		_, n, _ := l.look(l.pos)
		l.pos += n
		c, _, _ = l.look(l.pos)
	}
	rest := strings.TrimLeft(l.s[l.pos:], " \t")
	switch {
	case rest == "" || rest[0] == '#':
		l.fault(from, l.pos, `a statement ends with its line, without ";"`)
		return false
	case !hasHead:
		l.fault(from, l.pos, `a word is expected before this ";"`)
		return false
	}
	l.fault(from, l.pos, `one statement is one line: a new line is expected instead of ";"`)
	l.touched()
	return true
}

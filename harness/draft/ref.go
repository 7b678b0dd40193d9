package draft

import "strings"

// ref reads a dotted name at pos. Its parts are empty when nothing of it can
// be read.
func (l *line) ref() Ref {
	from, col := l.pos, l.col(l.pos)
	l.parts = l.parts[:0]
	if c, _, _ := l.look(l.pos); c == '.' {
		l.leadingPeriod()
	} else {
		l.part()
	}
	for l.pos < len(l.s) {
		c, n, t := l.look(l.pos)
		if c == ':' && l.terminalColon(from, n) {
			continue
		}
		if c != '.' {
			break
		}
		l.twin(l.pos, n, t)
		dot := l.pos
		l.pos += n
		if !l.partStarts() {
			l.lonePeriod(from, dot)
			continue
		}
		l.part()
	}
	if l.pos == from { // a character that nothing else takes
		_, n, _ := l.look(l.pos)
		l.fault(from, from+n, l.unknown(from))
		l.pos += n
	}
	return Ref{Raw: l.s[from:l.pos], Parts: l.partSlab.copyOf(l.parts), At: l.at(from, col)}
}

// part reads a word or a string and keeps it unless it is empty.
func (l *line) part() {
	if l.quoteStarts() {
		l.parts = append(l.parts, l.str())
		return
	}
	if w := l.word(); w != "" {
		l.parts = append(l.parts, w)
	}
}

// partStarts reports whether a word or a string begins at pos.
func (l *line) partStarts() bool {
	return l.pos < len(l.s) && (l.quoteStarts() || l.wordStarts())
}

// leadingPeriod answers a period with nothing before it.
func (l *line) leadingPeriod() {
	from := l.pos
	for l.pos < len(l.s) {
		c, n, _ := l.look(l.pos)
		if c != '.' {
			break
		}
		l.pos += n
	}
	dots := l.pos
	switch {
	case dots-from > 1 || !l.partStarts():
		l.fault(from, dots, "a name is expected here: "+quoted(l.s[from:dots])+" stands for nothing")
	case l.s[dots] >= '0' && l.s[dots] <= '9' && !l.bareNumber(dots):
		l.swap(from, dots, "a figure starts with a digit: write 0 before the period", "0.")
		l.parts = append(l.parts, "0")
	default:
		l.fault(from, dots, "a name is expected before the period: a terminal is written DEVICE.TERMINAL")
	}
	if l.partStarts() {
		l.part()
	}
}

// bareNumber reports whether only digits follow up to the end of the word, as
// in ".87", which is a terminal without its device and no figure.
func (l *line) bareNumber(from int) bool {
	rest := strings.TrimLeft(l.s[from:], "0123456789")
	return rest == "" || !wchars[rest[0]]
}

// lonePeriod answers a period with nothing after it. The name before it is
// kept.
func (l *line) lonePeriod(from, dot int) {
	name := quoted(l.s[from:dot])
	for l.pos < len(l.s) {
		c, n, _ := l.look(l.pos)
		if c != '.' {
			break
		}
		l.pos += n
	}
	if l.partStarts() {
		l.fault(dot, l.pos, "one period is expected after "+name)
		l.part()
		return
	}
	l.fault(dot, l.pos, "a name is expected after the period of "+quoted(l.s[from:l.pos]))
}

// terminalColon reads F4:2 as F4.2 when the word before the colon looks like
// a device; otherwise the colon is left to [line.sign].
func (l *line) terminalColon(from, n int) bool {
	word := l.s[from:l.pos]
	if word == "" || word[0] < 'A' || word[0] > 'Z' || strings.ToUpper(word) != word {
		return false
	}
	colon := l.pos
	l.pos += n
	if !l.partStarts() {
		l.pos = colon
		return false
	}
	l.swap(colon, colon+n, "a terminal is written with a period: "+
		strings.Trim(quoted(word+"."+l.restOfWord()), `"`), ".")
	l.part()
	return true
}

// restOfWord gives the plain word characters from pos on, for messages.
func (l *line) restOfWord() string {
	end := l.pos
	for end < len(l.s) && wchars[l.s[end]] {
		end++
	}
	return l.s[l.pos:end]
}

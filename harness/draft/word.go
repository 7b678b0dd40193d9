package draft

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// wchars are the ASCII characters of a word.
var wchars = func() (set [256]bool) {
	for c := range 128 {
		r := byte(c)
		set[c] = r >= '0' && r <= '9' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' ||
			strings.IndexByte("+-_/%", r) >= 0
	}
	return set
}()

// wordStarts reports whether word would read something at pos.
func (l *line) wordStarts() bool {
	c, n, _ := l.look(l.pos)
	return !l.endsWord(l.pos, c, n)
}

// endsWord reports whether the character at off, which looks like c, is no
// part of a word.
func (l *line) endsWord(off int, c byte, n int) bool {
	switch {
	case c == '-' && n == 1:
		return l.arrow(off) > 0
	case c == other:
		return false
	case wchars[c]:
		return false
	case isControl(c):
		return c == '\r' || c == '\v' || c == '\f'
	}
	return strings.IndexByte(strays, c) < 0
}

// word reads the characters of a word and gives it as it should have been
// written. Characters that only look like the right ones are named.
func (l *line) word() string {
	from := l.pos
	for l.pos < len(l.s) && wchars[l.s[l.pos]] {
		if l.s[l.pos] == '-' && l.arrow(l.pos) > 0 {
			return l.s[from:l.pos]
		}
		l.pos++
	}
	if l.pos == len(l.s) || strings.IndexByte(" .,", l.s[l.pos]) >= 0 {
		return l.s[from:l.pos]
	}
	return l.carefulWord(from)
}

// carefulWord goes on where word met something that may need an answer.
func (l *line) carefulWord(from int) string {
	l.buf = append(l.buf[:0], l.s[from:l.pos]...)
	letters, measure := false, false
	for l.pos < len(l.s) {
		c, n, t := l.look(l.pos)
		if l.inchMark(from, c, n) {
			measure = true
			l.pos += l.addMark(c)
			continue
		}
		if l.endsWord(l.pos, c, n) {
			break
		}
		if c == other && t == nil {
			letters = l.letter(n) || letters
		} else {
			n = l.wordChar(c, n, t)
		}
		l.pos += n
	}
	text := l.s[from:l.pos]
	if text != string(l.buf) {
		text = string(l.buf)
	}
	if measure {
		l.swap(from, l.pos, "feet and inches are written with their letters: "+quoted(text), text)
	}
	if letters {
		text = l.scripts(from, text)
	}
	return text
}

// wordChar takes a character that is ASCII or has an ASCII look-alike, and
// gives the bytes it takes.
func (l *line) wordChar(c byte, n int, t *twin) int {
	switch {
	case t != nil && t.want != "" && strings.Contains(strays, t.want):
		l.fault(l.pos, l.pos+n, l.unknown(l.pos))
	case t != nil && t.name == fullWidth[0].name:
		return l.fullWidth()
	case t != nil:
		l.twin(l.pos, n, t)
		l.buf = append(l.buf, t.want...)
	case wchars[c]:
		l.buf = append(l.buf, c)
	case isControl(c):
		return l.control(l.pos, c)
	default:
		return l.stray(c)
	}
	return n
}

// letter takes a character outside ASCII that has no entry of its own, and
// reports whether it is a letter.
func (l *line) letter(n int) bool {
	r, _ := utf8.DecodeRuneInString(l.s[l.pos:])
	switch {
	case r == utf8.RuneError && n == 1:
		l.notText(l.pos)
	case unicode.IsLetter(r) || unicode.Is(unicode.M, r):
		l.buf = utf8.AppendRune(l.buf, r)
		return true
	case unicode.Is(unicode.Nd, r):
		d := strconv.Itoa(digitValue(r))
		l.swap(l.pos, l.pos+n, quoted(string(r))+" is a digit of another script: expected "+d, d)
		l.buf = append(l.buf, d...)
	default:
		l.fault(l.pos, l.pos+n, l.unknown(l.pos))
	}
	return false
}

// digitValue gives the figure of a decimal digit of any script; they stand in
// runs of ten.
func digitValue(r rune) int {
	for _, t := range unicode.Nd.R16 {
		if r >= rune(t.Lo) && r <= rune(t.Hi) {
			return int(r-rune(t.Lo)) % 10
		}
	}
	for _, t := range unicode.Nd.R32 {
		if r >= rune(t.Lo) && r <= rune(t.Hi) {
			return int(r-rune(t.Lo)) % 10
		}
	}
	return 0
}

// inchMark reports whether the character at pos is a foot or inch mark behind
// a figure, as in 9'6" or 35".
func (l *line) inchMark(from int, c byte, n int) bool {
	if c != '\'' && c != '"' || len(l.buf) == 0 || l.buf[0] < '0' || l.buf[0] > '9' {
		return false
	}
	last := l.buf[len(l.buf)-1]
	if last < '0' || last > '9' {
		return false
	}
	if c == '\'' {
		return true
	}
	after := l.pos + n
	return after == len(l.s) || strings.IndexByte(" \t,;)", l.s[after]) >= 0
}

// addMark writes the unit that a foot or inch mark means, and gives the bytes
// that the mark takes.
func (l *line) addMark(c byte) int {
	_, n, _ := l.look(l.pos)
	unit := "ft"
	if c == '"' {
		unit = "in"
	} else if next, m, _ := l.look(l.pos + n); next == '\'' {
		unit, n = "in", n+m
	}
	l.buf = append(l.buf, unit...)
	return n
}

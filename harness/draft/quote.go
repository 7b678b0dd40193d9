package draft

import (
	"strings"
	"unicode/utf8"
)

// curly are the quotes that word processors set, opening and closing, and the
// full-width one.
const curly = "\u201c\u201d\u201e\u201f\u00ab\u00bb\u301d\u301e\uff02\u2033"

// startsQuoted reports whether text begins with a quote of any kind.
func startsQuoted(text string) bool {
	if text == "" {
		return false
	}
	if text[0] < 0x80 {
		return text[0] == '"' || text[0] == '\''
	}
	r, _ := utf8.DecodeRuneInString(text)
	return strings.ContainsRune(curly, r) || r == '\u2018' || r == '\u2019'
}

// quoteStarts reports whether a string begins at pos. A single quote begins
// one only when another closes it at the end of a word.
func (l *line) quoteStarts() bool {
	c, n, _ := l.look(l.pos)
	return c == '"' || c == '\'' && l.singleEnd(l.pos+n) > 0
}

// str reads the string at pos and gives its value.
func (l *line) str() string {
	from := l.pos
	if l.s[from] != '"' {
		return l.wrongQuotes()
	}
	l.pos++
	doubled, slashed := false, false
	for {
		i := strings.IndexByte(l.s[l.pos:], '"')
		if i < 0 {
			return l.unclosed(from)
		}
		l.pos += i + 1
		switch {
		case l.pos < len(l.s) && l.s[l.pos] == '"':
			doubled = true
			l.pos++
		case l.escaped(from):
			slashed = true
		default:
			return l.closed(from, doubled, slashed)
		}
	}
}

// closed gives the value of the string from from up to pos.
func (l *line) closed(from int, doubled, slashed bool) string {
	if l.mispaired(from) {
		return l.s[from+1 : len(l.s)]
	}
	text := l.s[from+1 : l.pos-1]
	l.text(from+1, l.pos-1)
	if slashed {
		text = strings.ReplaceAll(text, `\"`, `""`)
	}
	if doubled || slashed {
		text = strings.ReplaceAll(text, `""`, `"`)
	}
	return text
}

// escaped answers a quote that is escaped with a backslash, as other formats
// do it: the string goes on behind it.
func (l *line) escaped(from int) bool {
	rest := l.s[l.pos:]
	if l.s[l.pos-2] != '\\' || l.pos-2 <= from || !strings.Contains(rest, `"`) {
		return false
	}
	if !glued(rest) && strings.Count(rest, `"`)%2 == 0 {
		return false
	}
	l.swap(l.pos-2, l.pos, `a quote inside a text is written twice, without a backslash: ""`, `""`)
	return true
}

// glued reports whether what follows a closing quote should have had a blank
// before it.
func glued(rest string) bool {
	return rest != "" && strings.IndexByte(" \t,.;)]", rest[0]) < 0
}

// mispaired answers a line in which one quote is missing and its strings
// therefore run into the words: one finding, and the line is read no further.
func (l *line) mispaired(from int) bool {
	rest := l.s[l.pos:]
	before := from > 0 && wchars[l.s[from-1]]
	if !before && !glued(rest) { // looked at first: to count is to read the rest of the line
		return false
	}
	if strings.Count(rest, `"`)%2 == 0 {
		return false
	}
	l.fault(from, from+1, "this quote has no partner: a quote is missing in this line")
	l.pos, l.broken = len(l.s), true
	return true
}

// unclosed answers a string that nothing closes. A curly quote is taken for
// the closing one; else the text goes to the end of the line.
func (l *line) unclosed(from int) string {
	rest := l.s[from+1:]
	if i := strings.IndexAny(rest, curly); i >= 0 {
		_, n := utf8.DecodeRuneInString(rest[i:])
		end := from + 1 + i
		l.pos = end + n
		l.swap(end, l.pos, quoted(l.s[end:l.pos])+` is a curly quote: a text ends with a straight one`, `"`)
		return rest[:i]
	}
	l.pos = len(l.s)
	l.fault(from, from+1, "this quote is not closed: another one is expected before the end of the line")
	return strings.TrimRight(rest, " \t")
}

// wrongQuotes reads a string in curly or single quotes.
func (l *line) wrongQuotes() string {
	from := l.pos
	c, n, t := l.look(from)
	end, after := -1, -1
	if c == '\'' {
		if after = l.singleEnd(from + n); after > 0 {
			_, m := utf8.DecodeLastRuneInString(l.s[:after])
			end = after - m
		}
	} else if end = l.curlyEnd(from + n); end > 0 {
		_, m := utf8.DecodeRuneInString(l.s[end:])
		after = end + m
	}
	name := "single"
	if t != nil {
		name = "curly"
	}
	if end < 0 {
		l.pos = len(l.s)
		l.fault(from, from+n, "this "+name+` quote is not closed: a text stands between two straight quotes (")`)
		return strings.TrimRight(l.s[from+n:], " \t")
	}
	l.pos = after
	text := l.s[from+n : end]
	l.swap(from, after, "a text stands between straight double quotes, not "+name+" ones",
		`"`+strings.ReplaceAll(text, `"`, `""`)+`"`)
	return text
}

// curlyEnd gives the offset of the quote that closes a text begun with a
// curly one before from, negative when there is none: the first curly one, or
// a straight one at the end of a word before it.
func (l *line) curlyEnd(from int) int {
	end := strings.IndexAny(l.s[from:], curly)
	if end < 0 {
		end = len(l.s) - from
	}
	for at, c := range []byte(l.s[from : from+end]) {
		if c == '"' && !glued(l.s[from+at+1:]) {
			return from + at
		}
	}
	if from+end == len(l.s) {
		return -1
	}
	return from + end
}

// singleEnd gives the offset after the single quote that closes a text begun
// before from, 0 when there is none: it has to stand at the end of a word.
func (l *line) singleEnd(from int) int {
	for at := from; at < len(l.s); {
		c, n, _ := l.look(at)
		at += n
		if c == '\'' && at > from+n && !glued(l.s[at:]) {
			return at
		}
	}
	return 0
}

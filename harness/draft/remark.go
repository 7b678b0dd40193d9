package draft

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// remark takes a comment at pos, and answers the marks by which other formats
// begin one. blank tells whether the comment stands apart from what is before.
func (l *line) remark(blank bool, head string) bool {
	c, n, t := l.look(l.pos)
	from := l.pos
	switch {
	case c == '#':
		l.twin(from, n, t)
		if !blank {
			l.fault(from, from+n, "a blank is expected before #, which begins a comment")
		}
		l.threadSize(head)
	case blank && (c == '/' || c == '-') && l.foreignRemark() > 0:
		l.fault(from, from+l.foreignRemark(), `a comment begins with "#"`)
	case c == ';' && blank && head == "" && strings.TrimSpace(l.s[:from]) == "":
		l.fault(from, from+n, `a comment begins with "#"`)
	default:
		return false
	}
	l.comment = strings.TrimRight(l.s[from:], " \t")
	l.text(from, len(l.s))
	l.pos = len(l.s)
	return true
}

// foreignRemark gives the length of //, /* or a run of dashes that stands
// where a word would.
func (l *line) foreignRemark() int {
	s := l.s[l.pos:]
	if strings.HasPrefix(s, "//") || strings.HasPrefix(s, "/*") {
		return 2
	}
	rest := strings.TrimLeft(s, "-")
	n := len(s) - len(rest)
	if n >= 2 && (rest == "" || rest[0] == ' ' || rest[0] == '\t') {
		return n
	}
	return 0
}

// threadSize answers a stud size such as #10, which reads as a comment.
func (l *line) threadSize(head string) {
	if head != "stud" {
		return
	}
	s := l.s[l.pos+1:]
	rest := strings.TrimLeft(s, "0123456789")
	size := s[:len(s)-len(rest)]
	switch size {
	case "4", "6", "8", "10", "12":
		if rest == "" || rest[0] == ' ' || rest[0] == '\t' || rest[0] == '-' {
			l.swap(l.pos, l.pos+1+len(size), "#"+size+" reads as a comment: this size is written No"+size, "No"+size)
		}
	}
}

// text looks through a string or a comment for what must not be in a draft.
func (l *line) text(from, to int) {
	if l.plain {
		return
	}
	for at := from; at < to; {
		r, n := utf8.DecodeRuneInString(l.s[at:to])
		switch {
		case r == utf8.RuneError && n == 1:
			n = l.notText(at)
		case r < 0x80 && isControl(byte(r)):
			n = l.control(at, byte(r))
		case r >= 0x80 && unicode.Is(unicode.Cc, r):
			l.fault(at, at+n, "a control character ("+codePoint(r)+") stands here: delete it")
		case unicode.Is(unicode.Bidi_Control, r):
			l.warn(at, at+n, "a hidden "+twins[r].name+" ("+codePoint(r)+") turns the reading order from here on")
		}
		at += n
	}
}

// notText answers bytes that are not UTF-8 and gives how many there are.
func (l *line) notText(at int) int {
	end := at
	for end < len(l.s) {
		if r, n := utf8.DecodeRuneInString(l.s[end:]); r != utf8.RuneError || n != 1 {
			break
		}
		end++
	}
	l.fault(at, end, "this is not UTF-8 text: save the file as UTF-8")
	return end - at
}

// isControl reports whether a character is a control that no draft may hold.
func isControl(c byte) bool { return c < ' ' && c != '\t' || c == 0x7f }

// control names a control character, each kind once a line, and gives its
// length: a terminal escape takes its sequence with it.
func (l *line) control(at int, c byte) int {
	n := 1
	if c == 0x1b && at+1 < len(l.s) && l.s[at+1] == '[' {
		args := strings.TrimLeft(l.s[at+2:], "0123456789;")
		n = min(len(l.s)-len(args)+1, len(l.s)) - at
	}
	bit := uint32(1) << (c & 31)
	if c == 0x7f {
		bit = 1 << '\t'
	}
	if l.controls&bit != 0 {
		l.faults++
		return n
	}
	l.controls |= bit
	name := map[byte]string{
		0: "zero byte", 7: "bell", 8: "backspace", '\v': "vertical tab", '\f': "form feed",
		'\r': "lone carriage return", 0x1a: "end-of-file mark", 0x1b: "terminal escape", 0x7f: "delete character",
	}[c]
	if name == "" {
		name = "control character"
	}
	l.swap(at, at+n, "a "+name+" ("+codePoint(rune(c))+") stands here: delete it", "")
	return n
}

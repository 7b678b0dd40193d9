package draft

import "strings"

// line reads one line of a draft. It is used again for the next one.
type line struct {
	name    string
	report  *report
	s       string // the line without its end
	base    int    // byte offset of s in the file
	num     int
	pos     int
	indent  int  // bytes before the first character that is no blank
	ascii   bool // every character is one byte
	plain   bool // no control character either: strings need no closer look
	quiet   bool // findings are not listed
	faults  int
	comment string

	curOff, curCol int    // where col counted last
	controls       uint32 // control characters already named in this line
	afterComma     bool   // a list is open: the next name belongs to it
	commaAt        int
	faultsAtComma  int
	wantBlank      bool   // a name ended right here without a blank
	broken         bool   // a quote is missing: the rest of the line was not read
	closers        string // closing brackets whose opening one was answered

	items []Item
	parts []string
	buf   []byte

	itemSlab slab[Item]
	refSlab  slab[Ref]
	partSlab slab[string]
}

// start makes the reader ready for a line.
func (l *line) start(text string, base, num int) {
	l.s, l.base, l.num, l.pos = text, base, num, 0
	l.faults, l.comment, l.quiet, l.broken = 0, "", false, false
	l.curOff, l.curCol, l.controls = 0, 1, 0
	l.ascii, l.plain = true, true
	for i := 0; i < len(text); i++ {
		c := text[i]
		if c >= 0x80 {
			l.ascii, l.plain = false, false
			return
		}
		if isControl(c) {
			l.plain = false
		}
	}
}

// indentEnd gives the byte offset of the first character that is no blank.
// Look-alikes of a blank count as one, and are named.
func (l *line) indentEnd() int {
	for l.pos < len(l.s) {
		c, n, t := l.look(l.pos)
		if c != ' ' && c != '\t' {
			break
		}
		if t != nil {
			l.blanks()
			continue
		}
		l.pos += n
	}
	l.indent = l.pos
	return l.pos
}

// blanks moves over blanks, look-alikes of a blank and control characters,
// which are named, and reports whether there were any.
func (l *line) blanks() bool {
	start := l.pos
	for l.pos < len(l.s) {
		c, n, t := l.look(l.pos)
		switch {
		case t != nil && c == ' ':
			from := l.pos
			for ; l.pos < len(l.s); l.pos += n {
				if _, m, same := l.look(l.pos); same != t {
					break
				} else {
					n = m
				}
			}
			l.swap(from, l.pos, "a "+t.name+" stands here: a plain blank is expected", strings.Repeat(" ", (l.pos-from)/n))
		case c == ' ' || c == '\t':
			l.pos += n
		case isControl(c):
			l.pos += l.control(l.pos, c)
		default:
			return l.pos > start
		}
	}
	return l.pos > start
}

// statement reads one statement from pos on; more is true when a semicolon
// ended it and another one follows.
func (l *line) statement() (st Stmt, more bool) {
	l.items, l.parts = l.items[:0], l.parts[:0]
	l.afterComma, l.wantBlank, l.closers = false, false, ""
	for first := true; ; first = false {
		blank := l.blanks() || first
		if l.pos >= len(l.s) {
			break
		}
		if l.faults >= maxLineFaults {
			l.giveUp()
			break
		}
		taken, end, again := l.between(st.Head, blank)
		if more = again; more || end {
			break
		}
		if taken {
			l.wantBlank = false
			continue
		}
		l.take(&st, blank)
	}
	l.openComma()
	if len(st.Head.Parts) == 0 {
		return Stmt{}, more
	}
	st.Items = l.itemSlab.copyOf(l.items)
	st.Line = l.num
	st.At = st.Head.At
	if n := len(st.Items); n > 0 {
		st.At.End, st.At.EndOff = st.Items[n-1].At.End, st.Items[n-1].At.EndOff
	}
	return st, more
}

// between takes what may stand between names: a comment, which ends the line,
// a semicolon with another statement behind it, a comma, or a stray sign.
func (l *line) between(head Ref, blank bool) (taken, end, again bool) {
	at := l.pos
	if c := l.s[at]; wchars[c] && c != '-' && c != '/' {
		return false, false, false
	}
	if l.remark(blank, head.Text()) {
		return true, true, false
	}
	hasHead := len(head.Parts) > 0
	if l.semicolon(hasHead) {
		return true, false, true
	}
	return l.pos != at || l.comma(hasHead) || l.sign(), false, false
}

// take reads the next name as the head of the statement, or into its items.
func (l *line) take(st *Stmt, blank bool) {
	from, before := l.pos, l.faults
	r := l.ref()
	if l.wantBlank && !blank && !l.broken {
		l.fault(from, l.pos, "a blank is expected before "+quoted(l.s[from:l.pos]))
	}
	l.wantBlank = true
	switch {
	case len(r.Parts) == 0:
	case len(st.Head.Parts) == 0:
		l.head(r)
		st.Head = r
	default:
		l.add(r, l.faults > before)
	}
}

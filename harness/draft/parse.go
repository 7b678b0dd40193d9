package draft

import (
	"bytes"
	"strings"

	"legwork/harness/diag"
)

// Limits of a draft, checked before anything is allocated for it.
const (
	maxBytes     = 16 << 20 // of a file
	maxLineBytes = 64 << 10 // of a line
	maxLines     = 500_000
	maxItems     = 2_000_000 // words in a file
)

const byteOrderMark = "\ufeff"

// Parse reads a draft. The file is never nil; every mistake that can be seen
// without knowing what the words mean is a finding with the rule id
// [RuleSyntax], at most 200 of them and one that says there were more. Each
// line is read by itself, so that a mistake in one never shows in another. A
// statement marked Bad holds what could be read of its line: its missing words
// are no second mistake.
func Parse(name string, src []byte) (*File, diag.List) {
	f := &File{Name: name, Src: src}
	p := &parser{file: f, levels: levels{}}
	p.line = line{name: name, report: &p.report}
	if msg := Unreadable(src); msg != "" {
		p.report.add(diag.Finding{
			Severity: diag.Fault, At: diag.Span{File: name}, Msg: msg,
			Detail: "A draft is a plain text file of at most 16 MB, kept as UTF-8.",
		})
		return f, p.report.list
	}
	if p.webPage(src) {
		return f, p.report.list
	}
	p.run(string(src))
	p.finish()
	return f, p.report.list
}

// parser holds what lives longer than one line.
type parser struct {
	file   *File
	report report
	levels levels
	line   line
	stmts  slab[Stmt]
	paste  paste
	count  int  // items so far
	merge  bool // between merge markers
	unread bool // in the second version: its mistakes count, its statements do not
}

// run reads every line of the text.
func (p *parser) run(text string) {
	off := 0
	if strings.HasPrefix(text, byteOrderMark) {
		off = len(byteOrderMark)
	}
	p.file.Lines = make([]Line, 0, strings.Count(text, "\n")+1)
	for off < len(text) {
		body, next := text[off:], len(text)
		if i := strings.IndexByte(body, '\n'); i >= 0 {
			body, next = body[:i], off+i+1
			body = strings.TrimSuffix(body, "\r")
		}
		p.read(body, off)
		off = next
	}
}

// read reads one line, given without its end, that starts at byte off.
func (p *parser) read(text string, off int) {
	p.file.Lines = append(p.file.Lines, Line{Text: text})
	l := &p.line
	l.start(text, off, len(p.file.Lines))
	if len(text) > maxLineBytes {
		l.fault(0, 1, "this line is too long: a line has at most 64 KB")
		p.file.Lines[len(p.file.Lines)-1].Bad = true
		return
	}
	if p.count > maxItems {
		l.quiet = true
	}
	out := &p.file.Lines[len(p.file.Lines)-1]
	if p.noStatement(off) {
		out.Bad = true
		return
	}
	l.pos = l.indentEnd()
	p.statements(out)
	out.Comment = l.comment
	out.Bad = l.faults > 0 || p.unread
}

// statements reads the statement of a line into the tree; where a semicolon
// parts two of them, both.
func (p *parser) statements(out *Line) {
	l := &p.line
	indent := l.pos
	for more := true; more; {
		var st Stmt
		st, more = l.statement()
		if len(st.Head.Parts) == 0 {
			continue
		}
		if p.count += len(st.Items) + 1; p.count > maxItems {
			p.tooMany()
			return
		}
		if p.unread {
			continue
		}
		s := p.stmts.one(st)
		if out.Stmt == nil {
			p.place(s, indent)
			out.Stmt = s
		} else {
			p.attach(s, out.Stmt.Level)
		}
		s.Bad = l.faults > 0
	}
}

// tooMany reports once that the file has more words than are read.
func (p *parser) tooMany() {
	l := &p.line
	l.fault(0, 1, "the draft is too long: from here on nothing is read (at most 2,000,000 words)")
}

// noStatement answers a line, which starts at byte off, that is a whole
// mistake by itself. Of two versions to be merged the first one counts, so
// that no name is found twice.
func (p *parser) noStatement(off int) bool {
	l := &p.line
	if n := mergeMarker(l.s); n > 0 {
		switch l.s[0] {
		case '<':
			p.merge = bytes.Contains(p.file.Src[off:], []byte("\n>>>>>>>"))
		case '>':
			p.merge = false
		}
		p.unread = p.merge && l.s[0] != '<'
		l.fault(0, n, "a merge marker was left here: keep one of the two versions and delete this line")
		return true
	}
	if s := strings.Trim(l.s, " \t"); len(s) >= 3 && strings.Contains("=-*~_+.", s[:1]) && strings.Trim(s, s[:1]) == "" {
		from := strings.Index(l.s, s)
		l.fault(from, from+len(s), `a line of signs is a comment and begins with "#"`)
		return true
	}
	return p.foreign()
}

// mergeMarker gives the length of the marker that a version control program
// leaves at the start of a line, 0 when there is none.
func mergeMarker(s string) int {
	const least = 7
	if len(s) < least || !strings.ContainsRune("<=>|", rune(s[0])) {
		return 0
	}
	n := len(s) - len(strings.TrimLeft(s, s[:1]))
	if n != least || (len(s) > n && s[n] != ' ') {
		return 0
	}
	return n
}

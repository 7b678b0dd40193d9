package draft

import (
	"bytes"
	"strconv"
	"strings"

	"legwork/harness/diag"
)

const (
	leastCells = 3 // so many separators make a line a row of a spreadsheet
	surelyRow  = 2 // as many do where the line begins as no statement can
)

// paste is a run of lines that came from another program: they are one
// mistake, told at the first of them.
type paste struct {
	kind string // "" for none
	at   int    // index of its finding
	more int    // lines after the first
}

// foreign answers a line of a table or of a web page, and reports whether it
// was one. Blank lines do not part a run.
func (p *parser) foreign() bool {
	l := &p.line
	s := strings.Trim(l.s, " \t")
	if s == "" {
		return false
	}
	kind, msg := foreignLine(s, len(s) == len(strings.TrimRight(l.s, " \t")))
	switch {
	case kind == "":
		p.paste = paste{}
		return false
	case kind == p.paste.kind && p.paste.at < len(p.report.list):
		l.faults++
		p.paste.more++
		p.report.list[p.paste.at].Detail = strconv.Itoa(p.paste.more) + " more below: a run of such lines is one mistake."
		return true
	}
	at, from := len(p.report.list), strings.Index(l.s, s)
	l.fault(from, from+len(s), msg)
	p.paste = paste{}
	if len(p.report.list) > at && !p.report.over {
		p.paste = paste{kind: kind, at: at}
	}
	return true
}

// foreignLine says what a line is that was taken from another program, kind ""
// for a line of a draft. margin tells whether it begins at the margin.
func foreignLine(s string, margin bool) (kind, msg string) {
	if s[0] == '#' {
		return "", ""
	}
	if isTag(s) {
		return "<", "this looks like a line of a web page: a draft is plain text, one statement a line"
	}
	bare := withoutQuoted(s)
	if margin && noHead(bare) && strings.Count(bare, "\t") >= surelyRow {
		return "\t", "this looks like a row of a spreadsheet: begin it with wire"
	}
	for _, sign := range []string{",", ";", "|"} {
		if isRow(bare, sign, margin) {
			return sign, `this looks like a row of a spreadsheet: part its cells by blanks, not by "` + sign + `", and begin it with wire`
		}
	}
	return "", ""
}

// isTag reports whether a text begins with a tag as web pages have them.
func isTag(s string) bool {
	if len(s) < 3 || s[0] != '<' || !strings.Contains(s, ">") {
		return false
	}
	c := s[1]
	return c == '!' || c == '?' || c == '/' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
}

// isRow reports whether the cells of a line are parted by a sign instead of
// blanks. A statement has a blank behind its first word, a row a separator.
func isRow(bare, sign string, margin bool) bool {
	n := strings.Count(bare, sign)
	if sign == "|" {
		return n >= leastCells && (bare[0] == '|' || !strings.ContainsAny(bare, " \t"))
	}
	first, _, _ := strings.Cut(bare, sign)
	if strings.ContainsAny(first, " \t") && !(margin && noHead(bare)) {
		return false
	}
	return n >= leastCells || n >= surelyRow && margin && noHead(bare)
}

// noHead reports whether a line begins as no statement at the margin does:
// with a figure or a capital letter.
func noHead(s string) bool {
	return s != "" && (s[0] >= '0' && s[0] <= '9' || s[0] >= 'A' && s[0] <= 'Z')
}

// withoutQuoted takes the texts between double quotes out.
func withoutQuoted(s string) string {
	var b strings.Builder
	for i, piece := range strings.Split(s, `"`) {
		if i%2 == 0 {
			b.WriteString(piece)
		}
	}
	return b.String()
}

// webPage answers a file that begins as a web page does, as a whole.
func (p *parser) webPage(src []byte) bool {
	text := bytes.TrimLeft(bytes.TrimPrefix(src, []byte(byteOrderMark)), " \t\r\n")
	begin := strings.ToLower(string(text[:min(len(text), 16)]))
	for _, sign := range []string{"<!doctype", "<html", "<?xml"} {
		if strings.HasPrefix(begin, sign) {
			p.report.add(diag.Finding{
				Severity: diag.Fault, At: diag.Span{File: p.file.Name},
				Msg:    "this looks like a web page, not a draft",
				Detail: "A draft is plain text, one statement a line: take the wires out of the page first.",
			})
			return true
		}
	}
	return false
}

package draft

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"legwork/harness/diag"
)

// RuleSyntax is the rule id of every finding of this package.
const RuleSyntax = "draft-syntax"

// maxFindings bounds what one file can report; one more finding says so.
const maxFindings = 200

// maxLineFaults is after how many mistakes the rest of a line is not read: it
// is no line of a draft then.
const maxLineFaults = 12

// report gathers findings up to the limit.
type report struct {
	list diag.List
	over bool
}

func (r *report) add(f diag.Finding) {
	if r.over {
		return
	}
	if len(r.list) == maxFindings {
		r.over = true
		f = diag.Finding{
			Severity: diag.Fault, At: f.At,
			Msg:    "more than " + strconv.Itoa(maxFindings) + " mistakes: from here on they are not listed",
			Detail: "Put the ones above right and check again.",
		}
	}
	f.Rule = RuleSyntax
	r.list.Add(f)
}

// span is the stretch of the line from byte from up to byte to.
func (l *line) span(from, to int) diag.Span {
	return diag.Span{
		File: l.name, Line: l.num,
		Col: l.col(from), End: l.col(to),
		Off: l.base + from, EndOff: l.base + to,
	}
}

// col gives the column of a byte offset, in characters from 1. It counts from
// the place asked for last, so that a long line costs no more than its length.
func (l *line) col(off int) int {
	if l.ascii {
		return off + 1
	}
	if off >= l.curOff {
		l.curCol += utf8.RuneCountInString(l.s[l.curOff:off])
	} else {
		l.curCol -= utf8.RuneCountInString(l.s[off:l.curOff])
	}
	l.curOff = off
	return l.curCol
}

// fault reports a mistake between two bytes of the line.
func (l *line) fault(from, to int, msg string) { l.faultFix(from, to, msg, nil) }

// swap reports a mistake that is put right by writing text in its place.
func (l *line) swap(from, to int, msg, text string) {
	todo := "write " + quoted(text)
	if strings.TrimSpace(text) == "" {
		todo = "write a plain blank"
		if text == "" {
			todo = "delete it"
		}
	}
	l.faultFix(from, to, msg, &diag.Fix{
		Msg:   todo,
		Edits: []diag.Edit{{At: l.span(from, to), Text: text}},
	})
}

func (l *line) faultFix(from, to int, msg string, fix *diag.Fix) {
	l.faults++
	if indent := from == 0; !l.quiet && (indent || l.faults <= maxLineFaults) {
		l.report.add(diag.Finding{Severity: diag.Fault, At: l.span(from, to), Msg: msg, Fix: fix})
	}
}

// giveUp says that the rest of the line is not read, and passes over it.
func (l *line) giveUp() {
	at := l.pos
	l.pos, l.broken = len(l.s), true
	l.touched()
	if !l.quiet {
		l.report.add(diag.Finding{Severity: diag.Fault, At: l.span(at, len(l.s)),
			Msg: "more than " + strconv.Itoa(maxLineFaults-1) + " mistakes in this line: from here on it is not read"})
	}
}

// warn reports what can be read but hides something.
func (l *line) warn(from, to int, msg string) {
	if !l.quiet {
		l.report.add(diag.Finding{Severity: diag.Warning, At: l.span(from, to), Msg: msg})
	}
}

// quoted shows text from the draft inside a message: kept short, hidden
// characters as their code points, in quotes unless it begins with one.
func quoted(text string) string {
	const most = 24
	var b strings.Builder
	quote := `"`
	if len(text) > 1 && text[0] == '"' {
		quote = ""
	}
	b.WriteString(quote)
	n := 0
	for _, r := range text {
		shown := string(r)
		if hidden(r) {
			shown = codePoint(r)
		}
		if n += utf8.RuneCountInString(shown); n > most {
			b.WriteString("...")
			break
		}
		b.WriteString(shown)
	}
	b.WriteString(quote)
	return b.String()
}

// codePoint gives the U+ form of a character.
func codePoint(r rune) string {
	h := strings.ToUpper(strconv.FormatInt(int64(r), 16))
	return "U+" + strings.Repeat("0", max(0, 4-len(h))) + h
}

package main

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"legwork/harness/diag"
)

// printDiff prints the lines that differ between a draft and its tidy form,
// old ones after a minus, new ones after a plus, each under its place. It
// gives errFindings where there are any.
//
// Tidy takes away blank lines and changes lines in place; it never moves one.
// So lines are paired in order, leaving out the blank ones that are gone.
func printDiff(w io.Writer, name string, old, tidy []byte) error {
	if bytes.Equal(old, tidy) {
		return nil
	}
	p := &printer{w: w}
	was, now := linesOf(old), linesOf(tidy)
	all := len(was)
	for len(was) > 0 || len(now) > 0 {
		at := all - len(was) + 1
		switch {
		case len(was) > 0 && (len(now) == 0 || gone(was[0], now[0])):
			p.change(name, at, "-", was[0])
			was = was[1:]
		case len(was) == 0 || gone(now[0], was[0]):
			p.change(name, at, "+", now[0])
			now = now[1:]
		default:
			if was[0] != now[0] {
				p.change(name, at, "-", was[0])
				p.change("", at, "+", now[0])
			}
			was, now = was[1:], now[1:]
		}
	}
	if p.err != nil {
		return p.err
	}
	return errFindings
}

// gone reports whether a line has no partner: it is blank and the other is not.
func gone(line, other string) bool {
	return strings.TrimSpace(line) == "" && strings.TrimSpace(other) != ""
}

// linesOf parts a text into lines that keep their ends, so that a change of a
// line end alone is seen.
func linesOf(text []byte) []string {
	var list []string
	for line := range strings.Lines(string(text)) {
		list = append(list, line)
	}
	return list
}

func (p *printer) change(name string, at int, sign, line string) {
	if name != "" {
		p.line(fmt.Sprintf("%s:%d", name, at))
	}
	end := ""
	if text, ok := strings.CutSuffix(line, "\r\n"); ok {
		line, end = text, " (ends in CR LF)"
	} else if !strings.HasSuffix(line, "\n") {
		end = " (no end of line)"
	}
	p.line(sign + diag.Clean(strings.TrimSuffix(line, "\n")) + end)
}

package main

import (
	"fmt"
	"io"
	"strings"

	"legwork/harness/diag"
)

const (
	fewAlike   = 20  // findings of one rule that are printed unless all are asked for
	fewInAll   = 100 // and of all rules together
	fewRelated = 12  // other places of one finding
)

// writeFindings prints findings; all of them, or those that a person can take
// in, with a count of the others.
func writeFindings(w io.Writer, list diag.List, source func(string) []byte, all bool) error {
	l := lookOf(w)
	o := diag.TextOptions{Source: source, Color: l.color, Width: l.width, Wrap: l.known}
	if all {
		return diag.WriteText(w, list, o)
	}
	o.Related = fewRelated
	few, rest := list.Few(fewAlike, fewInAll)
	if err := diag.WriteText(w, few, o); err != nil || len(rest) == 0 {
		return err
	}
	n, rules := 0, make([]string, len(rest))
	for i, r := range rest {
		n += r.Count
		rules[i] = fmt.Sprintf("%d %s", r.Count, r.Rule)
	}
	p := newPrinter(w)
	p.line("")
	p.wrapped("", "  ", fmt.Sprintf("and %d more: %s; check --all shows them", n, strings.Join(rules, ", ")))
	return p.err
}

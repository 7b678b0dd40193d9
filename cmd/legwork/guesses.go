package main

import (
	"fmt"
	"strings"

	"legwork/harness/model"
)

// fewGuesses is how many lines of guesses fit beside the rest on one screen.
const fewGuesses = 8

// guesses lists what was assumed: alike ones on one line, no more lines than
// fit unless all are asked for.
func (p *printer) guesses(list []model.Guess, all bool) {
	if len(list) == 0 {
		return
	}
	lines := gathered(list)
	p.line("")
	p.wrapped("", "  ", fmt.Sprintf("Guesses (%d): measure or look up what matters to you", len(list)))
	left := 0
	for i, g := range lines {
		if i >= fewGuesses && !all {
			left += len(g.names)
			continue
		}
		p.wrapped("  ", "    ", g.text())
	}
	if left > 0 {
		p.line(fmt.Sprintf("  and %d more: check --guesses shows them all", left))
	}
}

// alike is guesses of one sort with one value: "draw of" B1, B2, 10 mA.
type alike struct {
	sort  string
	names []string
	value string
}

func (a alike) text() string { return a.sort + strings.Join(a.names, ", ") + ": " + a.value }

// gathered puts guesses of one sort and value together, in the order in which
// the first of each was met.
func gathered(list []model.Guess) []alike {
	var lines []alike
	at := map[[2]string]int{}
	for _, g := range list {
		sort, name := "", g.What
		if i := strings.LastIndex(g.What, " of "); i >= 0 {
			sort, name = g.What[:i+4], g.What[i+4:]
		}
		key := [2]string{sort, g.Value}
		i, known := at[key]
		if !known || sort == "" {
			at[key] = len(lines)
			lines = append(lines, alike{sort: sort, value: g.Value, names: []string{name}})
			continue
		}
		lines[i].names = append(lines[i].names, name)
	}
	return lines
}

package main

import (
	"fmt"
	"strings"

	"legwork/harness"
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

// leeways lists how far each guess can move before a wire, a fuse or a verdict
// changes: those that matter first, with the nearest change on either side.
func (p *printer) leeways(list []harness.Leeway) {
	var matter, alone []harness.Leeway
	for _, l := range list {
		switch {
		case l.Changes:
			matter = append(matter, l)
		case l.Tried:
			alone = append(alone, l)
		}
	}
	if len(matter) > 0 {
		p.line("")
		p.line("How far a guess can move before something changes")
		for _, l := range matter {
			p.wrapped("  ", "    ", l.Guess.What+", "+l.Guess.Value+": "+l.Text())
		}
	}
	if len(alone) > 0 {
		p.line("")
		p.line("Guesses that change nothing from a quarter to four times, or to the ends of their range")
		for _, l := range alone {
			p.wrapped("  ", "    ", l.Guess.What+", "+l.Guess.Value)
		}
	}
	if left := len(list) - len(matter) - len(alone); left > 0 {
		p.line("")
		p.wrapped("", "  ", fmt.Sprintf("Not moved (%d): what is no figure, any beyond the first hundred, and all in a draft of more than 500 wires", left))
	}
}

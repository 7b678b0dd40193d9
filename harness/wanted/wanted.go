// Package wanted reads what a test draft expects to be found in it, and
// compares that with what was found. A comment beside a line says it:
//
//	wire 2  F1.2  P1.1  14AWG  4ft  # want fuse-above-wire "40 A but wire 2"
//
// Several wants may stand in one comment. Only tests use the package.
package wanted

import (
	"fmt"
	"regexp"
	"strings"

	"legwork/harness/diag"
)

// Want is one finding that a draft expects: its line, its rule, and a piece
// of its message.
type Want struct {
	Line int
	Rule string
	Part string
}

var (
	mark = regexp.MustCompile(`# *want `)
	item = regexp.MustCompile(`^ *([a-z0-9-]+) "([^"]+)"`)
)

// Read gives the wants of a draft in line order. A want that can't be read is
// an error: it would expect nothing.
func Read(src string) ([]Want, error) {
	var list []Want
	for i, line := range strings.Split(src, "\n") {
		at := mark.FindStringIndex(line)
		if at == nil {
			continue
		}
		rest := strings.TrimRight(line[at[1]:], " \r")
		for rest != "" {
			m := item.FindStringSubmatch(rest)
			if m == nil {
				return nil, fmt.Errorf("line %d: want is followed by a rule and a quoted piece of its message, not by %q", i+1, rest)
			}
			list = append(list, Want{i + 1, m[1], m[2]})
			rest = rest[len(m[0]):]
		}
	}
	return list, nil
}

// Compare gives the differences between what was wanted and what was found,
// both ways; empty when every want has its own finding and nothing is left.
func Compare(wants []Want, found diag.List) []string {
	var faults []string
	used := make([]bool, len(found))
	for _, w := range wants {
		if i := match(w, found, used); i >= 0 {
			used[i] = true
			continue
		}
		faults = append(faults, fmt.Sprintf("line %d: wanted %s %q, not found", w.Line, w.Rule, w.Part))
	}
	for i, f := range found {
		if !used[i] {
			faults = append(faults, "not wanted: "+f.String())
		}
	}
	return faults
}

func match(w Want, found diag.List, used []bool) int {
	for i, f := range found {
		if !used[i] && f.At.Line == w.Line && f.Rule == w.Rule && strings.Contains(f.Msg, w.Part) {
			return i
		}
	}
	return -1
}

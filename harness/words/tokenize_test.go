package words

import (
	"encoding/json"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/dlclark/regexp2"
	"github.com/stretchr/testify/require"
)

// tokenizer plays a TextMate grammar as editors do: a stack of rules, at each
// place the leftmost match of what the top rule knows, its end before its
// patterns; one line at a time. Of the format it knows match, begin and end
// with back references, captures, include and patterns.
type tokenizer struct {
	g     grammar
	regex map[string]*regexp2.Regexp
	stack []frame
}

type frame struct {
	r     rule
	end   string
	scope string
}

// scoped is the scope of some runes of a line.
type scoped struct {
	from, to int
	scope    string
}

func newTokenizer(t testing.TB, raw []byte) *tokenizer {
	t.Helper()
	k := &tokenizer{regex: map[string]*regexp2.Regexp{}}
	dec := json.NewDecoder(strings.NewReader(string(raw)))
	dec.DisallowUnknownFields()
	require.NoError(t, dec.Decode(&k.g))
	k.stack = []frame{{r: rule{Patterns: k.g.Patterns}}}
	return k
}

// find gives the first match of an expression from a rune on.
func (k *tokenizer) find(expr string, line []rune, from int) *regexp2.Match {
	re := k.regex[expr]
	if re == nil {
		re = regexp2.MustCompile(expr, regexp2.None)
		k.regex[expr] = re
	}
	m, err := re.FindRunesMatchStartingAt(line, from)
	if err != nil {
		panic(err)
	}
	return m
}

// flat gives the rules with a match or a begin that patterns stand for.
func (k *tokenizer) flat(patterns []rule) []rule {
	var out []rule
	for _, r := range patterns {
		switch {
		case r.Include != "":
			known, ok := k.g.Repository[strings.TrimPrefix(r.Include, "#")]
			if !ok {
				panic("no rule " + r.Include)
			}
			out = append(out, k.flat([]rule{known})...)
		case r.Match == "" && r.Begin == "":
			out = append(out, k.flat(r.Patterns)...)
		default:
			out = append(out, r)
		}
	}
	return out
}

// line scopes one line, which is without its end.
func (k *tokenizer) line(text string) []scoped {
	line := []rune(text + "\n")
	var out []scoped
	open := make([]int, len(k.stack)) // where the scopes of the stack begin in this line
	for at, still := 0, 0; at <= len(line) && still < 100; {
		top := &k.stack[len(k.stack)-1]
		m, hit := k.leftmost(top, line, at)
		if m == nil {
			break
		}
		from, to := m.Index, m.Index+m.Length
		switch {
		case hit == nil:
			if top.scope != "" {
				out = append(out, scoped{open[len(open)-1], to, top.scope})
			}
			k.stack, open = k.stack[:len(k.stack)-1], open[:len(open)-1]
		case hit.Begin != "":
			out = append(out, caught(m, hit.BeginCaptures)...)
			k.stack = append(k.stack, frame{*hit, backReferences(hit.End, m), hit.Name})
			open = append(open, from)
		default:
			if hit.Name != "" {
				out = append(out, scoped{from, to, hit.Name})
			}
			out = append(out, caught(m, hit.Captures)...)
		}
		if to == at {
			still++ // an empty match may only push or pop
		}
		at = to
	}
	for i, f := range k.stack {
		if f.scope != "" && i < len(open) {
			out = append(out, scoped{open[i], len(line) - 1, f.scope})
		}
	}
	return out
}

// leftmost gives the match that counts, and its rule; nil for the end of top.
func (k *tokenizer) leftmost(top *frame, line []rune, at int) (best *regexp2.Match, hit *rule) {
	if top.end != "" {
		best = k.find(top.end, line, at)
	}
	rules := k.flat(top.r.Patterns)
	for i := range rules {
		expr := rules[i].Match + rules[i].Begin
		m := k.find(expr, line, at)
		if m != nil && (best == nil || m.Index < best.Index) && (m.Length > 0 || rules[i].Begin != "") {
			best, hit = m, &rules[i]
		}
	}
	return best, hit
}

func caught(m *regexp2.Match, captures map[string]capture) []scoped {
	var out []scoped
	for name, c := range captures {
		n, err := strconv.Atoi(name)
		if err != nil {
			panic(err)
		}
		g := m.GroupByNumber(n)
		if g != nil && len(g.Captures) > 0 && g.Length > 0 {
			out = append(out, scoped{g.Index, g.Index + g.Length, c.Name})
		}
	}
	return out
}

// backReferences puts what a begin caught into its end.
func backReferences(end string, m *regexp2.Match) string {
	for n := 1; n <= 9; n++ {
		text := ""
		if g := m.GroupByNumber(n); g != nil {
			text = g.String()
		}
		end = strings.ReplaceAll(end, `\`+strconv.Itoa(n), regexp.QuoteMeta(text))
	}
	return end
}

// scopesAt gives the scopes at a rune of a line, outer ones first, without
// ".draft".
func scopesAt(spans []scoped, col int) []string {
	var here []scoped
	for _, s := range spans {
		if s.from <= col && col < s.to {
			here = append(here, s)
		}
	}
	slices.SortStableFunc(here, func(a, b scoped) int { return (b.to - b.from) - (a.to - a.from) })
	out := make([]string, len(here))
	for i, s := range here {
		out[i] = strings.TrimSuffix(s.scope, ".draft")
	}
	return out
}

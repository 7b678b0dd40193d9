package check_test

import (
	"context"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/part"
)

// frame names the files of the package that hold no rule of their own.
var frame = []string{
	"accept.go", "balance.go", "came_by.go", "dead_ends.go", "drain.go", "first_fuse.go", "fixes.go", "graph.go", "interlock.go", "loss_parts.go", "lost_return.go", "net_loads.go", "open_branch.go", "open_circuit.go", "open_ways.go", "opened_contact.go",
	"page.go", "pass.go", "reach.go", "rule.go", "run_down.go", "series.go", "sixty.go", "stages.go", "terminals.go", "uses.go", "way_back.go", "wire_limits.go",
}

func TestOneRuleOneFile(t *testing.T) {
	files := map[string]bool{}
	for _, name := range sources(t) {
		files[name] = true
	}
	for _, r := range running() {
		name := strings.ReplaceAll(r.ID, "-", "_") + ".go"
		require.True(t, files[name], "rule %s wants the file %s", r.ID, name)
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		require.Equal(t, 1, strings.Count(string(src), "= define(Rule{"), "%s holds one rule", name)
		require.Contains(t, string(src), strconv.Quote(r.ID), "%s holds another rule", name)
		delete(files, name)
	}
	for _, name := range frame {
		require.True(t, files[name], "%s is gone: take it out of frame", name)
		delete(files, name)
	}
	require.Empty(t, files, "files that are named after no rule")
}

// sources lists the Go files of the package, tests left out.
func sources(t *testing.T) []string {
	t.Helper()
	entries, err := os.ReadDir(".")
	require.NoError(t, err)
	var list []string
	for _, e := range entries {
		if strings.HasSuffix(e.Name(), ".go") && !strings.HasSuffix(e.Name(), "_test.go") {
			list = append(list, e.Name())
		}
	}
	return list
}

// Rules ask what a device can do. A kind's name as a string would be a rule
// that knows one kind; in messages and pages names are words among others.
func TestNoRuleKnowsAKind(t *testing.T) {
	var kinds []string
	for _, k := range part.Kinds() {
		kinds = append(kinds, k.Name)
	}
	for _, name := range sources(t) {
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		require.Empty(t, kindsNamed(t, name, src, kinds))
	}
	planted := "package x\n\nfunc f(d struct{ Kind struct{ Name string } }) bool { return d.Kind.Name == \"relay\" }\n"
	require.Len(t, kindsNamed(t, "planted.go", []byte(planted), kinds), 2, "the name as a string, and the question for it")
}

func kindsNamed(t *testing.T, name string, src []byte, kinds []string) (faults []string) {
	t.Helper()
	set := token.NewFileSet()
	tree, err := parser.ParseFile(set, name, src, 0)
	require.NoError(t, err)
	ast.Inspect(tree, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.BasicLit:
			if text, err := strconv.Unquote(n.Value); err == nil && n.Kind == token.STRING && slices.Contains(kinds, text) {
				faults = append(faults, set.Position(n.Pos()).String()+": knows the kind "+text)
			}
		case *ast.SelectorExpr:
			if x, ok := n.X.(*ast.SelectorExpr); ok && x.Sel.Name == "Kind" && n.Sel.Name == "Name" {
				faults = append(faults, set.Position(n.Pos()).String()+": asks for the name of a kind")
			}
		}
		return true
	})
	return faults
}

func TestFiguresExist(t *testing.T) {
	for _, r := range check.Rules() {
		for _, key := range r.Figures {
			_, ok := gauge.SourceOf(key)
			require.True(t, ok, "%s: figure %s has no source", r.ID, key)
		}
	}
}

// unwanted are words for which the rules have another one. A thing has one
// name: wire, fuse, ground, plug, volts, feed, return.
var unwanted = regexp.MustCompile(`(?i)\b(conductive path|cabling|earth(ed|ing)?|ampere-rating|juice|mains|live wire|cable harness|` +
	`loom wire|connector plug|voltage level|current level|overcurrent device|OCPD|amps|fuze|blow(n|s)? fuse)\b`)

func TestWordsOfTheRules(t *testing.T) {
	for _, r := range check.Rules() {
		for _, text := range []string{r.Title, r.Why, r.Equation, r.Misses} {
			require.Empty(t, unwanted.FindString(text), "%s: %s", r.ID, text)
		}
		require.True(t, strings.HasSuffix(r.Title, "."), "%s: the title is a sentence", r.ID)
		require.NotContains(t, strings.TrimSuffix(r.Title, "."), ". ", "%s: one sentence", r.ID)
		sentences := len(regexp.MustCompile(`[.:?] |\.$`).FindAllString(r.Why, -1))
		require.True(t, sentences >= 1 && sentences <= 9, "%s: the why has %d sentences", r.ID, sentences)
	}
}

// Messages of all drafts of the rules: one line, no final period, no -0.
func TestMessagesReadWell(t *testing.T) {
	seen := 0
	for _, r := range running() {
		src, err := os.ReadFile("testdata/" + r.ID + ".draft")
		require.NoError(t, err)
		for _, text := range []string{r.Bad, string(src)} {
			for _, f := range checked(t, "x.draft", text).Findings {
				seen++
				require.LessOrEqual(t, len([]rune(f.Msg)), 120, "%s", f.Msg)
				require.NotRegexp(t, `\.$|\n|-0[ .]?0* |NaN|Inf|  `, f.Msg)
				require.Empty(t, unwanted.FindString(f.Msg), f.Msg)
				require.False(t, f.At.IsZero(), "%s points nowhere", f.Msg)
				for _, v := range f.Values {
					require.False(t, v.Got != v.Got || v.Limit != v.Limit, "%s: value %s is no number", f.Msg, v.Name)
				}
			}
		}
	}
	require.Greater(t, seen, 50)
}

// Every finding of a rule that runs can be accepted, and is then told apart.
func TestEveryRuleCanBeAccepted(t *testing.T) {
	for _, r := range running() {
		res := checked(t, "x.draft", r.Bad+"accept "+r.ID+" \"for the test\"\n")
		require.NotEmpty(t, res.Accepted, r.ID)
		for _, f := range res.Findings {
			require.NotEqual(t, r.ID, f.Rule)
		}
		for _, a := range res.Accepted {
			require.Equal(t, "for the test", a.Reason)
		}
	}
}

// Whatever stops early stops because it was told to.
func TestRunStopsWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, _, err := check.Run(ctx, &check.Pass{})
	require.ErrorIs(t, err, context.Canceled)
}

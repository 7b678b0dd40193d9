package proof

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/draft"
)

const leastQuestions = 25

// A question is a draft of testdata/questions with what its head says: what is
// asked, the answer as it was written before legwork was asked, and the grounds
// that the answer stands on.
type question struct {
	name, asks, answer string
	grounds            [][]string // words; texts without their quotes
}

func questions(t *testing.T) (list []question) {
	t.Helper()
	files, err := filepath.Glob(root + "/testdata/questions/*.draft")
	require.NoError(t, err)
	slices.Sort(files)
	for _, file := range files {
		src, err := os.ReadFile(file)
		require.NoError(t, err)
		list = append(list, asked(strings.TrimSuffix(filepath.Base(file), ".draft"), string(src)))
	}
	return list
}

// asked reads the head of a question: remarks, of which one that is indented
// goes on with the one above.
func asked(name, src string) question {
	q := question{name: name}
	var to *string
	for line := range strings.Lines(src) {
		text, ok := strings.CutPrefix(strings.TrimRight(line, "\n"), "#")
		if !ok {
			break
		}
		key, rest, _ := strings.Cut(strings.TrimSpace(text), ": ")
		switch {
		case strings.HasPrefix(text, "   ") && to != nil:
			*to += " " + strings.TrimSpace(text)
		case key == "asks":
			q.asks, to = rest, &q.asks
		case key == "answer":
			q.answer, to = rest, &q.answer
		case key == "ground":
			var ground []string
			for _, w := range words(rest) {
				ground = append(ground, strings.Trim(w, `"`))
			}
			q.grounds = append(q.grounds, ground)
		}
	}
	return q
}

func (q question) check(ctx context.Context) (*harness.Result, error) {
	d := harness.Load(os.DirFS(root+"/testdata/questions"), q.name+".draft")
	if d.Findings.Worst() >= diag.Fault {
		return nil, fmt.Errorf("%s", d.Findings[0])
	}
	return d.Check(ctx, harness.Options{})
}

// Every question gets the answer that was written before legwork was asked.
func TestQuestions(t *testing.T) {
	list := questions(t)
	require.GreaterOrEqual(t, len(list), leastQuestions)
	for _, q := range list {
		t.Run(q.name, func(t *testing.T) {
			require.NotEmpty(t, q.asks)
			require.NotEmpty(t, q.answer)
			require.NotEmpty(t, q.grounds)
			r, err := q.check(t.Context())
			require.NoError(t, err)
			for _, g := range q.grounds {
				got, ok := ground(r, g)
				require.True(t, ok, "%v: %s\n%v", g, got, r.Findings)
			}
		})
	}
}

// ground says what legwork tells about one ground of an answer, and whether
// that is what the answer says.
func ground(r *harness.Result, g []string) (told string, ok bool) {
	switch {
	case g[0] == "finding" && len(g) == 3:
		for _, f := range r.Findings {
			if f.Rule == g[1] && strings.Contains(f.Msg, g[2]) {
				return fmt.Sprintf("%s: %s (%s)", f.Severity, f.Msg, link(f.Rule)), true
			}
		}
		return "no such finding", false
	case g[0] == "none" && len(g) == 2:
		_, known := check.RuleOf(g[1])
		ran := !slices.ContainsFunc(r.Skipped, func(s check.Skip) bool { return s.Rule == g[1] })
		found := slices.ContainsFunc(r.Findings, func(f diag.Finding) bool { return f.Rule == g[1] && f.Severity > diag.Note })
		return fmt.Sprintf("nothing at warning or above is found by %s", link(g[1])), known && ran && !found
	case g[0] == "volts" && len(g) == 5:
		v := r.Step(g[2]).Volts(g[1])
		least, most := figure(g[3]), figure(g[4])
		return fmt.Sprintf("%s has %.2f V in %s (expected %s to %s V)", g[1], v.Volts, g[2], g[3], g[4]), v.OK && v.Volts >= least && v.Volts <= most
	case g[0] == "fuse" && len(g) == 3:
		for _, f := range r.Sizes.Fuses {
			if f.Device.Name == g[1] {
				return fmt.Sprintf("%g A is chosen for %s", f.RatedA, g[1]), f.Chosen && f.RatedA == figure(g[2])
			}
		}
		return "no such fuse", false
	case g[0] == "size" && len(g) == 3:
		w, known := r.Wire(g[1])
		return fmt.Sprintf("%s is chosen for wire %s", w.Conductor.Size.Name, g[1]), known && w.Chosen && w.Conductor.Size.Name == g[2]
	}
	return "not a ground", false
}

func link(rule string) string { return fmt.Sprintf("[%s](rules/%s.md)", rule, rule) }

func figure(text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic(err) // a slip in a file of the tests
	}
	return v
}

// The grounds can fail: turned into their opposite, none of them holds.
func TestGroundsCanFail(t *testing.T) {
	for _, q := range questions(t) {
		r, err := q.check(t.Context())
		require.NoError(t, err)
		for _, g := range q.grounds {
			wrong := slices.Clone(g)
			switch g[0] {
			case "none":
				wrong[1] = "no-such-rule"
			case "volts":
				wrong[3], wrong[4] = "90", "91"
			default:
				wrong[len(wrong)-1] += "9"
			}
			_, ok := ground(r, wrong)
			require.False(t, ok, "%s: %v", q.name, wrong)
		}
	}
}

func TestQuestionsAreTidy(t *testing.T) {
	for _, q := range questions(t) {
		src, err := os.ReadFile(root + "/testdata/questions/" + q.name + ".draft")
		require.NoError(t, err)
		f, found := draft.Parse(q.name, src)
		require.Empty(t, found)
		require.Equal(t, string(src), string(draft.Tidy(f)), q.name)
		require.Contains(t, string(src), "Invented")
	}
}

func TestQuestionsPageIsFresh(t *testing.T) {
	var b strings.Builder
	b.WriteString("# Questions and answers\n\nWhat people ask who wire vehicles, in our own words. Each question has a small invented draft in testdata/questions; the answer was written\n" +
		"before legwork was asked, and below it stands what legwork tells that it rests on. Written by `go test ./harness/proof -update`.\n")
	for _, q := range questions(t) {
		fmt.Fprintf(&b, "\n## %s\n\n%s ([draft](../testdata/questions/%s.draft))\n\n", q.asks, q.answer, q.name)
		r, err := q.check(t.Context())
		require.NoError(t, err)
		for _, g := range q.grounds {
			told, _ := ground(r, g)
			fmt.Fprintf(&b, "- %s\n", told)
		}
	}
	fresh(t, "docs/questions.md", b.String())
}

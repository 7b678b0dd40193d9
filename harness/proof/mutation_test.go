package proof

import (
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// leastScore is the share of mistakes that has to be answered, in percent: what
// was reached, so that no change of a rule loses it unseen.
const leastScore = 90

// outcome is what became of one mutant.
type outcome struct {
	op       operator
	draft    string
	m        mutant
	answered bool
	other    string // what was told instead, the worst of it
	unread   string // the language refuses the text: the operator is at fault
}

func operators() []operator { return slices.Concat(wireOperators, deviceOperators, plugOperators) }

// Mistakes of a shop, put one at a time into every sound whole draft as built,
// are answered by a finding that names what was touched. No sampling: every
// place where a mistake fits is tried.
func TestMutationScore(t *testing.T) {
	var all []outcome
	for _, v := range whole {
		all = append(all, mutate(t, built(t, v.name, v.with))...)
	}
	for _, o := range all {
		require.Empty(t, o.unread, "%s: %s: the mistake can't be written so", o.draft, o.m.what)
	}
	total := tally(all, func(outcome) bool { return true })
	require.Greater(t, total.of, 1000)
	require.GreaterOrEqual(t, total.percent(), float64(leastScore), "answered %d of %d", total.answered, total.of)
	fresh(t, "docs/mutation.md", mutationPage(all))
}

// Every operator finds room for its mistake in some draft.
func TestOperatorsHaveRoom(t *testing.T) {
	room := map[string]int{}
	for _, v := range whole {
		b := built(t, v.name, v.with)
		for _, op := range operators() {
			sites := op.sites(b)
			room[op.name] += len(sites)
			for _, m := range sites {
				require.NotEqual(t, b.lines, m.lines(b), m.what)
			}
		}
	}
	for _, op := range operators() {
		require.Positive(t, room[op.name], op.name)
	}
}

// mutate tries all mistakes in one draft, on all cores.
func mutate(t *testing.T, b *base) []outcome {
	var list []outcome
	for _, op := range operators() {
		for _, m := range op.sites(b) {
			list = append(list, outcome{op: op, draft: b.name, m: m})
		}
	}
	var wg sync.WaitGroup
	next := make(chan *outcome)
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for o := range next {
				r, err := b.check(t.Context(), o.m.lines(b))
				if err != nil {
					t.Errorf("%s: %s: %v", b.name, o.m.what, err)
					continue
				}
				o.judge(b, r)
			}
		})
	}
	for i := range list {
		next <- &list[i]
	}
	close(next)
	wg.Wait()
	return list
}

func (o *outcome) judge(b *base, r *harness.Result) {
	least := diag.Warning
	if o.op.notes {
		least = diag.Note
	}
	_, o.answered = o.m.answer(b, r, least)
	var worst diag.Severity
	for _, f := range r.Findings {
		if drafted(f) {
			o.unread = f.String()
		}
		if !b.known[f.String()] && f.Severity > worst {
			worst, o.other = f.Severity, f.Severity.String()+": "+f.Msg
		}
	}
}

// count is how many of some mistakes were answered, and how many do no harm.
type count struct{ answered, of, sound int }

func (c count) percent() float64 { return 100 * float64(c.answered) / float64(max(c.of, 1)) }

func tally(all []outcome, of func(outcome) bool) (c count) {
	for _, o := range all {
		switch {
		case !of(o):
		case o.m.sound && !o.answered:
			c.sound++
		default:
			c.of++
			if o.answered {
				c.answered++
			}
		}
	}
	return c
}

func mutationPage(all []outcome) string {
	var b strings.Builder
	total := tally(all, func(outcome) bool { return true })
	fmt.Fprintf(&b, "# Mistakes put into sound drafts\n\nEvery whole draft of testdata that is clean is taken as built, with the sizes and ratings that legwork chose written in. Then one mistake of a shop is made\n"+
		"at a time, wherever there is room for it, and the draft is checked again. A mistake is answered if a finding is new, is a warning or worse, and names what was touched:\n"+
		"its line, or a wire, a device or a terminal of it. All places are tried, none by chance. Mistakes that by the figures of the sound draft do no harm, such as a\n"+
		"fuse that every wire behind it could bear at twice the rating, are counted apart unless something was told. Written by `go test ./harness/proof -update`.\n\n"+
		"**%d of %d answered, %.1f %%**; %d more do no harm.\n", total.answered, total.of, total.percent(), total.sound)
	b.WriteString("\n## By mistake\n\n| mistake | what is done | answered | of | % | no harm |\n|---|---|---|---|---|---|\n")
	for _, op := range operators() {
		c := tally(all, func(o outcome) bool { return o.op.name == op.name })
		does := op.does
		if op.notes {
			does += " (a note answers)"
		}
		fmt.Fprintf(&b, "| %s | %s | %d | %d | %.0f | %d |\n", op.name, does, c.answered, c.of, c.percent(), c.sound)
	}
	b.WriteString("\n## By draft\n\n| draft | answered | of | % | no harm |\n|---|---|---|---|---|\n")
	for _, v := range whole {
		c := tally(all, func(o outcome) bool { return o.draft == v.name })
		fmt.Fprintf(&b, "| %s | %d | %d | %.0f | %d |\n", v.name, c.answered, c.of, c.percent(), c.sound)
	}
	b.WriteString("\n## What was not answered\n")
	for _, op := range operators() {
		survivors(&b, op, all)
	}
	return b.String()
}

func survivors(b *strings.Builder, op operator, all []outcome) {
	first := true
	for _, o := range all {
		if o.op.name != op.name || o.answered || o.m.sound {
			continue
		}
		if first {
			fmt.Fprintf(b, "\n### %s\n\n%s\n\n", op.name, survives[op.name])
			first = false
		}
		told := "nothing is told"
		if o.other != "" {
			told = "told: " + o.other
		}
		fmt.Fprintf(b, "- %s: %s; %s\n", o.draft, o.m.what, told)
	}
}

// Whatever is left unanswered has a reason.
func TestSurvivorsHaveReasons(t *testing.T) {
	for _, op := range operators() {
		require.NotEmpty(t, survives[op.name], op.name)
	}
	require.Len(t, survives, len(operators()))
}

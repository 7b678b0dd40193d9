package harness_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// Tests of this file change a draft in a way that must not change the harness
// and want the same volts, sizes and findings. The drafts are those shipped
// and generated ones.

// sameV is how far the volts of two ways of saying the same may differ: the
// order of elimination changes the last digits, nothing else may.
const sameV = 1e-9

// told is what a user learns from a check, by names that a change of the draft
// may carry over.
type told struct {
	volts    map[string]float64 // against one post, by case, step and terminal; NaN where it floats
	sizes    map[string]string  // by wire
	findings []string           // rule and severity, with the head and name of the line
	lines    []string           // rule and severity, with the number of the line
}

// toldOfSeveral holds the rules that tell one thing of several places, at the
// one that stands first or last in the draft.
var toldOfSeveral = map[string]bool{"two-wires-in-cavity": true, "feed-dead-while-cranking": true}

// tell collects the outcome of a draft; name translates names back.
func (s subject) tell(t *testing.T, text string, name func(string) string) told {
	t.Helper()
	r := s.check(t, text)
	out := told{volts: map[string]float64{}, sizes: map[string]string{}}
	for which, h := range map[string]*solve.History{"hot": r.Sizes.Hot, "cold": r.Sizes.Cold, "usual": r.Sizes.Usual} {
		for _, state := range h.States {
			maps.Copy(out.volts, s.voltsOf(t, which, state, r.Model.Terminals, name))
		}
	}
	for _, w := range r.Sizes.Wires {
		out.sizes[name(w.Wire.Number)] = w.Conductor.Size.Name
	}
	lines := strings.Split(text, "\n")
	for _, f := range r.Findings {
		what := f.Rule + " " + f.Severity.String() + " "
		if f.At.File != "same.draft" { // included files stay as they are
			what += f.At.File + " "
		}
		out.lines = append(out.lines, fmt.Sprint(what, f.At.Line))
		if f.At.File == "same.draft" && f.At.Line > 0 && !toldOfSeveral[f.Rule] {
			words := strings.Fields(lines[f.At.Line-1])
			what += words[0] + " " + words[min(1, len(words)-1)]
		}
		out.findings = append(out.findings, what)
	}
	slices.Sort(out.findings)
	slices.Sort(out.lines)
	return out
}

// voltsOf gives the volts of a step against the subject's post. That one is
// not always 0 V: the first battery of a draft is, of which there are several.
func (s subject) voltsOf(t *testing.T, which string, state *solve.State, terms []*model.Terminal, name func(string) string) map[string]float64 {
	t.Helper()
	own := func(term *model.Terminal) string { return name(term.Device.Name + "." + term.Name) }
	zero := 0.0
	if i := slices.IndexFunc(terms, func(term *model.Terminal) bool { return own(term) == s.zero }); i >= 0 && state.Skipped == "" {
		zero = state.Volts[terms[i].ID]
		require.False(t, math.IsNaN(zero), "%s floats", s.zero)
	}
	out := map[string]float64{}
	for _, term := range terms {
		out[which+" "+name(state.Step.Name)+" "+own(term)] = state.Volts[term.ID] - zero
	}
	return out
}

func unchanged(name string) string { return name }

func requireSame(t *testing.T, want, got told) {
	t.Helper()
	require.Equal(t, want.sizes, got.sizes)
	require.Equal(t, want.findings, got.findings)
	requireSameVolts(t, want.volts, got.volts)
}

func requireSameVolts(t *testing.T, want, got map[string]float64) {
	t.Helper()
	require.NotEmpty(t, want)
	for key, v := range want {
		w, known := got[key]
		require.True(t, known, key)
		if math.IsNaN(v) != math.IsNaN(w) || math.Abs(v-w) > sameV {
			require.Fail(t, "volts differ", "%s: %v and %v", key, v, w)
		}
	}
}

func TestNamesDoNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, s subject) {
		list, back := renamed(rows(t, s.src))
		require.NotContains(t, text(list), " "+s.zero)
		want, got := s.tell(t, text(rows(t, s.src)), unchanged), s.tell(t, text(list), back)
		got.findings = want.findings // they hold names; the lines are the same ones
		require.Equal(t, want.lines, got.lines)
		requireSame(t, want, got)
	})
}

func TestOrderDoesNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, s subject) {
		want := s.tell(t, text(rows(t, s.src)), unchanged)
		for seed := range uint64(3) {
			requireSame(t, want, s.tell(t, text(shuffled(rows(t, s.src), seed)), unchanged))
		}
	})
}

// shuffled puts top-level statements, the wires of each circuit and the cores
// of each cable in another order, each with what stands below it. What stands
// below a device keeps its order: it numbers its terminals. So do the steps
// among each other: they are played in the order in which they are said.
func shuffled(list []row, seed uint64) []row {
	rng := rand.New(rand.NewPCG(seed, 7))
	tops := blocks(list, 0)
	head := 0
	for head < len(tops) && (tops[head][0].head() == "draft" || tops[head][0].head() == "harness") {
		head++
	}
	rest := tops[head:]
	steps := slices.DeleteFunc(slices.Clone(rest), func(b []row) bool { return b[0].head() != "step" })
	rng.Shuffle(len(rest), func(i, j int) { rest[i], rest[j] = rest[j], rest[i] })
	for i, b := range rest {
		switch b[0].head() {
		case "step":
			rest[i], steps = steps[0], steps[1:]
		case "circuit":
			rest[i] = mixed(rng, b)
		}
	}
	return slices.Concat(tops...)
}

// mixed shuffles what stands below the first row of a circuit or a cable.
func mixed(rng *rand.Rand, list []row) []row {
	below := blocks(list[1:], list[0].level+1)
	for i, b := range below {
		if b[0].head() == "cable" {
			below[i] = mixed(rng, b)
		}
	}
	rng.Shuffle(len(below), func(i, j int) { below[i], below[j] = below[j], below[i] })
	return slices.Concat(list[:1], slices.Concat(below...))
}

// Feet become meters and meters inches, wherever a length decides a volt.
func TestUnitsOfLengthDoNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, s subject) {
		list, changed := clone(rows(t, s.src)), 0
		for _, r := range list {
			if !r.isWire() && r.head() != "leg" && r.head() != "fuse" && r.head() != "cable" {
				continue
			}
			for i, w := range r.words {
				q, err := quantity.Parse(w)
				if err != nil || q.Dim != quantity.Length {
					continue
				}
				r.words[i] = meters(q.Value)
				if strings.HasSuffix(w, "m") {
					r.words[i] = strconv.FormatFloat(q.Value/0.0254, 'f', 9, 64) + "in"
				}
				changed++
			}
		}
		require.True(t, changed > 0 || !strings.Contains(s.src, "leg "))
		requireSame(t, s.tell(t, text(rows(t, s.src)), unchanged), s.tell(t, text(list), unchanged))
	})
}

func TestReportIsTheSameEveryTime(t *testing.T) {
	eachDraft(t, func(t *testing.T, s subject) {
		want := s.reported(t)
		require.True(t, json.Valid(want))
		require.True(t, bytes.Equal(want, s.reported(t)), "a second run")
		before := runtime.GOMAXPROCS(1)
		one := s.reported(t)
		runtime.GOMAXPROCS(4)
		four := s.reported(t)
		runtime.GOMAXPROCS(before)
		require.True(t, bytes.Equal(want, one), "one processor")
		require.True(t, bytes.Equal(want, four), "four processors")
	})
}

func (s subject) reported(t *testing.T) []byte {
	t.Helper()
	out, err := json.Marshal(s.check(t, s.src).Report())
	require.NoError(t, err)
	return out
}

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
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// Tests of this file change a draft in a way that must not change the harness
// and want the same volts, sizes and findings. The drafts are those shipped
// and generated ones.

// sameV is how far the volts of two ways of saying the same may differ: the
// order of elimination changes the last digits, nothing else may.
const sameV = 1e-9

// eachDraft runs a test over every shipped draft and generated ones of 150 wires.
func eachDraft(t *testing.T, f func(t *testing.T, text string)) {
	drafts := shipped(t)
	for seed := range uint64(3) {
		drafts[fmt.Sprint("generated-", seed)] = generated(150, seed)
	}
	for _, name := range slices.Sorted(maps.Keys(drafts)) {
		t.Run(name, func(t *testing.T) { f(t, drafts[name]) })
	}
}

// told is what a user learns from a check, by names that a change of the draft
// may carry over.
type told struct {
	volts    map[string]float64 // by case, step and terminal; NaN where it floats
	sizes    map[string]string  // by wire
	findings []string           // rule and severity, with the head and name of the line
	lines    []string           // rule and severity, with the number of the line
}

// toldOfSeveral holds the rules that tell one thing of several places, at the
// one that stands first or last in the draft.
var toldOfSeveral = map[string]bool{"two-wires-in-cavity": true, "feed-dead-while-cranking": true}

// tell collects the outcome of a draft; name translates names back.
func tell(t *testing.T, text string, name func(string) string) told {
	t.Helper()
	d := harness.Parse("same.draft", []byte(text))
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	out := told{volts: map[string]float64{}, sizes: map[string]string{}}
	for which, h := range map[string]*solve.History{"hot": r.Sizes.Hot, "cold": r.Sizes.Cold, "usual": r.Sizes.Usual} {
		for _, s := range h.States {
			for _, term := range r.Model.Terminals {
				out.volts[which+" "+s.Step.Name+" "+name(term.Device.Name+"."+term.Name)] = s.Volts[term.ID]
			}
		}
	}
	for _, w := range r.Sizes.Wires {
		out.sizes[name(w.Wire.Number)] = w.Conductor.Size.Name
	}
	lines := strings.Split(text, "\n")
	for _, f := range r.Findings {
		what := f.Rule + " " + f.Severity.String()
		out.lines = append(out.lines, fmt.Sprint(what, " ", f.At.Line))
		if f.At.Line > 0 && !toldOfSeveral[f.Rule] {
			words := strings.Fields(lines[f.At.Line-1])
			what += " " + words[0] + " " + words[min(1, len(words)-1)]
		}
		out.findings = append(out.findings, what)
	}
	slices.Sort(out.findings)
	slices.Sort(out.lines)
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
	eachDraft(t, func(t *testing.T, src string) {
		list, back := renamed(rows(t, src))
		require.NotContains(t, text(list), " G1.")
		want, got := tell(t, text(rows(t, src)), unchanged), tell(t, text(list), back)
		got.findings = want.findings // they hold names; the lines are the same ones
		require.Equal(t, want.lines, got.lines)
		requireSame(t, want, got)
	})
}

func TestOrderDoesNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, src string) {
		want := tell(t, text(rows(t, src)), unchanged)
		for seed := range uint64(3) {
			requireSame(t, want, tell(t, text(shuffled(rows(t, src), seed)), unchanged))
		}
	})
}

// shuffled puts top-level statements and the wires of each circuit in another
// order. What stands below a device keeps its order: it numbers its terminals.
func shuffled(list []row, seed uint64) []row {
	rng := rand.New(rand.NewPCG(seed, 7))
	// A step may be like one before it, and 0 V lies at the first battery.
	fixed := []string{"draft", "harness", "step", "battery"}
	tops := blocks(list)
	place := func(b []row) int { // of a statement that stays where it is
		if i := slices.Index(fixed, b[0].head()); i >= 0 {
			return i
		}
		return len(fixed)
	}
	slices.SortStableFunc(tops, func(a, b []row) int { return place(a) - place(b) })
	head := 0
	for head < len(tops) && slices.Contains(fixed, tops[head][0].head()) {
		head++
	}
	rest := tops[head:]
	rng.Shuffle(len(rest), func(i, j int) { rest[i], rest[j] = rest[j], rest[i] })
	for _, b := range rest {
		if b[0].head() == "circuit" && len(b) > 1 {
			wires := blocks(slices.Clone(b[1:]))
			rng.Shuffle(len(wires), func(i, j int) { wires[i], wires[j] = wires[j], wires[i] })
			copy(b[1:], slices.Concat(wires...))
		}
	}
	return slices.Concat(tops...)
}

func TestUnitsOfLengthDoNotMatter(t *testing.T) {
	changed := 0
	eachDraft(t, func(t *testing.T, src string) {
		list := clone(rows(t, src))
		for _, r := range list {
			if !r.isWire() && r.head() != "leg" && r.head() != "fuse" {
				continue
			}
			for i, w := range r.words {
				q, err := quantity.Parse(w)
				if err != nil || q.Dim != quantity.Length || strings.HasSuffix(w, "mm") {
					continue
				}
				r.words[i] = meters(q.Value)
				changed++
			}
		}
		requireSame(t, tell(t, text(rows(t, src)), unchanged), tell(t, text(list), unchanged))
	})
	require.Greater(t, changed, 20)
}

func TestReportIsTheSameEveryTime(t *testing.T) {
	eachDraft(t, func(t *testing.T, src string) {
		want := reported(t, src)
		require.True(t, json.Valid(want))
		require.True(t, bytes.Equal(want, reported(t, src)), "a second run")
		before := runtime.GOMAXPROCS(1)
		one := reported(t, src)
		runtime.GOMAXPROCS(4)
		four := reported(t, src)
		runtime.GOMAXPROCS(before)
		require.True(t, bytes.Equal(want, one), "one processor")
		require.True(t, bytes.Equal(want, four), "four processors")
	})
}

func reported(t *testing.T, src string) []byte {
	t.Helper()
	r, err := harness.Parse("same.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	out, err := json.Marshal(r.Report())
	require.NoError(t, err)
	return out
}

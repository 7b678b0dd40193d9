package harness_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
)

// settled writes the chosen size and the measured length of every wire into
// the draft, so that nothing is left to choose.
func settled(t *testing.T, src string) ([]row, *harness.Result) {
	t.Helper()
	r, err := harness.Parse("same.draft", []byte(text(rows(t, src)))).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	list := clone(rows(t, src))
	for i, x := range list {
		if !x.isWire() {
			continue
		}
		w, found := r.Model.WireByNumber(x.words[1])
		if !found { // of an option that is not fitted
			continue
		}
		k := r.Sizes.Wires[w.ID].Conductor
		if !w.Sized {
			list[i].words = append(list[i].words, strings.ReplaceAll(k.Size.Name, " ", ""))
		}
		if w.LengthM == 0 {
			list[i].words = append(list[i].words, meters(k.LengthM))
		}
	}
	return list, r
}

// meters writes a length to a nanometer, which the reader takes.
func meters(m float64) string { return strconv.FormatFloat(m, 'f', 9, 64) + "m" }

// An ideal splice in a wire, at the hottest place on its way, changes nothing:
// the two parts are as long as the whole.
func TestSplicesDoNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, src string) {
		list, r := settled(t, src)
		want := tell(t, text(list), unchanged)
		split := 0
		var out, splices []row
		for _, x := range list {
			if x.head() != "wire" {
				out = append(out, x)
				continue
			}
			w, found := r.Model.WireByNumber(x.words[1])
			if !found {
				out = append(out, x)
				continue
			}
			a, b, j := halved(r, w, x)
			out, splices = append(out, a, b), append(splices, j)
			split++
		}
		require.Positive(t, split)
		requireSameVolts(t, want.volts, tell(t, text(append(out, splices...)), unchanged).volts)
	})
}

// halved gives the two parts of a wire, 0.4 and 0.6 of it, and the splice.
func halved(r *harness.Result, w *model.Wire, x row) (a, b, splice row) {
	name := "Jsplit" + w.Number
	var rest []string
	for _, word := range x.words[4:] {
		if q, err := quantity.Parse(word); err != nil || q.Dim != quantity.Length {
			rest = append(rest, word)
		}
	}
	long := r.Routes.Paths[w.ID].LengthM
	near := math.Round(0.4e6*long) / 1e6
	a = row{x.level, slices.Concat([]string{"wire", w.Number, x.words[2], name}, rest, []string{meters(near)})}
	b = row{x.level, slices.Concat([]string{"wire", w.Number + "b", name, x.words[3]}, rest, []string{meters(long - near)})}
	splice = row{0, []string{"splice", name}}
	if len(r.Model.Legs) > 0 {
		places := r.Routes.Paths[w.ID].Places
		hot := slices.MaxFunc(places, func(p, q *model.Place) int { return int(p.AmbientC - q.AmbientC) })
		splice.words = append(splice.words, "at", hot.Name)
	}
	return a, b, splice
}

// With two batteries side by side, 0 V lies at the first one in the draft.
// Which that is may shift all volts, but no volts between two points.
func TestReferenceDoesNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, src string) {
		list, _ := settled(t, src)
		at := slices.IndexFunc(list, func(x row) bool { return x.head() == "battery" })
		first := list[at]
		twin := row{0, slices.Clone(first.words)}
		twin.words[1] = "Gtwin"
		loose := []row{{0, []string{"wire", "twin1", "Gtwin.+", first.words[1] + ".+", "2/0AWG", "10in"}}}
		if !slices.Contains(first.words, "grounds-to") {
			loose = append(loose, row{0, []string{"wire", "twin2", "Gtwin.-", first.words[1] + ".-", "2/0AWG", "10in"}})
		}
		after := slices.Concat(list, []row{twin}, loose)
		before := slices.Concat(list[:at], []row{twin}, list[at:], loose)
		post := first.words[1] + ".-"
		a, b := against(t, text(after), post), against(t, text(before), post)
		requireSameVolts(t, a, b)
	})
}

// against gives the volts of a draft against a terminal, by step and terminal.
func against(t *testing.T, src, post string) map[string]float64 {
	t.Helper()
	d := harness.Parse("same.draft", []byte(src))
	for f := range d.Findings.AtLeast(diag.Fault) {
		require.Fail(t, f.String())
	}
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	zero, ok := r.Model.TerminalByName(post)
	require.True(t, ok)
	out := map[string]float64{}
	for _, s := range r.Sizes.Hot.States {
		for _, term := range r.Model.Terminals {
			out[fmt.Sprint(s.Step.Name, " ", term.Device.Name, ".", term.Name)] = s.Volts[term.ID] - s.Volts[zero.ID]
		}
	}
	require.False(t, math.IsNaN(out["running "+post]))
	return out
}

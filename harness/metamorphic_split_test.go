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
// the draft, so that nothing is left to choose. Wires of an option that is not
// fitted are no part of the harness and stay as they are.
func (s subject) settled(t *testing.T) ([]row, *harness.Result) {
	t.Helper()
	r := s.check(t, text(rows(t, s.src)))
	list := clone(rows(t, s.src))
	count := 0
	for i, x := range list {
		if !x.isWire() {
			continue
		}
		w, found := r.Model.WireByNumber(x.words[1])
		if !found {
			require.False(t, s.full, "wire %s", x.words[1])
			continue
		}
		count++
		k := r.Sizes.Wires[w.ID].Conductor
		if !w.Sized {
			list[i].words = append(list[i].words, strings.ReplaceAll(k.Size.Name, " ", ""))
		}
		if w.LengthM == 0 {
			list[i].words = append(list[i].words, meters(k.LengthM))
		}
	}
	require.Len(t, r.Model.Wires, count)
	return list, r
}

// meters writes a length to a nanometer, which the reader takes.
func meters(m float64) string { return strconv.FormatFloat(m, 'f', 9, 64) + "m" }

// An ideal splice in a wire, at the hottest place on its way, changes nothing:
// the two parts are as long as the whole. Cores stay whole: what runs in one
// jacket has no splice.
func TestSplicesDoNotMatter(t *testing.T) {
	eachDraft(t, func(t *testing.T, s subject) {
		list, r := s.settled(t)
		want := s.tell(t, text(list), unchanged)
		far := map[string]string{} // by wire number: the end of its second part
		var out, splices []row
		for _, x := range list {
			w, found := r.Model.WireByNumber(x.words[min(1, len(x.words)-1)])
			if x.head() != "wire" || !found {
				out = append(out, x)
				continue
			}
			a, b, j := halved(r, w, x)
			out, splices = append(out, a, b), append(splices, j)
			far[x.words[1]] = x.words[3]
		}
		require.NotEmpty(t, far)
		togetherStill(out, far)
		requireSameVolts(t, want.volts, s.tell(t, text(append(out, splices...)), unchanged).volts)
	})
}

// togetherStill lets the lines of two wires in one cavity name the part that
// ends there.
func togetherStill(list []row, far map[string]string) {
	for _, x := range list {
		if x.head() != "together" {
			continue
		}
		for i, number := range x.words[2:] {
			if far[number] == x.words[1] {
				x.words[2+i] = number + "b"
			}
		}
	}
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
	eachDraft(t, func(t *testing.T, s subject) {
		list, _ := s.settled(t)
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
		a, b := s.against(t, text(after), post), s.against(t, text(before), post)
		requireSameVolts(t, a, b)
	})
}

// against gives the volts of a draft against a terminal, by step and terminal.
func (s subject) against(t *testing.T, src, post string) map[string]float64 {
	t.Helper()
	r := s.check(t, src)
	for f := range r.Draft.Findings.AtLeast(diag.Fault) {
		require.Fail(t, f.String())
	}
	zero, ok := r.Model.TerminalByName(post)
	require.True(t, ok)
	out := map[string]float64{}
	for _, state := range r.Sizes.Hot.States {
		for _, term := range r.Model.Terminals {
			out[fmt.Sprint(state.Step.Name, " ", term.Device.Name, ".", term.Name)] = state.Volts[term.ID] - state.Volts[zero.ID]
		}
	}
	require.False(t, math.IsNaN(out["running "+post]))
	return out
}

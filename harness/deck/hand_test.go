package deck

import (
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// hand is a deck written by hand from the laws and figures as they were laid
// down before any code, with the draft that it stands for in its comments:
//
//	*| LINE        a line of the draft
//	*wire N OHM    resistance of a wire's copper
//	*step NAME     the step played
//	*grade nominal usual figures instead of sure ones
//	*at NODE T     terminal T is that node
//	*floats T      terminal T has no volts
//	*on K NODE     relay K is in: at the node it has 1 V
//	*off K         relay K is out
//	*chatters K    relay K never settles, and the deck has no operating point
//	*expect T V    volts worked out by hand, to the digits given
type hand struct {
	name, deck, draft, step string
	grade                   part.Grade
	ohms                    map[string]float64
	lines                   [][]string
}

func hands(t *testing.T) []hand {
	t.Helper()
	files, err := filepath.Glob("testdata/hand/*.cir")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 12)
	var list []hand
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		list = append(list, readHand(t, filepath.Base(file), string(text)))
	}
	return list
}

func readHand(t *testing.T, name, text string) hand {
	h := hand{name: name, deck: text, ohms: map[string]float64{}}
	for line := range strings.Lines(text) {
		if d, ok := strings.CutPrefix(line, "*| "); ok {
			h.draft += d
			continue
		}
		f := strings.Fields(strings.TrimPrefix(line, "*"))
		if !strings.HasPrefix(line, "*") || strings.HasPrefix(line, "* ") || len(f) < 2 {
			continue
		}
		switch f[0] {
		case "wire":
			ohm, err := strconv.ParseFloat(f[2], 64)
			require.NoError(t, err)
			h.ohms[f[1]] = ohm
		case "step":
			h.step = f[1]
		case "grade":
			h.grade = part.Nominal
		default:
			h.lines = append(h.lines, f)
		}
	}
	return h
}

// built reads a draft that must have no mistakes.
func built(t *testing.T, text string) *model.Model {
	t.Helper()
	f, found := draft.Parse("hand.draft", []byte(text))
	m, more := model.Build(f)
	for f := range append(found, more...).AtLeast(diag.Fault) {
		require.Fail(t, f.String(), text)
	}
	return m
}

// state plays the draft of a deck and gives the step it is about.
func (h hand) state(t *testing.T) (*model.Model, *solve.History, *solve.State) {
	t.Helper()
	m, hist, _ := h.play(t)
	s := hist.Step(h.step)
	require.NotNil(t, s, h.name)
	return m, hist, s
}

func (h hand) play(t *testing.T) (*model.Model, *solve.History, []solve.Conductor) {
	t.Helper()
	m := built(t, h.draft)
	wires := make([]solve.Conductor, len(m.Wires))
	for _, w := range m.Wires {
		require.Contains(t, h.ohms, w.Number, h.name)
		wires[w.ID] = solve.Conductor{Ohm: h.ohms[w.Number], Measured: true}
	}
	hist, err := solve.Run(t.Context(), m, wires, solve.Case{Grade: h.grade})
	require.NoError(t, err)
	return m, hist, wires
}

// check compares a state with the simulator's answer.
func (h hand) check(t *testing.T, a answer) {
	t.Helper()
	m, hist, s := h.state(t)
	require.True(t, s.Met, h.name)
	volts := func(name string) (float64, bool) {
		terminal, ok := m.TerminalByName(name)
		require.True(t, ok, "%s: %s", h.name, name)
		r := s.Reading(terminal)
		return r.Volts, r.OK
	}
	for _, f := range h.lines {
		at := h.name + ": " + strings.Join(f, " ")
		switch f[0] {
		case "at":
			got, ok := volts(f[2])
			require.True(t, ok, at)
			want, known := a.volts[f[1]]
			require.True(t, known, at)
			require.True(t, near(got, want), "%s: %.15g, the simulator has %.15g", at, got, want)
		case "floats":
			_, ok := volts(f[1])
			require.False(t, ok, at)
		case "expect":
			got, _ := volts(f[1])
			want, err := strconv.ParseFloat(f[2], 64)
			require.NoError(t, err)
			_, digits, _ := strings.Cut(f[2], ".")
			require.InDelta(t, want, got, 1.01*math.Pow10(-len(digits)), at)
		case "on":
			require.True(t, s.Relay[hist.RelayOf(f[1])].On, at)
			require.InDelta(t, 1, a.volts[f[2]], 1e-3, at)
		case "off":
			require.False(t, s.Relay[hist.RelayOf(f[1])].On, at)
		case "chatters":
			require.Equal(t, []int{hist.RelayOf(f[1])}, s.Chatter, at)
			require.False(t, a.found(), at)
		default:
			require.Fail(t, "unknown line", at)
		}
	}
}

// near is the bar: a billionth of the volts, or a billionth of a volt.
func near(a, b float64) bool {
	return math.Abs(a-b) <= 1e-9*math.Max(1, math.Max(math.Abs(a), math.Abs(b)))
}

// TestHandWrittenDecks holds the model against decks that no code of this
// module wrote.
func TestHandWrittenDecks(t *testing.T) {
	list := hands(t)
	path := simulator(t)
	var answers []answer
	if path != "" {
		var decks []string
		for _, h := range list {
			decks = append(decks, h.deck)
		}
		answers = simulate(t, path, decks)
	} else {
		t.Log("there is no ngspice here: compared with its recorded answers")
		answers = recorded(t, list)
	}
	if *update && path != "" {
		record(t, list, answers)
	}
	for i, h := range list {
		h.check(t, answers[i])
	}
}

// TestHandDecksFromTheModel: what the model is written as has the same volts as
// the deck written by hand.
func TestHandDecksFromTheModel(t *testing.T) {
	path := simulator(t)
	if path == "" {
		t.Log("there is no ngspice here: the decks are written, not run")
	}
	for _, h := range hands(t) {
		m, hist, wires := h.play(t)
		d := New(hist, wires)
		step := hist.Step(h.step).Step.ID
		text := written(t, d.Frozen(step))
		require.True(t, strings.HasSuffix(text, ".op\n.end\n"), text)
		if path == "" {
			continue
		}
		both := simulate(t, path, []string{h.deck, text})
		for _, f := range h.lines {
			if f[0] == "at" {
				terminal, _ := m.TerminalByName(f[2])
				require.True(t, near(both[0].volts[f[1]], both[1].volts[d.Node(terminal)]), "%s %s", h.name, f[2])
			}
		}
	}
}

const recordedFile = "testdata/hand/recorded.txt"

// record keeps the simulator's answers for machines that lack it.
func record(t *testing.T, list []hand, answers []answer) {
	t.Helper()
	var b strings.Builder
	for i, h := range list {
		for _, node := range slices.Sorted(maps.Keys(answers[i].volts)) {
			fmt.Fprintf(&b, "%s %s %s\n", h.name, node, strconv.FormatFloat(answers[i].volts[node], 'g', -1, 64))
		}
	}
	require.NoError(t, os.WriteFile(recordedFile, []byte(b.String()), 0o644))
}

func recorded(t *testing.T, list []hand) []answer {
	t.Helper()
	text, err := os.ReadFile(recordedFile)
	require.NoError(t, err)
	answers := make([]answer, len(list))
	for line := range strings.Lines(string(text)) {
		f := strings.Fields(line)
		i := slices.IndexFunc(list, func(h hand) bool { return h.name == f[0] })
		require.GreaterOrEqual(t, i, 0, line)
		if answers[i].volts == nil {
			answers[i].volts = map[string]float64{}
		}
		answers[i].volts[f[1]], err = strconv.ParseFloat(f[2], 64)
		require.NoError(t, err)
	}
	return answers
}

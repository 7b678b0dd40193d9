package model_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
)

// base is a sound draft (invented) that every planted mistake is added to.
const base = `draft 1
harness "Bench rig" system 12V profile road units us
place bay "Bay" 85C wet
place dash "Dash" 50C
leg bay dash 35in tape
metal frame
metal block
stud E1 on frame at bay M8
stud E2 on block at bay M10
battery G1 at bay cca 540A
fuse F1 15A at bay
box A2 at dash
  bus BAT F2.1
fuse F2 10A in A2
switch S1 at dash closed when run
relay K1 at dash coil 85ohm
lamp P1 21W at bay grounds-to frame
module A1 at dash
  BAT feed 0.4A always
  OUT low-side 0.5A when run, crank
  GND ground
keyswitch S2 at dash
  run B IGN
  crank B IGN ST
connector X1 at dash 2way
  half cab sockets
  half rear pins
splice J1 at bay-dash 10in
wire 1 G1.+ F1.1
wire 2 F1.2 A2.BAT
`

// planted is one mistake: lines added to base, and the finding that they have
// to give, alone: rule, line counted from the first added one, the text under
// the caret, and a piece of the message.
type planted struct {
	name, lines string
	rule        string
	line        int
	at, says    string
}

// parse reads a text and fails on a syntax fault: what is looked at here is
// what words mean.
func parse(t testing.TB, text string) *draft.File {
	t.Helper()
	f, found := draft.Parse("test.draft", []byte(text))
	require.Empty(t, found, "syntax")
	return f
}

func TestBaseIsSound(t *testing.T) {
	_, found := model.Build(parse(t, base))
	require.Empty(t, found)
}

func TestPlantedMistakes(t *testing.T) {
	first := strings.Count(base, "\n")
	cases := slices.Concat(wordMistakes, nameMistakes, figureMistakes)
	require.GreaterOrEqual(t, len(cases), 50)
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			text := base + c.lines + "\n"
			_, found := model.Build(parse(t, text))
			require.Len(t, found, 1, "%v", found)
			requirePlanted(t, text, c, found[0], first+c.line)
		})
	}
}

func requirePlanted(t *testing.T, text string, c planted, f diag.Finding, line int) {
	t.Helper()
	require.Equal(t, c.rule, f.Rule, f.Msg)
	require.Equal(t, line, f.At.Line, f.Msg)
	require.Equal(t, c.at, text[f.At.Off:f.At.EndOff], f.Msg)
	written := strings.Split(text, "\n")[line-1]
	require.Equal(t, c.at, written[f.At.Col-1:f.At.End-1], "column")
	require.Contains(t, f.Msg, c.says)
	require.False(t, strings.HasSuffix(f.Msg, "."), f.Msg)
	require.LessOrEqual(t, len([]rune(f.Msg)), 120)
}

// A fix that a finding offers puts its mistake right: applied, the finding is
// gone and nothing else is wrong.
func TestFixesHelp(t *testing.T) {
	fixed := 0
	for _, c := range slices.Concat(wordMistakes, nameMistakes, figureMistakes) {
		text := base + c.lines + "\n"
		_, found := model.Build(parse(t, text))
		if len(found) == 0 || found[0].Fix == nil {
			continue
		}
		fixed++
		e := found[0].Fix.Edits[0]
		_, left := model.Build(parse(t, text[:e.At.Off]+e.Text+text[e.At.EndOff:]))
		require.Empty(t, left, "%s: %v", c.name, left)
	}
	require.Greater(t, fixed, 20)
}

// All mistakes together are all reported, each once, and none besides.
func TestAllMistakesAtOnce(t *testing.T) {
	text, first := base, strings.Count(base, "\n")
	type want struct {
		planted
		line int
	}
	var wants []want
	for _, c := range slices.Concat(wordMistakes, nameMistakes, figureMistakes) {
		if !strings.Contains(c.lines, "9") || strings.Contains(c.name, "alone") {
			continue // only those with names of their own, so that they don't meet
		}
		wants = append(wants, want{c, first + c.line})
		text += c.lines + "\n"
		first += strings.Count(c.lines, "\n") + 1
	}
	require.NotEmpty(t, wants)
	_, found := model.Build(parse(t, text))
	require.Len(t, found, len(wants), "%v", found)
	for i, w := range wants {
		requirePlanted(t, text, w.planted, found[i], w.line)
	}
}

package model_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
)

// One fault never cascades: what hangs on a faulty statement is no second one.
func TestNoCascade(t *testing.T) {
	cases := []struct {
		name, lines string
		want        []string // text under each caret, in order
	}{
		{"bad setting, terminals stand", "relay K9 at dash coyl 85ohm\nwire 9 K9.87 F1.2", []string{"coyl"}},
		{"unknown kind, its terminals are not asked for", "zapdoodle Z9 at bay\nwire 9 Z9.A F1.2\nwire 10 Z9.B F1.2", []string{"zapdoodle"}},
		{"misspelled kind is read", "realy K9 at dash\nwire 9 K9.87 F1.2", []string{"realy"}},
		{"unknown role, the terminal stands", "module A9 at dash\n  IN foo 3A when run\nwire 9 A9.IN F1.2", []string{"foo"}},
		{"bad half, no cavity is asked for", "connector X9 at dash 2way\n  haf cab\nwire 9 X9.cab.1 F1.2", []string{"haf"}},
		{"bad count, no cavity is asked for", "connector X9 at dash 900way\n  half cab\nwire 9 X9.cab.1 F1.2", []string{"900way"}},
		{"bad name, its children are read", "circuit a.b\n  wire 9 F1.2 K1.88", []string{"a.b", "K1.88"}},
		{"misspelled circuit keeps its wires", "circiut c9\n  wire 9 F1.2 K1.87\n  wire 9 F1.2 K1.87", []string{"circiut", "9"}},
		{"unknown parent keeps its wires", "blurp c9\n  wire 9 F1.2 K1.88", []string{"blurp", "K1.88"}},
		{"bad place, no leg and device falls over it", "place a-9 50C\nleg bay a-9 9in\nlamp P9 5W at a-9 grounds-to frame", []string{"a-9"}},
		{"bad unit, no second word for it missing", "fuse F9 15V at bay\nwire 9 F9.1 F1.2", []string{"15V"}},
		{"unknown metal, the device keeps its return", "lamp P9 5W at bay grounds-to chassis\nwire 9 P9 F1.2", []string{"chassis"}},
		{"wire with a bad end is known to together", "wire 9 S1.2 F1.9\ntogether S1.2 9 2", []string{"F1.9", "2"}},
		{"bad step, one finding", "step a9 like runing\nswitch S9 at dash closed when a9", []string{"runing"}},
		{"setting not read, with its figures", "lamp P9 5W at bay grounds-to frame exisiting 0.2V 8A measured", []string{"exisiting"}},
		{"setting unknown, with its figures", "lamp P9 5W at bay blink 2V 30A guess grounds-to frame", []string{"blink"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			text := base + c.lines + "\n"
			_, found := model.Build(parse(t, text))
			var at []string
			for _, f := range found {
				at = append(at, text[f.At.Off:f.At.EndOff])
			}
			require.Equal(t, c.want, at, "%v", found)
		})
	}
}

func TestLimits(t *testing.T) {
	var many strings.Builder
	for i := range 60 {
		fmt.Fprintf(&many, "step s%d\n", i)
	}
	m, found := model.Build(parse(t, base+many.String()))
	require.Len(t, m.Steps, 64)
	require.Equal(t, 60-(64-11), len(found)) // 11 usual steps
	require.Equal(t, "draft-limit", found[0].Rule)
	require.Equal(t, "s53", under(found[0], base+many.String()))

	_, found = model.Build(parse(t, base+"connector X9 at dash 513way\n  half cab\n"))
	require.Len(t, found, 1)
	require.Equal(t, "draft-range", found[0].Rule)
}

// under is the text under a finding's caret.
func under(f diag.Finding, text string) string { return text[f.At.Off:f.At.EndOff] }

func TestPlacesAreLimited(t *testing.T) {
	var b strings.Builder
	for i := range 1010 {
		fmt.Fprintf(&b, "place p%d 50C\n", i)
	}
	b.WriteString("stud E1 at p1005\n") // not a second fault
	m, found := model.Build(parse(t, b.String()))
	require.Len(t, m.Places, 1000)
	require.Len(t, found, 1, "%v", found)
	require.Equal(t, "draft-limit", found[0].Rule)
	require.Equal(t, 1001, found[0].At.Line)
}

func TestFindingsAreCapped(t *testing.T) {
	var b strings.Builder
	for i := range 500 {
		fmt.Fprintf(&b, "fuse F9%d 15V at bay\n", i)
	}
	_, found := model.Build(parse(t, base+b.String()))
	require.Len(t, found, 200)
	require.Contains(t, found[199].Msg, "301 more")
}

func TestSameEveryTime(t *testing.T) {
	text := base
	for _, c := range slices.Concat(wordMistakes, nameMistakes, figureMistakes) {
		text += c.lines + "\n"
	}
	m, first := model.Build(parse(t, text))
	for range 5 {
		again, found := model.Build(parse(t, text))
		require.Equal(t, first, found)
		require.Equal(t, m.Guesses, again.Guesses)
		require.Equal(t, m.Nets().Of, again.Nets().Of)
	}
}

// sound checks what later stages rely on, whatever the draft was.
func sound(t *testing.T, m *model.Model, found diag.List, src string) {
	t.Helper()
	require.LessOrEqual(t, len(found), 200)
	for _, f := range found {
		require.NotEmpty(t, f.Rule)
		require.NotZero(t, f.Severity)
		require.True(t, f.At.Off >= 0 && f.At.EndOff <= len(src) && f.At.Off <= f.At.EndOff, "span")
		require.LessOrEqual(t, len([]rune(f.Msg)), 120)
	}
	require.NotEmpty(t, m.Places)
	for i, x := range m.Terminals {
		require.Equal(t, i, x.ID)
		require.Same(t, x, x.Device.Terminals[x.Pin])
		require.Equal(t, x.Name, x.Device.Pins[x.Pin].Name)
	}
	for i, w := range m.Wires {
		require.Equal(t, i, w.ID)
		require.NotNil(t, w.From)
		require.NotNil(t, w.To)
		require.NotNil(t, w.Circuit)
		require.NotEmpty(t, w.Color.Base)
	}
	for i, d := range m.Devices {
		require.Equal(t, i, d.ID)
		require.NotNil(t, d.Spot.Place)
	}
	require.Len(t, m.Nets().Of, len(m.Terminals))
}

// Random damage to sound drafts: words dropped, swapped, changed, lines cut.
func TestDamagedDrafts(t *testing.T) {
	src, err := os.ReadFile("testdata/orchard.draft")
	require.NoError(t, err)
	r := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		lines := strings.Split(string(src), "\n")
		for range 1 + r.IntN(6) {
			damage(r, lines)
		}
		text := strings.Join(lines, "\n")
		f, _ := draft.Parse("test.draft", []byte(text))
		m, found := model.Build(f)
		sound(t, m, found, text)
	}
}

func damage(r *rand.Rand, lines []string) {
	i := r.IntN(len(lines))
	words := strings.Fields(lines[i])
	if len(words) == 0 {
		return
	}
	indent := lines[i][:len(lines[i])-len(strings.TrimLeft(lines[i], " "))]
	k := r.IntN(len(words))
	switch r.IntN(6) {
	case 0:
		words = append(words[:k], words[k+1:]...)
	case 1:
		words[k] = words[r.IntN(len(words))]
	case 2:
		words[k] += "x"
	case 3:
		words = words[:k]
	case 4:
		words = append(words, strings.Fields(lines[r.IntN(len(lines))])...)
	case 5:
		indent += "  "
	}
	lines[i] = indent + strings.Join(words, " ")
}

func FuzzBuild(f *testing.F) {
	for _, name := range []string{"least", "orchard"} {
		src, err := os.ReadFile("testdata/" + name + ".draft")
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(src))
	}
	for _, c := range slices.Concat(wordMistakes, nameMistakes, figureMistakes) {
		f.Add(base + c.lines)
	}
	for _, odd := range []string{"", "wire", "wire 1", `wire "" "" ""`, "draft", "harness harness", "place", "leg a b", "bus A", "half x",
		"connector X 3way\n half", "keyswitch S\n run", "module A\n \"x.y\" feed", "strap 1 a a", "step", "together", "spare", "accept",
		"circuit\n wire 1 a b", "fuse F from", "fuse F in F", "box A in B\nbox B in A", "stud E No99", "splice J at a-b"} {
		f.Add(odd)
	}
	for _, whole := range []string{optional, oldVehicle, markedRelays, finishing} {
		f.Add(whole)
	}
	f.Fuzz(func(t *testing.T, src string) {
		tree, _ := draft.Parse("fuzz.draft", []byte(src))
		m, found := model.Build(tree)
		sound(t, m, found, src)
		var with []string
		for _, o := range m.Options {
			with = append(with, o.Name)
		}
		m, found = model.BuildWith(tree, model.Setup{With: with, Move: model.Move{Key: 3, To: 1}})
		sound(t, m, found, src)
	})
}

// large is a sound draft (invented) with n wires: groups of a fuse, a relay
// and a lamp.
func large(n int) string {
	var b strings.Builder
	b.WriteString("place bay 85C wet\nplace dash 50C\nleg bay dash 35in\nmetal frame\nstud E1 on frame at bay M8\nbattery G1 at bay grounds-to frame\n")
	for i := 0; i < n; i += 5 {
		fmt.Fprintf(&b, "fuse F%d 10A at bay\nrelay K%d at dash coil 85ohm\nlamp P%d 21W at bay grounds-to frame\ncircuit c%d\n", i, i, i, i)
		fmt.Fprintf(&b, "  wire %d G1.+ F%d.1\n  wire %d F%d.2 K%d.30\n  wire %d F%d.2 K%d.86\n", i, i, i+1, i, i, i+2, i, i)
		fmt.Fprintf(&b, "  wire %d K%d.87 P%d.1 14AWG GN/WH 9ft6in\n  wire %d K%d.85 E1\n", i+3, i, i, i+4, i)
	}
	return b.String()
}

func BenchmarkBuild10000(b *testing.B) {
	text := large(10_000)
	f, found := draft.Parse("test.draft", []byte(text))
	require.Empty(b, found)
	_, found = model.Build(f)
	require.Empty(b, found)
	for b.Loop() {
		model.Build(f)
	}
}

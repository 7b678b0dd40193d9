package diagram_test

import (
	"fmt"
	"math/rand"
	"os"
	"strings"
	"testing"

	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// TestOddCases draws an invented vehicle of things that do not fit a simple
// picture: batteries in series, a change-over relay, a controller that feeds,
// a splice of two sections, a wire between sections.
func TestOddCases(t *testing.T) {
	b, err := os.ReadFile("testdata/odd.draft")
	require.NoError(t, err)
	m := build(t, "odd.draft", string(b))
	r := judged(t, m, draw(t, m))
	require.Empty(t, r.errors)
	require.Zero(t, r.wireCrossings)
	require.Equal(t, 1, r.cuts, "only wire 60 goes from one section to another")
}

// shuffled gives the draft with its statements in another order: top-level
// blocks after the heading, and the wires of each circuit.
func shuffled(src string, r *rand.Rand) string {
	var head []string
	var blocks [][]string
	for _, l := range strings.Split(src, "\n") {
		switch {
		case strings.HasPrefix(l, "draft") || strings.HasPrefix(l, "harness"):
			head = append(head, l)
		case strings.HasPrefix(l, " ") && len(blocks) > 0:
			blocks[len(blocks)-1] = append(blocks[len(blocks)-1], l)
		case strings.TrimSpace(l) != "" && !strings.HasPrefix(l, "#"):
			blocks = append(blocks, []string{l})
		}
	}
	var plain, circuits [][]string
	for _, b := range blocks {
		if strings.HasPrefix(b[0], "circuit") {
			circuits = append(circuits, b)
			rest := b[1:]
			r.Shuffle(len(rest), func(i, k int) { rest[i], rest[k] = rest[k], rest[i] })
		} else {
			plain = append(plain, b)
		}
	}
	r.Shuffle(len(plain), func(i, k int) { plain[i], plain[k] = plain[k], plain[i] })
	out := strings.Join(head, "\n") + "\n"
	for _, b := range append(plain, circuits...) {
		out += strings.Join(b, "\n") + "\n"
	}
	return out
}

// TestShuffled draws the truck with its devices and wires in thirty other
// orders: never a fault, never a cut wire, about as many crossed bars.
func TestShuffled(t *testing.T) {
	src := source(t, "orchard-truck.draft")
	m := build(t, "o", src)
	base := judged(t, m, draw(t, m))
	for seed := range 30 {
		m := build(t, "o", shuffled(src, rand.New(rand.NewSource(int64(seed)))))
		r := judged(t, m, draw(t, m))
		require.Empty(t, r.errors, "seed %d", seed)
		require.Equal(t, base.cuts, r.cuts, "seed %d", seed)
		require.LessOrEqual(t, r.barCrossings, base.barCrossings+4, "seed %d", seed)
	}
}

// big is an invented vehicle of n lamp circuits, all in one section or each in
// its own.
func big(n int, own bool) string {
	var b strings.Builder
	b.WriteString("draft 1\nmetal frame\nstud E1 on frame M8\nbattery G1 grounds-to frame\nfuse F900 100A bolt-down\nbox A1\n  bus B")
	for i := range n {
		fmt.Fprintf(&b, " F%d.1", i)
	}
	b.WriteString("\nsplice J1\n")
	for i := range n {
		fmt.Fprintf(&b, "fuse F%d 10A in A1\nswitch S%d\nlamp P%d 21W\n", i, i, i)
	}
	b.WriteString("circuit all \"All\"\n  wire 9001 G1.+ F900.1 4AWG\n  wire 9002 F900.2 A1.B 4AWG\n  wire 9003 J1 E1\n")
	for i := range n {
		if own {
			fmt.Fprintf(&b, "circuit c%d \"Lamp %d\"\n", i, i)
		}
		fmt.Fprintf(&b, "  wire %d F%d.2 S%d.1\n  wire %d S%d.2 P%d.1\n  wire %d P%d.2 J1\n", 3*i, i, i, 3*i+1, i, i, 3*i+2, i)
	}
	return b.String()
}

// TestBig draws harnesses with far more tracks than a sheet holds. A section
// that is too wide is cut, and a splice that spans sheets names its other
// paths.
func TestBig(t *testing.T) {
	for _, c := range []struct {
		n   int
		own bool
	}{{70, false}, {60, true}} {
		m := build(t, "big", big(c.n, c.own))
		sheets := draw(t, m)
		require.Greater(t, len(sheets), 2)
		r := judged(t, m, sheets)
		require.Empty(t, r.errors)
		require.Zero(t, r.cuts)
	}
}

// FuzzNames puts any name where names go; the drawing stays well formed and
// complete.
func FuzzNames(f *testing.F) {
	for _, s := range []string{"A", "K-1", "x y", "漢字", `q"q`, "<b>&", "long-name-that-goes-on-and-on-and-on-for-ever", "\u202e", "%s", "1/0", strings.Repeat("W", 300)} {
		f.Add(s)
	}
	base := source(f, "small.draft")
	f.Fuzz(func(t *testing.T, name string) {
		file, _ := draft.Parse("n", []byte(base))
		m, _ := model.Build(file)
		rename(m, name)
		for _, s := range draw(t, m) {
			var b strings.Builder
			require.NoError(t, scene.WriteSVG(&b, s.Scene))
			marks, err := readSheet(b.String(), s.Scene.Look)
			require.NoError(t, err)
			for id, n := range marks.ids {
				require.Equal(t, 1, n, "id %q", id)
			}
			require.Len(t, marks.wires, len(m.Wires))
		}
	})
}

// rename gives everything in a model names made with the same odd text.
func rename(m *model.Model, name string) {
	m.Title = name
	for i, d := range m.Devices {
		d.Name = name + fmt.Sprint(i)
		d.Label = name
	}
	for i, w := range m.Wires {
		w.Number = fmt.Sprint(i) + name
	}
	for _, c := range m.Circuits {
		c.Label = name
	}
	for _, t := range m.Terminals {
		t.Shown = t.Device.Name + "." + name + t.Name
	}
	for _, k := range m.Metals {
		k.Label = name
	}
}

// TestNoWires draws drafts with next to nothing in them.
func TestNoWires(t *testing.T) {
	for _, src := range []string{"", "draft 1\n", "battery G1\n", "lamp P1\nlamp P2\nwire 1 P1.1 P2.1\n", "splice J1\nsplice J2\nwire 1 J1 J2\nwire 2 J1 J2\n",
		"stud E1\nmetal frame\nstud E2 on frame\nwire 1 E1 E2\nwire 2 E2 E2\n", "switch S1\nwire 1 S1.1 S1.2\n"} {
		m := build(t, "n", src)
		sheets, _ := diagram.Schematic(diagram.Input{Model: m})
		require.NotEmpty(t, sheets, "draft %q", src)
		r := judged(t, m, sheets)
		require.Empty(t, r.errors, "draft %q", src)
	}
}

package diagram_test

import (
	"context"
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"legwork/harness"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// shipped lists the drafts of testdata: new ones are held to the same rules.
func shipped(t *testing.T) []string {
	t.Helper()
	found, err := filepath.Glob("../../testdata/*.draft")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(found), 4)
	return found
}

func drawOn(t *testing.T, m *model.Model, paper string) []diagram.Sheet {
	t.Helper()
	sheets, _ := diagram.Schematic(diagram.Input{Model: m, Paper: paper, Title: diagram.Title{Number: "LW-01-CP"}})
	require.NotEmpty(t, sheets)
	return sheets
}

// Every shipped draft, on every paper: no text on a line, a symbol or another
// text, no wire through a symbol or over another, every wire there with both
// ends.
func TestShippedOnEveryPaper(t *testing.T) {
	for _, path := range shipped(t) {
		d := harness.Load(os.DirFS(filepath.Dir(path)), filepath.Base(path))
		require.NoError(t, d.Err)
		done, err := d.Check(context.Background(), harness.Options{})
		require.NoError(t, err)
		m := done.Model
		for _, paper := range diagram.Papers() {
			t.Run(filepath.Base(path)+" "+paper, func(t *testing.T) {
				sheets, _ := diagram.Schematic(diagram.Input{Model: m, Routes: done.Routes, Sizes: done.Sizes, Paper: paper})
				require.Empty(t, judged(t, m, sheets).errors)
				require.NoError(t, numbers(m, sheets))
				require.Empty(t, crowds(t, sheets))
			})
		}
	}
}

// numbers wants the number of every wire exactly once beside each drawn piece
// of it: pieces and labels agree in count, on every sheet.
func numbers(m *model.Model, sheets []diagram.Sheet) error {
	seen := map[string]int{}
	for _, s := range sheets {
		pieces, labels := map[string]int{}, map[string]int{}
		s.Scene.Walk(func(n *scene.Node) {
			switch n.Class {
			case "wire":
				pieces[n.Get("wire")]++
			case "wl":
				for _, k := range n.Kids[:1] { // the line below may begin with a gauge of the same figures
					if first, _, _ := strings.Cut(k.Text, " "); first == n.Get("wire") {
						labels[first]++
					}
				}
			}
		})
		for w, n := range pieces {
			if labels[w] != n {
				return fmt.Errorf("%s: wire %s is drawn in %d pieces and numbered %d times", s.Name, w, n, labels[w])
			}
			seen[w] += n
		}
	}
	for _, w := range m.Wires {
		if seen[w.Number] == 0 {
			return fmt.Errorf("wire %s is not drawn", w.Number)
		}
	}
	return nil
}

// The count of numbers has to bite: a label taken away is missed.
func TestNumbersBite(t *testing.T) {
	m := build(t, "least.draft", source(t, "least.draft"))
	sheets := drawOn(t, m, "a3")
	require.NoError(t, numbers(m, sheets))
	drop(sheets, find(sheets, "wl", "wire", "2"))
	require.ErrorContains(t, numbers(m, sheets), "wire 2 is drawn in 1 pieces and numbered 0 times")
}

// Sheets have the size of the paper that was asked for, or of the next larger
// one of its series where it does not fit.
func TestPaperSizes(t *testing.T) {
	small, truck := build(t, "s", source(t, "least.draft")), build(t, "o", source(t, "orchard-truck.draft"))
	for _, c := range []struct {
		paper string
		m     *model.Model
		w, h  float64 // mm: ISO 216; 11 x 17 in
	}{
		{"", small, 210, 297}, {"", truck, 420, 297}, {"auto", truck, 420, 297}, {"a3", small, 420, 297}, {"a4", small, 210, 297}, {"a4", truck, 210, 297},
		{"tabloid", small, 17 * 25.4, 11 * 25.4}, {"tabloid", truck, 17 * 25.4, 11 * 25.4}, {"TABLOID", small, 17 * 25.4, 11 * 25.4}, {"napkin", truck, 420, 297},
	} {
		for _, s := range drawOn(t, c.m, c.paper) {
			require.InDelta(t, c.w, s.Scene.WidthMM, 1e-9, c.paper)
			require.InDelta(t, c.h, s.Scene.HeightMM, 1e-9, c.paper)
		}
	}
}

// The tangles of TestWild stay true on the narrow and the low paper too.
func TestWildOnEveryPaper(t *testing.T) {
	for seed := range 30 {
		src := wild(rand.New(rand.NewSource(int64(seed + 1000))))
		m := build(t, "wild", src)
		for _, paper := range diagram.Papers()[1:] {
			r := judged(t, m, drawOn(t, m, paper))
			for _, rule := range []string{"missing", "end", "lead", "joint", "id", "through", "over", "frame", "size", "name"} {
				require.False(t, r.has(rule), "seed %d on %s: %v\n%s", seed+1000, paper, r.errors, src)
			}
		}
	}
}

package diagram_test

import (
	"fmt"
	"math"
	"testing"

	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// apartMM is the least gap between labels of two wires that stand side by
// side: a blank of the text is 0.7 mm, and two of them part two texts.
const apartMM = 1.4

// crowds lists labels of different wires that stand side by side with less
// between them: "11 · 14 RD/BU" and "9" would read as one.
func crowds(t *testing.T, sheets []diagram.Sheet) []string {
	t.Helper()
	type label struct {
		wire string
		box  scene.Box
	}
	var out []string
	for _, s := range sheets {
		var all []label
		s.Scene.Walk(func(n *scene.Node) {
			if n.Class != "wl" {
				return
			}
			for _, k := range n.Kids {
				look := s.Scene.Look(k.Class)
				all = append(all, label{n.Get("wire"), scene.TextBox(k.Text, k.Points[0].X, k.Points[0].Y, k.Anchor, look.SizeMM, look.Bold)})
			}
		})
		for i, a := range all {
			for _, b := range all[i+1:] {
				gap := math.Max(a.box.X1, b.box.X1) - math.Min(a.box.X2, b.box.X2)
				beside := math.Min(a.box.Y2, b.box.Y2) > math.Max(a.box.Y1, b.box.Y1)
				if a.wire != b.wire && beside && gap < apartMM-1e-9 {
					out = append(out, fmt.Sprintf("%s: %.2f mm between the labels of wires %s and %s", s.Name, gap, a.wire, b.wire))
				}
			}
		}
	}
	return out
}

// The check has to bite: a label moved to beside another is found.
func TestCrowdsBite(t *testing.T) {
	sheets := draw(t, build(t, "small.draft", source(t, "small.draft")))
	require.Empty(t, crowds(t, sheets))
	a, b := find(sheets, "wl", "wire", "201").Kids[0], find(sheets, "wl", "wire", "202").Kids[0]
	b.Points[0] = a.Points[0]
	b.Points[0].X += scene.Width(a.Text, 2.5, true) + 0.5
	require.NotEmpty(t, crowds(t, sheets))
}

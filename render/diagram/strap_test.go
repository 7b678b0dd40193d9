package diagram_test

import (
	"context"
	"math"
	"os"
	"testing"

	"legwork/harness"
	"legwork/render/diagram"

	"github.com/stretchr/testify/require"
)

// A wire between two studs takes one path: its ends stand closer than two
// tracks do on any sheet (17.5 mm), or 18 mm on sheets with wider ones, and
// beside the stud of the battery's cable, which is drawn once.
func TestStrapTakesOnePath(t *testing.T) {
	sheets := drawOn(t, build(t, "orchard-truck.draft", source(t, "orchard-truck.draft")), "a3")
	w := find(sheets, "wire", "wire", "91")
	require.NotNil(t, w)
	a, b := w.Kids[0].Points[0], w.Kids[0].Points[1]
	require.InDelta(t, a.Y, b.Y, 1e-9, "it lies")
	require.Less(t, math.Abs(a.X-b.X), 17.5)
	require.Equal(t, 1, countText(sheets[:1], "E2"))
	bar := find(sheets, "node", "joint", "E1").Kids[0]
	require.Equal(t, "bar", bar.Class)
	require.InDelta(t, find(sheets, "wire", "wire", "100").Kids[0].Points[0].X, math.Max(bar.Points[0].X, bar.Points[1].X), 1e-6, "from the strap to the battery's cable")
}

// Sections that would be alone on a last sheet go to one before it with room:
// the straps of the carrier, four sheets with all options before.
func TestLeftoversTakeNoSheet(t *testing.T) {
	for _, c := range []struct {
		draft  string
		with   []string
		paper  string
		sheets int
	}{
		{"forestry-carrier.draft", []string{"lights", "crane"}, "a3", 3}, {"track-car.draft", nil, "a3", 3}, {"track-car.draft", nil, "a4", 8}, {"lake-workboat.draft", nil, "a4", 4},
	} {
		d := harness.Load(os.DirFS("../../testdata"), c.draft)
		r, err := d.Check(context.Background(), harness.Options{With: c.with})
		require.NoError(t, err)
		sheets, _ := diagram.Schematic(diagram.Input{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes, Paper: c.paper})
		require.Len(t, sheets, c.sheets, c.draft+" "+c.paper)
		require.Empty(t, judged(t, r.Model, sheets).errors)
	}
}

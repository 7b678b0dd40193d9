package diagram_test

import (
	"testing"

	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

const bridgeDraft = `draft 1
metal frame
battery G1 grounds-to frame
splice J1
splice J2
splice J3
lamp P1 grounds-to frame
lamp P2 grounds-to frame
lamp P3 grounds-to frame
lamp P4 grounds-to frame
lamp P5 grounds-to frame
lamp P6 grounds-to frame
circuit a "One"
  wire 1 G1.+ J1 2AWG
  wire 2 J1 P1.1
  wire 3 J2 P2.1
  wire 4 J3 P3.1
  wire 5 J1 J2 2/0AWG RD
  wire 6 J1 J3 14AWG
circuit b "Two"
  wire 7 J1 P4.1
  wire 8 J2 P5.1
  wire 9 J3 P6.1
`

// A wire between two rails is long enough to read: below all rails, with
// number, size, color and both ends beside it; such wires stand together at
// the left of their section.
func TestWiresBetweenRails(t *testing.T) {
	m := buildWith(t, bridgeDraft)
	for _, paper := range diagram.Papers() {
		sheets := drawOn(t, m, paper)
		require.Empty(t, judged(t, m, sheets).errors)
		require.NoError(t, numbers(m, sheets))
		text := words(sheets)
		require.Contains(t, text, "\n2/0 RD\n")
		require.Contains(t, text, "J1 to J2\n")
		require.Contains(t, text, "J1 to J3\n")
		lowest := 0.0
		for _, s := range sheets {
			s.Scene.Walk(func(n *scene.Node) {
				if n.Class == "rail" {
					lowest = max(lowest, n.Points[0].Y)
				}
			})
		}
		left := map[string]float64{}
		for _, w := range []string{"1", "2", "5", "6"} {
			left[w] = find(sheets, "wire", "wire", w).Kids[0].Points[0].X
		}
		for _, w := range []string{"5", "6"} {
			p := find(sheets, "wire", "wire", w).Kids[0].Points
			require.Len(t, p, 4)
			require.Greater(t, p[1].Y, lowest+3, "wire %s on %s", w, paper)
			require.Less(t, left[w], left["2"])
		}
	}
}

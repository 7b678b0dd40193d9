package diagram_test

import (
	"math"
	"testing"

	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// The drain of the shielded crank sensor cable (100 in the draft) stands as
// near to its core (99) as the symbol of the sensor lets it: the core is the
// second of three columns, so that one of them stands between. Where nothing
// does, as in the cables of the carrier, one ring goes round all cores.
func TestDrainStandsBesideItsCore(t *testing.T) {
	m := build(t, "track-car.draft", source(t, "track-car.draft"))
	sheets := drawOn(t, m, "a3")
	at := func(number string) float64 {
		w := find(sheets, "wire", "wire", number)
		require.NotNil(t, w, number)
		return w.Kids[0].Points[0].X
	}
	require.LessOrEqual(t, math.Abs(at("99")-at("100")), 60.0) // two tracks of the widest pitch of a full sheet, 30 mm
	carrier := drawOn(t, build(t, "forestry-carrier.draft", source(t, "forestry-carrier.draft")), "a3")
	require.Equal(t, 1, rings(carrier, "430"))
	require.Equal(t, 1, rings(carrier, "440"))
}

// rings counts the rings of a cable on all sheets.
func rings(sheets []diagram.Sheet, cable string) int {
	n := 0
	for _, s := range sheets {
		s.Scene.Walk(func(k *scene.Node) {
			if k.Class == "cable" && k.Get("cable") == cable {
				n++
			}
		})
	}
	return n
}

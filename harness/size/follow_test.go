package size

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/route"
)

// Rounds that go by where relays came to rest choose the sizes that rounds
// choose which follow every move, and end in the same states.
func TestRoundsByRestChooseTheSame(t *testing.T) {
	p, _ := gauge.ProfileOf("road")
	for _, name := range []string{"small", "orchard-truck", "orchard-truck-faults", "track-car", "track-car-faults", "lake-workboat-faults", "utility-trailer"} {
		src, err := os.ReadFile("../../testdata/" + name + ".draft")
		require.NoError(t, err)
		f, found := draft.Parse(name, src)
		m, more := model.Build(f)
		require.Less(t, append(found, more...).Worst(), diag.Fault, name)
		sized := func(thorough bool) *Sizes {
			c := newChooser(m, route.Measure(m), p)
			c.thorough = thorough
			ok, err := c.choose(t.Context())
			require.NoError(t, err)
			require.True(t, ok, "%s: a relay ends elsewhere", name)
			s, err := c.finish(t.Context())
			require.NoError(t, err)
			return s
		}
		byRest, byMoves := sized(false), sized(true)
		for i, w := range byMoves.Wires {
			got := byRest.Wires[i]
			require.Equal(t, w.Conductor, got.Conductor, "%s wire %s", name, w.Wire.Number)
			require.Equal(t, w.DesignA, got.DesignA, "%s wire %s", name, w.Wire.Number)
			require.Equal(t, w.Judgement.Limits, got.Judgement.Limits, "%s wire %s", name, w.Wire.Number)
		}
		for i, s := range byMoves.Hot.States {
			require.Equal(t, s.Relay, byRest.Hot.States[i].Relay, "%s %s", name, s.Step.Name)
			require.Equal(t, s.WireA, byRest.Hot.States[i].WireA, "%s %s", name, s.Step.Name)
			for _, x := range m.Terminals {
				require.Equal(t, s.Shown(x), byRest.Hot.States[i].Shown(x), "%s %s %s", name, s.Step.Name, x.Name)
			}
		}
	}
}

package solve

import (
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/part"
)

// A solution that is shared between steps is the one that would have been
// found anew: volts, amperes and relays agree to the last bit.
func TestSharedSolutionsAreTheSame(t *testing.T) {
	for _, name := range []string{"small.draft", "orchard-truck.draft"} {
		src, err := os.ReadFile("../../testdata/" + name)
		require.NoError(t, err)
		m := build(t, string(src))
		for _, c := range []Case{{Corner: part.HotSoak}, {Corner: part.ColdStart}, {Corner: part.HotSoak, Grade: part.Nominal}} {
			shared := playCase(t, m, alike(m, 0.01), c)
			p := newPlay(newFrame(m, c), nil)
			require.NoError(t, p.fit(alike(m, 0.01)))
			solved := 0
			for i := range m.Steps {
				p.kept.forget()
				s, err := p.playStep(t.Context(), i, nil)
				require.NoError(t, err)
				requireSameState(t, s, shared.States[i])
				solved++
			}
			require.Equal(t, len(m.Steps), solved)
		}
	}
}

func requireSameState(t *testing.T, want, got *State) {
	t.Helper()
	require.Equal(t, want.Relay, got.Relay, want.Step.Name)
	require.Equal(t, want.WireA, got.WireA, want.Step.Name)
	require.Equal(t, want.DrawA, got.DrawA, want.Step.Name)
	for i, v := range want.Volts {
		require.True(t, v == got.Volts[i] || math.IsNaN(v) && math.IsNaN(got.Volts[i]), "%s: %v and %v", want.Step.Name, v, got.Volts[i])
	}
	for _, term := range []int{0, len(want.Volts) - 1} {
		require.Equal(t, math.IsNaN(want.Volts[term]), math.IsNaN(got.Volts[term]))
	}
}

// Off, coast and rest of a harness without machines that coast are one
// solution, found once.
func TestRestSharesWithOff(t *testing.T) {
	src, err := os.ReadFile("../../testdata/orchard-truck.draft")
	require.NoError(t, err)
	m := build(t, string(src))
	h := playCase(t, m, alike(m, 0.01), Case{})
	off, rest := h.Step("off"), h.Step("rest")
	require.Same(t, &off.Volts[0], &rest.Volts[0])
	require.NotSame(t, &off.Volts[0], &h.Step("running").Volts[0])
}

package solve

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// Played after a history with other copper, a harness comes to the very states
// that it comes to by itself; only how its relays got there is not told.
func TestAfterEndsWhereTheMovesLead(t *testing.T) {
	for _, name := range []string{"small.draft", "orchard-truck.draft", "track-car.draft"} {
		src, err := os.ReadFile("../../testdata/" + name)
		require.NoError(t, err)
		m := build(t, string(src))
		p := NewPlan(m)
		before, err := p.Run(t.Context(), alike(m, 0.002), hot)
		require.NoError(t, err)
		c := hot
		c.After = before
		got, err := p.Run(t.Context(), alike(m, 0.003), c)
		require.NoError(t, err)
		full := playCase(t, m, alike(m, 0.003), hot)
		require.True(t, full.Agrees(got))
		again, err := p.Run(t.Context(), alike(m, 0.003), hot) // finds the solutions of got, and tells of the moves
		require.NoError(t, err)
		for i, want := range full.States {
			require.Equal(t, bits(want.Volts), bits(got.States[i].Volts), "%s %s", name, want.Step.Name)
			require.Equal(t, bits(want.WireA), bits(got.States[i].WireA), "%s %s", name, want.Step.Name)
			requireSameState(t, want, again.States[i])
		}
	}
}

// A relay with 4 ohm ahead of its coil of 88 ohm gets 12 V and pulls in; with
// 100 ohm it gets 6 V, too little to pull in and more than lets go. Taken to be
// in, it stays in; followed move by move it stays out.
func TestAfterMayMissWhatOnlyMovesTell(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		switch S1 closed when koeo
		relay K1 coil 88ohm pull-in 7V 8V release 2V
		wire 1 G1.+ S1.1
		wire 2 S1.2 K1.86
		wire 3 K1.85 G1.-
	`)
	p := NewPlan(m)
	thick, thin := alike(m, 0.01), alike(m, 0.01)
	feed, _ := m.WireByNumber("2")
	thick[feed.ID].Ohm, thin[feed.ID].Ohm = 4, 100
	before, err := p.Run(t.Context(), thick, hot)
	require.NoError(t, err)
	c := hot
	c.After = before
	taken, err := p.Run(t.Context(), thin, c)
	require.NoError(t, err)
	followed, err := p.Run(t.Context(), thin, hot)
	require.NoError(t, err)
	k := before.RelayOf("K1")
	require.True(t, before.Step("koeo").Relay[k].On)
	require.True(t, taken.Step("koeo").Relay[k].On)
	require.False(t, followed.Step("koeo").Relay[k].On)
	require.True(t, before.Agrees(taken))
	require.False(t, followed.Agrees(taken))
}

package solve

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/circuit"
)

// TestFloatingHasAReason: a wire behind an open contact has no volts at all,
// and says which contact; what nothing could ever join says that.
func TestFloatingHasAReason(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		keyswitch S1
		  run B IGN
		  crank B IGN ST
		relay K1 change-over
		switch S2 closed when koeo
		splice J1
		splice J2
		wire 1 G1.+ S1.B
		wire 2 S1.IGN K1.86
		wire 3 K1.85 G1.-
		wire 4 K1.87 J1
		wire 5 J1 S2.1
		wire 6 S2.2 J2
		wire 7 G1.+ K1.30
		splice J3
		splice J4
		wire 8 J3 J4
	`)
	h := playCase(t, m, alike(m, 0.01), hot)
	why := func(step, terminal string) string {
		at, ok := m.TerminalByName(terminal)
		require.True(t, ok)
		r := h.Step(step).Reading(at)
		require.False(t, r.OK, "%s reads %g V", terminal, r.Volts)
		require.True(t, math.IsNaN(h.Step(step).Volts[at.ID]))
		return r.Reason
	}
	require.Equal(t, "floating: since K1 contact 30-87 is open", why("off", "J1"))
	require.Equal(t, "floating: since S2 contact 1-2 is open", why("off", "J2"))
	require.Equal(t, "floating: since S2 contact 1-2 is open", why("prime", "J2"))
	require.Equal(t, "floating: since S1 contact B-ST is open", why("prime", "S1.ST"))
	require.Equal(t, "floating: since K1 contact 30-87a is open", why("prime", "K1.87a"))
	require.Equal(t, "floating: nothing joins it to G1.-", why("off", "J4"))
	require.Greater(t, volts(t, h, "koeo", "J2"), 12.0)
	require.Greater(t, volts(t, h, "crank", "S1.ST"), 12.0)
}

// TestFloatingAgreesWithTheGraph: a node floats in the solver exactly when no
// closed link leads from it to the reference.
func TestFloatingAgreesWithTheGraph(t *testing.T) {
	for _, text := range []string{truckDraft, pumpDraft, keyedOn("ACC"), bigDraft(300)} {
		m := build(t, text)
		f := newFrame(m, Case{})
		p := newPlay(f, nil)
		require.NoError(t, p.fit(alike(m, 0.01)))
		mark := make([]bool, f.lay.count)
		const steady hopDoes = 1 << 7
		for i := range f.links {
			if f.links[i].kind != circuit.Regulator {
				p.scratch.hops[i].does |= steady
			}
		}
		for i := range m.Steps {
			_, err := p.playStep(t.Context(), i, nil)
			require.NoError(t, err)
			p.spread(mark, []circuit.Node{0}, eitherWay, steady)
			for n := range mark {
				require.Equal(t, mark[n], !p.floats(circuit.Node(n)), "node %d in %s", n, m.Steps[i].Name)
			}
		}
	}
}

// TestNoBattery: nothing can be solved, and every reading says why.
func TestNoBattery(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		switch S1
		lamp P1 21W grounds-to frame
		wire 1 S1.2 P1.1
	`)
	h, err := Run(t.Context(), m, alike(m, 0.01), hot)
	require.NoError(t, err)
	require.Len(t, h.States, len(m.Steps))
	require.NotEmpty(t, h.Step("off").Skipped)
	at, _ := m.TerminalByName("P1.1")
	require.Equal(t, "floating: the draft has no battery or other source", h.Step("off").Reading(at).Reason)
}

// TestBatteryOfItsOwn: a circuit that nothing joins to the reference has no
// volts against it, yet its relay works.
func TestBatteryOfItsOwn(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		battery G2
		relay K1
		lamp P1 21W grounds-to frame
		wire 1 G2.+ K1.86
		wire 2 K1.85 G2.-
		wire 3 G1.+ K1.30
		wire 4 K1.87 P1.1
	`)
	h := playCase(t, m, alike(m, 0.01), hot)
	require.True(t, relay(t, h, "off", "K1").On)
	require.Greater(t, volts(t, h, "off", "P1.1"), 12.0)
	at, _ := m.TerminalByName("K1.86")
	require.Equal(t, "floating: nothing joins it to G1.-", h.Step("off").Reading(at).Reason)
}

package deck

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/solve"
)

// TestLiveDecksAsExported: one live deck a step, as the command writes it, ends
// with the contacts that legwork found, in all shipped drafts.
func TestLiveDecksAsExported(t *testing.T) {
	path := simulator(t)
	type moment struct {
		n *network
		s *solve.State
	}
	var list []moment
	var decks []string
	moving := 0
	for _, n := range shipped(t) {
		for step := range n.hist.States {
			k := n.decks.Live(step)
			for r, c := range k.Contacts {
				if !c.Fixed {
					moving++
				} else {
					require.Equal(t, n.hist.States[step].Relay[r].On, c.On, "%s: what does not move stands as found", n.name)
				}
			}
			list, decks = append(list, moment{n, n.hist.States[step]}), append(decks, written(t, k))
		}
	}
	require.Greater(t, moving, 1000)
	if path == "" {
		t.Log("there is no ngspice here: the decks are written, not run")
		return
	}
	for i, a := range simulate(t, path, decks) {
		n, s := list[i].n, list[i].s
		require.True(t, a.found(), "%s %s", n.name, s.Step.Name)
		for r := range s.Relay {
			if v, free := a.volts[fmt.Sprint("k", r)]; free {
				require.Equal(t, s.Relay[r].On, v > 0.5, "%s %s: %s", n.name, s.Step.Name, n.hist.Relays[r].Name)
			}
		}
	}
}

// TestOpenDiodesAreLeftOut: what a case takes to be open is in no deck.
func TestOpenDiodesAreLeftOut(t *testing.T) {
	for _, h := range hands(t) {
		if h.name != "19-turned-diode.cir" {
			continue
		}
		m, hist, wires := h.play(t)
		relay, ok := m.DeviceByName("K1")
		require.True(t, ok)
		diode := func(k solve.Case) bool {
			open, err := solve.Run(t.Context(), m, wires, k)
			require.NoError(t, err)
			return strings.Contains(written(t, New(open, wires).Frozen(hist.Step(h.step).Step.ID)), "> 0.6 ?")
		}
		require.True(t, diode(solve.Case{}))
		require.False(t, diode(solve.Case{Open: []*model.Device{relay}}))
		return
	}
	require.Fail(t, "there is no such deck")
}

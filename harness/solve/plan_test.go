package solve

import (
	"context"
	"math"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/part"
)

// TestPlanServesSeveralGoroutines: every run of one plan gives the same, in
// whatever order and however many at a time.
func TestPlanServesSeveralGoroutines(t *testing.T) {
	m := build(t, truckDraft)
	wires := truckWires(m)
	p := NewPlan(m)
	cases := []Case{{}, {Corner: part.ColdStart}, {Grade: part.Nominal}}
	want := make([]*History, len(cases))
	for i, c := range cases {
		want[i] = playCase(t, m, wires, c)
	}
	var all sync.WaitGroup
	got := make([]*History, 24)
	errs := make([]error, len(got))
	for i := range got {
		all.Go(func() { got[i], errs[i] = p.Run(context.Background(), wires, cases[i%len(cases)]) })
	}
	all.Wait()
	for i, h := range got {
		require.NoError(t, errs[i])
		for s := range h.States {
			a, b := want[i%len(cases)].States[s], h.States[s]
			for v := range a.Volts {
				require.False(t, math.IsNaN(a.Volts[v]) != math.IsNaN(b.Volts[v]) || a.Volts[v]-b.Volts[v] > 0 || b.Volts[v]-a.Volts[v] > 0,
					"%g against %g", a.Volts[v], b.Volts[v])
			}
			require.Equal(t, a.Relay, b.Relay)
		}
	}
}

// TestPlanFollowsItsConductors: a plan may be played with other wires.
func TestPlanFollowsItsConductors(t *testing.T) {
	m := build(t, pumpDraft)
	p := NewPlan(m)
	for _, chain := range []float64{12, 120, 12} {
		h, err := p.Run(t.Context(), pumpWires(m, chain), hot)
		require.NoError(t, err)
		again := playCase(t, m, pumpWires(m, chain), hot)
		require.InDelta(t, volts(t, again, "prime", "M2.+"), volts(t, h, "prime", "M2.+"), 1e-12)
	}
}

// TestPlanTakesUpAChosenRating: a fuse without a rating is ideal until one is
// chosen; 15 A has 4.80 mohm cold (table of blade fuses).
func TestPlanTakesUpAChosenRating(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 grounds-to frame
		fuse F1
		motor M1 draws 8A grounds-to frame
		wire 1 G1.+ F1.1
		wire 2 F1.2 M1.+
	`)
	p := NewPlan(m)
	drop := func() float64 {
		h, err := p.Run(t.Context(), alike(m, 0.01), hot)
		require.NoError(t, err)
		return volts(t, h, "off", "F1.1") - volts(t, h, "off", "F1.2")
	}
	require.InDelta(t, 0, drop(), 1e-4)
	f1, _ := m.DeviceByName("F1")
	f1.FuseRatedA = 15
	require.InDelta(t, 8*0.0048*(1+0.42*64/225), drop(), 1e-5)
}

func TestRunRefuses(t *testing.T) {
	m := build(t, truckDraft)
	wires := truckWires(m)
	_, err := Run(t.Context(), m, wires[1:], hot)
	require.ErrorContains(t, err, "conductors")
	for _, ohm := range []float64{math.NaN(), -1, math.Inf(1)} {
		bad := truckWires(m)
		bad[3].Ohm = ohm
		_, err = Run(t.Context(), m, bad, hot)
		require.ErrorContains(t, err, "wire "+m.Wires[3].Number, "%g", ohm)
	}
	_, err = Run(t.Context(), m, wires, Case{Corner: 7})
	require.Error(t, err)
	gone, cancel := context.WithCancel(t.Context())
	cancel()
	_, err = Run(gone, m, wires, hot)
	require.ErrorIs(t, err, context.Canceled)
}

// TestNodeLawAtJoints adds up the wires at every stud and splice of the big
// vehicle with another bookkeeping than the solver's.
func TestNodeLawAtJoints(t *testing.T) {
	m := build(t, bigDraft(600))
	h := playCase(t, m, alike(m, 0.005), hot)
	seen := 0
	for _, s := range h.States {
		for _, at := range m.Terminals {
			if at.Device.Kind.Name != "splice" {
				continue
			}
			sum := 0.0
			for _, e := range at.Ends {
				if e.From {
					sum += s.WireA[e.Wire.ID]
				} else {
					sum -= s.WireA[e.Wire.ID]
				}
			}
			require.InDelta(t, 0, sum, 1e-6, "%s in %s", at.Device.Name, s.Step.Name)
			seen++
		}
	}
	require.Greater(t, seen, 500)
}

// TestLastGivesWhatRunGives: what a player inherits of one before it changes no
// figure, whether the networks are alike or not.
func TestLastGivesWhatRunGives(t *testing.T) {
	m := build(t, truckDraft)
	wires := truckWires(m)
	p := NewPlan(m)
	_, err := p.Run(t.Context(), wires, hot)
	require.NoError(t, err)
	for _, c := range []Case{{Corner: part.ColdStart}, {Grade: part.Nominal}, {}, {Grade: part.Nominal, Corner: part.ColdStart}} {
		want := playCase(t, m, wires, c)
		got, err := p.Last(t.Context(), wires, c)
		require.NoError(t, err)
		require.Len(t, got.States, len(want.States))
		for i, s := range want.States {
			require.Equal(t, bits(s.Volts), bits(got.States[i].Volts), s.Step.Name)
			require.Equal(t, bits(s.WireA), bits(got.States[i].WireA), s.Step.Name)
			require.Equal(t, s.Relay, got.States[i].Relay, s.Step.Name)
		}
	}
	_, err = p.Last(t.Context(), wires[1:], hot)
	require.Error(t, err)
}

func bits(list []float64) []uint64 {
	out := make([]uint64, len(list))
	for i, v := range list {
		out[i] = math.Float64bits(v)
	}
	return out
}

package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/circuit"
)

// The laws by hand: 540 A CCA, draws 160 A, stall 420 A give 18.9 mohm and
// 7.80 V. By hand: Rb = 6.0/540 = 11.111 mohm; (12.6 - 420 x 0.011111)/420 =
// 18.889 mohm; 12.6 - 160 x 0.030 = 7.8 V. Cold: 12.6 - 320 x 0.030 = 3.0 V.
func TestStarterLaw(t *testing.T) {
	battery := pinned(device(t, "battery", say(of("battery"), "cca", 540)))
	starter := pinned(device(t, "starter", say(of("starter"), "draws", 160), say(of("starter"), "stall", 420),
		say(of("starter"), "pull-in", 38), say(of("starter"), "hold", 9)))
	Acquaint([]*Device{starter, battery})
	require.InDelta(t, 0.0111111, starter.BatteryOhm, 1e-7)

	s := stamped(starter, HotSoak, Sure)
	locked := branch(t, s, LoadElement, "B", "-", 5)
	require.Equal(t, circuit.Resistor, locked.Law.Kind)
	require.InDelta(t, 0.0188889, locked.Law.Ohm, 1e-7)
	turning := branch(t, s, LoadElement, "B", "-", 6)
	require.Equal(t, circuit.Source, turning.Law.Kind)
	require.InDelta(t, 7.80, turning.Law.Volt, 1e-9)
	require.InDelta(t, 3.00, branch(t, stamped(starter, ColdStart, Sure), LoadElement, "B", "-", 6).Law.Volt, 1e-9)
	// Both windings take 38 A at 12 V, the holding one 9 A of them.
	hold := branch(t, s, LoadElement, "S", "-", 5).Law.Ohm
	pull := branch(t, s, CoilElement, "S", "M", 5).Law.Ohm
	require.InDelta(t, 38, 12/hold+12/pull, 1e-9)
	require.InDelta(t, 9, 12/hold, 1e-9)
}

// By hand: rest 12.65 V, crank 12.6 V, charge 14.2 - 2 x R.
func TestBatteryLaw(t *testing.T) {
	battery := pinned(device(t, "battery", say(of("battery"), "cca", 540)))
	charger := pinned(device(t, "alternator", say(of("alternator"), "setpoint", 14.2)))
	emf := func(c Corner, step int) (float64, float64) {
		b := branch(t, stamped(battery, c, Sure), SourceElement, "+", "-", step)
		return b.Law.Volt, b.Law.Ohm
	}
	running, _ := emf(HotSoak, 7)
	require.Equal(t, 12.65, running, "nothing charges it")
	Acquaint([]*Device{battery, charger})
	for _, c := range []struct {
		step int
		want float64
	}{{0, 12.65}, {2, 12.65}, {5, 12.6}, {6, 12.6}, {7, 14.2 - 2*6.0/540}, {9, 12.65}, {10, 12.65}} {
		got, ohm := emf(HotSoak, c.step)
		require.InDelta(t, c.want, got, 1e-12, steps[c.step].Name)
		require.InDelta(t, 6.0/540, ohm, 1e-12)
	}
	_, cold := emf(ColdStart, 6)
	require.InDelta(t, 0.010, cold, 1e-12) // 5.4/540
	// In a 24 V system a battery without its own volts is two in series.
	battery.SystemV = 24
	rest, ohm := emf(HotSoak, 0)
	require.InDelta(t, 25.3, rest, 1e-12)
	require.InDelta(t, 12.0/540, ohm, 1e-12)
}

// The defaults by hand: blade 15 A 4.80 mohm cold; bolt-down 56 mV / rating,
// low, so only nominal.
func TestFuseLaw(t *testing.T) {
	blade := pinned(device(t, "fuse", say(of("fuse"), "rating", 15)))
	law := branch(t, stamped(blade, HotSoak, Sure), FuseElement, "1", "2", 2).Law
	require.Equal(t, circuit.Law{Kind: circuit.Warming, Ohm: 0.0048, Amp: 15, Rise: 0.42}, law)

	bolted := pinned(device(t, "fuse", say(of("fuse"), "rating", 80), word(of("fuse"), "style", "bolt-down")))
	require.InDelta(t, closedOhm, branch(t, stamped(bolted, HotSoak, Sure), FuseElement, "1", "2", 2).Law.Ohm, 1e-12)
	require.InDelta(t, 0.0007, branch(t, stamped(bolted, HotSoak, Nominal), FuseElement, "1", "2", 2).Law.Ohm, 1e-12)
	require.Equal(t, "bolt-down", bolted.Kind.Protects(bolted)[0].Family)

	unrated := pinned(device(t, "fuse"))
	require.InDelta(t, closedOhm, branch(t, stamped(unrated, HotSoak, Sure), FuseElement, "1", "2", 2).Law.Ohm, 1e-12)
	unrated.FuseRatedA = 10 // chosen by legwork: 7.70 mohm
	require.InDelta(t, 0.0077, branch(t, stamped(unrated, HotSoak, Sure), FuseElement, "1", "2", 2).Law.Ohm, 1e-12)
	require.Zero(t, unrated.Kind.Protects(unrated)[0].RatedA, "the draft's rating, not the chosen one")
}

// Loads: 21 W at 13.5 V is 8.679 ohm; a motor is constant down to the least
// of its needs; 0.5 V at 0.5 A is 1 ohm.
func TestLoadLaws(t *testing.T) {
	lamp := pinned(device(t, "lamp", say(of("lamp"), "power", 21)))
	require.InDelta(t, 13.5*13.5/21, branch(t, stamped(lamp, HotSoak, Sure), LoadElement, "1", "2", 2).Law.Ohm, 1e-9)

	m := of("motor")
	motor := pinned(device(t, "motor", say(m, "draws", 8.5, 13.5), on(say(m, "needs", 10.5), atRunning), on(say(m, "needs", 8), atCrank)))
	law := branch(t, stamped(motor, HotSoak, Sure), LoadElement, "+", "-", 2).Law
	require.Equal(t, circuit.ConstantCurrent, law.Kind)
	require.Equal(t, 8.5, law.Amp)
	require.Equal(t, 8.0, law.Knee)
	draw := motor.Kind.Draws(motor)[0]
	require.Equal(t, []Need{{Volts: 10.5, Steps: atRunning, Said: true}, {Volts: 8, Steps: atCrank, Said: true}}, draw.Needs)
	require.False(t, draw.Pump)
	motor.Label = "Tail lift pump" // hydraulic: it may run with the engine still
	require.False(t, motor.Kind.Draws(motor)[0].Pump)
	motor.Label = "Fuel lift pump"
	require.True(t, motor.Kind.Draws(motor)[0].Pump)
	require.True(t, motor.Kind.Draws(motor)[0].Critical)
	require.Equal(t, "X1 moves fuel", motor.Kind.Assumes(motor)[0].What)

	heater := pinned(device(t, "heater", say(of("heater"), "draws", 10), say(of("heater"), "cycle", 180, 600)))
	require.InDelta(t, 0.3, heater.Kind.Draws(heater)[0].DutyFrac, 1e-12)
}

// The three zones: with the pair both count; without, out only below
// must-release and in from 8.0 V.
func TestRelayLaw(t *testing.T) {
	r := of("relay")
	state := func(values ...Value) State {
		return stamped(pinned(device(t, "relay", values...)), HotSoak, Sure).States[0]
	}
	st := state(say(r, "coil", 90), say(r, "pull-in", 6.5, 8))
	require.Equal(t, []float64{6.5, 8, 1.2, 90}, []float64{st.OutBelowV, st.InAboveV, st.ReleaseV, st.CoilOhm})
	require.True(t, st.PairSaid)
	st = state()
	require.Equal(t, []float64{1.2, 8, 1.2, 85}, []float64{st.OutBelowV, st.InAboveV, st.ReleaseV, st.CoilOhm})
	require.False(t, st.PairSaid)
	st = state(say(r, "pull-in", 7))
	require.Equal(t, []float64{1.2, 7}, []float64{st.OutBelowV, st.InAboveV})

	diode := pinned(device(t, "relay", word(r, "suppress", "diode")))
	s := stamped(diode, HotSoak, Sure)
	require.Equal(t, circuit.Diode, branch(t, s, Element, "85", "86", 2).Law.Kind, "anode on 85: no current with 86 positive")
	require.Equal(t, "diode", diode.Kind.Kicks(diode)[0].Suppressed)
	require.False(t, diode.has("87a"))
	change := pinned(device(t, "relay", word(r, "action", "change-over")))
	require.True(t, branch(t, stamped(change, HotSoak, Sure), ContactElement, "30", "87a", 2).Rest)
	require.True(t, change.Kind.Switches(change)[1].AtRest)
}

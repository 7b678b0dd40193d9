package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/circuit"
)

// controller is A1 of the small draft in the language page.
func controller(t *testing.T) *Device {
	feed, low := roleOf("feed").Settings, roleOf("low-side").Settings
	metal := say(of("module"), "ground-wanted")
	metal.Word = "block"
	d := device(t, "module", metal)
	d.Lines = []Line{
		moduleLine("BAT", "feed", on(say(feed, "current", 0.4), always), say(feed, "asleep", 0.002)),
		moduleLine("IGN", "feed", on(say(feed, "current", 1.1), always&^atOff), say(feed, "above", 8), say(feed, "holds", 0.050)),
		moduleLine("PUMP", "low-side", on(say(low, "current", 0.5), atPrime|atCrank|atRunning)),
		moduleLine("SG", "sensor-ground"),
		moduleLine("GND", "ground"),
	}
	return pinned(d)
}

func TestModuleLaw(t *testing.T) {
	d := controller(t)
	s := stamped(d, HotSoak, Sure)
	st := s.States[0]
	require.Equal(t, AliveState, st.Kind)
	require.Equal(t, 0.050, st.HoldsS)
	// A feed without "above" needs half the system's volts.
	require.Equal(t, []Watch{
		{Plus: "BAT", Minus: "GND", AtLeastV: 6, Steps: always}, {Plus: "IGN", Minus: "GND", AtLeastV: 8, Steps: always},
	}, st.Watch)

	var awake, asleep []circuit.Law
	for _, b := range s.Branches {
		if b.Use == LoadElement && b.A == "BAT" && b.Rest {
			asleep = append(asleep, b.Law)
		} else if b.Use == LoadElement && b.A == "BAT" {
			awake = append(awake, b.Law)
		}
	}
	require.Equal(t, []float64{0.4, 0.002}, []float64{awake[0].Amp, asleep[0].Amp})

	// By hand: a low-side driver drops 0.5 V at rated current: 1 ohm at 0.5 A.
	pump := branch(t, s, OutputElement, "PUMP", "GND", 2)
	require.InDelta(t, 1.0, pump.Law.Ohm, 1e-12)
	require.Equal(t, 0, pump.State, "only while alive")
	require.Equal(t, atPrime|atCrank|atRunning, pump.Steps)
	require.InDelta(t, closedOhm, branch(t, s, Element, "GND", "SG", 2).Law.Ohm, 1e-12)
}

func TestModuleAbilities(t *testing.T) {
	d := controller(t)
	require.Equal(t, []Output{{Pin: "PUMP", Other: "GND", Sinks: true, RatedA: 0.5, Steps: atPrime | atCrank | atRunning, DutyFrac: 1}}, d.Kind.Drives(d))
	require.Equal(t, []Return{{Pin: "SG", Wanted: "block", Sensor: true}, {Pin: "GND", Wanted: "block"}}, d.Kind.Grounds(d))
	draws := d.Kind.Draws(d)
	require.Equal(t, []string{"BAT", "IGN"}, []string{draws[0].Plus, draws[1].Plus})
	require.True(t, draws[0].Asleep && !draws[1].Asleep && draws[0].Critical && draws[1].Constant)
	require.Equal(t, []Need{{Volts: 8, Steps: always &^ atOff, Said: true}}, draws[1].Needs)
	require.Empty(t, d.Kind.Assumes(d))

	// Without its own figure a feed that must be fed at off draws 2 mA, a guess.
	d.Lines[0].Values = d.Lines[0].Values[:1]
	require.Equal(t, 0.002, d.Kind.Draws(d)[0].AsleepA)
	require.Equal(t, "asleep draw of X1.BAT", d.Kind.Assumes(d)[0].What)
}

func TestHighSideTakesItsFeed(t *testing.T) {
	high := roleOf("high-side").Settings
	d := controller(t)
	fed := say(high, "fed-by")
	fed.Word = "IGN"
	d.Lines = append(d.Lines, moduleLine("FAN", "high-side", on(say(high, "current", 2), atRunning), fed),
		moduleLine("LAMP", "high-side", on(say(high, "current", 1), atRunning)))
	s := stamped(pinned(d), HotSoak, Sure)
	require.InDelta(t, 0.25, branch(t, s, OutputElement, "IGN", "FAN", 7).Law.Ohm, 1e-12)
	require.InDelta(t, 0.50, branch(t, s, OutputElement, "BAT", "LAMP", 7).Law.Ohm, 1e-12)
}

// A module whose lines hold no ground has nothing to work against.
func TestModuleWithoutGroundDoesNothing(t *testing.T) {
	d := controller(t)
	d.Lines = d.Lines[:3]
	require.Empty(t, stamped(pinned(d), HotSoak, Sure).Branches)
	require.Empty(t, d.Kind.Draws(d))
}

// The key of the language page, without and with its gap line.
func TestKeyPositions(t *testing.T) {
	d := device(t, "keyswitch")
	d.Lines = []Line{
		{Name: "off"}, {Name: "acc", Refs: []string{"B", "ACC"}}, {Name: "run", Refs: []string{"ACC", "B", "IGN"}},
		{Name: "crank", Refs: []string{"B", "IGN", "ST"}},
	}
	closedAt := func(a, b string) StepSet {
		set := NoSteps
		for _, x := range stamped(d, HotSoak, Nominal).Branches {
			if x.A == a && x.B == b || x.A == b && x.B == a {
				set |= x.Steps
				require.InDelta(t, 0.010, x.Law.Ohm, 1e-12)
			}
		}
		return set
	}
	pinned(d)
	require.True(t, d.has("ST"))
	require.Equal(t, 4, len(d.Pins))
	require.Equal(t, StepSet(1<<1|1<<2|1<<3|1<<7|1<<8), closedAt("B", "ACC"))
	// What run and crank both join, B and IGN, stays joined in the gap.
	require.Equal(t, StepSet(1<<4|1<<5|1<<6), closedAt("B", "IGN"))
	require.Equal(t, "gap of X1", d.Kind.Assumes(d)[0].What)
	d.Lines = append(d.Lines, Line{Name: "gap", Refs: []string{"B"}})
	require.Equal(t, atEngage|atCrank, closedAt("B", "IGN"))
	require.Empty(t, d.Kind.Assumes(d))
	require.InDelta(t, closedOhm, stamped(d, HotSoak, Sure).Branches[0].Law.Ohm, 1e-12, "10 mohm is low: not sure")
}

func TestSwitchSteps(t *testing.T) {
	s := of("switch")
	closedIn := func(values ...Value) StepSet {
		return branchOf(stamped(pinned(device(t, "switch", values...)), HotSoak, Sure)).Steps
	}
	require.Equal(t, always&^(1<<0|1<<9|1<<10), closedIn(), "a guess: whenever the key is not off")
	require.Equal(t, atRunning, closedIn(on(say(s, "closed"), atRunning)))
	require.Equal(t, always, closedIn(say(s, "closed")))
	require.Equal(t, always&^atRunning, closedIn(on(say(s, "open"), atRunning)))
	require.Equal(t, NoSteps, closedIn(say(s, "open")))
	d := pinned(device(t, "switch", word(s, "action", "change-over"), on(say(s, "closed"), atRunning)))
	require.Equal(t, always&^atRunning, branch(t, stamped(d, HotSoak, Sure), ContactElement, "COM", "NC", 0).Steps)
	require.False(t, d.has("1"))
}

func branchOf(s *Stamper) Branch { return s.Branches[0] }

// A second feed that this harness leaves open keeps no controller asleep, and
// is no load; one that is wired is both.
func TestFeedLeftOpen(t *testing.T) {
	k, _ := Of("module")
	d := pinned(&Device{Name: "A1", Kind: k, SystemV: 12, Lines: []Line{
		{Name: "BAT", Role: roleOf("feed")}, {Name: "AUX", Role: roleOf("feed")}, {Name: "GND", Role: roleOf("ground")},
		{Name: "CH", Role: roleOf("can-high")}, {Name: "CL", Role: roleOf("can-low")}, {Name: "X", Role: roleOf("unused")},
	}})
	watched := func() int { return len(stamped(d, HotSoak, Sure).States[0].Watch) }
	require.Equal(t, 2, watched())
	require.Len(t, k.Draws(d), 2)
	i, _ := d.PinOf("AUX")
	d.Pins[i].Quiet = true
	require.Equal(t, 1, watched())
	require.Len(t, k.Draws(d), 1)
	d.Pins[i].Wired = true
	require.Equal(t, 2, watched())
}

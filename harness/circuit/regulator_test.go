package circuit

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func regulator14(volt, amp float64, sense Node) Law {
	return Law{Kind: Regulator, Volt: volt, Amp: amp, SenseA: sense}
}

// charging is an alternator at node 1 with a cable to the battery at node 2, a
// load there, and its sense at the given node.
func charging(volt, amp, emf, loadOhm float64, sense Node) (n *Net, alt, bat Branch) {
	n = chain(2)
	alt = n.Add(1, 0, regulator14(volt, amp, sense))
	n.Add(1, 2, ohms(0.004))
	bat = n.Add(2, 0, source(emf, 0.011))
	n.Add(2, 0, ohms(loadOhm))
	return n, alt, bat
}

// The battery takes (V - E)/R at a sensed 14.2 V, the load V/R, the alternator
// gives both: Ohm's law. The charge e.m.f. is the set point less 2 A x R.
func TestAlternatorRegulates(t *testing.T) {
	for _, sense := range []Node{2, 1} {
		n, alt, bat := charging(14.2, 110, 14.2-2*0.011, 0.71, sense)
		s := solved(t, n)
		require.Equal(t, Regulating, s.Mode(alt))
		v := volts(t, s, 2)
		near(t, 14.2, volts(t, s, sense), "exactly at the set point")
		require.InEpsilon(t, s.I(bat)+v/0.71, -s.I(alt), 1e-12, "current balance")
		if sense == 2 {
			require.InDelta(t, 2, s.I(bat), 1e-11)
			require.InDelta(t, -22, s.I(alt), 1e-11)
			near(t, 14.2+22*0.004, volts(t, s, 1), "the cable's drop is made good")
		}
	}
}

// A 12.6 V e.m.f. would take 145 A and more: the alternator stays at its limit,
// where 110 = (V - E)/R + V/load.
func TestAlternatorAtLimit(t *testing.T) {
	n, alt, _ := charging(14.2, 110, 12.6, 0.71, 2)
	s := solved(t, n)
	require.Equal(t, AtLimit, s.Mode(alt))
	require.Equal(t, -110.0, s.I(alt))
	near(t, (110+12.6/0.011)/(1/0.011+1/0.71), volts(t, s, 2), "Millman with a current")
}

// Above the set point it pushes nothing.
func TestAlternatorBlocked(t *testing.T) {
	n, alt, bat := charging(12, 110, 12.65, 5, 2)
	s := solved(t, n)
	require.Equal(t, Blocked, s.Mode(alt))
	require.Zero(t, s.I(alt))
	require.InEpsilon(t, -12.65/5.011, s.I(bat), 1e-12, "the battery feeds the load")
}

// What no current can hold: a sense that floats, a way back that is cut, a
// sense that does not follow.
func TestRegulatorOutOfReach(t *testing.T) {
	for _, c := range []struct {
		name  string
		sense Node
		cut   bool
		mode  Mode
	}{
		{"sense wire lost", 3, false, Blocked},
		{"sense on another source, below set point", 4, false, AtLimit},
		{"sense on another source, above set point", 5, false, Blocked},
		{"no way back", 2, true, Blocked},
	} {
		n, alt, _ := charging(14.2, 40, 14, 1, c.sense)
		for range 3 {
			n.AddNode()
		}
		n.Add(4, 0, source(9, 1))
		n.Add(5, 0, source(16, 1))
		s := NewSolver(n)
		s.SetOn(1, !c.cut) // the alternator's cable
		sol, err := s.Solve(context.Background())
		require.NoError(t, err)
		require.True(t, sol.Met, c.name)
		require.Equal(t, c.mode, sol.Mode(alt), c.name)
	}
}

// Three alternators with different set points on one post: the highest carries
// to its limit, then the next; those above are blocked. Equal set points and
// the same sense leave the division open: the lower number carries.
func TestSeveralRegulators(t *testing.T) {
	for _, c := range []struct {
		ohm   float64
		modes [3]Mode
		volt  float64
	}{
		{14.4 / 20, [3]Mode{Blocked, Regulating, Blocked}, 14.4},
		{14.2 / 50, [3]Mode{Regulating, AtLimit, Blocked}, 14.2},
		{14.2 / 80, [3]Mode{AtLimit, AtLimit, Regulating}, 14.2},
		{1. / 10, [3]Mode{AtLimit, AtLimit, AtLimit}, 90 * (1. / 10)},
	} {
		n := chain(1)
		var alts [3]Branch
		for i, law := range []Law{regulator14(14.2, 30, 1), regulator14(14.4, 30, 1), regulator14(14.2, 30, 1)} {
			alts[i] = n.Add(1, 0, law)
		}
		n.Add(1, 0, ohms(c.ohm))
		s := solved(t, n)
		near(t, c.volt, volts(t, s, 1), "post")
		for i, a := range alts {
			require.Equal(t, c.modes[i], s.Mode(a), "alternator %d at %g ohm", i, c.ohm)
		}
	}
}

// Two alternators far apart, each at its own post: both hold their set points,
// and their currents follow from Kirchhoff's laws alone.
func TestRegulatorsApart(t *testing.T) {
	n := chain(2)
	first := n.Add(1, 0, regulator14(14.2, 100, 1))
	second := n.Add(2, 0, regulator14(14.0, 100, 2))
	link := n.Add(1, 2, ohms(0.05))
	n.Add(1, 0, ohms(1.42))
	n.Add(2, 0, ohms(0.7))
	s := solved(t, n)
	near(t, 14.2, volts(t, s, 1), "first")
	near(t, 14.0, volts(t, s, 2), "second")
	require.InDelta(t, 4, s.I(link), 1e-11)
	require.InDelta(t, -14, s.I(first), 1e-11)
	require.InDelta(t, -16, s.I(second), 1e-11)
}

// With a regulator the limit of a load lies at the alternator's limit: 40 A
// more than the battery gives, E = 12.6 + 40 x 0.011 without other loads.
func TestCollapseWithRegulator(t *testing.T) {
	for _, c := range []struct {
		share float64
		fed   bool
	}{{0.999, true}, {1.001, false}} {
		n := chain(2)
		n.Add(1, 0, source(12.6, 0.011))
		n.Add(1, 0, regulator14(14.2, 40, 1))
		n.Add(1, 2, ohms(0.09))
		const e, r = 12.6 + 40*0.011, 0.101
		load := n.Add(2, 0, power(c.share*e*e/4/r, 4))
		s := solved(t, n)
		require.Equal(t, c.fed, len(s.Collapsed) == 0, "share %g", c.share)
		if l, ok := s.Limit(load); ok {
			require.InEpsilon(t, e*e/4/r, l.MostW, 1e-9)
		}
	}
}

// Constant power at a regulated post sees no source resistance: V = 14.2 V, and
// the alternator gives P/V.
func TestPowerAtRegulatedPost(t *testing.T) {
	n := chain(1)
	alt := n.Add(1, 0, regulator14(14.2, 60, 1))
	n.Add(1, 0, source(14.178, 0.011))
	n.Add(1, 0, power(500, 7))
	s := solved(t, n)
	near(t, 14.2, volts(t, s, 1), "held")
	require.InDelta(t, 2+500/14.2, math.Abs(s.I(alt)), 1e-10)
}

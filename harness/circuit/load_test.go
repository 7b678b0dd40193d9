package circuit

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func power(watt, knee float64) Law  { return Law{Kind: ConstantPower, Watt: watt, Knee: knee} }
func current(amp, knee float64) Law { return Law{Kind: ConstantCurrent, Amp: amp, Knee: knee} }

// The higher root of V^2 - E V + P R = 0.
func TestConstantPowerClosedForm(t *testing.T) {
	const e, r = 12.6, 0.1
	for _, c := range []struct {
		volt   float64 // made up, P follows
		passes int
	}{{12.5, 6}, {11.3, 7}, {9, 8}, {7.5, 8}, {6.5, 10}, {6.31, 14}} {
		p := c.volt * (e - c.volt) / r
		n := chain(1)
		n.Add(1, 0, source(e, r))
		load := n.Add(1, 0, power(p, 5))
		s := solved(t, n)
		want := (e + math.Sqrt(e*e-4*p*r)) / 2
		// near the nose the root is as uncertain as the square root of rounding over its distance
		require.InDelta(t, want, volts(t, s, 1), 1e-10/(c.volt-e/2), "V at %g W", p)
		require.InEpsilon(t, p, s.I(load)*volts(t, s, 1), 1e-12, "the load takes its watts")
		require.LessOrEqual(t, s.Passes, c.passes, "passes at %g V", c.volt)
		require.Equal(t, Conducting, s.Mode(load))
		require.Empty(t, s.Collapsed)
	}
}

// Past E^2/4R there is no solution: 12.6^2/0.4 = 396.9 W.
func TestCollapse(t *testing.T) {
	for _, knee := range []float64{0, 3, 6} {
		n := chain(1)
		n.Add(1, 0, source(12.6, 0.1))
		load := n.Add(1, 0, power(397, knee))
		s := solved(t, n)
		require.Equal(t, []Branch{load}, s.Collapsed)
		require.Equal(t, Starved, s.Mode(load))
		l, ok := s.Limit(load)
		require.True(t, ok)
		require.InEpsilon(t, 12.6, l.EMFV, 1e-12)
		require.InEpsilon(t, 0.1, l.Ohm, 1e-12)
		require.InEpsilon(t, 396.9, l.MostW, 1e-12)
		near(t, 12.6*1e6/(1e6+0.1), volts(t, s, 1), "only its leak is left")
		require.Less(t, s.Passes, 40, "named at once, not after a slide")
	}
}

// With its knee above E/2 a load has to be fed at the knee: 9 (12.6 - 9)/0.1 = 324 W.
func TestCollapseAtKnee(t *testing.T) {
	for _, c := range []struct {
		watt float64
		fed  bool
	}{{323.9, true}, {324.1, false}} {
		n := chain(1)
		n.Add(1, 0, source(12.6, 0.1))
		load := n.Add(1, 0, power(c.watt, 9))
		s := solved(t, n)
		require.Equal(t, c.fed, len(s.Collapsed) == 0, "%g W", c.watt)
		if l, ok := s.Limit(load); ok {
			require.InEpsilon(t, 324, l.MostW, 1e-12)
		}
	}
}

// Below its knee from the start, a load is off in accord with its law: no collapse.
func TestPowerBelowKnee(t *testing.T) {
	n := chain(1)
	n.Add(1, 0, source(6, 0.1))
	load := n.Add(1, 0, power(50, 7))
	s := solved(t, n)
	require.Empty(t, s.Collapsed)
	require.InEpsilon(t, 6/(1e6+0.1), s.I(load), 1e-12)
	require.Equal(t, Starved, s.Mode(load))
}

// Loads on one post count as one: V from the sum of their watts. Of three loads
// that can't all be fed (396.9 W) the one with the highest knee goes.
func TestSharedFeed(t *testing.T) {
	build := func(watts, knees []float64) *Net {
		n := chain(1)
		n.Add(1, 0, source(12.6, 0.1))
		for i, w := range watts {
			n.Add(1, 0, power(w, knees[i]))
		}
		return n
	}
	s := solved(t, build([]float64{100, 150, 50}, []float64{5, 5, 5}))
	near(t, (12.6+math.Sqrt(12.6*12.6-4*300*0.1))/2, volts(t, s, 1), "300 W together")
	s = solved(t, build([]float64{150, 200, 100}, []float64{5, 6, 4}))
	require.Equal(t, []Branch{2}, s.Collapsed)
	v := volts(t, s, 1)
	near(t, (12.6+math.Sqrt(12.6*12.6-4*250*0.1))/2, v+leakDrop(v), "the others live")
}

// leakDrop is what the 1 Mohm leak of the load that is out takes off at v volts,
// to first order: R v/1e6 over 1 - P R/v^2.
func leakDrop(v float64) float64 { return 0.1 * v / 1e6 / (1 - 250*0.1/(v*v)) }

// Above its knee the load takes Amp and its leak; below it is a resistor of Knee/Amp beside the leak.
func TestCurrentKnee(t *testing.T) {
	const e, r, leak = 12.0, 0.5, 1e6
	for _, amp := range []float64{3, 3.9, 4.1, 30, 3000} {
		n := chain(1)
		n.Add(1, 0, source(e, r))
		load := n.Add(1, 0, current(amp, 10))
		s := solved(t, n)
		want, mode := (e-amp*r)/(1+r/leak), Conducting
		if want < 10 {
			want, mode = e/(1+r*(amp/10+1/leak)), Starved
		}
		near(t, want, volts(t, s, 1), "V")
		require.Equal(t, mode, s.Mode(load))
		require.LessOrEqual(t, s.Passes, 8)
	}
}

// A mixture on one feed, checked by the node law: what leaves the source is what the loads take.
func TestMixedLoads(t *testing.T) {
	n := chain(2)
	b := n.Add(1, 0, source(12.6, 0.02))
	n.Add(1, 2, ohms(0.08))
	loads := []Branch{n.Add(2, 0, power(120, 6)), n.Add(2, 0, current(9, 8)), n.Add(2, 0, ohms(3))}
	s := solved(t, n)
	sum := 0.0
	for _, l := range loads {
		sum += s.I(l)
	}
	require.InEpsilon(t, sum, -s.I(b), 1e-11)
	v := volts(t, s, 2)
	require.InEpsilon(t, 120/v+9+v/1e6+v/3, sum, 1e-12)
	require.InEpsilon(t, 12.6-0.1*sum, v, 1e-12)
}

// A load behind a diode is off only while the diode has not been found to conduct.
func TestPowerBehindDiode(t *testing.T) {
	n := chain(2)
	n.Add(1, 0, source(12.6, 0.02))
	n.Add(1, 2, Law{Kind: Diode, Volt: 0.6, Ohm: 0.02})
	load := n.Add(2, 0, power(50, 7))
	s := solved(t, n)
	require.Empty(t, s.Collapsed)
	v := volts(t, s, 2)
	e := 12.6 - 0.6 + 0.02*0.6/1e7 // the diode's line meets 0 A a little below its corner
	near(t, (e+math.Sqrt(e*e-4*50*0.04))/2, v, "closed form behind a diode")
	require.InEpsilon(t, 50/v, s.I(load), 1e-12)
}

// What is off is open for good; what is on but idle leaks.
func TestSwitchedOff(t *testing.T) {
	n := chain(1)
	n.Add(1, 0, source(12, 1))
	load := n.Add(1, 0, current(2, 6))
	s := NewSolver(n)
	for _, on := range []bool{true, false, true} {
		s.SetOn(load, on)
		sol, err := s.Solve(context.Background())
		require.NoError(t, err)
		if on {
			require.InEpsilon(t, 2+sol.volts[0]/1e6, sol.I(load), 1e-12)
			continue
		}
		require.Zero(t, sol.I(load))
		near(t, 12, volts(t, sol, 1), "no load")
	}
	s.SetLaw(load, current(0, 6))
	sol, err := s.Solve(context.Background())
	require.NoError(t, err)
	require.InEpsilon(t, 12/(1e6+1), sol.I(load), 1e-12, "no amperes asked: the leak stays")
}

// Twenty alike on a feed that carries some: sheds in leaps, then lets in again
// what has room. 12.6 V behind 1 ohm give 39.69 W at most, so two of 19 W can be fed.
func TestManyOnWeakFeed(t *testing.T) {
	n := chain(1)
	n.Add(1, 0, source(12.6, 1))
	for range 20 {
		n.Add(1, 0, power(19, 4))
	}
	s := solved(t, n)
	require.Len(t, s.Collapsed, 18)
	require.InDelta(t, (12.6+math.Sqrt(12.6*12.6-4*38))/2, volts(t, s, 1), 1e-3, "but for 18 leaks")
	v := volts(t, s, 1)
	for _, b := range s.Collapsed {
		l, ok := s.Limit(b)
		require.True(t, ok)
		require.InDelta(t, v, l.EMFV, 1e-5, "what it sees is the post")
		require.InDelta(t, 1/(1+2*19/(v*v)), l.Ohm, 1e-5, "1 ohm beside the two that are fed")
	}
}

package circuit

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func ohms(r float64) Law           { return Law{Kind: Resistor, Ohm: r} }
func source(volt, ohm float64) Law { return Law{Kind: Source, Volt: volt, Ohm: ohm} }

// chain returns a network with the given number of nodes beside the reference.
func chain(nodes int) *Net {
	n := NewNet()
	for range nodes {
		n.AddNode()
	}
	return n
}

func solved(t *testing.T, n *Net) *Solution {
	t.Helper()
	s, err := NewSolver(n).Solve(context.Background())
	require.NoError(t, err)
	require.True(t, s.Met, "residual %g A after %d passes", s.Residual, s.Passes)
	return s
}

func volts(t *testing.T, s *Solution, n Node) float64 {
	t.Helper()
	v, ok := s.V(n)
	require.True(t, ok, "node %d floats", n)
	return v
}

// near allows 4 units of rounding or so: closed forms round as well.
func near(t *testing.T, want, got float64, what string) {
	t.Helper()
	require.InDelta(t, want, got, 1e-14*math.Max(1, math.Abs(want)), what)
}

// Ohm's law: E R2/(R0+R1+R2).
func TestDivider(t *testing.T) {
	n := chain(2)
	b := n.Add(1, 0, source(12, 0.5))
	n.Add(1, 2, ohms(1.5))
	r := n.Add(2, 0, ohms(4))
	s := solved(t, n)
	near(t, 8, volts(t, s, 2), "divided")
	near(t, 11, volts(t, s, 1), "at the source")
	near(t, 2, s.I(r), "load current")
	near(t, -2, s.I(b), "a delivering source counts negative")
	require.Equal(t, 1, s.Passes, "a straight network takes one pass")
}

// A ladder of 1 ohm in series and 1 ohm across, n rungs, looks like F(2n+1)/F(2n)
// ohm from its end (Fibonacci numbers; towards the golden ratio).
func TestLadder(t *testing.T) {
	for _, rungs := range []int{1, 2, 5, 20, 35} {
		n := NewNet()
		before := Node(0)
		feed := Branch(-1)
		for i := range rungs {
			node := n.AddNode()
			if i == 0 {
				feed = n.Add(node, 0, source(10, 1))
			} else {
				n.Add(before, node, ohms(1))
			}
			n.Add(node, 0, ohms(1))
			before = node
		}
		low, high := 0.0, 1.0 // F(0), F(1)
		for range 2 * rungs {
			low, high = high, low+high
		}
		s := solved(t, n)
		require.InEpsilon(t, -10*low/high, s.I(feed), 1e-14, "%d rungs", rungs)
		require.InEpsilon(t, 10/high, volts(t, s, before), 1e-14, "the last of %d rungs sees E/F(2n+1)", rungs)
	}
}

// Wheatstone bridge fed by an ideal 10 V: with a detector of Rg between the
// midpoints, i = (Va-Vb)/(Rg + R1||R2 + R3||R4), Va and Vb without detector (Thevenin).
func TestBridge(t *testing.T) {
	for _, c := range []struct{ r1, r2, r3, r4, rg float64 }{
		{1, 2, 3, 6, 5}, // balanced: r1/r2 = r3/r4
		{1, 2, 2, 1, 5},
		{0.01, 120, 7, 3, 0.2},
	} {
		n := chain(3)
		n.Join(1, n.AddNode()) // the joined node takes the source
		feed := source(10, 0)
		feed.Ohm = MinOhm
		b := n.Add(4, 0, feed)
		n.Add(1, 2, ohms(c.r1))
		n.Add(2, 0, ohms(c.r2))
		n.Add(1, 3, ohms(c.r3))
		n.Add(3, 0, ohms(c.r4))
		g := n.Add(2, 3, ohms(c.rg))
		s := solved(t, n)
		e := 10 + s.I(b)*MinOhm
		open := e*c.r2/(c.r1+c.r2) - e*c.r4/(c.r3+c.r4)
		want := open / (c.rg + c.r1*c.r2/(c.r1+c.r2) + c.r3*c.r4/(c.r3+c.r4))
		require.InDelta(t, want, s.I(g), 1e-13, "%+v", c)
	}
}

// A star of ra, rb, rc is the same at its tips as a delta with
// rab = ra + rb + ra rb/rc and so on (Kennelly 1899, from memory).
func TestStarDelta(t *testing.T) {
	const ra, rb, rc = 0.3, 7.0, 22.0
	build := func(star bool) *Net {
		n := chain(4)
		n.Add(1, 0, source(12.6, 0.02))
		n.Add(2, 0, source(5, 1))
		n.Add(3, 0, ohms(2))
		if star {
			n.Add(1, 4, ohms(ra))
			n.Add(2, 4, ohms(rb))
			n.Add(3, 4, ohms(rc))
			return n
		}
		n.Add(1, 2, ohms(ra+rb+ra*rb/rc))
		n.Add(2, 3, ohms(rb+rc+rb*rc/ra))
		n.Add(3, 1, ohms(rc+ra+rc*ra/rb))
		return n
	}
	star, delta := solved(t, build(true)), solved(t, build(false))
	for node := Node(1); node <= 3; node++ {
		near(t, volts(t, star, node), volts(t, delta, node), "tip")
	}
	_, ok := delta.V(4)
	require.False(t, ok, "nothing is on the middle node of the delta")
}

// Millman: V = (sum E/R)/(sum 1/R).
func TestTwoSources(t *testing.T) {
	n := chain(1)
	first := n.Add(1, 0, source(12.6, 0.011))
	second := n.Add(1, 0, source(11.9, 0.04))
	n.Add(1, 0, ohms(1.2))
	s := solved(t, n)
	v := (12.6/0.011 + 11.9/0.04) / (1/0.011 + 1/0.04 + 1/1.2)
	near(t, v, volts(t, s, 1), "Millman")
	near(t, (v-12.6)/0.011, s.I(first), "strong battery delivers")
	near(t, (v-11.9)/0.04, s.I(second), "weak battery is charged")
	require.Positive(t, s.I(second))
}

// Two branches between the same nodes, and one from a node to itself.
func TestParallelAndLoop(t *testing.T) {
	n := chain(2)
	n.Add(1, 0, source(12, 1))
	p := n.Add(1, 2, ohms(2))
	q := n.Add(2, 1, ohms(2))
	loop := n.Add(2, 2, ohms(3))
	n.Add(2, 0, ohms(4))
	shorted := n.Add(0, 0, source(6, 2))
	s := solved(t, n)
	near(t, 1, s.I(p), "half of 2 A")
	near(t, -1, s.I(q), "the other half, the other way about")
	near(t, 0, s.I(loop), "no volts, no current")
	near(t, -3, s.I(shorted), "a source on itself: E/R round and round")
}

// R = Ohm (1 + Rise (i/Amp)^2): the e.m.f. is made up for a known current.
func TestWarmingFuse(t *testing.T) {
	for _, amps := range []float64{-8.5, 1e-6, 8.5, 15, 270} {
		const cold, rated, rise, rest = 0.0048, 15.0, 0.42, 0.03
		hot := cold * (1 + rise*(amps/rated)*(amps/rated))
		n := chain(2)
		a, z := Node(1), Node(0)
		if amps < 0 {
			a, z = 0, 1
		}
		n.Add(a, z, source(math.Abs(amps)*(hot+rest), rest/2))
		f := n.Add(1, 2, Law{Kind: Warming, Ohm: cold, Amp: rated, Rise: rise})
		n.Add(2, 0, ohms(rest/2))
		s := solved(t, n)
		require.InEpsilon(t, amps, s.I(f), 1e-12)
		require.Equal(t, Plain, s.Mode(f))
	}
}

// Amperes forced through a fuse of a hundredth of that rating: 40 A, 0.4 A,
// v = i R (1 + 0.42 x 100^2), and through two unlike ones side by side.
func TestForcedThroughFuse(t *testing.T) {
	n := chain(1)
	n.Add(1, 0, regulator14(1e5, 40, 1))
	f := n.Add(1, 0, Law{Kind: Warming, Ohm: 0.1, Amp: 0.4, Rise: 0.42})
	s := solved(t, n)
	require.InEpsilon(t, 40*0.1*4201, volts(t, s, 1), 1e-12)
	small := n.Add(1, 0, Law{Kind: Warming, Ohm: 1, Amp: 0.01, Rise: 0.42})
	s = solved(t, n)
	require.InEpsilon(t, 40, s.I(f)+s.I(small), 1e-12)
	i := s.I(small)
	require.InEpsilon(t, volts(t, s, 1), i*(1+0.42*i*i*1e4), 1e-12)
}

// A diode from E through R: (E-v)/R = Volt/Leak + (v-Volt)/Ohm past its corner, E Leak/(R+Leak) across it below.
func TestDiodeBothWays(t *testing.T) {
	d := Law{Kind: Diode, Volt: 0.6, Ohm: 0.02, LeakOhm: 1e7}
	for _, c := range []struct {
		e  float64
		on bool
	}{{12, true}, {0.7, true}, {0.6, false}, {0.5, false}} {
		n := chain(1)
		n.Add(1, 0, source(c.e, 2))
		b := n.Add(1, 0, d)
		s := solved(t, n)
		want, mode := c.e*1e7/(2+1e7), Blocked
		if c.on {
			want = (c.e/2 - 0.6/1e7 + 0.6/0.02) / (1/2. + 1/0.02)
			mode = Conducting
		}
		near(t, want, volts(t, s, 1), "across the diode")
		require.Equal(t, mode, s.Mode(b))
	}
	n := chain(1)
	n.Add(0, 1, source(12, 2))
	b := n.Add(1, 0, d)
	s := solved(t, n)
	require.InEpsilon(t, -12/(1e7+2), s.I(b), 1e-12, "reversed: only the leak")
}

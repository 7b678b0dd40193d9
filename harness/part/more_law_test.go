package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/circuit"
)

// A link is its copper: 6 in of 14 AWG at 20 C; and protects as that wire.
func TestLinkLaw(t *testing.T) {
	s := of("link")
	d := pinned(device(t, "link", say(s, "size", 14), say(s, "length", 0.1524)))
	size, ok := gauge.AWGSize(14)
	require.True(t, ok)
	require.InDelta(t, 0.1524*size.OhmPerM(20), branch(t, stamped(d, HotSoak, Sure), FuseElement, "1", "2", 2).Law.Ohm, 1e-12)
	require.Less(t, stamped(d, ColdStart, Sure).Branches[0].Law.Ohm, stamped(d, HotSoak, Sure).Branches[0].Law.Ohm)
	f := d.Kind.Protects(d)[0]
	require.Equal(t, "link", f.Family)
	require.Equal(t, size, f.Wire)
	require.Equal(t, "breaker", device(t, "breaker").Kind.Protects(device(t, "breaker"))[0].Family)
}

// Windings: a stated resistance goes before anything else, 13.5 V / 1.5 ohm
// is 9 A; an injector that says nothing draws 1 A, a valve 0.9 A.
func TestWindings(t *testing.T) {
	coil := pinned(device(t, "coil", say(of("coil"), "primary", 1.5)))
	require.InDelta(t, 1.5, branch(t, stamped(coil, HotSoak, Sure), LoadElement, "+", "-", 7).Law.Ohm, 1e-12)
	draw := coil.Kind.Draws(coil)[0]
	require.InDelta(t, 9.0, draw.Amps, 1e-12)
	require.True(t, draw.Critical && draw.AmpsKnown)
	require.Empty(t, coil.Kind.Assumes(coil))

	s := of("solenoid")
	valve := pinned(device(t, "solenoid", say(s, "coil", 15), word(s, "suppress", "diode")))
	require.InDelta(t, 0.9, valve.Kind.Draws(valve)[0].Amps, 1e-12)
	require.InDelta(t, 15, branch(t, stamped(valve, HotSoak, Sure), LoadElement, "1", "2", 7).Law.Ohm, 1e-12)
	require.Equal(t, circuit.Diode, branch(t, stamped(valve, HotSoak, Sure), Element, "2", "1", 7).Law.Kind)
	injector := pinned(device(t, "solenoid", word(s, "action", "injector")))
	require.InDelta(t, 1.0, injector.Kind.Draws(injector)[0].Amps, 1e-12)
	require.Equal(t, "usual-injector", injector.Kind.Assumes(injector)[0].Source)
}

// A silicon diode begins at 0.6 V and has 0.7 V at its rated current (common
// practice): 0.1 V / 3 A.
func TestDiodeLaw(t *testing.T) {
	d := pinned(device(t, "diode"))
	law := branch(t, stamped(d, HotSoak, Sure), Element, "A", "K", 2).Law
	require.InDelta(t, 0.6, law.Volt, 1e-12)
	require.InDelta(t, 0.1/3, law.Ohm, 1e-12)
	require.InDelta(t, 1e7, law.LeakOhm, 1e-3)
	require.Equal(t, []Path{{A: "A", B: "K", OneWay: true}}, d.Kind.Passes(d))
}

// Mated cavities are pairs; 6.3 mm blades have 1.5 mohm, a low figure.
func TestConnectorPairs(t *testing.T) {
	s := of("connector")
	d := device(t, "connector", say(s, "ways", 3), say(s, "blade", 0.0063))
	d.Lines = []Line{{Name: "cab"}, {Name: "rear"}}
	require.Equal(t, []Pair{{"cab.1", "rear.1", 0.0015}, {"cab.2", "rear.2", 0.0015}, {"cab.3", "rear.3", 0.0015}}, pinned(d).Kind.Couples(d))
	require.Empty(t, stamped(d, HotSoak, Nominal).Branches, "what couples is not stamped a second time")
	d.Lines = d.Lines[:1]
	require.Empty(t, pinned(d).Kind.Couples(d), "one half alone mates nothing")
}

// The regulator senses where a wire lands: at S, else at B+. Still, the charge
// lamp finds the field; running, it finds B+.
func TestAlternatorLaw(t *testing.T) {
	d := pinned(device(t, "alternator", say(of("alternator"), "rating", 65)))
	sense := func() Branch {
		for _, b := range stamped(d, HotSoak, Sure).Branches {
			if b.Law.Kind == circuit.Regulator {
				return b
			}
		}
		return Branch{}
	}
	b := sense()
	require.Equal(t, "B+", b.SenseA)
	require.Equal(t, atRunning, b.Steps)
	require.Equal(t, []float64{14.2, 65}, []float64{b.Law.Volt, b.Law.Amp})
	i, _ := d.PinOf("SENSE")
	d.Pins[i].Wired = true
	require.Equal(t, "S", sense().SenseA)
	s := stamped(d, HotSoak, Sure)
	require.Equal(t, always&^atRunning, branch(t, s, Element, "D+", "-", 2).Steps)
	require.Equal(t, atRunning, branch(t, s, Element, "B+", "D+", 7).Steps)
}

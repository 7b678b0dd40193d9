package deck

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/circuit"
)

// A junction in the form that textbooks give it: i = IS (exp(u/(N VT)) - 1)
// behind RS, for a diode of 3 A; larger ones have as many times the saturation
// current, and as much less resistance. Invented, of the size of usual parts.
const (
	junctionA   = 1e-9
	junctionN   = 1.2
	junctionOhm = 0.02
	thermalV    = 0.025865 // at 27 C, where the simulator works
	junctionFor = 3.0      // A
)

// statedV is how far the volts across a conducting diode may lie from such a
// junction's, and leastShare the share of its rating from which that is so.
const (
	statedV    = 0.060
	leastShare = 0.02
)

// TestDiodeCorner: two straight pieces against the junction, by closed form,
// from 2 % of the rating to all of it.
func TestDiodeCorner(t *testing.T) {
	worst := 0.0
	for share := leastShare; share <= 1; share *= 1.01 {
		amps := share * junctionFor
		junction := junctionN*thermalV*math.Log1p(amps/junctionA) + junctionOhm*amps
		pieces := gauge.DiodeV + (gauge.DiodeRatedV-gauge.DiodeV)*share
		worst = max(worst, math.Abs(junction-pieces))
	}
	t.Logf("worst %.1f mV", 1000*worst)
	require.LessOrEqual(t, worst, statedV)
	require.Greater(t, worst, 0.03, "the comparison compares something")
}

// TestDiodesInHarnesses: the same with the simulator's own junction in place of
// every diode. Whatever conducts 2 % of its rating or more has its volts within
// 60 mV, if the other diodes that conduct do too.
func TestDiodesInHarnesses(t *testing.T) {
	path := simulator(t)
	if path == "" {
		t.Log("there is no ngspice here: only the closed form is compared")
		return
	}
	list := append(shipped(t), invented(t, 120)...)
	var decks []string
	var of []*network
	var steps []int
	for _, n := range list {
		for step := range n.hist.States {
			if n.diodesConduct(step) {
				decks = append(decks, n.junctions(written(t, n.decks.Frozen(step))))
				of, steps = append(of, n), append(steps, step)
			}
		}
	}
	require.Greater(t, len(decks), 100)
	worst := 0.0
	for i, a := range simulate(t, path, decks) {
		require.True(t, a.found(), "%s %d", of[i].name, steps[i])
		volts := of[i].volts(of[i].hist.States[steps[i]])
		for _, e := range of[i].decks.parts {
			v := volts[e.a] - volts[e.b]
			if e.law.Kind == circuit.Diode && v > e.law.Volt {
				worst = max(worst, math.Abs(v-(a.volts[nodeName(e.a)]-a.volts[nodeName(e.b)])))
			}
		}
	}
	t.Logf("%d steps, worst %.1f mV", len(decks), 1000*worst)
	require.LessOrEqual(t, worst, statedV)
}

// diodesConduct reports whether some diode conducts, and all that do have 2 %
// of their rating or more, up to all of it.
func (n *network) diodesConduct(step int) bool {
	volts := n.volts(n.hist.States[step])
	some := false
	for _, e := range n.decks.parts {
		if v := volts[e.a] - volts[e.b]; e.law.Kind == circuit.Diode && v > e.law.Volt {
			if some = true; v < e.law.Volt+leastShare*(gauge.DiodeRatedV-gauge.DiodeV) || v > gauge.DiodeRatedV {
				return false // below what the pieces are for, or above its rating, as in a short
			}
		}
	}
	return some
}

// junctions writes a deck with the simulator's diode in place of ours.
func (n *network) junctions(text string) string {
	var b strings.Builder
	for line := range strings.Lines(text) {
		var i int
		var x, y string
		line = strings.Replace(line, "reltol=1e-9 vntol=1e-10", "reltol=1e-6 vntol=1e-7", 1) // a junction has no corner to find
		if _, err := fmt.Sscanf(line, "B%d %s %s I =", &i, &x, &y); err != nil || n.decks.parts[i].law.Kind != circuit.Diode {
			b.WriteString(line)
			continue
		}
		size := (gauge.DiodeRatedV - gauge.DiodeV) / n.decks.parts[i].law.Ohm / junctionFor
		fmt.Fprintf(&b, "D%d %s %s jd%d\n.model jd%d d is=%g n=%g rs=%g\nRD%d %s %s 1e7\n",
			i, x, y, i, i, junctionA*size, junctionN, junctionOhm/size, i, x, y)
	}
	return b.String()
}

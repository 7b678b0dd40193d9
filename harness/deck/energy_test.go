package deck

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/circuit"
	"legwork/harness/solve"
)

// flow is what an element carries at the volts found: amperes from a to b, by
// its law, and the watts that it puts into the network and takes out; a source
// puts in e.m.f. times current and loses some of it inside.
type flow struct {
	amps, in, out, scale float64
}

func (k Deck) flow(e *element, law circuit.Law, s *solve.State, v float64) flow {
	amps := v / law.Ohm
	switch leak := v / leakOhm(law); law.Kind {
	case circuit.Source:
		amps = (v - law.Volt) / law.Ohm
		return flow{amps, -law.Volt * amps, amps * amps * law.Ohm, 1 / law.Ohm}
	case circuit.Regulator:
		amps = -s.SupplyA.Of(e.device, 0)
		return flow{amps, -v * amps, 0, 0}
	case circuit.Warming:
		amps = warm(law, v)
	case circuit.ConstantCurrent:
		amps = law.Amp*math.Min(1, v/law.Knee) + leak
	case circuit.ConstantPower:
		if amps = leak; v > law.Knee {
			amps = law.Watt / v
		}
	case circuit.Diode:
		if amps = leak; v > law.Volt {
			amps = law.Volt/leakOhm(law) + (v-law.Volt)/law.Ohm
		}
	}
	return flow{amps, 0, v * amps, 0}
}

// TestEnergyAndCurrents: in every step what the sources give is what the rest
// takes, and at every node currents cancel to the bound of the design: the
// larger of 1 uA and 64 units of rounding of the sum of |g v|. The laws are
// those of the decks, the volts those that legwork found.
func TestEnergyAndCurrents(t *testing.T) {
	worstW, worstA, steps := 0.0, 0.0, 0
	for _, n := range append(shipped(t), invented(t, 60)...) {
		for step, s := range n.hist.States {
			steps++
			in, out, excess := n.books(step, s)
			require.InDelta(t, in, out, 1e-9+1e-9*math.Abs(in), "%s %s", n.name, s.Step.Name)
			worstW = max(worstW, math.Abs(in-out)/max(1, in))
			for node, x := range excess {
				require.LessOrEqual(t, x.amps, max(1e-6, 64*0x1p-52*x.scale), "%s %s n%d", n.name, s.Step.Name, node)
				worstA = max(worstA, x.amps)
			}
		}
	}
	t.Logf("%d steps: energy to %.1g of what goes in, currents to %.1g A", steps, worstW, worstA)
}

// books adds up a step: watts in and out, and what is left over at each node.
func (n *network) books(step int, s *solve.State) (in, out float64, excess []flow) {
	k, volts := n.decks.Frozen(step), n.volts(s)
	n.fillIn(k, s, volts)
	excess = make([]flow, len(volts))
	b := &writer{Deck: k}
	for i := range n.decks.parts {
		e := &n.decks.parts[i]
		if on, _ := b.on(e); !on || math.IsNaN(volts[e.a]) || math.IsNaN(volts[e.b]) {
			continue
		}
		law := b.law(e)
		f := k.flow(e, law, s, volts[e.a]-volts[e.b])
		in, out = in+f.in, out+f.out
		excess[e.a].amps += f.amps
		excess[e.b].amps -= f.amps
		if v := volts[e.a] - volts[e.b]; v != 0 && law.Kind != circuit.Regulator {
			scale := max(math.Abs(volts[e.a]), math.Abs(volts[e.b])) * math.Max(math.Abs(f.amps/v), f.scale)
			excess[e.a].scale += scale
			excess[e.b].scale += scale
		}
	}
	for i := range excess {
		excess[i].amps = math.Abs(excess[i].amps)
	}
	return in, out, excess
}

// fillIn gives the points without a terminal, as the middle of a metal, their
// volts: they follow from those around.
func (n *network) fillIn(k Deck, s *solve.State, volts []float64) {
	named := make([]bool, len(volts))
	for _, node := range n.decks.points.terminal {
		named[node] = true
	}
	named[0] = true
	for node := range volts {
		if named[node] {
			continue
		}
		sum, total := 0.0, 0.0
		lines, _ := k.straighten(s, volts)
		for _, l := range lines {
			if l.b == node {
				l.a, l.b, l.i0 = l.b, l.a, -l.i0
			}
			if l.a == node && !math.IsNaN(volts[l.b]) {
				sum += l.g*volts[l.b] - l.i0
				total += l.g
			}
		}
		if total > 0 {
			volts[node] = sum / total
		}
	}
}

package size

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/solve"
)

// loadedShare is the part of its own ampacity from which a wire counts as a
// loaded conductor of its bundle: at a fifth of the current it makes a
// twenty-fifth of the heat.
const loadedShare = 0.2

// steady reports whether a step lasts long enough to heat copper and fuses.
// The key's travel and the starter's first pull are over in milliseconds, and
// cranking in seconds: volts are judged there, heat is not. Nor does one that
// a short ends at once.
func steady(s *solve.State) bool {
	return s.Skipped == "" && len(s.Shorts) == 0 && s.Step.Engine != part.Locked && s.Step.Engine != part.Turning && s.Step.LastS == 0
}

// currents is what every wire has to carry.
type currents struct {
	heatA  []float64 // by wire ID: the current that governs heat
	stepA  []float64 // the largest steady current of the steps
	peakA  []float64 // the same, charging included
	at     []string  // step in which peakA flows, or Charging
	loaded []int     // conductors loaded together with it where heatA governs
}

// demand reads the currents out of the states and counts, for each leg and
// step, the conductors that are loaded together. base is each wire's smallest
// admissible size, so that the count does not depend on what was chosen.
func (c *chooser) demand() currents {
	m := c.m
	k := currents{
		heatA:  make([]float64, len(m.Wires)),
		stepA:  make([]float64, len(m.Wires)),
		peakA:  make([]float64, len(m.Wires)),
		at:     make([]string, len(m.Wires)),
		loaded: make([]int, len(m.Wires)),
	}
	worst := make([]float64, len(m.Wires)) // heatA over the bundle factor
	share, flows := loadedFrom(m, c.base), make([]float64, len(m.Wires))
	for _, s := range c.history.States {
		if !steady(s) {
			continue
		}
		flows = c.flowing(s, flows)
		inLeg, warms := countLoaded(m, c.r, flows, share), c.rootMeanSquare(s)
		for _, w := range m.Wires {
			amps := math.Abs(s.WireA[w.ID])
			k.stepA[w.ID] = math.Max(k.stepA[w.ID], amps)
			k.peak(w, amps, s.Step.Name)
			k.peak(w, flows[w.ID], Charging)
			n := bundled(c.r.Paths[w.ID], inLeg, flows[w.ID] >= share[w.ID])
			if warms != nil {
				amps = warms[w.ID]
			}
			if flows[w.ID] > math.Abs(s.WireA[w.ID]) {
				amps = flows[w.ID]
			}
			if heat := amps / gauge.BundleFactor(n); heat > worst[w.ID] {
				worst[w.ID], k.heatA[w.ID], k.loaded[w.ID] = heat, amps, n
			}
		}
	}
	return k
}

// peak takes over a current where it is the largest so far.
func (k *currents) peak(w *model.Wire, amps float64, at string) {
	if amps > k.peakA[w.ID] {
		k.peakA[w.ID], k.at[w.ID] = amps, at
	}
}

// flowing gives the size of every wire's current in a state, by wire ID, in the
// room of an older list. While the engine runs, the battery may be flat.
func (c *chooser) flowing(s *solve.State, flows []float64) []float64 {
	for i, amps := range s.WireA {
		flows[i] = math.Abs(amps)
	}
	if c.charge != nil && s.Step.Engine == part.Running {
		for i, amps := range c.charge.wireA {
			flows[i] = math.Max(flows[i], amps)
		}
	}
	return flows
}

// loadedFrom gives the current from which each wire counts as loaded.
func loadedFrom(m *model.Model, base []*gauge.Rating) []float64 {
	share := make([]float64, len(m.Wires))
	for _, w := range m.Wires {
		share[w.ID] = loadedShare * base[w.ID].Amps30()
	}
	return share
}

// countLoaded counts the loaded conductors of each leg, by leg ID.
func countLoaded(m *model.Model, r *route.Routes, flows, share []float64) []int {
	n := make([]int, len(m.Legs))
	for _, w := range m.Wires {
		if w.Role == model.Strap || flows[w.ID] < share[w.ID] {
			continue
		}
		for _, l := range r.Paths[w.ID].Legs {
			n[l.Leg.ID]++
		}
	}
	return n
}

// bundled gives the most loaded conductors that a wire lies with, itself
// included. A wire that is not itself loaded is one more in its bundle.
func bundled(p route.Path, inLeg []int, itself bool) int {
	most := 0
	for _, l := range p.Legs {
		most = max(most, inLeg[l.Leg.ID])
	}
	if !itself {
		most++
	}
	return max(most, 1)
}

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
// cranking in seconds: volts are judged there, heat is not.
func steady(s *solve.State) bool {
	return s.Skipped == "" && s.Step.Engine != part.Locked && s.Step.Engine != part.Turning && s.Step.LastS == 0
}

// currents is what every wire has to carry.
type currents struct {
	heatA  []float64 // by wire ID: the current that governs heat
	peakA  []float64 // the largest steady current
	at     []string  // step in which peakA flows
	loaded []int     // conductors loaded together with it where heatA governs
}

// demand reads the currents out of the states and counts, for each leg and
// step, the conductors that are loaded together. base is each wire's smallest
// admissible size, so that the count does not depend on what was chosen.
func demand(m *model.Model, r *route.Routes, h *solve.History, base []*gauge.Rating, heatOf func(*solve.State) []float64) currents {
	c := currents{
		heatA:  make([]float64, len(m.Wires)),
		peakA:  make([]float64, len(m.Wires)),
		at:     make([]string, len(m.Wires)),
		loaded: make([]int, len(m.Wires)),
	}
	worst := make([]float64, len(m.Wires)) // heatA over the bundle factor
	share := loadedFrom(m, base)
	for _, s := range h.States {
		if !steady(s) {
			continue
		}
		inLeg, warms := countLoaded(m, r, s, share), heatOf(s)
		for _, w := range m.Wires {
			amps := math.Abs(s.WireA[w.ID])
			if amps > c.peakA[w.ID] {
				c.peakA[w.ID], c.at[w.ID] = amps, s.Step.Name
			}
			n := bundled(r.Paths[w.ID], inLeg, amps >= share[w.ID])
			if warms != nil {
				amps = warms[w.ID]
			}
			if heat := amps / gauge.BundleFactor(n); heat > worst[w.ID] {
				worst[w.ID], c.heatA[w.ID], c.loaded[w.ID] = heat, amps, n
			}
		}
	}
	return c
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
func countLoaded(m *model.Model, r *route.Routes, s *solve.State, share []float64) []int {
	n := make([]int, len(m.Legs))
	for _, w := range m.Wires {
		if w.Role == model.Strap || math.Abs(s.WireA[w.ID]) < share[w.ID] {
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

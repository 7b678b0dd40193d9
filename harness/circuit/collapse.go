package circuit

import "math"

// fallen is true if a load that is on has sunk to its knee in this pass.
func (s *Solver) fallen() bool {
	for i := range s.bents {
		if e := &s.bents[i]; e.running() && s.across(e) <= e.knee {
			return true
		}
	}
	return false
}

func (e *bent) running() bool { return e.kind == ConstantPower && !e.idle && !e.open }

// shed takes out the loads that sink to their knees first on the way from where
// they stood: to where the pass put them, or, if there was no stable answer, to
// nothing. One at first, then twice as many each time; false if none is left.
func (s *Solver) shed(stable bool) bool {
	any := false
	for range s.shedding {
		var first *bent
		soonest := math.Inf(1)
		for i := range s.bents {
			e := &s.bents[i]
			if !e.running() {
				continue
			}
			to := 0.0
			if stable {
				to = s.across(e)
			}
			if when := (e.v - e.knee) / (e.v - to); to <= e.knee && when < soonest {
				first, soonest = e, when
			}
		}
		if first == nil {
			break
		}
		first.idle = true
		any = true
	}
	s.shedding *= 2
	return any
}

// out is true for a load that is off although its volts would have it on: its
// law has no answer here.
func (s *Solver) out(e *bent) bool {
	return e.kind == ConstantPower && e.idle && !e.open && e.watt > 0 && s.across(e) > e.knee*(1+1e-9)
}

// Limit is why a constant-power load can't be fed: seen from it, the network is
// EMFV volts behind Ohm and gives at most MostW watts, which is E^2/4R unless
// the knee of the load lies above half of E. Other loads stand in it with the
// resistance they have now; as they draw more at less volts, MostW is never too
// low, but can be too high.
type Limit struct {
	EMFV, Ohm, MostW float64
}

func newLimit(emf, ohm, knee float64) Limit {
	v := max(emf/2, knee)
	return Limit{emf, ohm, max(v*(emf-v), 0) / ohm}
}

// limit looks at the network from load e, which is out, after its volts were
// lowered by sag. Regulators give twice: as they hold their set points now, and
// at their limits; the less decides.
func (s *Solver) limit(e *bent, sag float64) Limit {
	s.f.trace(&s.load, e.a, e.z)
	emf, ohm := s.across(e)-sag, s.f.between(&s.load, &s.load)
	held := ohm - s.relief()
	least := e.withoutLeak(emf, max(held, 0))
	full := e.withoutLeak(emf+s.reserve(), ohm)
	if full.MostW < least.MostW {
		least = full
	}
	return least
}

// withoutLeak takes away the leak that lies across the load while it is out.
func (e *bent) withoutLeak(emf, ohm float64) Limit {
	k := 1 - ohm*e.leak
	if !(k > 0) {
		return Limit{EMFV: emf, Ohm: ohm}
	}
	return newLimit(emf/k, max(ohm/k, MinOhm), e.knee)
}

// relief is by how many ohm the regulators that hold their set points make the
// network stiffer as seen from the load traced last.
func (s *Solver) relief() float64 {
	g := &s.gov
	for i := range g.regs {
		g.want[i] = s.f.between(&g.regs[i].sense, &s.load)
	}
	g.solveRegulating()
	ohm := 0.0
	for i := range g.regs {
		if g.active(i) {
			ohm += g.want[i] * s.f.between(&g.regs[i].push, &s.load)
		}
	}
	return ohm
}

// reserve is by how many volts that load would rise if those regulators went to their limits.
func (s *Solver) reserve() float64 {
	v := 0.0
	for i := range s.gov.regs {
		if r := &s.gov.regs[i]; s.gov.active(i) {
			v += (r.amp - r.pushed) * s.f.between(&r.push, &s.load)
		}
	}
	return v
}

package circuit

import (
	"context"
	"math"
	"slices"
)

// Mode says on which piece of its law a branch works.
type Mode uint8

const (
	// Plain is a branch with one piece: resistors, sources, fuses, and anything switched off.
	Plain Mode = iota
	// Blocked is a diode that does not conduct or a regulator that pushes nothing.
	Blocked
	// Conducting is a diode past its corner or a load above its knee.
	Conducting
	// Starved is a load at or below its knee, or one that collapsed.
	Starved
	// Regulating is a regulator whose sense is at its set point.
	Regulating
	// AtLimit is a regulator that pushes all it may.
	AtLimit
)

// Solution is the state of a network: volts against the reference, amperes from
// A to B. It is not touched by later work of its solver.
type Solution struct {
	// Residual is the greatest current, in amperes, by which the true laws of
	// the branches at a node fail to cancel, over all nodes but the reference.
	Residual float64
	// Met is true if at each node that current is within the larger of 1 uA and
	// 64 units of rounding of the sum of |g v| there, v the greater of the volts
	// at a branch's two ends, and if every piece of a law was found.
	Met bool
	// Passes is how often the network was eliminated.
	Passes int
	// Collapsed are constant-power loads with no solution, ascending: they would
	// be on at the volts they have now, but can't be fed. They count as off.
	Collapsed []Branch

	at, part   []int32
	volts      []float64
	amps       []float64
	modes      []Mode
	collapseOf []Limit
}

// Solve finds the highest-voltage solution, coming down from open circuit
// whatever was solved before. The error tells of a fault in the network or of
// ctx; a collapse, a floating part or a residual that isn't met are not errors.
func (s *Solver) Solve(ctx context.Context) (*Solution, error) {
	sol := new(Solution)
	if err := s.SolveInto(ctx, sol); err != nil {
		return nil, err
	}
	return sol, nil
}

// SolveInto is Solve into a solution that may have been used before; its room
// is used again. After an error sol is as it was.
func (s *Solver) SolveInto(ctx context.Context, sol *Solution) error {
	if err := s.SolveVolts(ctx, sol); err != nil {
		return err
	}
	s.Currents(sol)
	return nil
}

// SolveVolts is SolveInto for a caller who may want to know no more than volts
// and parts: currents, modes, collapsed loads, Residual and Met are not there
// before Currents is called.
func (s *Solver) SolveVolts(ctx context.Context, sol *Solution) error {
	s.rested = false
	if err := s.prepare(); err != nil {
		return err
	}
	if err := s.openCircuit(ctx); err != nil {
		return err
	}
	if err := s.descend(ctx); err != nil {
		return err
	}
	s.complete()
	s.rested = true
	sol.at, sol.part = s.at, append(sol.part[:0], s.part...)
	sol.volts = append(sol.volts[:0], s.x...)
	sol.amps, sol.modes = sol.amps[:0], sol.modes[:0]
	sol.Collapsed, sol.collapseOf = sol.Collapsed[:0], sol.collapseOf[:0]
	sol.Residual, sol.Met, sol.Passes = 0, false, s.passes
	return nil
}

// Currents completes what SolveVolts found, and judges it by the true laws. It
// has to be called before anything else is asked of the solver.
func (s *Solver) Currents(sol *Solution) {
	sol.amps = slices.Grow(sol.amps[:0], len(s.laws))[:len(s.laws)]
	sol.modes = slices.Grow(sol.modes[:0], len(s.laws))[:len(s.laws)]
	clear(sol.amps)
	clear(sol.modes)
	clear(s.excess)
	clear(s.scale)
	for b, g := range s.gain {
		if g != 0 && !s.open[b] {
			e := s.ends[b]
			sol.amps[b] = s.book(e[0], e[1], g*(s.x[e[0]]-s.x[e[1]]-s.emf[b]), g)
		}
	}
	s.fillBent(sol)
	sol.Residual, sol.Met = s.residual()
	sol.Met = sol.Met && !s.unsettled && s.passes < mostPasses
}

func (s *Solver) fillBent(sol *Solution) {
	for i := range s.bents {
		e := &s.bents[i]
		if !e.open {
			v := s.across(e)
			sol.amps[e.b] = s.book(e.a, e.z, e.amps(v), math.Abs(e.g))
			sol.modes[e.b] = e.mode(v)
		}
		if s.out(e) {
			sol.Collapsed = append(sol.Collapsed, e.b)
			sol.collapseOf = append(sol.collapseOf, s.limit(e, 0))
		}
	}
	for i := range s.gov.regs {
		if r := &s.gov.regs[i]; !s.open[r.b] {
			sol.amps[r.b] = s.book(r.a, r.z, -r.pushed, 0)
			sol.modes[r.b] = s.gov.report(i)
		}
	}
}

// book takes the current of a branch into the sums at its ends, with the
// conductance by which its rounding is judged, and returns it.
func (s *Solver) book(a, z int32, amps, g float64) float64 {
	s.excess[a] += amps
	s.excess[z] -= amps
	volts := math.Abs(s.x[a])
	if other := math.Abs(s.x[z]); other > volts {
		volts = other
	}
	s.scale[a] += g * volts
	s.scale[z] += g * volts
	return amps
}

func (e *bent) mode(v float64) Mode {
	switch {
	case e.kind == Warming:
		return Plain
	case e.kind == Diode && e.on, e.kind == ConstantCurrent && v >= e.knee, e.running() && v > e.knee:
		return Conducting
	case e.kind == Diode:
		return Blocked
	}
	return Starved
}

// residual is the greatest excess over all unknowns, and whether each is within its own bound.
func (s *Solver) residual() (worst float64, met bool) {
	met = true
	for k, i := range s.excess[:s.f.n] {
		i = math.Abs(i)
		if !(i <= worst) {
			worst = max(worst, i)
		}
		if !(i <= 1e-6) && !(i <= 64*unit*s.scale[k]) {
			met = false
		}
	}
	return worst, met
}

package circuit

import (
	"context"
	"math"
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
	if err := s.prepare(); err != nil {
		return err
	}
	if err := s.openCircuit(ctx); err != nil {
		return err
	}
	if err := s.descend(ctx); err != nil {
		return err
	}
	s.fill(sol)
	return nil
}

// fill writes the answer out and judges it by the true laws.
func (s *Solver) fill(sol *Solution) {
	s.complete()
	sol.at, sol.part = s.at, append(sol.part[:0], s.part...)
	sol.volts = append(sol.volts[:0], s.x...)
	sol.amps = append(sol.amps[:0], s.gain...)
	sol.modes = sol.modes[:0]
	sol.Collapsed, sol.collapseOf = sol.Collapsed[:0], sol.collapseOf[:0]
	clear(s.excess)
	clear(s.scale)
	for b, e := range s.ends {
		i, g, mode := s.branch(b, s.x[e[0]]-s.x[e[1]])
		sol.amps[b] = i
		sol.modes = append(sol.modes, mode)
		s.excess[e[0]] += i
		s.excess[e[1]] -= i
		gv := g * max(math.Abs(s.x[e[0]]), math.Abs(s.x[e[1]]))
		s.scale[e[0]] += gv
		s.scale[e[1]] += gv
	}
	for i := range s.bents {
		if e := &s.bents[i]; s.out(e) {
			sol.Collapsed = append(sol.Collapsed, e.b)
			sol.collapseOf = append(sol.collapseOf, s.limit(e, 0))
		}
	}
	sol.Passes = s.passes
	sol.Residual, sol.Met = s.residual()
	sol.Met = sol.Met && !s.unsettled && s.passes < mostPasses
}

// branch is the true current, the conductance by which rounding is judged, and
// the mode of branch b at v volts.
func (s *Solver) branch(b int, v float64) (amps, g float64, m Mode) {
	at := s.index[b]
	switch {
	case s.open[b]:
		return 0, 0, Plain
	case at < 0:
		return s.gain[b] * (v - s.emf[b]), s.gain[b], Plain
	case s.laws[b].Kind == Regulator:
		return -s.gov.regs[at].pushed, 0, s.gov.report(int(at))
	}
	e := &s.bents[at]
	return e.amps(v), math.Abs(e.g), e.mode(v)
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
		worst = max(worst, i)
		if !(i <= max(1e-6, 64*unit*s.scale[k])) {
			met = false
		}
	}
	return worst, met
}

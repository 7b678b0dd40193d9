package circuit

import (
	"context"
	"math"
)

// Bounds of the iteration, in passes. A network comes to rest in about six.
const (
	carefulAfter = 60   // passes on tangents before the slow, sure secants take over
	mostPasses   = 2000 // then the answer is given as it is, and not called met
)

// Two lines count as one branch law when they differ by less than this.
const (
	lineRel = 1e-12
	lineAbs = 1e-15
	unit    = 0x1p-52 // rounding of a float64 near 1
)

// openCircuit solves the network without any load. No voltage of the answer lies
// above these, and coming down from them leads to the highest solution.
func (s *Solver) openCircuit(ctx context.Context) error {
	s.passes, s.shedding, s.unsettled = 0, 1, false
	for i := range s.bents {
		e := &s.bents[i]
		e.on, e.idle, e.steady, e.tries = false, false, false, 0
		e.rest()
	}
	s.gov.reset()
	if _, err := s.settle(ctx); err != nil {
		return err
	}
	for i := range s.bents {
		e := &s.bents[i]
		e.v0, e.on0 = s.across(e), e.on
		e.idle = e.kind == ConstantPower && (e.watt == 0 || e.v0 <= e.knee)
	}
	for i := range s.gov.regs {
		s.gov.regs[i].mode0 = s.gov.regs[i].mode
	}
	return nil
}

// restart goes back to open circuit; which loads are out is kept.
func (s *Solver) restart() {
	for i := range s.bents {
		e := &s.bents[i]
		e.v, e.i, e.swing, e.on, e.steady = e.v0, e.v0*e.cold, 0, e.on0, false
	}
	for i := range s.gov.regs {
		s.gov.regs[i].mode = s.gov.regs[i].mode0
	}
}

// descend comes down from open circuit until every branch keeps to its law, and
// takes out the loads that can't be fed.
func (s *Solver) descend(ctx context.Context) error {
	if s.accept(1) { // nothing in it draws, or all of it in straight lines
		s.sharpen()
		return nil
	}
	for {
		s.restart()
		if err := s.approach(ctx); err != nil {
			return err
		}
		if s.passes >= mostPasses || !s.readmit() {
			return nil
		}
		s.shedding = 1
	}
}

// approach moves along tangents. For constant power between a node and the
// reference the law is convex, so from above each pass stays above the answer
// and a tangent network without stable answer means that there is none (the
// monotone Newton theorem for convex M-functions). The last pass runs on
// secants, all of them positive conductances, and keeps every digit.
func (s *Solver) approach(ctx context.Context) error {
	tried := 0
	for since := 1; s.passes < mostPasses; since++ {
		s.lay(since)
		stable, err := s.settle(ctx)
		switch {
		case err != nil:
			return err
		case stable && s.overdrawn():
		case !stable || s.fallen():
			if !s.shed(stable) {
				s.unsettled = true
				return nil
			}
			s.restart()
			since = 0
		case s.accept(1):
			tried++
			rested, err := s.finish(ctx, tried > 1)
			if err != nil || rested {
				return err
			}
		}
	}
	return nil
}

// finish repeats the pass with secants. It is false if that moved anything.
// Again means that it did so before: then constant currents keep their
// tangents, as they must where a current is forced through them.
func (s *Solver) finish(ctx context.Context, again bool) (bool, error) {
	for i := range s.bents {
		e := &s.bents[i]
		if again && e.kind == ConstantCurrent {
			e.tangent()
			continue
		}
		e.secant()
	}
	if _, err := s.settle(ctx); err != nil {
		return false, err
	}
	s.sharpen()
	return !s.changeOver(false) && s.accept(10), nil
}

// accept takes over the voltages of the pass and says whether its lines were
// the laws, to slack times the usual bound and the rounding of the voltages.
func (s *Solver) accept(slack float64) bool {
	same := true
	for i := range s.bents {
		e := &s.bents[i]
		v := s.across(e)
		line := e.g*v - e.s
		e.move(v)
		if e.kind == Diode || e.open {
			continue
		}
		law := e.amps(e.v)
		rounding := math.Abs(e.g) * max(math.Abs(s.x[e.a]), math.Abs(s.x[e.z])) * (8 * unit)
		if !(math.Abs(law-line) <= slack*(lineRel*math.Abs(law)+lineAbs)+rounding) {
			same = false
		}
	}
	return same
}

// overdrawn finds constant currents that ran below their knee on a tangent that
// lies above it: such a pass may have sunk below the answer and is thrown away,
// if there are constant-power loads, which must not be led below theirs.
func (s *Solver) overdrawn() bool {
	found, running := false, false
	for i := range s.bents {
		e := &s.bents[i]
		running = running || e.running()
		if e.kind == ConstantCurrent && !e.open && e.s != 0 && s.across(e) < e.knee {
			e.steady = true
			found = true
		}
	}
	return found && running
}

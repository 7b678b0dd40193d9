package circuit

import "context"

// diodeTolV is how far past its corner a diode has to be before it changes over, in volts.
const diodeTolV = 1e-13

// lay puts the lines of a pass. Constant currents that overdrew get another
// chance on their tangent every fourth pass.
func (s *Solver) lay(since int) {
	for i := range s.bents {
		e := &s.bents[i]
		if since%4 == 0 {
			e.steady = false
		}
		if since > carefulAfter {
			e.secant()
		} else {
			e.tangent()
		}
	}
}

// settle solves with the lines of the loads as they lie, changing diodes over
// until each conducts if and only if it is past its corner. It is false if the
// network has no stable answer.
func (s *Solver) settle(ctx context.Context) (bool, error) {
	const block = 8
	for round := 0; ; round++ {
		if err := ctx.Err(); err != nil {
			return false, err
		}
		if !s.pass() {
			return false, nil
		}
		if !s.changeOver(round < block) {
			return true, nil
		}
		if s.passes >= mostPasses {
			s.unsettled = true
			return true, nil
		}
	}
}

// changeOver turns wrong diodes over: all at once, or only the lowest-numbered
// one. The first is quick and may go round in circles, the second can't
// (principal pivoting of a linear complementarity problem, from memory).
func (s *Solver) changeOver(all bool) bool {
	changed := false
	for i := range s.bents {
		e := &s.bents[i]
		if e.kind != Diode || e.open {
			continue
		}
		over := s.across(e) - e.volt
		if e.on && over < -diodeTolV || !e.on && over > diodeTolV {
			e.on = !e.on
			e.tangent()
			changed = true
			if !all {
				return true
			}
		}
	}
	return changed
}

func (s *Solver) across(e *bent) float64 { return s.x[e.a] - s.x[e.z] }

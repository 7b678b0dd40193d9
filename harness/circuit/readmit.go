package circuit

import "math"

// mostAdmitted is how many loads are let in again between two descents.
const mostAdmitted = 64

// guest is a load that is being let in again, and what it will draw.
type guest struct {
	trail
	amps float64
}

// readmit lets loads in again that were taken out with others but could live,
// each at most once: those whose closed form has room, given what the ones let
// in before them will take off their volts. It is false if there is none.
func (s *Solver) readmit() bool {
	s.guests = s.guests[:0]
	for i := range s.bents {
		e := &s.bents[i]
		if !s.out(e) || e.tries > 0 {
			continue
		}
		sag := s.sag(e)
		l := s.limit(e, sag)
		if l.MostW < e.watt {
			if sag == 0 {
				e.tries++ // has no room even alone
			}
			continue
		}
		e.tries++
		e.idle = false
		s.admit(e.watt / l.voltsAt(e.watt))
		if len(s.guests) == mostAdmitted {
			break
		}
	}
	return len(s.guests) > 0
}

// sag is how many volts the guests so far take off load e, to first order.
func (s *Solver) sag(e *bent) float64 {
	s.f.trace(&s.load, e.a, e.z)
	v := 0.0
	for i := range s.guests {
		v += s.guests[i].amps * s.f.between(&s.guests[i].trail, &s.load)
	}
	return v
}

// admit keeps the trail of the load traced last.
func (s *Solver) admit(amps float64) {
	if n := len(s.guests); n < cap(s.guests) {
		s.guests = s.guests[:n+1] // the room of its trail is used again
	} else {
		s.guests = append(s.guests, guest{})
	}
	g := &s.guests[len(s.guests)-1]
	g.at = append(g.at[:0], s.load.at...)
	g.y = append(g.y[:0], s.load.y...)
	g.amps = amps
}

// voltsAt is the higher solution of V (E - V)/R = watt, the closed form of a
// constant-power load; E/2 if there is none.
func (l Limit) voltsAt(watt float64) float64 {
	return (l.EMFV + math.Sqrt(max(l.EMFV*l.EMFV-4*watt*l.Ohm, 0))) / 2
}

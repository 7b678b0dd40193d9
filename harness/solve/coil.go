package solve

import (
	"math"

	"legwork/gauge"
	"legwork/harness/part"
)

// temper works out the temperature of a coil at the start of a step, the
// volts that this asks for, and its resistance.
func (p *play) temper(r int) {
	s, st := &p.seen[r], &p.f.relays[r].State
	if st.Kind == part.AliveState {
		return
	}
	if p.cooled() {
		p.riseC[r] = 0
	}
	s.coilC = st.AmbientC + p.riseC[r]
	if p.f.corner == part.ColdStart {
		s.coilC = p.f.start.Temp()
	}
	s.freeV = gauge.CoilAt(st.ReleaseV, s.coilC)
	s.inV = gauge.CoilAt(st.InAboveV, s.coilC)
	s.outV = s.freeV
	if st.PairSaid {
		s.outV = max(gauge.CoilAt(st.OutBelowV, s.coilC), s.freeV)
	}
	factor := gauge.CoilAt(1, s.coilC)
	if factor == s.factor {
		return
	}
	s.factor = factor
	for _, i := range p.f.movers[r].coils {
		p.net.SetLaw(p.f.links[i].branch, resistor(st.CoilOhm*factor))
	}
}

// warm notes how far a coil has warmed itself in a step that is long enough.
func (p *play) warm(s *State) {
	if !p.long() || p.f.corner == part.ColdStart {
		return
	}
	k := 12 / p.systemV()
	for r := range p.f.relays {
		if p.f.relays[r].Kind == part.RelayState && p.on[r] {
			p.riseC[r] = max(p.riseC[r], gauge.CoilRiseC(math.Abs(s.Relay[r].Volts)*k))
		}
	}
}

// cooled reports whether the step is one of rest: key off, engine still, for
// as long as it takes.
func (p *play) cooled() bool {
	s := &p.f.model.Steps[p.step]
	return s.Key == "off" && s.Engine == part.Still
}

// long reports whether a step lasts long enough to warm a coil: longer than
// the prime, which is over in two or three seconds.
func (p *play) long() bool {
	s := &p.f.model.Steps[p.step]
	return s.LastS == 0 && s.Name != "prime" && (s.Engine == part.Still || s.Engine == part.Running)
}

func (p *play) systemV() float64 {
	if v := p.f.model.SystemV; v > 0 {
		return v
	}
	return 12
}

// zoneOf says how sure a coil is of being in at some volts.
func (s *tally) zoneOf(volts float64) Zone {
	switch v := math.Abs(volts); {
	case v >= s.inV:
		return SurelyIn
	case v >= s.outV:
		return NotSure
	}
	return SurelyOut
}

// coilMove says whether a relay wants to move, and how long it takes.
func (p *play) coilMove(r int, ph phase) (wants bool, delayS float64) {
	s, m := &p.seen[r], &p.f.movers[r]
	if len(m.watch) == 0 {
		return false, 0
	}
	s.volts = p.across(m.watch[0].plus, m.watch[0].minus)
	if p.on[r] {
		for _, w := range m.pulls {
			s.volts += w.sign * p.amps(w.link) * p.f.relays[r].CoilOhm
		}
		return math.Abs(s.volts) < s.freeV, m.releaseS
	}
	s.zone = s.zoneOf(s.volts)
	s.pullV = s.volts
	return s.zone != SurelyOut && ph.lets(m.class) && !p.frozen[r], m.operateS
}

package size

import "legwork/harness/model"

// payShare is the part of a limit that the next size has to save to be worth
// its copper where the limit can't be met. A size saves somewhat more than a
// third of what a wire loses, so an open chain ends up with a third of the
// limit, and two thirds are left to what the draft fixes.
const payShare = 1.0 / 8

// hopeless reports whether no size of the open wires on its way would bring a
// loss within its limit: contacts, fuses or given wires take too much.
func (d *divider) hopeless(l *loss) bool {
	best := l.excess()
	seen := map[int]bool{}
	for _, f := range l.flows {
		c := d.of[f.wire.ID]
		if ch := &d.chains[c]; !seen[c] && !ch.fixed {
			seen[c] = true
			best -= d.saved(c, l, ch.top-ch.rung)
		}
	}
	return best > 0
}

// pay lifts what pays on the way of a loss that nothing brings within its
// limit. Each chain is held against the limit by itself, so that the outcome
// does not depend on which of the others the draft gives.
func (d *divider) pay(l *loss, leastV float64) {
	worth := payShare * max(l.limitV, leastV)
	for _, f := range l.flows {
		c := d.of[f.wire.ID]
		ch := &d.chains[c]
		if ch.fixed {
			continue
		}
		rung := ch.floor
		for rung < ch.top && d.savedFrom(c, l, rung) >= worth {
			rung++
		}
		ch.pays = max(ch.pays, rung)
	}
}

// savedFrom is the volts that a loss gains when chain c grows by one from a rung.
func (d *divider) savedFrom(c int, l *loss, rung int) float64 {
	ch := &d.chains[c]
	volts := 0.0
	for _, f := range l.flows {
		if d.of[f.wire.ID] == c {
			volts += f.amps * (ch.ohm(f.wire, rung) - ch.ohm(f.wire, rung+1))
		}
	}
	return volts
}

// payOff grows the chains to what pays.
func (d *divider) payOff() {
	for c := range d.chains {
		if by := d.chains[c].pays - d.chains[c].rung; by > 0 {
			d.move(c, by)
		}
	}
}

// judged names a load in a step.
type judged struct {
	device *model.Device
	draw   int
	step   int
}

// leastPaidV is the smallest limit of which payShare is worth copper: that of
// the class that is asked for most.
func (c *chooser) leastPaidV() float64 { return c.p.DropCritical * c.m.SystemV }

// unmet fills in why a path's limit can't be met, where it can't and a wire on
// it is open.
func (c *chooser) unmet(p *Path) {
	if !c.stuck[judged{p.Device, p.Draw, p.Step.ID}] {
		return
	}
	for _, x := range p.Shares {
		switch {
		case x.open():
			p.Unmet = true
			p.OpenV += x.Volts
		case x.Kind == DriverShare || x.Stated() && p.StatedV > 0:
		case x.Volts+x.JointV > p.Fixed.Volts+p.Fixed.JointV:
			p.Fixed = x
		}
	}
}

// open reports whether it is a wire that the draft leaves to sizing.
func (s Share) open() bool {
	if s.Wire == nil {
		return false
	}
	_, given := givenSize(s.Wire)
	return !given
}

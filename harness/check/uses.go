package check

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// use is a load or a coil: what has to be fed at one end and led back at the
// other.
type use struct {
	device      *model.Device
	plus, minus string
	eitherWay   bool
	coil        bool // of a relay: it works a contact
	at          diag.Span
}

// uses lists every load, then every coil that is no load of its own.
func (p *Pass) uses() []use {
	if p.used != nil {
		return p.used
	}
	list := []use{}
	for _, d := range p.Model.Devices {
		windings := map[string]bool{}
		for _, w := range d.Draws() {
			list = append(list, use{device: d, plus: w.Plus, minus: w.Minus, eitherWay: w.EitherWay, at: w.At})
			windings[w.Plus] = w.Coil
		}
		for _, c := range coils(d) {
			if !windings[c.A] {
				list = append(list, use{device: d, plus: c.A, minus: c.B, eitherWay: true, coil: true, at: d.At})
			}
		}
	}
	p.used = list
	return list
}

// coils gives the coils that work a contact of a device.
func coils(d *model.Device) []part.Kick {
	if d.Kind.Switches == nil {
		return nil
	}
	var list []part.Kick
	for _, c := range d.Switches() {
		if c.CoilA != "" && (len(list) == 0 || list[0].A != c.CoilA) {
			list = append(list, part.Kick{A: c.CoilA, B: c.CoilB, At: c.At})
		}
	}
	return list
}

// lay is how a use lies between feed and return.
type lay struct {
	use
	fed, led bool // its feed side can be fed, its return side leads back
	reversed bool // only the other way round would do, and it minds
}

// lays judges every use of a device that has a wire, or that wants one.
func (p *Pass) lays() []lay {
	r := p.reach()
	var list []lay
	for _, u := range p.uses() {
		a, b := pinOf(u.device, u.plus), pinOf(u.device, u.minus)
		if a == nil || b == nil || !wanted(u, a) {
			continue
		}
		na, nb := p.Nets.Of[a.ID], p.Nets.Of[b.ID]
		l := lay{use: u, fed: r.plus[na], led: r.minus[nb]}
		if !l.fed || !l.led {
			turned := r.plus[nb] && r.minus[na]
			switch {
			case turned && u.eitherWay:
				l.fed, l.led = true, true
			case turned:
				l.reversed = true
			case u.eitherWay && !l.fed && r.plus[nb]:
				l.plus, l.minus = u.minus, u.plus
				l.fed, l.led = true, r.minus[na]
			}
			if !l.reversed {
				ends := [2]int{p.netOf(u.device, l.plus), p.netOf(u.device, l.minus)}
				l.fed = l.fed || p.fedOn(ends[0], u)
				l.led = l.led || p.ledOn(ends[1], u) || p.sensed(u, ends[1])
			}
		}
		list = append(list, l)
	}
	return list
}

// sensed reports whether a use that is fed by nothing ends at a controller,
// which reads it between two of its inputs: such a sensor makes its own volts.
func (p *Pass) sensed(u use, net int) bool {
	if u.coil || net < 0 || wiredAt(u.device, u.plus) {
		return false
	}
	return slices.ContainsFunc(p.Nets.Members[net], func(t *model.Terminal) bool {
		return t.Device != u.device && t.Device.Kind.Drives != nil
	})
}

// wanted reports whether a use has to be wired: a relay without a wire is a
// spare, and a terminal that may stay empty is no mistake.
func wanted(u use, plus *model.Terminal) bool {
	if u.coil {
		return anyWire(u.device)
	}
	return wiredAt(u.device, u.plus) || !u.device.Pins[plus.Pin].Quiet || anyWire(u.device)
}

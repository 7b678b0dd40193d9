package diagram

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// lay lets a simple item lie down, both pins up, where its lower side leads
// back up.
func (p *plan) lay(it *item) bool {
	if it.form.row == part.SensorRow && it.form.cols > 1 && !it.form.lying {
		return p.laySensor(it)
	}
	if !it.form.simple || it.form.row == part.ConnectorRow {
		return false
	}
	up, down := it.sides()
	if down.term == nil || up.term == nil || !attached(up.term) || !p.leadsUp(down) || p.leadsDown(up) {
		return false
	}
	it.take(it.form.laid())
	return true
}

// laySensor lets the return of a sensor with three pins look up too, where it
// goes back to a unit.
func (p *plan) laySensor(it *item) bool {
	q := p.pins[groundID(it)]
	if q == nil || q.item != it || q.up() || !p.leadsUp(q) {
		return false
	}
	it.take(p.sensorForm(it.dev, true))
	return true
}

func groundID(it *item) int {
	if t := terminalOf(it.dev, it.dev.Kind.Ground); t != nil {
		return t.ID
	}
	return 0
}

// leadsUp reports whether what ends at the pin comes from above whatever the
// pin's own side is: a rail, or a pin of a unit that looks down.
func (p *plan) leadsUp(q *pin) bool {
	if p.meetsRail(q) != nil {
		return true
	}
	net := p.flow.net[q.term.ID]
	if p.flow.grounded[net] {
		return false
	}
	for _, it := range p.items {
		if o := it.pins[0]; it.unit && o != q && !o.up() && !p.isGround(o) && p.flow.net[o.term.ID] == net {
			return true
		}
	}
	return false
}

// leadsDown reports whether the upper pin is wired to something that already
// has to stand below it.
func (p *plan) leadsDown(q *pin) bool {
	j := p.meets[q.term.ID]
	return j != nil && j.kind == localJoint && p.onBattery(j)
}

// farPins lists the pins at the other end of the wires of a pin, through one
// local joint.
func (p *plan) farPins(q *pin) []*pin {
	var out []*pin
	for _, r := range p.runs {
		for i := range r.ends {
			if r.ends[i].pin != q {
				continue
			}
			o := r.ends[1-i]
			if o.pin != nil {
				out = append(out, o.pin)
			}
			if o.joint != nil && o.joint.kind == localJoint {
				out = append(out, p.pinsAround(o.joint, q)...)
			}
		}
	}
	return out
}

func (p *plan) pinsAround(j *joint, but *pin) []*pin {
	out := p.pinsOf(j)
	for _, r := range p.runs {
		if o, here := r.across(j); here && o != nil && o != but {
			out = append(out, o)
		}
	}
	return out
}

// isGround reports whether the terminal of a unit is one of its grounds, other
// than a sensor ground.
func (p *plan) isGround(q *pin) bool {
	if q.item.dev.Kind.Grounds == nil {
		return false
	}
	for _, g := range q.item.dev.Kind.Grounds(q.item.dev.Device) {
		if g.Pin == q.term.Name && !g.Sensor {
			return true
		}
	}
	return false
}

// promoteOne finds a wire whose ends both look up and makes its source end a
// rail: the wire can then hang from it.
func (p *plan) promoteOne() bool {
	if len(p.rails) >= mostRails {
		return false
	}
	for _, r := range p.runs {
		a, b := r.ends[0], r.ends[1]
		if a.pin != nil && b.pin != nil && a.pin.up() && b.pin.up() {
			if t := p.source(a.pin.term, b.pin.term); p.flow.fed(t) {
				p.addRail(p.promote(t))
				return true
			}
		}
		for _, e := range [2][2]end{{a, b}, {b, a}} {
			if j := e[0].joint; j != nil && j.kind == localJoint && e[1].pin != nil && p.hangsLow(j, e[1].pin) {
				p.addRail(j)
				return true
			}
		}
	}
	return false
}

// hangsLow reports whether a fed joint sits on an upper pin of its own and
// feeds something that stands in the same row or higher: only a rail reaches
// both from above.
func (p *plan) hangsLow(j *joint, q *pin) bool {
	if !q.up() || !p.flow.fed(j.terms[0]) {
		return false
	}
	for _, own := range p.pinsOf(j) {
		if own.up() && p.source(own.term, q.term) == own.term && q.item.form.row <= own.item.form.row && !p.onBattery(j) {
			return true
		}
	}
	return false
}

// source gives the one of two terminals that is nearer to the battery.
func (p *plan) source(a, b *model.Terminal) *model.Terminal {
	if p.flow.fromPlus[b.ID] < p.flow.fromPlus[a.ID] {
		return b
	}
	return a
}

func (p *plan) addRail(j *joint) {
	if len(p.rails) >= mostRails || j.kind != localJoint {
		return
	}
	j.kind = railJoint
	p.rails = append(p.rails, j)
}

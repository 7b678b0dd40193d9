package diagram

import (
	"legwork/harness/model"
)

// mostRails is how many rails a sheet has room for; joints beyond it stay
// local bars.
const mostRails = 9

// pose turns every symbol so that its wires can run straight: the side of the
// supply up, both sides up where the way goes back to a rail or to a unit.
func (p *plan) pose() {
	for _, it := range p.items {
		if it.unit {
			p.orient(it)
		}
	}
	p.fromUnits()
	for _, it := range p.items {
		if !it.unit {
			p.orient(it)
		}
	}
	for _, j := range p.joints {
		if p.isReturn(j) {
			j.kind = studJoint
		}
	}
	for _, j := range p.joints {
		if j.kind == localJoint && p.isRail(j) {
			p.addRail(j)
		}
	}
	p.poseBattery()
	p.turnMainFuses()
	for range mostRails {
		changed := false
		for _, it := range p.items {
			changed = p.lay(it) || changed
		}
		if !p.promoteOne() && !changed {
			break
		}
	}
	p.turnDeadEnds()
	p.nameRails()
}

// orient puts the pin nearer to the supply up.
func (p *plan) orient(it *item) {
	if it.unit {
		q := it.pins[0]
		if !settled(it.dev, it.sub) && p.flow.fed(q.term) {
			it.form.pins[0].y = -unitHalf
			q.y = -unitHalf
		}
		return
	}
	if !it.form.simple {
		return
	}
	up, down := it.sides()
	switch {
	case up.term == nil || down.term == nil:
		lone := up.term
		if lone == nil {
			lone = down.term
		}
		if (p.flow.height(lone) < 0.5) == (up.term == lone) {
			it.take(it.form.swapped())
		}
	case p.flow.height(up.term) < p.flow.height(down.term)-1e-9:
		it.take(it.form.swapped())
	}
}

// sides gives the upper and the lower pin of a simple item.
func (it *item) sides() (up, down *pin) {
	if it.pins[0].up() {
		return it.pins[0], it.pins[1]
	}
	return it.pins[1], it.pins[0]
}

// isRail decides whether a joint goes to the top: it is fed without a load
// between, and it serves more than one section, or is a bus bar.
func (p *plan) isRail(j *joint) bool {
	if !p.flow.fed(j.terms[0]) || p.onBattery(j) {
		return false
	}
	return len(p.circuitsAt(j)) > 1 || j.self && len(p.pinsOf(j)) > 1
}

// isReturn decides whether a joint without metal goes to the foot as studs do:
// it leads back to the battery without an element between, has nothing of a
// symbol on it, and serves more than one circuit.
func (p *plan) isReturn(j *joint) bool {
	return j.kind == localJoint && j.self && !p.flow.fed(j.terms[0]) && p.flow.grounded[p.flow.net[j.terms[0].ID]] &&
		len(p.pinsOf(j)) == 0 && len(p.circuitsAt(j)) > 1
}

// circuitsAt lists the circuits that meet at the joint: those of its wires,
// and of the wires on the far side of what sits on it.
func (p *plan) circuitsAt(j *joint) map[*model.Circuit]bool {
	out := map[*model.Circuit]bool{}
	for _, t := range j.terms {
		for _, e := range t.Ends {
			out[e.Wire.Circuit] = true
		}
	}
	if !j.self {
		return out
	}
	for _, q := range p.pinsOf(j) {
		for _, o := range q.item.pins {
			if o != q && o.term != nil {
				for _, e := range o.term.Ends {
					out[e.Wire.Circuit] = true
				}
			}
		}
	}
	return out
}

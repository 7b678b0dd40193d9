package diagram

import (
	"legwork/harness/model"
	"legwork/harness/part"
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
		if j.kind == localJoint && p.isRail(j) {
			p.addRail(j)
		}
	}
	p.poseBattery()
	for range mostRails {
		changed := false
		for _, it := range p.items {
			changed = p.lay(it) || changed
		}
		if !p.promoteOne() && !changed {
			break
		}
	}
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

func (p *plan) onBattery(j *joint) bool {
	for _, t := range j.terms {
		if p.flow.fromPlus[t.ID] == 0 {
			return true
		}
	}
	return false
}

// poseBattery keeps the battery's plus a bar beside the battery where all its
// wires go to neighbors that stand beside it or to fuses that feed a rail;
// those fuses are turned over. Otherwise the plus becomes a rail.
func (p *plan) poseBattery() {
	for _, j := range p.joints {
		if j.kind != localJoint || !p.onBattery(j) {
			continue
		}
		var turn []*item
		local := len(p.circuitsAt(j)) == 1
		for _, r := range p.runs {
			q, here := r.across(j)
			if !here {
				continue
			}
			switch {
			case q != nil && q.up() && q.item.form.row == part.LoadRow && !q.item.unit:
			case q != nil && q.item.form.simple && protects(q.item.dev.Kind) && p.feedsRail(q):
				turn = append(turn, q.item)
			case q != nil && q.item.form.simple && q.up() && protects(q.item.dev.Kind) && p.feedsNeighbor(q):
			default:
				local = false
			}
		}
		if !local {
			p.addRail(j)
			continue
		}
		for _, it := range turn {
			if up, _ := it.sides(); p.meetsRail(up) == nil {
				it.take(it.form.swapped())
			}
		}
	}
}

// across gives the pin at the other end of a run that ends at the joint.
func (r *run) across(j *joint) (q *pin, here bool) {
	switch j {
	case r.ends[0].joint:
		return r.ends[1].pin, true
	case r.ends[1].joint:
		return r.ends[0].pin, true
	}
	return nil, false
}

// feedsRail reports whether the other side of a simple item goes to a rail.
func (p *plan) feedsRail(q *pin) bool {
	up, down := q.item.sides()
	other := up
	if q == up {
		other = down
	}
	return p.meetsRail(other) != nil
}

// feedsNeighbor reports whether the other side of a simple item goes down to
// a supply: the fuse of an alternator's charge cable.
func (p *plan) feedsNeighbor(q *pin) bool {
	_, down := q.item.sides()
	far := p.farPins(down)
	return len(far) == 1 && far[0].up() && far[0].item.dev.Kind.Supplies != nil
}

// meetsRail gives the rail that the pin sits on, or that its one wire goes to.
func (p *plan) meetsRail(q *pin) *joint {
	if q.term == nil {
		return nil
	}
	if j := p.meets[q.term.ID]; j != nil {
		if j.kind == railJoint {
			return j
		}
		return nil
	}
	for _, r := range p.runs {
		for i := range r.ends {
			if o := r.ends[1-i].joint; r.ends[i].pin == q && o != nil && o.kind == railJoint {
				return o
			}
		}
	}
	return nil
}

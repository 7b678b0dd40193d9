package diagram

import "legwork/harness/part"

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

// turnMainFuses turns over a fuse that the battery's only wire goes to and that
// feeds a rail: current then runs up from the battery.
func (p *plan) turnMainFuses() {
	for _, r := range p.runs {
		for i := range r.ends {
			a, q := r.ends[i].pin, r.ends[1-i].pin
			if a == nil || q == nil || p.flow.fromPlus[a.term.ID] != 0 || !q.item.form.simple || !protects(q.item.dev.Kind) || !p.feedsRail(q) {
				continue
			}
			if q.up() && a.up() {
				q.item.take(q.item.form.swapped())
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

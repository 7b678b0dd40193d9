package diagram

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// collectJoints joins terminals that are one point without a wire, and keeps
// those at which more than one thing ends.
func (p *plan) collectJoints() {
	group := make([]int, len(p.m.Terminals))
	for i := range group {
		group[i] = i
	}
	var find func(int) int
	find = func(i int) int {
		if group[i] != i {
			group[i] = find(group[i])
		}
		return group[i]
	}
	for _, t := range p.m.Terminals {
		for _, u := range t.Bus {
			a, b := find(t.ID), find(u.ID)
			group[max(a, b)] = min(a, b)
		}
	}
	members := make([][]*model.Terminal, len(group))
	for _, t := range p.m.Terminals {
		r := find(t.ID)
		members[r] = append(members[r], t)
	}
	for _, terms := range members {
		if len(terms) > 0 {
			p.addJoint(terms)
		}
	}
}

// addJoint keeps a group of terminals as a joint where more than one thing
// ends: two wires, a wire and metal, a bus with its members.
func (p *plan) addJoint(terms []*model.Terminal) {
	wires, live := 0, 0
	head := terms[0]
	for _, t := range terms {
		wires += len(t.Ends)
		if p.pins[t.ID] == nil {
			head = t
		}
		if attached(t) {
			live++
		}
	}
	self := p.pins[head.ID] == nil
	if live == 0 || !self && len(terms) == 1 && wires < 2 && (wires == 0 || head.Metal == nil) {
		return
	}
	if self && wires == 0 && len(terms) == 1 {
		return
	}
	p.makeJoint(head, terms, self)
}

func (p *plan) makeJoint(head *model.Terminal, terms []*model.Terminal, self bool) *joint {
	j := &joint{id: len(p.joints), name: shown(head), dev: head.Device, terms: terms, metal: head.Metal, self: self}
	if j.metal != nil {
		j.kind = studJoint
	}
	for _, t := range terms {
		p.meets[t.ID] = j
	}
	p.joints = append(p.joints, j)
	return j
}

// shown is the full name of a terminal as the user typed it.
func shown(t *model.Terminal) string {
	if t.Shown != "" {
		return t.Shown
	}
	if t.Device.Kind.Self {
		return t.Device.Name
	}
	return t.Device.Name + "." + t.Name
}

// pinsOf gives the symbol pins that sit on the joint.
func (p *plan) pinsOf(j *joint) []*pin {
	var out []*pin
	for _, t := range j.terms {
		if q := p.pins[t.ID]; q != nil {
			out = append(out, q)
		}
	}
	return out
}

// promote makes a joint of a terminal at which one wire ends, so that it can
// become a rail.
func (p *plan) promote(t *model.Terminal) *joint {
	j := p.makeJoint(t, []*model.Terminal{t}, false)
	for _, r := range p.runs {
		for i, at := range []*model.Terminal{r.w.From, r.w.To} {
			if at == t {
				r.ends[i] = end{joint: j}
			}
		}
	}
	return j
}

// protects reports whether the device opens on too much current.
func protects(k *part.Kind) bool { return k.Protects != nil }

package solve

import (
	"legwork/harness/circuit"
	"legwork/harness/part"
)

// findStarts marks the solenoid of a starter and the relays through whose
// contacts its coil gets current: all those met on the way from the coil back
// to the supply, and on the way from their coils, in the steps in which the
// starter is asked for.
func (f *frame) findStarts(near union) {
	asked := part.StepSet(0)
	for i, s := range f.model.Steps {
		if s.Engine == part.Locked || s.Engine == part.Turning {
			asked |= 1 << uint(i)
		}
	}
	hand := f.groups(func(l *link) bool {
		return l.path && l.steps&asked != 0 && l.state < 0
	})
	live := f.liveGroups(near)
	for i := range f.relays {
		if f.relays[i].Kind == part.SolenoidState && len(f.movers[i].watch) > 0 {
			f.relays[i].Starts = true
			f.behindCoil(hand, live, i, 0)
		}
	}
}

// maxUpstream limits how many relays in a row are followed.
const maxUpstream = 16

// upstream marks the relays whose make contact feeds a group of nodes that no
// supply feeds directly, and goes on behind each.
func (f *frame) upstream(hand union, live map[int]bool, group, depth int) {
	if depth > maxUpstream || f.fed(hand, live, group) {
		return
	}
	for i := range f.links {
		l := &f.links[i]
		if l.use != part.ContactElement || l.state < 0 || l.rest || l.branch == noBranch {
			continue
		}
		a, b := hand.find(int(l.a)), hand.find(int(l.b))
		if a == b || a != group && b != group || f.relays[l.state].Kind != part.RelayState || f.relays[l.state].Starts {
			continue
		}
		f.relays[l.state].Starts = true
		f.upstream(hand, live, a+b-group, depth+1)
		f.behindCoil(hand, live, int(l.state), depth+1)
	}
}

// behindCoil follows both ends of a coil.
func (f *frame) behindCoil(hand union, live map[int]bool, r, depth int) {
	for _, w := range f.movers[r].watch {
		for _, n := range []circuit.Node{w.plus, w.minus} {
			if g := hand.find(int(n)); g != hand.find(0) {
				f.upstream(hand, live, g, depth)
			}
		}
	}
}

// liveGroups is the groups of always joined nodes that hold a supply's plus.
func (f *frame) liveGroups(near union) map[int]bool {
	live := map[int]bool{}
	for _, d := range f.model.Devices {
		for _, s := range d.Supplies() {
			if _, n, ok := f.point(d, s.Plus); ok {
				live[near.find(int(n))] = true
			}
		}
	}
	return live
}

// fed reports whether a group holds a node that is live without any relay.
func (f *frame) fed(hand union, live map[int]bool, group int) bool {
	for n := range live {
		if hand.find(n) == group {
			return true
		}
	}
	return false
}

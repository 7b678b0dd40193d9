package deck

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"legwork/harness/circuit"
	"legwork/harness/part"
)

// trial decides a step that an operating point can't: where several states are
// at rest, or none, the order of the moves says which one is reached. It moves
// one contact at a time by the times to operate and release, and takes all
// volts from the simulator.
type trial struct {
	*player
	k       Deck
	ph      int
	t       float64
	due     []float64
	lost    []bool
	done    bool
	dumb    bool       // the simulator had no answer to a deck without anything that moves
	offs    [][]string // loads of constant power to be left out, fewest first
	tried   int        // how many of offs were
	free    bool       // what we found to chatter is let go
	seen    map[string]bool
	endless bool // the moves come back to where they were
}

// try decides all steps in question side by side, and lets go, once more, all
// that was found to chatter.
func try(t *testing.T, path string, players []*player) []*trial {
	var list []*trial
	for _, p := range players {
		for _, step := range slices.Sorted(slices.Values(append(slices.Clone(p.silent), p.differ...))) {
			list = append(list, newTrial(p, step, false))
		}
		for step, s := range p.hist.States {
			if len(s.Chatter) > 0 {
				list = append(list, newTrial(p, step, true))
			}
		}
	}
	for {
		var now []*trial
		var decks []string
		for _, x := range list {
			if !x.done {
				now = append(now, x)
				decks = append(decks, written(t, x.k))
			}
		}
		if len(now) == 0 {
			return list
		}
		for i, a := range simulate(t, path, decks) {
			now[i].go1(a)
		}
	}
}

func newTrial(p *player, step int, free bool) *trial {
	n := len(p.decks.states)
	x := &trial{player: p, k: p.decks.Frozen(step), due: make([]float64, n), lost: make([]bool, n), free: free, seen: map[string]bool{}}
	for r := range x.due {
		x.due[r] = math.Inf(1)
		before := step > 0 && p.hist.States[step-1].Relay[r].On
		x.k.Contacts[r] = Contact{On: before && !x.heldOut(r), Fixed: true}
	}
	x.k.Given = p.commands(step, byHand)
	x.offs = p.outages()
	x.k.Off = nil
	return x
}

// outages lists the sets of loads of constant power, smallest first: where such
// a load can't be fed there is no operating point until it is left out.
func (n *network) outages() [][]string {
	sets := [][]string{nil}
	for _, e := range n.decks.parts {
		if e.law.Kind == circuit.ConstantPower {
			for _, s := range sets {
				sets = append(sets, append(slices.Clone(s), e.device.Name))
			}
		}
	}
	slices.SortStableFunc(sets, func(a, b []string) int { return len(a) - len(b) })
	return sets
}

// heldOut reports whether a relay may not move, since it would never stop.
func (x *trial) heldOut(r int) bool {
	return !x.free && slices.Contains(x.hist.States[x.k.Step].Chatter, r)
}

// go1 goes on by one move, or to the next phase.
func (x *trial) go1(a answer) {
	if !a.found() {
		x.tried++
		if x.dumb = x.tried == len(x.offs); !x.dumb {
			x.k.Off = x.offs[x.tried]
		}
		x.done = x.dumb
		return
	}
	x.tried, x.k.Off = 0, nil
	next, who := math.Inf(1), -1
	for r := range x.due {
		wants, delay := x.wants(a, r)
		switch {
		case !wants:
			x.due[r] = math.Inf(1)
		case math.IsInf(x.due[r], 1):
			x.due[r] = x.t + delay
		}
		if x.due[r] < next-1e-9 {
			next, who = x.due[r], r
		}
	}
	switch {
	case who >= 0 && next <= lasting(x.hist.States[x.k.Step].Step):
		if x.endless = x.again(); x.endless {
			x.done = true
			return
		}
		x.t = max(x.t, next)
		c := &x.k.Contacts[who]
		c.On = !c.On
		x.due[who] = math.Inf(1)
		x.lost[who] = x.lost[who] || !c.On && x.decks.states[who].Kind == part.AliveState
	case x.ph+1 < phases:
		x.ph++
		x.k.Given = x.commands(x.k.Step, x.ph)
	default:
		x.done = true
	}
}

// again notes the moment before a move, and reports whether it was there before.
func (x *trial) again() bool {
	key := fmt.Sprint(x.ph)
	for r, c := range x.k.Contacts {
		key += fmt.Sprintf(" %t %t %.6f", c.On, x.lost[r], min(x.due[r]-x.t, 1e3))
	}
	known := x.seen[key]
	x.seen[key] = true
	return known
}

// wants reports whether a state wants to move at the volts of an answer, and
// how long it takes.
func (x *trial) wants(a answer, r int) (bool, float64) {
	st, s, on := &x.decks.states[r], x.hist.States[x.k.Step], x.k.Contacts[r].On
	if len(st.watch) == 0 || x.heldOut(r) {
		return false, 0
	}
	at := func(n int) float64 { return a.volts[nodeName(n)] }
	if st.Kind == part.AliveState {
		fed := true
		for i, w := range st.watch {
			fed = fed && at(w[0])-at(w[1]) >= st.Watch[i].AtLeastV
		}
		if on {
			return !fed && st.HoldsS < away(s.Step), st.HoldsS
		}
		return fed && !x.lost[r], 0
	}
	v := at(st.watch[0][0]) - at(st.watch[0][1])
	in, out := x.k.thresholds(r)
	if on {
		for _, p := range st.pulls {
			v += p.share * (at(p.a) - at(p.b))
		}
		return math.Abs(v) < out, st.release()
	}
	return math.Abs(v) >= in && class(x.hist.Relays[r]) <= x.ph, st.operate()
}

// agrees reports whether the step ended where we left it, or never ends where
// we found chatter.
func (x *trial) agrees() bool {
	s := x.hist.States[x.k.Step]
	if x.dumb || x.endless != x.free {
		return false
	}
	if x.free {
		return true
	}
	for r := range x.k.Contacts {
		if x.k.Contacts[r].On != (s.Relay[r].On && !slices.Contains(s.Chatter, r)) {
			return false
		}
	}
	return true
}

package deck

import (
	"fmt"
	"strings"

	"legwork/harness/circuit"
	"legwork/harness/part"
)

// state writes a state that the simulator moves: a switch with hysteresis that
// begins where the state stood, and node k with 1 V while it is on.
func (b *writer) state(r int) {
	c, st := b.Contacts[r], &b.of.states[r]
	if c.Fixed {
		return
	}
	on, off := b.thresholds(r)
	b.printf("BW%d w%d 0 V = %s", r, r, b.watched(r, st))
	b.printf("V1K%d o%d 0 1\nS%d o%d k%d w%d 0 st%d %s\nRK%d k%d 0 1", r, r, r, r, r, r, r, word(c.On), r, r)
	b.printf(".model st%d sw vt=%s vh=%s ron=1e-6 roff=1e15", r, num((on+off)/2), num((on-off)/2))
}

func word(on bool) string {
	if on {
		return "on"
	}
	return "off"
}

// thresholds are the volts from which a state comes on, and under which it
// goes off. A relay that is not sure to pull in is played as one that does.
func (k Deck) thresholds(r int) (on, off float64) {
	st := &k.of.states[r]
	if st.Kind == part.AliveState {
		return 0, 0
	}
	off = coilAt(st.ReleaseV, k.CoilC[r])
	on = off
	if st.PairSaid {
		on = max(on, coilAt(st.OutBelowV, k.CoilC[r]))
	}
	return on, off
}

// watched is the expression that a state follows: the volts of a coil, whichever
// way round; for a controller the least of what its feeds have to spare.
func (b *writer) watched(r int, st *state) string {
	if st.Kind == part.AliveState {
		var spare []string
		for i, w := range st.watch {
			spare = append(spare, fmt.Sprintf("%s-%s", across(w[0], w[1]), num(st.Watch[i].AtLeastV)))
		}
		text := spare[0]
		for _, s := range spare[1:] {
			text = "min(" + text + "," + s + ")"
		}
		return text
	}
	coil := across(st.watch[0][0], st.watch[0][1])
	var help strings.Builder
	for _, p := range st.pulls {
		fmt.Fprintf(&help, "+%s*%s", num(p.share), across(p.a, p.b))
	}
	if help.Len() == 0 {
		return "abs(" + coil + ")"
	}
	return fmt.Sprintf("V(k%d) > 0.5 ? abs(%s%s) : abs(%s)", r, coil, help.String(), coil)
}

// join groups the nodes that hang together whatever moves.
func (b *writer) join() {
	same := make([][]int, b.of.points.count)
	for i := range b.of.parts {
		e := &b.of.parts[i]
		if on, free := b.on(e); on && !free && b.carries(e) {
			same[e.a], same[e.b] = append(same[e.a], e.b), append(same[e.b], e.a)
		}
	}
	b.joined, _ = colored(same, 0)
}

// carries reports whether an element holds its ends together: a regulator only
// pushes.
func (b *writer) carries(e *element) bool { return e.law.Kind != circuit.Regulator }

// anchor ties every part that floats to the reference, at one point: no current
// flows there, but the simulator needs a voltage. In a live deck the shunts do.
func (b *writer) anchor() {
	if b.live() {
		return
	}
	done := map[int]bool{0: true}
	for _, e := range b.of.parts {
		on, _ := b.on(&e)
		if group := b.joined[e.a]; on && !done[group] {
			done[group] = true
			b.printf("* %s floats, with what hangs on it: tied down at one point\nRA%d %s 0 1", nodeName(e.a), group, nodeName(e.a))
		}
	}
}

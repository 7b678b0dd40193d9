package solve

import (
	"math"
	"slices"

	"legwork/harness/circuit"
)

// keptAnswers is how many solutions of one run are kept at a time. Steps that
// have the same links closed, as off and rest do, have the same solution: it
// is found once.
const keptAnswers = 16

// answer is a solution with what it was found for.
type answer struct {
	key      []uint64 // links closed, then the temperature factor of every coil
	sol      circuit.Solution
	complete bool   // sol has its currents
	read     *State // what was read out of it at the end of a step; nil: nothing yet
	pinned   bool   // it ended a step
}

// answers are the solutions of one run; the room of old ones is used again.
type answers struct {
	list []*answer
	key  []uint64
	next int // the one whose room is used next
}

// forget makes ready for another run, with other resistances.
func (k *answers) forget() {
	for _, a := range k.list {
		a.key, a.read, a.pinned = a.key[:0], nil, false
	}
}

// find gives the solution that was found for the present key, nil for none.
func (k *answers) find() *answer {
	for _, a := range k.list {
		if len(a.key) > 0 && slices.Equal(a.key, k.key) {
			return a
		}
	}
	return nil
}

// room gives a place for a new solution: a fresh one, or that of the oldest
// that no step ended with. The answer is not known under the key until the
// caller says so: solving may fail.
func (k *answers) room() *answer {
	if len(k.list) < keptAnswers {
		k.list = append(k.list, new(answer))
		return k.list[len(k.list)-1]
	}
	for range k.list {
		a := k.list[k.next]
		k.next = (k.next + 1) % len(k.list)
		if !a.pinned {
			a.key, a.read = a.key[:0], nil
			return a
		}
	}
	return new(answer) // a draft with many steps of its own: this one is not kept
}

// note writes down what the present solution is found for.
func (p *play) note() {
	key := p.kept.key[:0]
	word, n := uint64(0), 0
	for _, i := range p.f.moving {
		word <<= 1
		if p.closed[i] {
			word |= 1
		}
		if n++; n == 64 {
			key = append(key, word)
			word, n = 0, 0
		}
	}
	key = append(key, word)
	for r := range p.seen {
		key = append(key, math.Float64bits(p.seen[r].factor))
	}
	p.kept.key = key
}

package solve

import (
	"context"
	"encoding/binary"
	"math"
	"slices"

	"legwork/harness/part"
)

// maxMoves is how many moves all event runs of a step may take. A run that
// neither settles nor repeats by then is taken for a cycle of what moved in
// its second half.
const maxMoves = 2000

// maxFreezes limits how many cycles of one step are taken out one by one.
const maxFreezes = 8

// sequence settles a step in which a relay moves more than once, by operate
// and release times. Moves that fall due at the same moment are taken in both
// orders: where the outcomes differ, the order decides.
func (p *play) sequence(ctx context.Context) error {
	p.spent = 0
	for range maxFreezes {
		if p.spent > maxMoves {
			break
		}
		p.rewind()
		out, err := p.settle(ctx, lastFirst)
		if err != nil {
			return err
		}
		other, otherCycle := slices.Clone(p.on), p.lastCycle(out)
		p.rewind()
		if out, err = p.settle(ctx, firstFirst); err != nil {
			return err
		}
		cycle := p.lastCycle(out)
		switch {
		case cycle == nil && otherCycle == nil:
			p.noteRaces(other)
			return nil
		case cycle == nil:
			p.races = merge(p.races, otherCycle.Relays)
			return nil
		case otherCycle == nil:
			p.races = merge(p.races, cycle.Relays)
			p.rewind()
			_, err = p.settle(ctx, lastFirst)
			return err
		}
		p.cycles = append(p.cycles, *cycle)
		for _, r := range cycle.Relays {
			p.frozen[r] = true
		}
	}
	return p.giveUp(ctx)
}

// giveUp takes out every relay that has moved more than once and settles what
// is left, as far as it does.
func (p *play) giveUp(ctx context.Context) error {
	c := Cycle{}
	for r := range p.seen {
		if s := &p.seen[r]; s.moves > 1 {
			p.frozen[r] = true
			c.add(p, r)
		}
	}
	if len(c.Relays) > 0 {
		p.cycles = append(p.cycles, c)
	}
	p.rewind()
	if _, err := p.settle(ctx, together); err != nil {
		return err
	}
	return p.solve(ctx)
}

// lastCycle is the cycle in which a run ended, nil if it settled.
func (p *play) lastCycle(out outcome) *Cycle {
	if out != endless {
		return nil
	}
	return p.cycle
}

// noteRaces notes the relays that stand otherwise than in the other order.
func (p *play) noteRaces(other []bool) {
	var differ []int
	for r := range other {
		if other[r] != p.on[r] {
			differ = append(differ, r)
		}
	}
	p.races = merge(p.races, differ)
}

func merge(a, b []int) []int {
	a = append(a, b...)
	slices.Sort(a)
	return slices.Compact(a)
}

// rounds watches an event run for a state that comes back.
type rounds struct {
	p     *play
	seen  map[string]int
	times []float64
	moves [][]bool // places before each move
	key   []byte
}

func newRounds(p *play) *rounds { return &rounds{p: p, seen: map[string]int{}} }

// again notes the moment before a move and reports whether it was there
// before: same places, same moves pending after the same delays.
func (k *rounds) again(ph phase) bool {
	p := k.p
	k.key = append(k.key[:0], byte(ph))
	for r := range p.on {
		wait := int64(-1)
		if !math.IsInf(p.due[r], 1) {
			wait = int64(math.Round((p.due[r] - p.t) * 1e7))
		}
		k.key = binary.AppendVarint(append(k.key, flags(p.on[r], p.lost[r])), wait)
	}
	p.spent++
	from, known := k.seen[string(k.key)]
	if !known && p.spent <= maxMoves {
		k.seen[string(k.key)] = len(k.times)
		k.times = append(k.times, p.t)
		k.moves = append(k.moves, slices.Clone(p.on))
		return false
	}
	if !known {
		from = len(k.times) / 2
	}
	p.cycle = k.close(from)
	return len(p.cycle.Relays) > 0
}

func flags(a, b bool) (f byte) {
	if a {
		f |= 1
	}
	if b {
		f |= 2
	}
	return f
}

// close describes the cycle that began before move from.
func (k *rounds) close(from int) *Cycle {
	p := k.p
	c := &Cycle{PeriodS: p.t - k.times[from]}
	for i := from; i < len(k.moves); i++ {
		next := p.on
		if i+1 < len(k.moves) {
			next = k.moves[i+1]
		}
		for r := range next {
			if next[r] != k.moves[i][r] && p.f.relays[r].Kind != part.AliveState && !slices.Contains(c.Relays, r) {
				c.add(p, r)
			}
		}
	}
	return c
}

// add takes a relay into the cycle, with the volts of its last moves.
func (c *Cycle) add(p *play, r int) {
	if len(c.Relays) == 0 {
		c.Node = p.f.movers[r].watch[0].terminal
	}
	c.Relays = append(c.Relays, r)
	c.PullV = append(c.PullV, p.seen[r].pullV)
	c.DropV = append(c.DropV, p.seen[r].dropV)
}

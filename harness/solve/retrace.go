package solve

import (
	"context"

	"legwork/harness/part"
)

// retrace tries whether a step comes to rest with every relay where it was in
// a history before; ok is false where one wants to move, or where the moves on
// the way have to be known: the starter's pull is judged at its moment.
func (p *play) retrace(ctx context.Context, before *History) (ok bool, err error) {
	if before == nil || p.engine() == part.Locked {
		return false, nil
	}
	was := before.States[p.step]
	if was.Skipped != "" || len(was.Relay) != len(p.on) || len(was.Cycles) > 0 || len(was.Races) > 0 {
		return false, nil
	}
	for r := range p.on {
		p.on[r] = was.Relay[r].On
	}
	p.command()
	if err := p.solve(ctx); err != nil {
		return false, err
	}
	if p.look(commands) > p.limit() {
		return true, nil
	}
	p.rewind()
	return false, nil
}

// Agrees reports whether another history of the same case has every relay at
// the same place in every step.
func (h *History) Agrees(o *History) bool {
	if len(h.States) != len(o.States) || len(h.Relays) != len(o.Relays) {
		return false
	}
	for i, s := range h.States {
		if len(s.Relay) != len(o.States[i].Relay) {
			return false
		}
		for r := range s.Relay {
			if s.Relay[r].On != o.States[i].Relay[r].On {
				return false
			}
		}
	}
	return true
}

package deck

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"legwork/harness/part"
	"legwork/harness/solve"
)

// player plays a network through its steps by the simulator alone: contacts,
// controllers and coil temperatures are carried from its own answers. It knows
// the phases of a step as the design lays them down: first what key and hand
// drive, at the volts before the starter draws; then the starter's solenoid;
// then what controllers command.
type player struct {
	*network
	on      []bool    // by relay
	lost    []bool    // in this step
	riseC   []float64 // of coils
	stop    bool      // no answer to the phase before: the step is over
	last    answer
	given   []bool // of the last deck
	checked int    // contacts compared with ours

	silent []int // steps for which the simulator has no operating point
	differ []int // steps that it ends otherwise than we do
}

const (
	byHand = iota
	starters
	commands
	phases
)

// play plays all networks side by side, each phase of a step in one process.
func play(t *testing.T, path string, list []*network) []*player {
	var players []*player
	steps := 0
	for _, n := range list {
		r := len(n.decks.states)
		players = append(players, &player{network: n, on: make([]bool, r), lost: make([]bool, r), riseC: make([]float64, r)})
		steps = max(steps, len(n.hist.States))
	}
	for step := range steps {
		for ph := range phases {
			var now []*player
			var decks []string
			for _, p := range players {
				if step < len(p.hist.States) && !p.stop && p.has(step, ph) {
					now = append(now, p)
					decks = append(decks, written(t, p.deck(step, ph)))
				}
			}
			for i, a := range simulate(t, path, decks) {
				now[i].take(a)
			}
		}
		for _, p := range players {
			if step < len(p.hist.States) {
				p.end(step)
			}
		}
	}
	return players
}

// has reports whether anything is new in the phase: a command, or a relay that
// may come on from now and has the volts for it.
func (p *player) has(step, ph int) bool {
	if ph == byHand || !slices.Equal(p.given, p.commands(step, ph)) {
		return true
	}
	for r := range p.on {
		st := &p.decks.states[r]
		if p.on[r] || class(p.hist.Relays[r]) != ph || len(st.watch) == 0 {
			continue
		}
		out, _ := p.decks.Frozen(step).thresholds(r)
		if p.volts(p.last, r) >= out {
			return true
		}
	}
	return false
}

// volts is what an answer gives across a coil that is out.
func (p *player) volts(a answer, r int) float64 {
	w := p.decks.states[r].watch[0]
	return math.Abs(a.volts[nodeName(w[0])] - a.volts[nodeName(w[1])])
}

func class(r solve.Relay) int {
	switch {
	case r.Kind == part.SolenoidState:
		return starters
	case r.Output && !r.Starts:
		return commands
	}
	return byHand
}

// deck is a step's deck with everything as this player has it. Of our own
// history it takes the commands, which are given from outside, and what can't
// come to rest.
func (p *player) deck(step, ph int) Deck {
	s := p.hist.States[step]
	k := p.decks.Frozen(step)
	k.Given = p.commands(step, ph)
	p.given = k.Given
	if ph == byHand {
		clear(p.lost)
	}
	for r, st := range p.hist.Relays {
		k.CoilC[r] = p.coilC(step, r)
		c := &k.Contacts[r]
		*c = Contact{On: p.on[r]}
		watching := len(p.decks.states[r].watch) > 0
		switch {
		case slices.Contains(s.Chatter, r) || !watching || p.lost[r] || s.Relay[r].Lost:
			*c, p.on[r] = Contact{Fixed: true}, false
		case st.Kind == part.AliveState:
			c.Fixed = p.on[r] && st.HoldsS >= away(s.Step)
		case p.on[r]:
			c.Fixed = p.decks.states[r].release() > lasting(s.Step)
		default:
			c.Fixed = class(st) > ph || p.decks.states[r].operate() > lasting(s.Step)
		}
	}
	return k
}

// commands are those in force: those carried over from the step before,
// then all of the step.
func (p *player) commands(step, ph int) []bool {
	s := p.hist.States[step]
	if ph == commands || s.Step.Engine == part.Locked || step == 0 {
		return s.Given
	}
	before := p.hist.States[step-1].Given
	if s.Given == nil || before == nil {
		return nil
	}
	both := slices.Clone(s.Given)
	for i := range both {
		both[i] = both[i] && before[i]
	}
	return both
}

func (p *player) coilC(step, r int) float64 {
	st := &p.decks.states[r]
	if p.hist.Case.Corner == part.ColdStart {
		return p.hist.Case.Start.Temp()
	}
	if s := p.hist.States[step].Step; s.Key == "off" && s.Engine == part.Still {
		p.riseC[r] = 0
	}
	if st.Kind == part.AliveState {
		return 0
	}
	return st.AmbientC + p.riseC[r]
}

// take notes where the simulator left the contacts.
func (p *player) take(a answer) {
	p.last = a
	if p.stop = !a.found(); p.stop {
		return
	}
	for r := range p.on {
		v, free := a.volts[fmt.Sprint("k", r)]
		if !free {
			continue
		}
		p.checked++
		if p.on[r] && v < 0.5 && p.decks.states[r].Kind == part.AliveState {
			p.lost[r] = true // it reboots
		}
		p.on[r] = v > 0.5
	}
}

// end closes a step. Where the simulator had no answer or another one, ours
// stands in from here on, so that each difference counts once.
func (p *player) end(step int) {
	s := p.hist.States[step]
	differs := false
	for r := range p.on {
		mine := s.Relay[r].On && !slices.Contains(s.Chatter, r)
		differs = differs || p.on[r] != mine
		p.on[r] = mine
	}
	switch {
	case p.stop:
		p.silent = append(p.silent, step)
	case differs:
		p.differ = append(p.differ, step)
	}
	long := s.Step.LastS == 0 && s.Step.Name != "prime" && (s.Step.Engine == part.Still || s.Step.Engine == part.Running)
	for r := range p.on {
		if long && p.on[r] && p.hist.Case.Corner != part.ColdStart && p.decks.states[r].Kind == part.RelayState {
			v := p.volts(p.last, r)
			if p.stop || differs {
				v = math.Abs(s.Relay[r].Volts)
			}
			p.riseC[r] = max(p.riseC[r], 52*math.Pow(v/p.hist.Model.SystemV, 2)) // 52 K at 12 V, in a 12 V system
		}
	}
	p.stop = false
}

package solve

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/part"
)

// maxResidualA is the largest node-law error of a sound solution.
const maxResidualA = 1e-6

// read makes the state of the step out of the solution at hand. What was read
// out of the same solution in an earlier step is shared with it.
func (p *play) read() *State {
	f, now := p.f, p.now
	s := &State{Step: &f.model.Steps[p.step], Residual: now.Residual, Met: now.Met, Passes: p.passes}
	p.at.pinned = true
	if p.at.read == nil || p.at.read.brief && !p.brief {
		p.readTerminals(s)
		p.readMeters(s)
		p.at.read = s
	} else {
		s.take(p.at.read)
	}
	p.readRelays(s)
	s.Shorts = p.shorts()
	for _, b := range now.Collapsed {
		if d := f.device[b]; d >= 0 {
			s.Collapsed = append(s.Collapsed, f.model.Devices[d].Name)
		}
	}
	s.Cycles, s.Races, s.Given = p.cycles, p.races, p.readGiven()
	for _, c := range p.cycles {
		s.Chatter = merge(s.Chatter, c.Relays)
	}
	return s
}

// take shares the figures of a step with the same solution; nobody writes them.
func (s *State) take(o *State) {
	s.Volts, s.why, s.reasons, s.ghost, s.WireA = o.Volts, o.why, o.reasons, o.ghost, o.WireA
	s.brief = o.brief
	s.DrawA, s.FuseA, s.ContactA, s.OutputA, s.SupplyA = o.DrawA, o.FuseA, o.ContactA, o.OutputA, o.SupplyA
}

func (p *play) readTerminals(s *State) {
	f := p.f
	s.Volts = make([]float64, len(f.model.Terminals))
	floating := false
	for i, n := range f.lay.node {
		s.Volts[i] = p.volts(n)
		floating = floating || math.IsNaN(s.Volts[i])
	}
	if s.brief = p.brief; floating && !p.brief {
		s.why = make([]int32, len(f.model.Terminals))
		p.explain(s.why)
		s.reasons = p.reasons.text
	}
	if !p.brief {
		s.ghost = p.ghosts(s.Volts)
	}
	s.WireA = make([]float64, len(f.model.Wires))
	for i := range s.WireA {
		s.WireA[i] = p.amps(int32(i))
	}
}

// amps is the current of a link from its first end to its second.
func (p *play) amps(i int32) float64 {
	l := &p.f.links[i]
	if l.branch == noBranch || !p.closed[i] {
		return 0
	}
	return p.now.I(l.branch)
}

func (p *play) readMeters(s *State) {
	m := &p.f.meters
	s.DrawA = p.readMeter(&m.draw, false)
	s.FuseA = p.readMeter(&m.fuse, false)
	s.ContactA = p.readMeter(&m.contact, false)
	s.OutputA = p.readMeter(&m.output, true)
	s.SupplyA = p.readMeter(&m.supply, false)
}

func (p *play) readMeter(m *meter, size bool) Amps {
	a := Amps{start: m.start, amps: make([]float64, len(m.reads))}
	for i := range m.reads {
		for _, x := range m.reads[i].links {
			a.amps[i] += x.sign * p.amps(x.link)
		}
		if size {
			a.amps[i] = math.Abs(a.amps[i])
		}
	}
	return a
}

// readRelays notes where every relay stands.
func (p *play) readRelays(s *State) {
	p.reach()
	s.Relay = make([]RelayState, len(p.f.relays))
	for r := range s.Relay {
		t := &p.seen[r]
		out := RelayState{
			On: p.on[r], Asked: p.asked(r), Volts: t.volts, Held: p.start.on[r], Lost: p.lost[r], Short: t.short,
			OutBelowV: t.outV, InAboveV: t.inV, ReleaseV: t.freeV, CoilC: t.coilC,
		}
		if p.f.relays[r].Kind == part.AliveState {
			out.Zone, out.BridgedS = p.readAlive(r)
		} else {
			out.Zone = t.zone
			if out.Held && out.On && t.moves == 0 {
				out.Zone = t.zoneOf(t.volts)
			} else if out.Asked {
				out.PullV = t.pullV
			}
		}
		s.Relay[r] = out
	}
}

// readGiven notes the outputs whose command has come.
func (p *play) readGiven() (at []bool) {
	for o := range p.given {
		if pin := p.f.outs[o].pin; p.given[o] && pin >= 0 {
			if at == nil {
				at = make([]bool, len(p.f.model.Terminals))
			}
			at[pin] = true
		}
	}
	return at
}

func (p *play) readAlive(r int) (z Zone, bridgedS float64) {
	t := &p.seen[r]
	switch {
	case !p.on[r]:
		return SurelyOut, 0
	case !t.gap:
		return SurelyIn, 0
	}
	bridgedS, _ = p.lasts()
	return t.zone, bridgedS
}

// unsolved is the state of a step that cannot be solved at all.
func (p *play) unsolved(reason string) *State {
	f := p.f
	s := &State{Step: &f.model.Steps[p.step], Skipped: reason}
	s.Volts, s.why = make([]float64, len(f.model.Terminals)), make([]int32, len(f.model.Terminals))
	s.reasons = []string{"floating: " + reason}
	for i := range s.Volts {
		s.Volts[i] = math.NaN()
	}
	s.WireA = make([]float64, len(f.model.Wires))
	s.Relay = make([]RelayState, len(f.relays))
	for r := range s.Relay {
		s.Relay[r].Short = -1
	}
	return s
}

// residualFault reports a solution whose currents do not add up: a fault of
// the program, never of the draft.
func residualFault(f *frame, s *State) diag.List {
	if s.Skipped != "" || s.Met {
		return nil
	}
	return diag.List{{
		Rule: "program-fault", Severity: diag.Fault, At: diag.Span{File: f.model.File},
		Msg:    fmt.Sprintf("step %s: currents do not add up by %.3g A, at most %.3g A is allowed", s.Step.Name, s.Residual, maxResidualA),
		Detail: "This is a fault in the program, not in the draft. Do not trust the figures of this step.",
		Values: []diag.Value{{Name: "residual", Got: s.Residual, Limit: maxResidualA, Unit: "A", Bound: diag.AtMost}},
	}}
}

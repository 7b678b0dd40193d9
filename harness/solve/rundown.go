package solve

import (
	"context"

	"legwork/harness/model"
	"legwork/harness/part"
)

// RunDown plays the moment after the key is turned off with the engine
// running: contacts and controllers stand as they stood in running, a
// controller that stays alive commands on, and the devices for which gives is
// true are sources. It starts from a played history of the same model. The
// state is nil where the draft has no such step, or running was not solved.
//
// The step coast of a history follows stalled and knows of no machine that
// gives current; this is what may happen instead of it.
func RunDown(ctx context.Context, wires []Conductor, from *History, gives func(*model.Device) bool) (*State, error) {
	m := from.Model
	run, coast := -1, -1
	for i, s := range m.Steps {
		switch {
		case s.Added:
		case s.Engine == part.Running:
			run = i
		case s.Engine == part.RunningDown:
			coast = i
		}
	}
	if run < 0 || coast < 0 || from.States[run].Skipped != "" || len(from.States[run].Shorts) > 0 {
		return nil, nil
	}
	c := from.Case
	c.After, c.runDown = nil, gives
	p := newPlay(newFrame(m, c), nil)
	if err := p.fit(wires); err != nil {
		return nil, err
	}
	p.startFrom(from.States[run])
	return p.playStep(ctx, coast, nil)
}

// startFrom takes over what relays, controllers and coils remember of a state.
func (p *play) startFrom(s *State) {
	for r := range p.on {
		p.on[r] = s.Relay[r].On
	}
	for o := range p.given {
		pin := p.f.outs[o].pin
		p.given[o] = pin >= 0 && s.Given != nil && s.Given[pin]
	}
	p.step = s.Step.ID
	p.warm(s)
}

// goesOn gives the steps in which the engine runs down, for an output that is
// on while it runs, of a controller that says nothing of that moment: kept
// alive, it can't know that the key was turned off.
func (f *frame) goesOn(d *model.Device, steps part.StepSet) part.StepSet {
	running, coast := part.StepSet(0), part.StepSet(0)
	for i, s := range f.model.Steps {
		switch s.Engine {
		case part.Running:
			running |= 1 << uint(i)
		case part.RunningDown:
			coast |= 1 << uint(i)
		}
	}
	for _, o := range d.Drives() {
		if o.Steps&coast != 0 {
			return part.NoSteps
		}
	}
	if steps&running == 0 {
		return part.NoSteps
	}
	return coast
}

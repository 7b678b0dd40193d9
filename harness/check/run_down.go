package check

import (
	"context"
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// running gives the step in which the engine runs, nil where it was not solved.
func (p *Pass) running() *solve.State {
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Engine == part.Running && !s.Step.Added {
			return s
		}
	}
	return nil
}

// machines lists what may give current while the engine runs down: what
// charges, and motors of which the draft says what they give. A machine whose
// output is on the battery all the time, and nothing else of it on anything,
// feeds nothing that the battery does not.
func (p *Pass) machines() []*model.Device {
	s := p.running()
	var list []*model.Device
	for _, d := range p.Model.Devices {
		charges := slices.ContainsFunc(d.Supplies(), func(x part.Supply) bool {
			return !x.Battery && wiredAt(d, x.Plus) && (x.Pilot != "" && wiredAt(d, x.Pilot) || !p.besideBattery(d, x.Plus))
		})
		turns := false
		for i, w := range d.Draws() {
			turns = turns || w.CoastKnown && s != nil && s.DrawA.Of(d, i) > 0
		}
		if charges || turns {
			list = append(list, d)
		}
	}
	return list
}

// besideBattery reports whether no contact lies between a terminal and a battery.
func (p *Pass) besideBattery(d *model.Device, pin string) bool {
	g := p.graph()
	seen := map[int]bool{}
	for todo := []int{p.netOf(d, pin)}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at < 0 || seen[at] {
			continue
		}
		seen[at] = true
		for _, t := range p.Nets.Members[at] {
			if t.Device != nil && slices.ContainsFunc(t.Device.Supplies(), func(s part.Supply) bool { return s.Battery && p.netOf(t.Device, s.Plus) == at }) {
				return true
			}
		}
		for _, w := range g.on[at] {
			if !w.output && !w.field && len(w.device.Switches()) == 0 {
				todo = append(todo, w.to)
			}
		}
	}
	return false
}

// runDown plays the moment after the key is turned off with the engine
// running, with the given machines as sources; nil where it can't be played.
func (p *Pass) runDown(machines ...*model.Device) *solve.State {
	wires := make([]solve.Conductor, len(p.Sizes.Wires))
	for i := range wires {
		wires[i] = p.Sizes.Wires[i].Conductor
	}
	charged := slices.ContainsFunc(machines, charges)
	s, err := solve.RunDown(context.Background(), wires, p.Sizes.Hot, func(d *model.Device) bool {
		return slices.Contains(machines, d) || charged && len(d.Supplies()) > 0 && !charges(d)
	})
	if err != nil || s == nil || s.Skipped != "" || len(s.Shorts) > 0 {
		return nil
	}
	return s
}

// charges reports whether a device is a source that is no battery.
func charges(d *model.Device) bool {
	return slices.ContainsFunc(d.Supplies(), func(s part.Supply) bool { return !s.Battery })
}

// ranDown is runDown with all machines, played once. Without machines, and with
// nothing alive that has to stop, there is nothing to play.
func (p *Pass) ranDown() *solve.State {
	if !p.ran {
		p.ran = true
		if all := p.machines(); len(all) > 0 || p.outlives() {
			p.down = p.runDown(all...)
		}
	}
	return p.down
}

// notPlayed lists the motors that may hold a coil or a critical load by what
// they give back, where the draft does not say how much that is.
func (p *Pass) notPlayed(running *solve.State) {
	var names []string
	p.eachDraw(func(m *model.Device, i int, w part.Draw) {
		if w.Turns && !w.CoastKnown && running.DrawA.Of(m, i) > 0 && p.sharesFeed(m, w) {
			names = append(names, m.Name)
		}
	})
	if len(names) > 0 {
		p.partly = append(p.partly, Skip{Rule: p.rule.ID, Reason: strings.Join(names, ", ") +
			" while running down: say what it gives back and behind what resistance (coasts 60% 0.3ohm)"})
	}
}

// sharesFeed reports whether what feeds a motor, with the contacts of key and
// relays open, leads to a coil or to a load that has to stop, and to no source.
func (p *Pass) sharesFeed(m *model.Device, w part.Draw) bool {
	g := p.graph()
	seen := map[int]bool{}
	for todo := []int{p.netOf(m, w.Plus)}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at < 0 || seen[at] || g.grounds[at] {
			continue
		}
		if g.sources[at] {
			return false
		}
		seen[at] = true
		for _, x := range g.on[at] {
			if !x.output && !x.field && !slices.ContainsFunc(x.device.Switches(), func(c part.Contact) bool { return c.By == "key" || c.CoilA != "" }) {
				todo = append(todo, x.to)
			}
		}
	}
	shares := slices.ContainsFunc(p.uses(), func(u use) bool { return u.coil && u.device != m && seen[p.netOf(u.device, u.plus)] })
	p.eachDraw(func(d *model.Device, _ int, o part.Draw) {
		shares = shares || d != m && seen[p.netOf(d, o.Plus)] && p.hasToStop(d, o)
	})
	return shares
}

// outlives reports whether a load that has to stop works with the key off.
func (p *Pass) outlives() bool {
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Key != "off" || s.Step.Added {
			continue
		}
		found := false
		p.eachDraw(func(d *model.Device, i int, w part.Draw) {
			found = found || p.hasToStop(d, w) && works(s, d, i, w, p.Model.SystemV)
		})
		if found {
			return true
		}
	}
	return false
}

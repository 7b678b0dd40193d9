package solve

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// class is when in a step a state may come on.
type class uint8

const (
	byHand    class = iota // driven by key or hand: at the volts before the starter draws
	solenoid               // the starter's own
	commanded              // driven by a controller output: after the sag
)

// mover is what the play has to know of a Relay.
type mover struct {
	class class
	// Time to come on and to go off; the usual ones where the kind states none.
	operateS, releaseS float64
	watch              []watch
	coils              []int32 // links of its coil, whose resistance follows the temperature
	pulls              []pull  // a solenoid's pull-in windings
}

// pull is a winding from the solenoid's terminal to the motor's. It has as
// many turns as the holding winding (common practice), so that the two cancel
// once they are fed from the motor's side alone: that is how a solenoid lets
// go although its own contact still feeds it.
type pull struct {
	link int32
	sign float64 // of its current from the solenoid's terminal to the motor's
}

// watch is a pair of nodes whose volts a state follows.
type watch struct {
	plus, minus circuit.Node
	terminal    *model.Terminal // plus
	atLeastV    float64
	steps       part.StepSet
}

func (f *frame) newMover(d *model.Device, s part.State) mover {
	m := mover{class: byHand, operateS: s.OperateS, releaseS: s.ReleaseS}
	if s.OperateS == 0 && s.ReleaseS == 0 {
		m.operateS, m.releaseS = gauge.OperateS, gauge.ReleaseS
	}
	if s.Kind == part.SolenoidState {
		m.class = solenoid
	}
	for _, w := range s.Watch {
		_, plus, okA := f.point(d, w.Plus)
		_, minus, okB := f.point(d, w.Minus)
		if !okA || !okB {
			continue
		}
		steps := w.Steps & f.all()
		if w.Steps == part.NoSteps {
			steps = f.all()
		}
		m.watch = append(m.watch, watch{plus: plus, minus: minus, terminal: d.Terminal(w.Plus), atLeastV: w.AtLeastV, steps: steps})
	}
	return m
}

// findCoil notes the links that are the coil of a relay, stamped at the
// temperature of its place: the play goes on from there.
func (f *frame) findCoil(d *model.Device, m *mover, s part.State) {
	if len(m.watch) == 0 || s.Kind == part.AliveState {
		return
	}
	w, ohm := m.watch[0], gauge.CoilAt(s.CoilOhm, s.AmbientC)
	for i := int(f.first[d.ID]); i < len(f.links); i++ {
		l := &f.links[i]
		if s.Kind == part.SolenoidState && l.use == part.CoilElement {
			m.pulls = append(m.pulls, pulling(l, int32(i), w)...)
		}
		if l.use == part.CoilElement && l.kind == circuit.Resistor && f.net.Law(l.branch).Ohm == ohm && l.branch != noBranch &&
			(l.a == w.plus && l.b == w.minus || l.a == w.minus && l.b == w.plus) {
			m.coils = append(m.coils, int32(i))
		}
	}
}

// pulling is the link as a pull-in winding, if it is one.
func pulling(l *link, i int32, w watch) []pull {
	switch {
	case l.branch == noBranch:
	case l.a == w.plus && l.b != w.minus:
		return []pull{{i, 1}}
	case l.b == w.plus && l.a != w.minus:
		return []pull{{i, -1}}
	}
	return nil
}

// classify finds which relays a controller output drives, and which have to
// be in before the starter can draw.
func (f *frame) classify() {
	near := f.groups(func(l *link) bool {
		return l.path && l.steps == f.all() && l.state < 0 && l.use != part.OutputElement
	})
	f.findStarts(near)
	for i := range f.relays {
		r, m := &f.relays[i], &f.movers[i]
		if r.Kind == part.AliveState || len(m.watch) == 0 {
			continue
		}
		drivers := f.drivers(m, near)
		if len(drivers) == 0 {
			continue
		}
		r.Output, r.DrivenByOutput = true, true
		if !r.Starts {
			m.class = commanded
		}
		for _, o := range drivers {
			f.outs[o].early = f.outs[o].early || r.Starts
		}
	}
}

// drivers lists the controller outputs that one wire, or wires and fuses, join
// to an end of a coil.
func (f *frame) drivers(m *mover, near union) []int {
	var found []int
	ends := []int{near.find(int(m.watch[0].plus)), near.find(int(m.watch[0].minus))}
	for i, o := range f.outs {
		at := near.find(int(f.lay.node[max(o.pin, 0)]))
		if o.pin >= 0 && at != near.find(0) && slices.Contains(ends, at) {
			found = append(found, i)
		}
	}
	return found
}

// groups joins the nodes that the links asked for hold together.
func (f *frame) groups(ask func(*link) bool) union {
	u := newUnion(f.lay.count)
	for i := range f.links {
		if l := &f.links[i]; l.branch != noBranch && ask(l) {
			u.join(int(l.a), int(l.b))
		}
	}
	return u
}

package solve

import (
	"slices"

	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// addDevices asks every device what it puts into the network.
func (f *frame) addDevices() {
	n := len(f.model.Devices)
	f.first, f.last = make([]int32, n), make([]int32, n)
	s := part.Stamper{Corner: f.corner, Grade: f.grade, Start: f.start, Steps: make([]part.Step, len(f.model.Steps))}
	for i := range f.model.Steps {
		s.Steps[i] = f.model.Steps[i].Step
	}
	for i, d := range f.model.Devices {
		f.first[i] = int32(len(f.links))
		if d.Kind != nil && d.Kind.Stamp != nil {
			s.Branches, s.States = s.Branches[:0], s.States[:0]
			s.RunDown = f.runDown != nil && f.runDown(d)
			d.Kind.Stamp(d.Device, &s)
			f.addDevice(d, &s)
		}
		f.last[i] = int32(len(f.links))
	}
}

func (f *frame) addDevice(d *model.Device, s *part.Stamper) {
	base := len(f.relays)
	for _, st := range s.States {
		f.relays = append(f.relays, Relay{Device: d, State: st})
		f.movers = append(f.movers, f.newMover(d, st))
	}
	for _, b := range s.Branches {
		f.addBranch(d, b, base)
	}
	for i := base; i < len(f.movers); i++ {
		f.findCoil(d, &f.movers[i], f.relays[i].State)
		if len(f.movers[i].pulls) > 0 {
			f.pullers = append(f.pullers, int32(i))
		}
	}
}

// addBranch adds one element of a device. An element at a terminal that the
// device lacks is left out: the model has told the user already.
func (f *frame) addBranch(d *model.Device, b part.Branch, base int) {
	a, na, okA := f.point(d, b.A)
	z, nz, okB := f.point(d, b.B)
	if !okA || !okB {
		return
	}
	law := b.Law
	if law.Kind == circuit.Diode && slices.Contains(f.open, d.ID) {
		return
	}
	if law.Kind == circuit.Regulator {
		_, law.SenseA, okA = f.point(d, b.SenseA)
		_, law.SenseB, okB = f.point(d, b.SenseB)
		if !okA {
			law.SenseA = na
		}
		if !okB {
			law.SenseB = nz
		}
	}
	if law.Kind == circuit.Resistor {
		law.Ohm = max(law.Ohm, leastOhm)
	}
	l := link{
		a: na, b: nz, ta: a, tb: z, steps: b.Steps & f.all(), state: -1, out: -1,
		dev: int32(d.ID), rest: b.Rest, use: b.Use, kind: law.Kind,
	}
	if b.State >= 0 {
		l.state = int32(base + b.State)
	}
	if b.Use == part.OutputElement {
		l.out = f.output(d, &l)
	}
	l.path = leads(d, &l, b)
	if l.out >= 0 && f.runDown != nil {
		l.steps |= f.goesOn(d, b.Steps)
	}
	if l.out >= 0 {
		f.outs[l.out].links = append(f.outs[l.out].links, int32(len(f.links)))
	}
	f.add(l, law)
}

// leads reports whether an element takes current on to the next thing, as
// a fuse, a contact, an output or a resistor in the line does, rather than
// using it up.
func leads(d *model.Device, l *link, b part.Branch) bool {
	switch l.use {
	case part.FuseElement, part.ContactElement, part.OutputElement:
		return true
	case part.Element:
		if d.Kind.Passes == nil {
			return false
		}
		for _, p := range d.Passes() {
			if p.A == b.A && p.B == b.B || p.A == b.B && p.B == b.A {
				return true
			}
		}
	}
	return false
}

// point finds what a device calls by name: a terminal, or the metal it
// grounds to. The terminal that became metal is told from no other.
func (f *frame) point(d *model.Device, name string) (id int32, n circuit.Node, ok bool) {
	if name == part.Metal {
		if d.Metal != nil {
			return metalPoint, f.lay.metal[d.Metal.ID], true
		}
		name = d.Kind.Ground
	}
	t := d.Terminal(name)
	if t == nil {
		return 0, 0, false
	}
	if d.Metal != nil && t.Metal == d.Metal {
		return metalPoint, f.lay.node[t.ID], true
	}
	return int32(t.ID), f.lay.node[t.ID], true
}

// output is one output of a controller; several elements may belong to it.
type output struct {
	dev    int32
	pin    int32 // terminal by ID
	device *model.Device
	links  []int32
	early  bool // turns the starter on: it need not wait for the engine to turn
}

// output gives the index of the output that an element belongs to.
func (f *frame) output(d *model.Device, l *link) int32 {
	pin := l.ta
	for _, o := range d.Drives() {
		if t := d.Terminal(o.Pin); t != nil && (int32(t.ID) == l.ta || int32(t.ID) == l.tb) {
			pin = int32(t.ID)
		}
	}
	for i := range f.outs {
		if f.outs[i].dev == int32(d.ID) && f.outs[i].pin == pin {
			return int32(i)
		}
	}
	f.outs = append(f.outs, output{dev: int32(d.ID), pin: pin, device: d})
	return int32(len(f.outs) - 1)
}

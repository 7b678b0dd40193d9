package deck

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// addWires takes in every wire: its copper, and a bolted joint at each end
// that lands on a post.
func (d *Decks) addWires(wires []solve.Conductor) {
	for _, w := range d.history.Model.Wires {
		if w.From == nil || w.To == nil {
			continue
		}
		ohm := copper(wires[w.ID], d.history.Case)
		for _, t := range []*model.Terminal{w.From, w.To} {
			if t.Landing == part.Post {
				ohm += gauge.RingJointOhm
			}
		}
		law := circuit.Law{Kind: circuit.Resistor, Ohm: max(ohm, idealOhm)}
		d.add(element{a: d.points.terminal[w.From.ID], b: d.points.terminal[w.To.ID], law: law, name: "wire " + w.Number})
	}
}

// copper is the resistance of a conductor in a case: in the cold by size and
// length where nobody measured it, else by the law of copper.
func copper(c solve.Conductor, k solve.Case) float64 {
	cold := k.Start.Temp()
	switch {
	case k.Corner != part.ColdStart:
		return c.Ohm
	case c.Size.AreaMM2 > 0 && c.LengthM > 0 && !c.Measured:
		return c.Size.OhmPerM(cold) * c.LengthM
	}
	return c.Ohm * gauge.CopperAt(1, cold) / gauge.CopperAt(1, c.TempC)
}

// addDevice takes in what a device puts into the circuit.
func (d *Decks) addDevice(dev *model.Device, s *part.Stamper) {
	base := len(d.states)
	for _, st := range s.States {
		d.states = append(d.states, d.stateOf(dev, st))
	}
	for _, b := range s.Branches {
		if e, ok := d.elementOf(dev, b, base); ok {
			d.parts = append(d.parts, e)
		}
	}
	for i := base; i < len(d.states); i++ {
		d.findPulls(dev, s.Branches, &d.states[i])
	}
}

// point is the node of what a device calls by name.
func (d *Decks) point(dev *model.Device, name string) (n int, ok bool) {
	if name == part.Metal {
		if dev.Metal != nil {
			return d.points.metal[dev.Metal.ID], true
		}
		name = dev.Kind.Ground
	}
	if t := dev.Terminal(name); t != nil {
		return d.points.terminal[t.ID], true
	}
	return 0, false
}

func (d *Decks) stateOf(dev *model.Device, st part.State) state {
	s := state{State: st, device: dev}
	for _, w := range st.Watch {
		a, okA := d.point(dev, w.Plus)
		b, okB := d.point(dev, w.Minus)
		if okA && okB {
			s.watch = append(s.watch, [2]int{a, b})
		}
	}
	return s
}

// elementOf is a branch of a device; ok is false where the device lacks one of
// its terminals, or its diodes are taken to be open.
func (d *Decks) elementOf(dev *model.Device, b part.Branch, base int) (e element, ok bool) {
	e = element{law: b.Law, steps: b.Steps, state: -1, rest: b.Rest, coil: -1, pin: -1, device: dev, name: dev.Name + " " + b.A + "-" + b.B}
	var okA, okB bool
	e.a, okA = d.point(dev, b.A)
	e.b, okB = d.point(dev, b.B)
	if !okA || !okB || b.Law.Kind == circuit.Diode && slices.Contains(d.history.Case.Open, dev) {
		return e, false
	}
	if b.State >= 0 {
		e.state = base + b.State
	}
	if b.Law.Kind == circuit.Regulator {
		e.senseA, e.senseB = e.a, e.b
		if n, ok := d.point(dev, b.SenseA); ok {
			e.senseA = n
		}
		if n, ok := d.point(dev, b.SenseB); ok {
			e.senseB = n
		}
	}
	if b.Use == part.CoilElement {
		e.coil = d.coilOf(b, base)
	}
	if b.Use == part.OutputElement {
		e.pin = outputPin(dev, b)
	}
	return e, true
}

// coilOf is the relay whose coil a branch is, -1 for none.
func (d *Decks) coilOf(b part.Branch, base int) int {
	for i := base; i < len(d.states); i++ {
		st := &d.states[i]
		if st.Kind == part.RelayState && st.Watch[0].Plus == b.A && st.Watch[0].Minus == b.B {
			return i
		}
	}
	return -1
}

// outputPin is the terminal of the output that a branch belongs to.
func outputPin(dev *model.Device, b part.Branch) int {
	for _, o := range dev.Drives() {
		if t := dev.Terminal(o.Pin); t != nil && (dev.Terminal(b.A) == t || dev.Terminal(b.B) == t) {
			return t.ID
		}
	}
	return -1
}

// findPulls finds the windings of a solenoid that lead to the motor.
func (d *Decks) findPulls(dev *model.Device, branches []part.Branch, s *state) {
	if s.Kind != part.SolenoidState || len(s.Watch) == 0 {
		return
	}
	for _, b := range branches {
		if b.Use != part.CoilElement || b.A != s.Watch[0].Plus || b.B == s.Watch[0].Minus {
			continue
		}
		e, ok := d.elementOf(dev, b, 0)
		if ok && e.law.Ohm > 0 {
			s.pulls = append(s.pulls, pull{e.a, e.b, s.CoilOhm / e.law.Ohm})
		}
	}
}

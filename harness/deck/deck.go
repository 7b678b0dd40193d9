// Package deck writes a harness as netlists for a circuit simulator, one for
// each step of use, so that anyone can hold what legwork says against a program
// that shares nothing with it.
//
// The decks are made from the model, the conductors, and the laws of the
// devices, not from the network that package solve builds of them. Of a history
// they take only where its relays and commands stand and how warm its coils are.
// Everything in a deck has a generated name; [Decks.Names] tells what it is.
package deck

import (
	"math"
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Decks is one case of a harness, ready to be written as the deck of any step.
type Decks struct {
	history *solve.History
	points  points
	parts   []element
	states  []state
}

// element is one branch of the circuit.
type element struct {
	a, b           int // nodes
	senseA, senseB int // circuit.Regulator
	law            circuit.Law
	steps          part.StepSet
	state          int  // index of the state that has to be on, -1: none
	rest           bool // conducts while that state is off
	coil           int  // index of the relay whose coil it is, -1: none
	pin            int  // terminal of the controller output that has to be commanded, -1: none
	device         *model.Device
	name           string // what it is, in the user's words
}

// state is one remembered on-or-off of a device.
type state struct {
	part.State
	device *model.Device
	watch  [][2]int // nodes of each pair that it watches
	pulls  []pull
}

// pull is a solenoid's winding towards the motor, which helps its holding
// winding: volts between two nodes, and how much they count.
type pull struct {
	a, b  int
	share float64
}

// New prepares the decks of a history that was played with the given
// conductors, one for each wire of the model by wire ID.
func New(h *solve.History, wires []solve.Conductor) *Decks {
	d := &Decks{history: h, points: number(h.Model, h.Case.Grade)}
	d.addWires(wires)
	for _, t := range d.points.ties {
		d.add(element{a: t.a, b: t.b, law: circuit.Law{Kind: circuit.Resistor, Ohm: t.ohm}, name: t.name})
	}
	s := part.Stamper{Corner: h.Case.Corner, Grade: h.Case.Grade, Start: h.Case.Start}
	for _, step := range h.Model.Steps {
		s.Steps = append(s.Steps, step.Step)
	}
	for _, dev := range h.Model.Devices {
		if dev.Kind != nil && dev.Kind.Stamp != nil {
			s.Branches, s.States = s.Branches[:0], s.States[:0]
			dev.Kind.Stamp(dev.Device, &s)
			d.addDevice(dev, &s)
		}
	}
	return d
}

// add takes in an element that conducts in every step, whatever moves.
func (d *Decks) add(e element) {
	e.steps, e.state, e.coil, e.pin = ^part.NoSteps, -1, -1, -1
	d.parts = append(d.parts, e)
}

// Deck is one step of the case, with what is known of its relays. It may be
// changed before it is written.
type Deck struct {
	Step     int
	Contacts []Contact // by index of solve.History.Relays
	Given    []bool    // by terminal ID: the output there is commanded; nil for none
	CoilC    []float64 // temperature of each relay's coil, by the same index
	Off      []string  // devices of constant power that are taken to be off

	of *Decks
}

// Contact is where a relay, a solenoid or a controller stands.
type Contact struct {
	On    bool
	Fixed bool // it stays so; else the simulator decides, from here on
}

// Frozen is a step with everything standing as the history found it.
func (d *Decks) Frozen(step int) Deck {
	s := d.history.States[step]
	k := Deck{Step: step, Given: s.Given, Off: s.Collapsed, of: d}
	for _, r := range s.Relay {
		k.Contacts = append(k.Contacts, Contact{On: r.On, Fixed: true})
		k.CoilC = append(k.CoilC, r.CoilC)
	}
	return k
}

// Live is a step in which the simulator moves the relays, from where they stood
// at the end of the step before. What chatters, a controller that bridges a
// loss of its feed or reboots, and a relay too slow for the step stay where they
// were found: an operating point knows no time.
func (d *Decks) Live(step int) Deck {
	k := d.Frozen(step)
	for r := range k.Contacts {
		before := step > 0 && d.history.States[step-1].Relay[r].On
		if c := &k.Contacts[r]; !d.timed(step, r, before) {
			c.On, c.Fixed = before, false
		}
	}
	return k
}

// timed reports whether it takes time to say where a state stands.
func (d *Decks) timed(step, r int, before bool) bool {
	s, st := d.history.States[step], &d.states[r]
	switch {
	case slices.Contains(s.Chatter, r), len(st.watch) == 0, s.Relay[r].Lost:
		return true
	case st.Kind == part.AliveState:
		return (before || s.Relay[r].On) && st.HoldsS >= away(s.Step)
	case before:
		return st.release() > lasting(s.Step)
	}
	return st.operate() > lasting(s.Step)
}

// away is the least time for which feeds can be away in a step before they
// return.
func away(s *model.Step) float64 {
	switch {
	case s.Engine == part.Locked:
		return gauge.EngageShortS
	case s.LastS > 0:
		return s.LastS
	}
	return math.Inf(1)
}

// lasting is how long a relay has for moving in a step.
func lasting(s *model.Step) float64 {
	if s.LastS > 0 && s.Engine == part.Still {
		return s.LastS
	}
	return math.Inf(1)
}

// operate and release are the times that the state takes to move; a kind that
// says neither has the usual ones.
func (s *state) operate() float64 {
	if s.OperateS == 0 && s.ReleaseS == 0 {
		return gauge.OperateS
	}
	return s.OperateS
}

func (s *state) release() float64 {
	if s.OperateS == 0 && s.ReleaseS == 0 {
		return gauge.ReleaseS
	}
	return s.ReleaseS
}

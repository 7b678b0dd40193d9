package check

import (
	"math"
	"slices"

	"legwork/harness/model"
)

// What the unfused way on from a terminal comes to.
type leading uint8

const (
	toUse leading = 1 << iota // something that uses current, or senses
	toFuse
	toMachine // a starter, an alternator, another battery
	toStarter
	toBattery // the next one of a row
	toBridge  // a fuse that batteries feed from both sides
)

// starterShare is the share of a starter's current from which a wire counts
// as one of its cables: two run side by side at most.
const starterShare = 0.25

// openCircuit is the part of the harness that a battery can feed without any
// fuse, as a tree of least length from the batteries' posts.
type openCircuit struct {
	wire    []bool // by wire ID: unfused
	starter []bool // by wire ID: a starter's cable
	distM   []float64
	leads   []leading // by terminal ID
	near    []leading // the same, as far as no further wire is on the way
	parent  []int
	by      []*model.Wire // the last wire on the way, nil where none is
	root    []int         // the battery's post at which the way begins
	next    [][]openWay
	worked  []workedContact
}

type openWay struct {
	to      int
	lengthM float64
	wire    *model.Wire // nil inside a device
	contact int         // index in worked and one more, 0 for none
}

func (p *Pass) openCircuit() *openCircuit {
	n := len(p.Model.Terminals)
	o := &openCircuit{
		wire: make([]bool, len(p.Model.Wires)), starter: make([]bool, len(p.Model.Wires)),
		distM: make([]float64, n), leads: make([]leading, n), parent: make([]int, n), next: make([][]openWay, n),
		near: make([]leading, n), by: make([]*model.Wire, n), root: make([]int, n),
	}
	turns := slices.ContainsFunc(states(p.Sizes.Hot), p.turning)
	for _, w := range p.Sizes.Wires {
		id := w.Wire.ID
		o.wire[id] = math.IsInf(p.Sizes.Guards[id].RatedA, 1)
		if !o.wire[id] {
			continue
		}
		o.starter[id] = p.starterCable(w.Wire)
		length := w.Conductor.LengthM
		if o.starter[id] {
			length = 0 // what leaves it begins there
		}
		o.join(w.Wire.From, w.Wire.To, openWay{lengthM: length, wire: w.Wire}, false)
	}
	for _, d := range p.Model.Devices {
		o.joinInside(p, d)
	}
	o.measure(p)
	if !turns { // its cables show by where they lead
		for _, w := range p.Model.Wires {
			o.starter[w.ID] = o.wire[w.ID] && o.leads[o.farEnd(w).ID]&toStarter != 0
		}
		o.shorten()
		o.measure(p)
	}
	for _, w := range p.Model.Wires { // no step feeds it so
		o.wire[w.ID] = o.wire[w.ID] && !math.IsInf(o.distM[o.farEnd(w).ID], 1)
	}
	return o
}

// shorten takes the length from the cables of starters.
func (o *openCircuit) shorten() {
	for _, list := range o.next {
		for i := range list {
			if w := list[i].wire; w != nil && o.starter[w.ID] {
				list[i].lengthM = 0
			}
		}
	}
}

func (o *openCircuit) join(a, b *model.Terminal, w openWay, oneWay bool) {
	if a == nil || b == nil || a.Metal != nil || b.Metal != nil {
		return
	}
	w.to = b.ID
	o.next[a.ID] = append(o.next[a.ID], w)
	if !oneWay {
		w.to = a.ID
		o.next[b.ID] = append(o.next[b.ID], w)
	}
}

// joinInside adds the ways through a device that no fuse guards. A resistor is
// none: it limits what comes through.
func (o *openCircuit) joinInside(p *Pass, d *model.Device) {
	for _, t := range d.Terminals {
		for _, other := range t.Bus {
			o.join(t, other, openWay{}, true)
		}
	}
	for i, c := range d.Switches() {
		o.join(pinOf(d, c.A), pinOf(d, c.B), openWay{contact: o.work(p, d, i, c)}, false)
	}
	for _, c := range d.Couples() {
		o.join(pinOf(d, c.A), pinOf(d, c.B), openWay{}, false)
	}
	for _, w := range d.Passes() {
		if w.Ohm == 0 {
			o.join(pinOf(d, w.A), pinOf(d, w.B), openWay{}, w.OneWay)
		}
	}
}

// farEnd is the end of a wire that lies farther from the batteries.
func (o *openCircuit) farEnd(w *model.Wire) *model.Terminal {
	if o.parent[w.From.ID] == w.To.ID || o.distM[w.From.ID] > o.distM[w.To.ID] {
		return w.From
	}
	return w.To
}

// own tells what a terminal itself is to unfused current.
func (o *openCircuit) own(t *model.Terminal) leading {
	switch {
	case protects(t):
		for _, f := range t.Device.Protects() {
			a, b := pinOf(t.Device, f.In), pinOf(t.Device, f.Out)
			if (a == t || b == t) && !(a != nil && b != nil && o.reached(a) && o.reached(b)) {
				return toFuse
			}
		}
		return toBridge
	case takesStart(t):
		return toMachine | toStarter
	case isReturn(t):
		return toMachine | toBattery
	case isSupply(t):
		return toMachine
	case t.Device.Kind.Joins || passesOn(t):
		return 0
	}
	return toUse
}

// starterCable reports whether a wire is a cable of the starter: it lands on
// its stud straight from a battery, or carries its current while it turns.
func (p *Pass) starterCable(w *model.Wire) bool {
	if takesStart(w.From) && isBattery(w.To) || takesStart(w.To) && isBattery(w.From) {
		return true
	}
	for _, s := range states(p.Sizes.Hot) {
		if p.turning(s) && math.Abs(s.WireA[w.ID]) >= starterShare*p.starterA(s) {
			return true
		}
	}
	return false
}

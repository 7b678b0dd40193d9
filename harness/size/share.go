package size

import (
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
)

// ShareKind says what takes a share of a loss.
type ShareKind uint8

const (
	// WireShare is a wire: its copper, and beside it the bolted joints at its ends.
	WireShare ShareKind = iota
	// FuseShare is a protective element.
	FuseShare
	// ContactShare is a closed contact.
	ContactShare
	// DriverShare is the driver of a controller's output, which is no wiring.
	DriverShare
	// InlineShare is what else lies in the line: a diode, a resistor.
	InlineShare
)

// Share is what one thing on the way of a load's current takes of its volts.
// What lies on the way but nowhere in the list is metal and plugs.
type Share struct {
	Kind   ShareKind
	Wire   *model.Wire   // of a WireShare, else nil
	Device *model.Device // of the others
	Pin    string        // of a DriverShare: its output as the draft names it
	Amps   float64       // through it, the extra of a start included
	Volts  float64       // without JointV; negative where the current of others flows against
	JointV float64       // bolted joints at the ends of a wire
}

// Name says what takes the share, with its article where it has one: "wire 3",
// "F3", "the contact of K1", "the driver of A1.PUMP".
func (s Share) Name() string {
	switch s.Kind {
	case WireShare:
		return "wire " + s.Wire.Number
	case ContactShare:
		return "the contact of " + s.Device.Name
	case DriverShare:
		return "the driver of " + s.Pin
	}
	return s.Device.Name
}

// walk yields the edges from a point back to the tree's root, each with the
// point of it that is nearer to the root.
func (tr *tree) walk(point int, yield func(e *edge, near int)) {
	for tr.from[point] >= 0 {
		near := int(tr.from[point])
		yield(&tr.t.edges[tr.by[point]], near)
		point = near
	}
}

// shares lists what takes the volts of a path, from the battery to the load
// and back. The list and the metal between add up to all that is lost, the
// drivers included.
func (c *chooser) shares(p Path) []Share {
	list := c.taken[:0]
	plus, minus := c.endsOf(p)
	p.ways.out.walk(c.tracer.point[plus.ID], func(e *edge, near int) { list = append(list, c.share(p, e, near, 1)) })
	for i, j := 0, len(list)-1; i < j; i, j = i+1, j-1 {
		list[i], list[j] = list[j], list[i]
	}
	p.ways.back.walk(c.tracer.point[minus.ID], func(e *edge, near int) {
		list = append(list, c.share(p, e, near, -1))
		if e.parted {
			p.ExtraA = 0 // counted as far as here
		}
	})
	c.taken = list
	return slices.Clone(list)
}

// share is what one edge takes; sense is 1 on the way out, -1 on the way back.
func (c *chooser) share(p Path, e *edge, near int, sense float64) Share {
	s := c.history.States[p.Step.ID]
	out := Share{Wire: e.wire, Device: e.device, Amps: e.amps(s) + p.ExtraA, Kind: shareKinds[e.sort]}
	if math.IsInf(out.Amps, 1) {
		out.Amps = 0 // nobody reads the current of a fixed way
	}
	a, b := c.sides(e)
	if e.sort == outputEdge {
		out.Pin = a.Shown
	}
	if volts, ok := across(s, a, b); ok {
		if near != e.a {
			volts = -volts
		}
		out.Volts = sense*volts + p.ExtraA*c.ohmOf(e, s)
	}
	if e.wire != nil {
		out.JointV = math.Copysign(out.Amps*(jointOhm(e.wire.From)+jointOhm(e.wire.To)), out.Volts)
		out.Volts -= out.JointV
	}
	return out
}

// Stated reports whether it is what a resistor takes that the draft puts in
// the line.
func (s Share) Stated() bool {
	return s.Kind == InlineShare && slices.ContainsFunc(s.Device.Passes(), func(p part.Path) bool { return p.Ohm > 0 })
}

// stated reports whether an edge is a resistor in the line.
func (e *edge) stated() bool {
	return e.sort == fixedEdge && e.device.Passes()[e.index].Ohm > 0
}

var shareKinds = [...]ShareKind{wireEdge: WireShare, fuseEdge: FuseShare, contactEdge: ContactShare, outputEdge: DriverShare, fixedEdge: InlineShare}

// lessDrivers takes the drop of a controller's own driver, and of a resistor
// that the draft puts in the line, off what the wiring is judged by: no wire
// can cure it. Where volts at the load are judged, while
// the starter turns, it stays in.
func (c *chooser) lessDrivers(p Path) Path {
	if p.Step.Engine == part.Turning {
		return p
	}
	s := c.history.States[p.Step.ID]
	add := func(e *edge, _ int) {
		apart := &p.DriverV
		if e.stated() {
			apart = &p.StatedV
		} else if e.sort != outputEdge {
			return
		}
		a, b := c.sides(e)
		p.drivers = append(p.drivers, [2]*model.Terminal{a, b})
		if volts, ok := across(s, a, b); ok {
			more := p.ExtraA * c.ohmOf(e, s)
			*apart += math.Abs(volts) + more
			p.DropV -= math.Abs(volts) + more
			p.steadyV -= math.Abs(volts)
		}
	}
	plus, minus := c.endsOf(p)
	p.ways.out.walk(c.tracer.point[plus.ID], add)
	p.ways.back.walk(c.tracer.point[minus.ID], add)
	return p
}

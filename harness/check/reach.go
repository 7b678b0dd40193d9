package check

import (
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// reach is which nets current can come from or go back to, through every
// fuse, contact, diode and output as if it were closed, but through no load
// and no coil. It answers "is there any way at all", by net.
type reach struct {
	plus  []bool // a source's positive terminal
	minus []bool // a battery's negative terminal
}

func (p *Pass) reach() *reach {
	if p.reached == nil {
		p.reached = p.reachOf(true)
	}
	return p.reached
}

// sides is reach without controller outputs: what is fed or grounded by itself.
func (p *Pass) sides() *reach {
	if p.bare == nil {
		p.bare = p.reachOf(false)
	}
	return p.bare
}

func (p *Pass) reachOf(outputs bool) *reach {
	g := p.graph()
	return &reach{plus: spread(g.on, g.sources, outputs), minus: spread(g.back, g.grounds, outputs)}
}

// pinOf gives a device's terminal by canonical name; [part.Metal] is the
// terminal through which it returns to metal. Nil where there is none.
func pinOf(d *model.Device, pin string) *model.Terminal {
	if pin != part.Metal {
		return d.Terminal(pin)
	}
	for _, t := range d.Terminals {
		if t.Metal != nil {
			return t
		}
	}
	return nil
}

// across gives the volts between two terminals of a device in a step; ok is
// false, and the volts 0, where one is missing or floats.
func across(s *solve.State, d *model.Device, plus, minus string) (volts float64, ok bool) {
	a, b := pinOf(d, plus), pinOf(d, minus)
	if a == nil || b == nil {
		return 0, false
	}
	ra, rb := s.Reading(a), s.Reading(b)
	if !ra.OK || !rb.OK {
		return 0, false
	}
	return ra.Volts - rb.Volts, true
}

// feedV gives the volts that a load has in a step, whichever way round it is
// connected where it does not mind.
func feedV(s *solve.State, d *model.Device, w part.Draw) (volts float64, ok bool) {
	volts, ok = across(s, d, w.Plus, w.Minus)
	if w.EitherWay {
		volts = math.Abs(volts)
	}
	return volts, ok
}

// eachDraw calls f for every use of current in the model.
func (p *Pass) eachDraw(f func(d *model.Device, index int, w part.Draw)) {
	for _, d := range p.Model.Devices {
		for i, w := range d.Draws() {
			f(d, i, w)
		}
	}
}

// wiredAt reports whether anything is connected to a terminal of a device.
func wiredAt(d *model.Device, pin string) bool {
	t := pinOf(d, pin)
	return t != nil && (len(t.Ends) > 0 || t.Metal != nil || len(t.Bus) > 0)
}

// anyWire reports whether a wire or a bus lands on the device.
func anyWire(d *model.Device) bool {
	for _, t := range d.Terminals {
		if len(t.Ends) > 0 || len(t.Bus) > 0 {
			return true
		}
	}
	return false
}

// shown gives the name of a device's terminal as the user typed it; one that
// is metal goes by the metal's name.
func shown(d *model.Device, pin string) string {
	t := pinOf(d, pin)
	switch {
	case t != nil && t.Shown != "":
		return t.Shown
	case t != nil && t.Metal != nil:
		return t.Metal.Name
	}
	return d.Name + "." + pin
}

// feedingWires points at the wires that land on a terminal.
func feedingWires(d *model.Device, pin string) []diag.Related {
	t := pinOf(d, pin)
	if t == nil {
		return nil
	}
	var list []diag.Related
	for _, e := range t.Ends {
		list = append(list, diag.Related{At: e.Wire.At, Msg: "wire " + e.Wire.Number + " lands there"})
	}
	return list
}

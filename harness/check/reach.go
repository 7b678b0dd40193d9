package check

import (
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

// way is a passage from one net to another.
type way struct{ from, to int }

func (p *Pass) reach() *reach {
	if p.reached != nil {
		return p.reached
	}
	n := len(p.Nets.Members)
	on, back := make([][]int, n), make([][]int, n)
	var plus, minus []int
	for _, d := range p.Model.Devices {
		for _, w := range p.ways(d) {
			on[w.from] = append(on[w.from], w.to)
			back[w.to] = append(back[w.to], w.from)
		}
		if d.Kind.Supplies == nil {
			continue
		}
		for _, s := range d.Kind.Supplies(d.Device) {
			plus = p.netsOf(plus, d, s.Plus)
			if s.Battery {
				minus = p.netsOf(minus, d, s.Minus)
			}
		}
	}
	p.reached = &reach{plus: spread(n, on, plus), minus: spread(n, back, minus)}
	return p.reached
}

func (p *Pass) netsOf(list []int, d *model.Device, pin string) []int {
	if t := pinOf(d, pin); t != nil {
		return append(list, p.Nets.Of[t.ID])
	}
	return list
}

// ways lists the passages through a device, both directions where current
// may go both ways.
func (p *Pass) ways(d *model.Device) []way {
	var list []way
	add := func(a, b string, oneWay bool) {
		ta, tb := pinOf(d, a), pinOf(d, b)
		if ta == nil || tb == nil {
			return
		}
		na, nb := p.Nets.Of[ta.ID], p.Nets.Of[tb.ID]
		list = append(list, way{na, nb})
		if !oneWay {
			list = append(list, way{nb, na})
		}
	}
	k := d.Kind
	if k.Protects != nil {
		for _, f := range k.Protects(d.Device) {
			add(f.In, f.Out, false)
		}
	}
	if k.Switches != nil {
		for _, c := range k.Switches(d.Device) {
			add(c.A, c.B, false)
		}
	}
	if k.Passes != nil {
		for _, w := range k.Passes(d.Device) {
			add(w.A, w.B, w.OneWay)
		}
	}
	if !p.quiet {
		outputWays(d, add)
	}
	return list
}

// outputWays are the ways through a controller: a low-side output leads to
// its grounds, a high-side output comes from its feeds.
func outputWays(d *model.Device, add func(a, b string, oneWay bool)) {
	if d.Kind.Drives == nil || d.Kind.Draws == nil {
		return
	}
	for _, o := range d.Kind.Drives(d.Device) {
		for _, w := range d.Kind.Draws(d.Device) {
			if o.Sinks {
				add(o.Pin, w.Minus, true)
			} else {
				add(w.Plus, o.Pin, true)
			}
		}
	}
}

func spread(n int, next [][]int, from []int) []bool {
	seen := make([]bool, n)
	for len(from) > 0 {
		at := from[len(from)-1]
		from = from[:len(from)-1]
		if seen[at] {
			continue
		}
		seen[at] = true
		from = append(from, next[at]...)
	}
	return seen
}

// pinOf gives a device's terminal by canonical name; [part.Metal] is the
// terminal through which it returns to metal. Nil where there is none.
func pinOf(d *model.Device, pin string) *model.Terminal {
	for _, t := range d.Terminals {
		if t.Name == pin || pin == part.Metal && t.Metal != nil {
			return t
		}
	}
	return nil
}

// across gives the volts between two terminals of a device in a step; ok is
// false where one is missing or floats.
func across(s *solve.State, d *model.Device, plus, minus string) (volts float64, ok bool) {
	a, b := pinOf(d, plus), pinOf(d, minus)
	if a == nil || b == nil {
		return 0, false
	}
	ra, rb := s.Reading(a), s.Reading(b)
	return ra.Volts - rb.Volts, ra.OK && rb.OK
}

// eachDraw calls f for every use of current in the model.
func (p *Pass) eachDraw(f func(d *model.Device, index int, w part.Draw)) {
	for _, d := range p.Model.Devices {
		if d.Kind.Draws == nil {
			continue
		}
		for i, w := range d.Kind.Draws(d.Device) {
			f(d, i, w)
		}
	}
}

// wiredAt reports whether anything is connected to a terminal of a device.
func wiredAt(d *model.Device, pin string) bool {
	t := pinOf(d, pin)
	return t != nil && (len(t.Ends) > 0 || t.Metal != nil || len(t.Bus) > 0)
}

// shown gives the name of a device's terminal as the user typed it.
func shown(d *model.Device, pin string) string {
	if t := pinOf(d, pin); t != nil {
		return t.Shown
	}
	return d.Name + "." + pin
}

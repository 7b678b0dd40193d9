package solve

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// reading is where the current of one ability of a device is read: the sum
// over links, each with its sign.
type reading struct {
	links []signed
}

// signed is a link and the sense in which its current counts.
type signed struct {
	link int32
	sign float64
}

// meter is one family of readings: for each device, one for each of what an
// ability lists.
type meter struct {
	start []int32 // by device ID, and one more: first reading of the device
	reads []reading
}

// meters are all families of a frame.
type meters struct {
	draw, fuse, contact, output, supply meter
}

func newMeters(f *frame) meters {
	var m meters
	for _, d := range f.model.Devices {
		m.draw.next()
		m.fuse.next()
		m.contact.next()
		m.output.next()
		m.supply.next()
		m.read(f, d)
	}
	for _, each := range []*meter{&m.draw, &m.fuse, &m.contact, &m.output, &m.supply} {
		each.next()
	}
	return m
}

func (m *meters) read(f *frame, d *model.Device) {
	for _, x := range d.Draws() {
		if at, _, ok := f.point(d, x.Plus); ok && x.Coil {
			m.draw.add(f.entering(d, at, func(part.Use) bool { return true })) // all its windings
			continue
		}
		m.draw.add(f.between(d, x.Plus, x.Minus))
	}
	for _, x := range d.Protects() {
		m.fuse.add(f.between(d, x.In, x.Out))
	}
	for _, x := range d.Switches() {
		m.contact.add(f.between(d, x.A, x.B))
	}
	for _, x := range d.Drives() {
		m.output.add(f.leaving(d, x.Pin, part.OutputElement))
	}
	for _, x := range d.Supplies() {
		m.supply.add(f.leaving(d, x.Plus, part.SourceElement))
	}
}

func (m *meter) next() { m.start = append(m.start, int32(len(m.reads))) }

func (m *meter) add(r []signed) { m.reads = append(m.reads, reading{r}) }

// between reads the current that flows inside a device from one terminal to
// another. Where no element lies just there (a starter's motor behind its
// contact), it is the current that enters at the first.
func (f *frame) between(d *model.Device, from, to string) []signed {
	a, _, okA := f.point(d, from)
	b, _, okB := f.point(d, to)
	if !okA || !okB {
		return nil
	}
	var found []signed
	for i := f.first[d.ID]; i < f.last[d.ID]; i++ {
		switch l := &f.links[i]; {
		case l.ta == a && l.tb == b:
			found = append(found, signed{i, 1})
		case l.ta == b && l.tb == a:
			found = append(found, signed{i, -1})
		}
	}
	if found != nil {
		return found
	}
	return f.entering(d, a, func(part.Use) bool { return true })
}

// leaving reads the current that a device's elements of one use push out at a
// terminal.
func (f *frame) leaving(d *model.Device, pin string, use part.Use) []signed {
	at, _, ok := f.point(d, pin)
	if !ok {
		return nil
	}
	found := f.entering(d, at, func(u part.Use) bool { return u == use })
	for i := range found {
		found[i].sign = -found[i].sign
	}
	return found
}

func (f *frame) entering(d *model.Device, at int32, ask func(part.Use) bool) []signed {
	var found []signed
	for i := f.first[d.ID]; i < f.last[d.ID]; i++ {
		switch l := &f.links[i]; {
		case !ask(l.use) || l.ta == l.tb:
		case l.ta == at:
			found = append(found, signed{i, 1})
		case l.tb == at:
			found = append(found, signed{i, -1})
		}
	}
	return found
}

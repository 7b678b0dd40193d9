package model

import "legwork/harness/part"

// able is what a device can do, as set: the abilities of its kind, asked once.
// Stages ask for them again and again, and each answer of a kind is made anew.
type able struct {
	supplies []part.Supply
	protects []part.Fuse
	draws    []part.Draw
	switches []part.Contact
	drives   []part.Output
	kicks    []part.Kick
	grounds  []part.Return
	passes   []part.Path
	inside   []part.Path
	holds    []part.Held
	couples  []part.Pair
}

// ask fills in what every device can do. It comes when all devices know of
// each other and of their wires. One without terminals, whose statement was
// a mistake, can do nothing.
func (m *Model) ask() {
	for _, d := range m.Devices {
		if len(d.Terminals) == 0 {
			continue
		}
		k := d.Kind
		d.can = able{
			supplies: answer(k.Supplies, d), protects: answer(k.Protects, d), draws: answer(k.Draws, d),
			switches: answer(k.Switches, d), drives: answer(k.Drives, d), kicks: answer(k.Kicks, d),
			grounds: answer(k.Grounds, d), passes: answer(k.Passes, d), inside: answer(k.Inside, d),
			holds: answer(k.Holds, d), couples: answer(k.Couples, d),
		}
	}
}

func answer[T any](ability func(*part.Device) []T, d *Device) []T {
	if ability == nil {
		return nil
	}
	return ability(d.Device)
}

// Supplies lists the sources of current that the device is; nil for none.
// This list and those below are shared: they must not be written to.
func (d *Device) Supplies() []part.Supply { return d.can.supplies }

// Protects lists its protective elements with the ratings that the draft gives.
func (d *Device) Protects() []part.Fuse { return d.can.protects }

// Draws lists its uses of current.
func (d *Device) Draws() []part.Draw { return d.can.draws }

// Switches lists its contacts.
func (d *Device) Switches() []part.Contact { return d.can.switches }

// Drives lists its controller outputs.
func (d *Device) Drives() []part.Output { return d.can.drives }

// Kicks lists its inductances.
func (d *Device) Kicks() []part.Kick { return d.can.kicks }

// Grounds lists its returns and what they want.
func (d *Device) Grounds() []part.Return { return d.can.grounds }

// Passes lists the ways by which it lets current through, always.
func (d *Device) Passes() []part.Path { return d.can.passes }

// Inside lists the ways inside it by which current comes or returns.
func (d *Device) Inside() []part.Path { return d.can.inside }

// Holds lists the terminals that it keeps at volts of its own.
func (d *Device) Holds() []part.Held { return d.can.holds }

// Couples lists its terminals that are one point.
func (d *Device) Couples() []part.Pair { return d.can.couples }

// fewPins is how many terminals are looked through one by one: that is faster
// than a map, and most devices have two.
const fewPins = 8

// Terminal gives the device's terminal by its canonical name or an alias,
// names before aliases; nil for none.
func (d *Device) Terminal(name string) *Terminal {
	if d.byName != nil {
		return d.byName[name]
	}
	for _, t := range d.Terminals {
		if t.Name == name {
			return t
		}
	}
	for i, t := range d.Terminals {
		for _, alias := range d.Pins[i].Aliases {
			if alias == name {
				return t
			}
		}
	}
	return nil
}

// index prepares a device with many terminals for [Device.Terminal].
func (d *Device) index() {
	if len(d.Terminals) <= fewPins {
		return
	}
	d.byName = make(map[string]*Terminal, len(d.Terminals))
	for _, t := range d.Terminals {
		d.byName[t.Name] = t
	}
	for i, t := range d.Terminals {
		for _, alias := range d.Pins[i].Aliases {
			if d.byName[alias] == nil {
				d.byName[alias] = t
			}
		}
	}
}

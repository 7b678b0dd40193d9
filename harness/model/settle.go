package model

import (
	"legwork/harness/part"
)

// findBox resolves "in BOX".
func (b *builder) findBox(r *reading) {
	if !r.inSaid {
		return
	}
	name := r.in.Text
	box := b.m.deviceNamed[name]
	switch {
	case box == nil:
		b.noName("box", name, r.in.At, b.boxNames())
	case box == r.d:
		b.say(nameRule, r.in.At, "%s can't sit in itself", r.form.owner)
	case box.Kind.Lines == nil || box.Kind.Lines.Shape != part.BusLines:
		b.say(nameRule, r.in.At, "%s is in %s, which is %s and no box", r.form.owner, clip(name), article(box.Kind.Name))
	default:
		r.d.In = box
	}
	if r.d.In == nil && !r.atSaid {
		// Its place is not known, and that is said already.
		r.d.Spot = Spot{Place: b.m.Places[0]}
	}
}

func (b *builder) boxNames() []string {
	var names []string
	for _, d := range b.m.Devices {
		if d.Kind.Lines != nil && d.Kind.Lines.Shape == part.BusLines {
			names = append(names, d.Name)
		}
	}
	return names
}

// settle gives a device its place and what follows from it.
func (b *builder) settle(r *reading) {
	d := r.d
	b.spotOfBox(r)
	if d.Spot.Place == nil {
		d.Spot.Place = b.m.Places[0]
		if !r.atSaid && d.In == nil && !r.double && !r.form.broken {
			b.sayNoPlace(d)
		}
	}
	d.AmbientC, d.Wet = d.Spot.Place.AmbientC, d.Spot.Place.Wet
}

// spotOfBox takes over the spot of the box around a device, and of the box
// around that; every box on the way out has it then.
func (b *builder) spotOfBox(r *reading) {
	var inside []*Device
	seen := map[*Device]bool{}
	d := r.d
	for d != nil && d.Spot.Place == nil && !seen[d] {
		seen[d] = true
		inside = append(inside, d)
		d = d.In
	}
	if d == nil {
		return
	}
	spot := d.Spot
	if spot.Place == nil {
		b.say(nameRule, r.in.At, "%s sits in %s, which sits in it", r.form.owner, clip(r.in.Text))
		spot.Place = b.m.Places[0]
	}
	for _, in := range inside {
		in.Spot = spot
	}
}

// findFrom resolves "from SOURCE": its supply terminal where a device is named.
func (b *builder) findFrom(r *reading) {
	if r.from == nil {
		return
	}
	name := r.from.Parts[0]
	d := b.m.deviceNamed[name]
	if len(r.from.Parts) > 1 || d == nil || len(d.Terminals) <= 1 {
		r.d.From = b.resolve(*r.from)
		return
	}
	r.d.From = d.Terminals[0]
	if d.Kind.Supplies == nil {
		return
	}
	for _, s := range d.Kind.Supplies(d.Device) {
		if t := d.Terminal(s.Plus); t != nil {
			r.d.From = t
			return
		}
	}
}

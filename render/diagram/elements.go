package diagram

import "legwork/harness/model"

// elements adds the ways through a device, by its abilities.
func elements(d *model.Device, both func(a, b *model.Terminal, w float64, d *model.Device, k stepKind)) {
	k, at := d.Kind, func(name string) *model.Terminal { return terminalOf(d, name) }
	if k.Protects != nil {
		for _, q := range k.Protects(d.Device) {
			both(at(q.In), at(q.Out), elementWeight, d, fuseStep)
		}
	}
	if k.Switches != nil {
		for _, q := range k.Switches(d.Device) {
			both(at(q.A), at(q.B), elementWeight, d, contactStep)
			both(at(q.CoilA), at(q.CoilB), loadWeight, d, loadStep)
		}
	}
	if k.Draws != nil {
		for _, q := range k.Draws(d.Device) {
			both(at(q.Plus), at(q.Minus), loadWeight, d, loadStep)
		}
	}
	if k.Passes != nil {
		for _, q := range k.Passes(d.Device) {
			both(at(q.A), at(q.B), elementWeight, d, plainStep)
		}
	}
	if k.Couples != nil {
		for _, q := range k.Couples(d.Device) {
			both(at(q.A), at(q.B), wireWeight, nil, plainStep)
		}
	}
	outputs(d, both)
}

// outputs adds the ways through what a controller drives: to its grounds, or
// from its feeds.
func outputs(d *model.Device, both func(a, b *model.Terminal, w float64, d *model.Device, k stepKind)) {
	if d.Kind.Drives == nil {
		return
	}
	for _, o := range d.Kind.Drives(d.Device) {
		pin := terminalOf(d, o.Pin)
		if o.Sinks && d.Kind.Grounds != nil {
			for _, g := range d.Kind.Grounds(d.Device) {
				if g.Sensor {
					continue
				}
				both(pin, terminalOf(d, g.Pin), elementWeight, d, outputStep)
			}
		}
		if !o.Sinks && d.Kind.Draws != nil {
			for _, f := range d.Kind.Draws(d.Device) {
				both(pin, terminalOf(d, f.Plus), elementWeight, d, outputStep)
			}
		}
	}
}

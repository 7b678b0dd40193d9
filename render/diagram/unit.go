package diagram

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// collectCavities makes one two-pin item of each cavity pair that is wired.
func (p *plan) collectCavities(d *model.Device) {
	paired := map[string]bool{}
	for _, c := range d.Kind.Couples(d.Device) {
		a, b := terminalOf(d, c.A), terminalOf(d, c.B)
		paired[c.A], paired[c.B] = true, true
		if attached(a) || attached(b) {
			p.addItem(d, cavityForm(c.A, c.B))
		}
	}
	for _, t := range d.Terminals {
		if attached(t) && !paired[t.Name] {
			p.addItem(d, cavityForm(t.Name, ""))
		}
	}
}

// cavityForm is one pair of mated contacts: the socket above, the pin below.
func cavityForm(up, down string) form {
	return form{
		half: 2, cols: 1, row: part.ConnectorRow, body: [2]spot{{-0.9, -0.9, 0}, {0.9, 1, 0}}, simple: true,
		pins: []formPin{{up, 0, 0, -2}, {down, 0, 0, 2}},
		marks: []mark{
			{kind: part.Thin, pts: []spot{{0, -2, 0}, {0, -0.9, 0}}},
			{kind: part.Arc, pts: []spot{{-0.9, 0, 0}, {0.9, 0, 0}}, r: 0.9},
			{kind: part.Fill, pts: []spot{{-0.28, -0.45, 0}, {0.28, -0.45, 0}, {0.28, 1, 0}, {-0.28, 1, 0}}},
			{kind: part.Thin, pts: []spot{{0, 1, 0}, {0, 2, 0}}},
		},
	}
}

// unitHalf is half the height of a unit's outline, modules.
const unitHalf = 4

// collectUnit makes one item of each attached terminal: a unit is drawn in
// fragments, where its wires are.
func (p *plan) collectUnit(d *model.Device) {
	top := unitSides(d)
	for _, t := range d.Terminals {
		if !attached(t) {
			continue
		}
		y := float64(unitHalf)
		if top[t.Name] {
			y = -unitHalf
		}
		it := &item{id: len(p.items), dev: d, unit: true, sub: t.Name}
		it.take(form{half: unitHalf, cols: 1, row: part.LoadRow, body: [2]spot{{-3.2, -unitHalf, 0}, {3.2, unitHalf, 0}}, pins: []formPin{{t.Name, 0, 0, y}}})
		p.items = append(p.items, it)
	}
}

// unitSides says which terminals of a unit look up: its feeds and whatever it
// sinks current from. Grounds, what it sources and signals look down, until
// the flow says that a signal comes from the supply.
func unitSides(d *model.Device) map[string]bool {
	top := map[string]bool{}
	k := d.Kind
	if k.Draws != nil {
		for _, q := range k.Draws(d.Device) {
			top[q.Plus] = true
		}
	}
	if k.Drives != nil {
		for _, q := range k.Drives(d.Device) {
			top[q.Pin] = q.Sinks
		}
	}
	if k.Grounds != nil {
		for _, q := range k.Grounds(d.Device) {
			top[q.Pin] = false
		}
	}
	return top
}

// settled reports whether the role of a unit's terminal fixes its side.
func settled(d *model.Device, name string) bool {
	k := d.Kind
	if k.Draws != nil {
		for _, q := range k.Draws(d.Device) {
			if q.Plus == name {
				return true
			}
		}
	}
	if k.Drives != nil {
		for _, q := range k.Drives(d.Device) {
			if q.Pin == name {
				return true
			}
		}
	}
	if k.Grounds != nil {
		for _, q := range k.Grounds(d.Device) {
			if q.Pin == name {
				return true
			}
		}
	}
	return false
}

package diagram

import (
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// attached reports whether anything ends at the terminal: a wire, a bus bar
// or metal.
func attached(t *model.Terminal) bool {
	return t != nil && (len(t.Ends) > 0 || len(t.Bus) > 0 || t.Metal != nil)
}

func (p *plan) collectItems() {
	for _, d := range p.m.Devices {
		p.collectDevice(d)
	}
	for _, it := range p.items {
		for _, q := range it.pins {
			if q.term != nil {
				p.pins[q.term.ID] = q
			}
		}
	}
}

func (p *plan) collectDevice(d *model.Device) {
	k := d.Kind
	if k.Self && !isDeadEnd(k) || isBox(k) {
		return
	}
	if !wired(d) {
		p.notes.Add(diag.Finding{Rule: "device-not-drawn", Severity: diag.Note, At: d.At, Msg: d.Name + " has no wire and is left out of the current-path diagram"})
		return
	}
	if k.Couples != nil {
		p.collectCavities(d)
		return
	}
	forms := p.formsOf(d)
	if forms == nil {
		p.collectUnit(d)
		return
	}
	var made []*item
	for _, f := range forms {
		if it := p.addItem(d, f); it != nil {
			made = append(made, it)
		}
	}
	pair(made)
}

// isBox reports whether the kind is nothing but bus bars; they are drawn as
// joints.
func isBox(k *part.Kind) bool { return k.Lines != nil && k.Lines.Shape == part.BusLines }

func wired(d *model.Device) bool {
	for _, t := range d.Terminals {
		if len(t.Ends) > 0 || len(t.Bus) > 0 {
			return true
		}
	}
	return false
}

// formsOf gives the forms that show every attached terminal of the device, or
// nil if its symbol can't: then it is drawn as a unit.
func (p *plan) formsOf(d *model.Device) []form {
	if d.Kind.Lines != nil && d.Kind.Lines.Shape == part.PositionLines {
		if f, ok := p.keyForm(d); ok {
			return []form{f}
		}
		if len(d.Lines) > 0 {
			return nil
		}
	}
	s := symbolOf(d)
	parts := s.Parts
	if len(parts) == 0 {
		parts = []part.Symbol{s}
	}
	var forms []form
	shown := map[string]bool{}
	for _, q := range parts {
		f := toForm(q)
		f.polar = isPolar(d)
		for _, pin := range f.pins {
			shown[pin.name] = true
		}
		forms = append(forms, spread(p.atRest(f, d), d))
	}
	for _, t := range d.Terminals {
		if attached(t) && !shown[t.Name] {
			return nil
		}
	}
	if len(forms) == 1 && forms[0].row == part.SensorRow && len(forms[0].pins) > 2 {
		return []form{p.sensorForm(d, false)}
	}
	return forms
}

// isPolar reports whether the two sides of the device are drawn differently.
func isPolar(d *model.Device) bool {
	if d.Kind.Supplies != nil {
		return true
	}
	if d.Kind.Passes != nil {
		for _, q := range d.Kind.Passes(d.Device) {
			if q.OneWay {
				return true
			}
		}
	}
	return false
}

func (p *plan) addItem(d *model.Device, f form) *item {
	it := &item{id: len(p.items), dev: d, sub: f.name}
	used := false
	for _, q := range f.pins {
		t := terminalOf(d, q.name)
		used = used || attached(t)
	}
	if !used {
		return nil
	}
	it.take(f)
	p.items = append(p.items, it)
	return it
}

// take gives the item a form and lays its pins out anew; terminals keep their
// pin values where the form is only turned.
func (it *item) take(f form) {
	old := map[string]*pin{}
	for _, q := range it.pins {
		if q.term != nil {
			old[q.term.Name] = q
		}
	}
	it.form, it.pins = f, nil
	for _, q := range f.pins {
		t := terminalOf(it.dev, q.name)
		n := old[q.name]
		if n == nil {
			n = &pin{item: it, term: t}
		}
		n.col, n.dx, n.y = q.col, q.dx, q.y
		it.pins = append(it.pins, n)
	}
}

func terminalOf(d *model.Device, name string) *model.Terminal {
	for _, t := range d.Terminals {
		if t.Name == name {
			return t
		}
	}
	return nil
}

// pair links a coil with its contacts: the parts of one device.
func pair(made []*item) {
	for i := 1; i < len(made); i++ {
		made[i].mate = made[0]
		if made[0].mate == nil {
			made[0].mate = made[i]
		}
	}
}

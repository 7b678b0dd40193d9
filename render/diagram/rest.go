package diagram

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// closed reports whether a contact of the device is closed as the sheet is
// drawn: in the step of the state view, or else in the first step, off, with no
// volts on any coil. The kind's own law answers, so that the drawing can't
// contradict the sums.
func (p *plan) closed(d *model.Device, a, b string) bool {
	if p.now != nil {
		for _, k := range p.now.stamped(p.m, d) {
			if k.Use == part.ContactElement && (k.A == a && k.B == b || k.A == b && k.B == a) && p.now.conducts(d, k) {
				return true
			}
		}
		return false
	}
	if d.Kind.Stamp == nil {
		return false
	}
	s := &part.Stamper{}
	for _, step := range p.m.Steps {
		s.Steps = append(s.Steps, step.Step)
	}
	d.Kind.Stamp(d.Device, s)
	for _, k := range s.Branches {
		if k.Use == part.ContactElement && (k.A == a && k.B == b || k.A == b && k.B == a) && k.Steps.Has(0) && (k.State < 0 || k.Rest) {
			return true
		}
	}
	return false
}

// atRest draws the contact of a form as it stands then: a closed one with
// its bold blade, an open one with the blade slanted. Only the moved contact
// counts: a blade of a change-over rests on the other one by itself.
func (p *plan) atRest(f form, d *model.Device) form {
	closed := false
	if d.Kind.Switches != nil {
		for _, q := range d.Kind.Switches(d.Device) {
			closed = closed || !q.AtRest && f.hasPin(q.A) && f.hasPin(q.B) && p.closed(d, q.A, q.B)
		}
	}
	var marks []mark
	for _, m := range f.marks {
		switch {
		case m.kind == part.Closed && closed:
			m.kind = part.Bold
			marks = append(marks, m)
		case m.kind == part.Closed, m.kind == part.Blade && closed:
		default:
			marks = append(marks, m)
		}
	}
	if closed {
		marks = append(marks, mark{kind: part.Dashed, pts: []spot{{-0.06, 0, 0}, {-0.8, 0, 0}}}) // what moves it reaches to the blade
	}
	f.marks = marks
	return f
}

func (f form) hasPin(name string) bool {
	for _, q := range f.pins {
		if q.name == name {
			return true
		}
	}
	return false
}

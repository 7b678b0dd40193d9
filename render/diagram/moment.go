package diagram

import (
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// moment is one step of a history, for the state view: what stands where, and
// what is joined with the battery's posts.
type moment struct {
	h           *solve.History
	st          *solve.State
	step        int
	first       map[*model.Device]int // index of its first state in History.Relays
	plus, minus []bool                // by terminal ID: joined with a post without a load between
}

// momentOf finds the step that a state view is asked of; nil for none. A step
// that could not be solved is told in a note, and drawn as a plain schematic.
func momentOf(in Input) (*moment, diag.List) {
	if in.Step == "" || in.Played == nil {
		return nil, nil
	}
	for i, st := range in.Played.States {
		if st.Step.Name != in.Step {
			continue
		}
		if st.Skipped != "" {
			return nil, diag.List{{Rule: "step-not-drawn", Severity: diag.Note, Msg: "step " + in.Step + " has no state to draw: " + st.Skipped}}
		}
		k := &moment{h: in.Played, st: st, step: i, first: map[*model.Device]int{}}
		for n, r := range in.Played.Relays {
			if _, ok := k.first[r.Device]; !ok {
				k.first[r.Device] = n
			}
		}
		k.reach(in.Model)
		return k, nil
	}
	return nil, diag.List{{Rule: "step-not-drawn", Severity: diag.Note, Msg: "there is no step " + in.Step}}
}

// stamped asks a device for its elements, in the case of the history.
func (k *moment) stamped(m *model.Model, d *model.Device) []part.Branch {
	if d.Kind.Stamp == nil {
		return nil
	}
	c := k.h.Case
	s := &part.Stamper{Corner: c.Corner, Grade: c.Grade, Start: c.Start}
	for _, step := range m.Steps {
		s.Steps = append(s.Steps, step.Step)
	}
	d.Kind.Stamp(d.Device, s)
	return s.Branches
}

// conducts reports whether an element of the device is closed in this step.
func (k *moment) conducts(d *model.Device, b part.Branch) bool {
	if !b.Steps.Has(k.step) {
		return false
	}
	if b.State >= 0 {
		if n := k.first[d] + b.State; n >= len(k.st.Relay) || k.st.Relay[n].On == b.Rest {
			return false
		}
	}
	return b.Use != part.OutputElement || k.given(d, b.A) || k.given(d, b.B)
}

// given reports whether an output is on: commanded, by a controller that lives.
func (k *moment) given(d *model.Device, pin string) bool {
	t := d.Terminal(pin)
	return t != nil && t.ID < len(k.st.Given) && k.st.Given[t.ID]
}

// moved reports whether a state of the device stands as it does without volts
// on its coil: ok is false where it has none.
func (k *moment) moved(d *model.Device) (on, ok bool) {
	n, ok := k.first[d]
	return ok && k.st.Relay[n].On, ok
}

// volts gives what a meter shows at a terminal; ok is false where it floats.
func (k *moment) volts(t *model.Terminal) (v float64, ok bool) {
	r := k.st.Shown(t)
	return r.Volts, r.OK
}

package solve

import (
	"math"

	"legwork/harness/model"
)

// Step gives the state of a step by its name, nil where there is none.
func (h *History) Step(name string) *State {
	for _, s := range h.States {
		if s.Step.Name == name {
			return s
		}
	}
	return nil
}

// RelayOf gives the index in Relays of a device's first state that moves, -1
// for none.
func (h *History) RelayOf(device string) int {
	for i := range h.Relays {
		if h.Relays[i].Device.Name == device {
			return i
		}
	}
	return -1
}

// Reading gives the volts of a terminal against the battery's negative post,
// or the reason why it has none.
func (s *State) Reading(t *model.Terminal) Reading {
	if t == nil || t.ID >= len(s.Volts) {
		return Reading{Reason: "no such terminal"}
	}
	if v := s.Volts[t.ID]; !math.IsNaN(v) {
		return Reading{Volts: v, OK: true}
	}
	if s.brief {
		return Reading{Reason: "floating"}
	}
	return Reading{Reason: s.reasons[s.why[t.ID]]}
}

// Across gives the volts from one terminal to another; OK is false where
// either floats, with the reason.
func (s *State) Across(plus, minus *model.Terminal) Reading {
	a, b := s.Reading(plus), s.Reading(minus)
	if !a.OK {
		return a
	}
	if !b.OK {
		return b
	}
	return Reading{Volts: a.Volts - b.Volts, OK: true}
}

// fullName is the name of a terminal as the user typed it, or would.
func fullName(t *model.Terminal) string {
	switch {
	case t.Shown != "":
		return t.Shown
	case t.Device.Kind.Self:
		return t.Device.Name
	}
	return t.Device.Name + "." + t.Name
}

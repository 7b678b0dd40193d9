// Package route finds the path of every wire through the legs and its length.
package route

import (
	"legwork/harness/diag"
	"legwork/harness/model"
)

// Routes holds one path for each wire of the model, by wire ID.
type Routes struct {
	Paths    []Path
	Findings diag.List
}

// Path is the way of one wire.
type Path struct {
	Legs    []Stretch      // in order from the wire's first end
	Places  []*model.Place // places it passes, ends included
	TailsM  float64        // tails at both ends
	LengthM float64        // stretches and tails, or the length the draft gives
	Known   bool           // false: assumed 10 ft, because the draft has no way between its ends
	Given   bool           // the draft gave the length
	Assumed bool           // passes a leg whose length is assumed
	HotC    float64        // temperature of the hottest place on the way
	Wet     bool
}

// Stretch is part of a leg that a wire passes.
type Stretch struct {
	Leg     *model.Leg
	LengthM float64
}

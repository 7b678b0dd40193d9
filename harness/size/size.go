// Package size chooses wire sizes and fuse ratings: floors, then drop.
package size

import (
	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/solve"
)

// Sizes is the outcome of sizing.
type Sizes struct {
	Wires    []Wire         // by wire ID
	Fuses    []Fuse         // every protective element of the model, in model order
	Hot      *solve.History // with the chosen sizes: hot soak, sure figures
	Cold     *solve.History // cold start, sure figures
	Usual    *solve.History // hot soak, nominal figures
	Guards   []Guard        // by wire ID: what protects each wire
	Backs    []Back         // by wire ID: what limits the currents that come back through it
	Pulls    []Pull         // starters' solenoids as they pull in
	Charges  []Charge       // what is lost between machines that charge and the batteries
	Shorts   []Short        // ways from a source to ground without a load
	Findings diag.List

	drops []Path
}

// Wire is one wire as sized.
type Wire struct {
	Wire      *model.Wire
	Conductor solve.Conductor
	Chosen    bool            // legwork chose the size (the draft gave none)
	DesignA   float64         // worst current over the steps
	HeatA     float64         // r.m.s. over duty
	PullA     float64         // drawn through it for the moment that a starter's solenoid pulls in
	At        string          // step in which DesignA flows, or [Charging]
	Loaded    int             // conductors loaded in the same step in the leg that counts
	Chain     int             // index of its chain: series wires with one size
	Governs   string          // the limit that governed
	Judgement gauge.Judgement // without the working; see [Wire.Working]
	DropV     float64         // along the wire itself, in step At
}

// Working judges the wire once more, with the working of every floor.
func (w Wire) Working() gauge.Judgement { return gauge.JudgeWire(w.Judgement.Case) }

// Fuse is one protective element as chosen.
type Fuse struct {
	Device *model.Device
	Index  int // of part.Protects(device)
	RatedA float64
	Chosen bool
	LoadA  float64
	At     string // step in which LoadA flows, or [Charging]
	Why    []gauge.Step
}

// Path is the way of the current to and from one load, for drop.
type Path struct {
	Device *model.Device
	Draw   int // index of part.Draws(device)
	Step   *model.Step
	DropV  float64 // posts to terminals, feed and return, sure figures, without DriverV and StatedV
	UsualV float64 // the same, nominal figures
	LimitV float64
	ExtraA float64 // what its start draws above the steady current; DropV has it in
	Wires  []*model.Wire
	Shares []Share // what takes it, battery to load and back, drivers included

	// DriverV is lost in the drivers of controller outputs on the way. It is no
	// fault of the wiring and stands beside DropV, save while the starter turns,
	// when the volts at the load are judged and DropV has it in.
	// StatedV is the same of resistors that the draft puts in the line.
	DriverV, StatedV float64

	Why []gauge.Step

	// Unmet says that no size of the wires left open on the way brings DropV
	// within LimitV: they stand where growth stops paying. Fixed is what takes
	// most of it among what sizing can't change, and OpenV what the open wires take.
	Unmet bool
	Fixed Share
	OpenV float64

	ways    *ways                // of the bank that feeds the load
	steadyV float64              // DropV without ExtraA
	drivers [][2]*model.Terminal // the two sides of each thing of DriverV and StatedV
}

// Package solve plays a harness through its steps of use: one d.c. state a
// step, with relays that remember.
//
// Within a step states move in three phases: what key and hand drive, at the
// volts before the starter draws; the starter's solenoid; what controllers
// command, once the engine turns. As long as no relay moves twice, moves that
// fall due together are made together; else the step is played again as
// events in time, in both orders of ties. A run that comes back to where it
// was is chatter; orders that end differently are a race.
package solve

import (
	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// Case says under which conditions a history is played. The step is not part
// of it: relays remember, so all steps are always played in order.
type Case struct {
	Corner part.Corner
	Grade  part.Grade
	Start  part.Start // how cold a cold start is
	With   []string   // options fitted
	// Fuses gives ratings for protective elements that the draft leaves open, by
	// index of part.Protects(device); nil or 0: as the draft says.
	Fuses map[*model.Device][]float64
	// Open lists devices whose diodes are taken to be open: what lies across
	// the supply the wrong way would drown every other current.
	Open []*model.Device
	// After is a history of the same case with other conductors. A step that
	// comes to rest where it did there is not followed move by move: the state
	// at its end is right, but how its relays got there is not told, nor why a
	// terminal floats.
	After *History
	// runDown names the devices that are sources as the engine runs down; nil
	// for none. See [RunDown].
	runDown func(*model.Device) bool
}

func (c Case) open() []int {
	var ids []int
	for _, d := range c.Open {
		ids = append(ids, d.ID)
	}
	return ids
}

// Conductor is the wire as sized: what solve has to know of it.
type Conductor struct {
	Size     gauge.Size
	Family   gauge.Family
	LengthM  float64
	TempC    float64 // conductor temperature in the hot corner
	Ohm      float64 // copper alone, hot corner
	Measured bool    // Ohm was measured, and does not follow from size and length
}

// History is all steps of one case, in the order of the model's steps.
type History struct {
	Case     Case
	Model    *model.Model
	States   []*State
	Relays   []Relay // the devices' states that move, in model order
	Findings diag.List
}

// State is the network in one step.
type State struct {
	Step      *model.Step
	Skipped   string       // why it was not solved, "" if it was
	Volts     []float64    // by terminal ID, against the reference (battery negative post); NaN where floating
	WireA     []float64    // by wire ID, from its first end to its second; 0 where floating
	DrawA     Amps         // of each of a device's Draws: current through it
	FuseA     Amps         // of each of its Protects: from In to Out
	ContactA  Amps         // of each of its Switches
	OutputA   Amps         // of each of its Drives: current through it, never negative
	Relay     []RelayState // by index of History.Relays
	Residual  float64      // A, largest node-law error
	Met       bool         // the node law holds everywhere: within the larger of 1 uA and rounding
	Passes    int
	Collapsed []string // devices whose constant power has no solution
	Chatter   []int    // indexes of relays that never settle
	SupplyA   Amps     // of each of a device's Supplies: current that leaves at Plus
	Shorts    []Short  // ways from a source to the reference without a load on them
	Cycles    []Cycle  // how the relays of Chatter go round
	Races     []int    // indexes of relays whose place depends on which of two moves comes first
	Given     []bool   // by terminal ID: the controller output there is commanded, and its controller has come to it; nil for none

	why     []int32  // by terminal ID: index of the reason it floats
	reasons []string // shared by the states of a player
	ghost   []bool   // by terminal ID: its volts come of leakage alone; nil for none
	brief   bool     // no terminal was asked why it floats
}

// Amps is the currents of one ability of all devices in one state. Its zero
// value is a state in which nothing flows.
type Amps struct {
	start []int32 // by device ID, and one more; shared by all states
	amps  []float64
}

// Of gives the current of the i-th of what a device's ability lists.
func (a Amps) Of(d *model.Device, i int) float64 { return a.At(int32(d.ID), i) }

// At is Of for a device by its ID.
func (a Amps) At(device int32, i int) float64 {
	if a.amps == nil {
		return 0
	}
	return a.amps[int(a.start[device])+i]
}

// Cycle is an endless succession of relay moves.
type Cycle struct {
	Relays  []int // indexes of History.Relays, in the order in which they first move
	PeriodS float64
	Node    *model.Terminal // coil terminal of the first relay whose volts swing
	PullV   []float64       // across each coil when its relay pulls in
	DropV   []float64       // across each coil when its relay lets go
}

// Relay is one remembered state of a device.
type Relay struct {
	Device *model.Device
	part.State
	Output bool // its coil is driven by a controller output
	Starts bool // it must be in before the starter can draw its current
}

// Zone says how sure a relay's state is.
type Zone uint8

const (
	// SurelyOut is below the volts that could pull it in.
	SurelyOut Zone = iota
	// NotSure is between the volts that surely leave it out and those that surely pull it in; it is played as in.
	NotSure
	// SurelyIn is at or above the volts that pull it in, or a module that has its feeds.
	SurelyIn
)

// RelayState is where one relay stands in one step.
type RelayState struct {
	On                            bool
	Asked                         bool    // its coil is meant to be energized in this step: some path to both coil ends is closed
	Volts                         float64 // across its coil, settled; of a solenoid that is in, what its windings together are worth across the holding one
	PullV                         float64 // across its coil at the moment it pulled in or failed to; 0 where it was not asked
	Zone                          Zone    // of PullV (of Volts for a relay that was in before)
	Held                          bool    // was in already when the step began
	OutBelowV, InAboveV, ReleaseV float64 // at the coil's temperature
	CoilC                         float64
	Lost                          bool    // AliveState: dropped out in this step
	BridgedS                      float64 // AliveState: its feeds were short for this long at worst, and holds bridged it
	Short                         int     // AliveState: index of the feed with the least margin, -1 where none is watched
}

// Reading is a voltage that may not exist: OK is false where the terminal
// floats, and Reason says why.
type Reading struct {
	Volts  float64
	OK     bool
	Reason string
}

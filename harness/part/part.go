// Package part holds the kinds of device, one file each: what a kind's
// settings and terminals are, how it behaves in the network, how it is drawn,
// and which abilities it has. Rules, drawings and lists ask for abilities,
// never for kinds.
package part

import (
	"legwork/harness/quantity"
)

// Landing is how a wire ends at a terminal.
type Landing uint8

const (
	// Cavity takes a crimped terminal in a housing: C.
	Cavity Landing = iota
	// Post takes a ring under a nut: P. Every ring is one bolted joint.
	Post
	// Joint is a crimped or welded joint without a ring, as a splice: J.
	Joint
)

// Kind is one sort of device.
type Kind struct {
	Name      string // word of the draft: "relay"
	Title     string // "A relay with one make contact, or a change-over contact."
	Law       string // plain-text electrical model with its equations
	Letter    string // IEC 81346 class letter offered for names: "K"
	Settings  []Setting
	Terminals []Terminal // fixed ones; more may come from Lines
	Lines     *Lines     // how its child lines are read; nil: it has none
	Self      bool       // has one terminal that is called by the device's own name (splice, stud)
	Ground    string     // the terminal that becomes metal when the device says grounds-to; "" if it can't
	Joins     bool       // its terminals are ways to join wires, not a use of current (connector, splice, stud, box)

	// Stamp adds the device's states and branches to the network.
	Stamp func(d *Device, s *Stamper)

	Symbol Symbol
	Others []Symbol               // further forms, by Name: "pedal"; Form picks one
	Form   func(d *Device) string // name of the form among Others, "" for Symbol; nil: always Symbol

	// Fits reports whether the device as set has the fixed terminal; nil: it has all of them.
	Fits func(d *Device, terminal string) bool

	// Bolted reports whether the device as set has posts for its fixed
	// terminals (a bolt-down fuse); nil: they land as declared, or as the word
	// studs says.
	Bolted func(d *Device) bool

	// Bladed lists terminals that stay as declared on a device with studs (the
	// coil of a contactor).
	Bladed []string

	// Lacks says what a device as set still has to say, or says amiss, "" for
	// nothing: "needs its size, as 14AWG"; nil: nothing ever.
	Lacks func(d *Device) string

	// Assumes lists what is taken for granted when the draft is silent and no
	// default of a figure says it.
	Assumes func(d *Device) []Assumption

	// Abilities. Nil means "can't".
	Supplies func(d *Device) []Supply   // is a source of current
	Protects func(d *Device) []Fuse     // opens on too much current
	Draws    func(d *Device) []Draw     // uses current
	Switches func(d *Device) []Contact  // makes and breaks a path
	Drives   func(d *Device) []Output   // commands something: a controller's outputs
	Kicks    func(d *Device) []Kick     // an inductance that needs suppression
	Grounds  func(d *Device) []Return   // returns and what they want
	Passes   func(d *Device) []Path     // lets current through from terminal to terminal, always (diode, resistor)
	Inside   func(d *Device) []Path     // ways inside by which current comes or returns without being passed on: a field winding, grounds that are one point
	Holds    func(d *Device) []Held     // terminals that it keeps at volts of its own while it is alive (a sensor reference)
	Couples  func(d *Device) []Pair     // terminals that are one point (mated connector cavities)
	Buys     func(d *Device) []Purchase // rows for a parts list
}

// Terminal is one fixed terminal of a kind.
type Terminal struct {
	Name    string   // canonical: "87"
	Aliases []string // US and standard names: "NO"
	Landing Landing
	Quiet   bool // may stay without a wire
	Doc     string
}

// Setting is one thing that a draft may say of a device. A setting is either
// named by its word (draws 8.5A 13.5V), or bare: recognized by the unit of a
// figure (15A) or by a word of a closed set (bolt-down). A named setting with
// neither figures, words nor a free word is a flag: its name alone says it
// (fuel, sealed).
type Setting struct {
	Name    string
	Bare    bool     // written without its name
	Figures []Figure // figures it takes, greedily, in this order
	Words   []string // or exactly one word of this set
	Free    bool     // takes one word that the kind does not know: the name of a metal, a place or a terminal; kept in Value.Word
	Steps   bool     // may be followed by "when LIST" (or, bare, by a step word such as always)
	Repeats bool     // may be given more than once, with different steps
	Must    bool     // has to be given
	Doc     string
	Default string // Words setting: the word taken when nothing is said; "" for none
}

// Figure is one number of a setting, held in the base unit of its dimension.
type Figure struct {
	Name       string
	Dim        quantity.Dim
	Optional   bool    // may be left out; Default is then taken, and listed as a guess if Guess
	Default    float64 // in base units; used when Optional, or when the whole setting is not given and HasDefault
	HasDefault bool
	Guess      bool    // a defaulted value is listed among the guesses
	Min, Max   float64 // allowed range, inclusive, base units
	Source     string  // key into gauge's sources for the default; "" when there is none
	Scale      Scale   // how Default, which holds for 12 V, follows the system's volts
	Doc        string
}

// Scale is how a default that holds for a 12 V system follows its volts.
type Scale uint8

const (
	// Fixed does not change.
	Fixed Scale = iota
	// ByVolts grows with the volts: a voltage.
	ByVolts
	// ByVolts2 grows with their square: a resistance at the same power.
	ByVolts2
	// OverVolts shrinks with the volts: a current at the same power.
	OverVolts
)

// Assumption is something taken for granted, for the list of guesses.
type Assumption struct {
	What, Value string  // "draw of P1", "21 W"
	Source      string  // key into gauge's sources, "" for none
	DrawsA      float64 // what it is taken to draw, where that is what was assumed
}

// Shape is how the child lines of a kind are read.
type Shape uint8

const (
	// TerminalLines: word 1 is a terminal, word 2 its role, then settings (module).
	TerminalLines Shape = iota + 1
	// PositionLines: word 1 is a position, then the terminals that it joins (keyswitch, switch with its own steps).
	PositionLines
	// HalfLines: "half NAME", then settings (connector).
	HalfLines
	// BusLines: "bus NAME", then terminals of other devices that the bar joins (box).
	BusLines
)

// Lines says how child lines are read.
type Lines struct {
	Shape    Shape
	Head     string    // fixed first word: "half", "bus"; "" where word 1 is a name
	Roles    []Role    // TerminalLines
	Settings []Setting // other shapes
	Landing  Landing   // of the terminals that lines make
	Needed   string    // why a device without any joined terminal is unfinished, after its name; "" if it is not
}

// Role is what a terminal of a module is for.
type Role struct {
	Word     string // feed, ground, low-side, high-side, input, sensor-ground, reference ...
	Doc      string
	Settings []Setting
}

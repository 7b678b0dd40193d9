// Package model is a harness as a graph: devices with terminals, wires
// between them, metal that carries return current, places and legs. It is
// built once from the syntax tree and read-only afterwards.
package model

import (
	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Model is a whole harness. Every slice is in draft order; IDs are indexes.
type Model struct {
	File      string
	Title     string
	SystemV   float64 // 12 or 24
	Profile   string
	Metric    bool // lengths and sizes print in metric units
	Places    []*Place
	Legs      []*Leg
	Metals    []*Metal
	Devices   []*Device // studs and splices included
	Circuits  []*Circuit
	Wires     []*Wire // straps and leads included
	Terminals []*Terminal
	Steps     []Step
	Accepts   []*Accept
	Guesses   []Guess
	Together  []Together
	Options   []*Option
	Cables    []*Cable

	stepWords    map[string]part.StepSet
	deviceNamed  map[string]*Device
	leftOut      map[string]bool // names that belong to options which are not fitted
	wireNumbered map[string]*Wire
	nets         *Nets
}

// Place is a spot in the vehicle.
type Place struct {
	ID       int
	Name     string
	Label    string
	AmbientC float64
	Wet      bool
	At       diag.Span
}

// Leg is a stretch of harness between two places.
type Leg struct {
	ID       int
	Name     string // "bay-tank"
	A, B     *Place
	LengthM  float64
	Covering string
	Known    bool // the draft gave the length
	At       diag.Span
}

// Spot is where something is: at a place, or OffsetM along a leg from its
// first place.
type Spot struct {
	Place   *Place // the place, or the nearer end of the leg
	Leg     *Leg   // nil at a place
	OffsetM float64
}

// Metal is a body that carries return current: frame, block, tank.
type Metal struct {
	ID    int
	Name  string
	Label string
	Ohm   float64 // 0: ideal
	At    diag.Span
}

// Device is anything with terminals, with its place and its terminals in the
// graph. The embedded part.Device is what its kind sees.
type Device struct {
	*part.Device
	ID        int
	Spot      Spot
	In        *Device // box it sits in
	From      *Terminal
	FromM     float64 // measured distance from From, 0 when not said
	FromAt    diag.Span
	Metal     *Metal // grounds-to
	BoltedTo  *Metal // on
	Terminals []*Terminal
	Stmt      *draft.Stmt
	Thread    string  // studs: "M8", "1/4in", "No10"
	Option    *Option // it belongs to, nil for none
	Existing  bool    // it is in the vehicle already: neither bought nor changed
	Plugs     []Plug  // housings that its terminals sit in
	Part      string  // part of the shelf that it is, "" when not said

	open   bool // a bare end, made by the word open
	can    able
	byName map[string]*Terminal // of a device with many terminals: by name and alias
}

// Terminal is where wires land.
type Terminal struct {
	ID      int
	Device  *Device
	Pin     int    // index into Device.Pins
	Name    string // canonical, of the pin
	Shown   string // full name as the user first typed it: "K1.87", "E3"
	Landing part.Landing
	Finish  Finish      // what wires may end with here, where the draft says so
	Cavity  string      // plug and cavity that it sits in: "A.12"; "" when not said
	Ends    []End       // wires that land here, in draft order
	Metal   *Metal      // terminal that is the metal itself (grounds-to, stud)
	Bus     []*Terminal // members joined to it by a bus bar, or the bus they sit on
	At      diag.Span
}

// End is one end of a wire.
type End struct {
	Wire *Wire
	From bool // the wire's first end
}

// Role is what sort of conductor a wire is.
type Role uint8

const (
	Built Role = iota // bought, cut and crimped
	Lead              // comes with a device: never bought, cut or resized
	Strap             // joins two studs, runs straight
)

// Wire is one conductor with its own number.
type Wire struct {
	ID       int
	Number   string
	Role     Role
	From, To *Terminal
	FromAt   diag.Span // the end as written
	ToAt     diag.Span
	Circuit  *Circuit
	Label    string
	Size     gauge.Size // given size; Sized says whether there is one
	Sized    bool
	SizeAt   diag.Span
	Family   string // "" when not given
	Color    Color  // given, the circuit's, or chosen
	Chosen   bool   // the color was chosen by legwork
	LengthM  float64
	LengthAt diag.Span // zero when not given
	Via      []*Place
	Cable    *Cable  // it is a core or drain of, nil for a wire by itself
	Drain    bool    // the bare wire along a shield
	Existing bool    // it is in the vehicle already: never cut or resized, but tested
	Ohm      float64 // measured from end to end, 0 when not known
	OhmAt    diag.Span
	Option   *Option   // it belongs to by its own line, nil for none
	At       diag.Span // its number
	Stmt     *draft.Stmt
}

// Color is an insulation color: IEC 60757 letters of the base, and of the
// tracer or "".
type Color struct {
	Base, Tracer string
	Shown        string // as typed, e.g. RED or RD/WH
}

// Circuit is a named group of wires with defaults. The circuit "loose" holds
// wires that stand outside any.
type Circuit struct {
	ID       int
	Name     string
	Label    string
	DropFrac float64 // 0.03 for 3 %; 0 when not said
	Color    Color
	Family   string
	Size     gauge.Size
	Sized    bool
	Wires    []*Wire
	Option   *Option // it belongs to, nil for none
	At       diag.Span
}

// Step is one moment of use.
type Step struct {
	part.Step
	ID    int
	Label string
	LastS float64 // how long it lasts when that matters (gap), 0 otherwise
	Added bool    // the draft added it
	At    diag.Span
}

// Accept is a finding that the user accepts, with the reason.
type Accept struct {
	Rule   string
	Reason string
	Scope  *draft.Stmt // the statement it covers with its children; nil: the whole draft
	At     diag.Span
}

// Guess is a figure that legwork assumed, or that the draft marks as a guess.
type Guess struct {
	What   string // "length of wire 1", "inrush of M2"
	Value  string // printed: "10 ft"
	Source string // gauge source key, "" for none
	At     diag.Span

	Key         int          // of this guess among all of the draft, whatever is moved; from 1
	Num         float64      // the figure in base units, where it is one that can be moved
	Dim         quantity.Dim // of it; None where the guess is no figure
	Least, Most float64      // range of it
}

// Together allows two wires in one cavity terminal.
type Together struct {
	Terminal *Terminal
	Wires    []*Wire
	At       diag.Span
}

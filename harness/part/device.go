package part

import "legwork/harness/diag"

// Mark says how sure the user is of a figure.
type Mark uint8

// The marks: none, from the maker's sheet, measured, a guess.
const (
	Unmarked Mark = iota
	Sheet
	Measured
	Guess
)

// Value is one setting as given or defaulted.
type Value struct {
	Setting *Setting
	Nums    []float64 // one for each Figure, base units, defaults filled in
	Set     []bool    // which of them the draft gave
	Word    string
	When    StepSet // steps named by "when"; NoSteps when not said
	Said    bool    // the draft gave it
	Mark    Mark
	At      diag.Span
}

// Device is one device of a draft as its kind sees it.
type Device struct {
	Name     string
	Label    string
	Kind     *Kind
	At       diag.Span // its name in the draft
	Values   []Value   // in the order of Kind.Settings, repeats in draft order
	Pins     []Pin     // all its terminals: fixed ones first, then those of its lines
	Lines    []Line    // its child lines as read
	Grounded string    // metal it returns through (grounds-to), "" for none
	On       string    // metal it is bolted to (on), "" for none
	AmbientC float64   // of its place
	Wet      bool
	SystemV  float64 // 12 or 24

	// What a device has to know of the others; zero: not known. See [Acquaint].
	BatteryOhm float64 // warm resistance of the draft's own battery
	ChargeV    float64 // setpoint of the machine that charges it

	FuseRatedA float64 // rating that legwork chose for a fuse whose draft gives none
}

// Pin is a terminal of a device: fixed, or named by a child line.
type Pin struct {
	Name    string
	Aliases []string
	Landing Landing
	Line    int // index into Lines, -1 for a fixed terminal
	At      diag.Span
	Quiet   bool   // may stay without a wire (a fixed terminal such as 87a)
	Printed string // what stands on the device, where the draft says so: the only name that a draft may use then
	Wired   bool   // a wire or bus lands here; set by the model, tells an alternator where it senses
}

// Line is one child line as read.
type Line struct {
	Name     string // terminal, position, half or bus
	Role     *Role
	Values   []Value
	Cavity   string   // TerminalLines: plug and cavity that the terminal sits in, "A.12"; "" when not said
	Cavities []string // HalfLines: names of the cavities where they are not numbers
	Refs     []string // PositionLines: canonical terminals joined; BusLines: full names of the members
	At       diag.Span
}

// StepSet is a set of steps as bits: bit i is step i of the model's list.
type StepSet uint64

// NoSteps is the empty set.
const NoSteps StepSet = 0

// Has reports whether step i is in the set.
func (s StepSet) Has(i int) bool { return s>>uint(i)&1 != 0 }

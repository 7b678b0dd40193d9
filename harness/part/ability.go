package part

import (
	"legwork/gauge"
	"legwork/harness/diag"
)

// Supply is a source of current.
type Supply struct {
	Plus, Minus string // terminals
	Pilot       string // a terminal that follows Plus while the source gives; "" for none
	Battery     bool   // may be shorted for hundreds of amperes at any time
	MaxA        float64
	IdleA       float64 // machines that charge: hot, with the engine idling
	IdleSaid    bool    // the draft gave that
	CCA         float64 // batteries
	Ohm         float64 // batteries: warm internal resistance
	AmpHours    float64 // batteries: capacity; 0: not said
	RatedV      float64 // batteries: what they are called by, 12 V or 24 V
	SetpointV   float64 // machines that charge: volts held at the sense point
}

// Fuse is a protective element between two terminals.
type Fuse struct {
	In, Out string
	RatedA  float64    // 0: not said, legwork chooses
	Family  string     // blade, bolt-down, link, breaker
	Wire    gauge.Size // link: the wire that it is made of
	At      diag.Span
}

// LoadType is how a load treats the contact that switches it.
type LoadType string

// The sorts of load that contacts are rated for.
const (
	ResistiveLoad  LoadType = "resistive"
	MotorLoad      LoadType = "motor"
	LampLoad       LoadType = "lamp"
	ElectronicLoad LoadType = "electronic"
)

// Need is the least volts a load works at in some steps.
type Need struct {
	Volts float64
	Steps StepSet
	Said  bool // the draft gave it
	At    diag.Span
}

// Draw is a use of current between two terminals.
type Draw struct {
	Plus, Minus string
	Amps        float64 // at RatedV
	RatedV      float64
	Type        LoadType
	Constant    bool    // current does not follow the volts above the least need
	InrushA     float64 // 0: not said
	Needs       []Need
	Works       StepSet // steps in which it must be fed; NoSteps: whenever its circuit says so
	Asleep      bool    // a keep-alive draw
	Critical    bool    // controller, fuel pump or ignition: the strict drop class
	Pump        bool    // moves fuel: it must not run with the engine stopped
	Starter     bool    // exempt from drop percent and from protection of its own cable
	AmpsKnown   bool    // the draft gave the current
	Turns       bool    // it gives current back while it runs down
	CoastV      float64 // e.m.f. as it begins to run down
	CoastKnown  bool    // the draft gave that, and the resistance behind it
	AsleepA     float64 // drawn while its module is not alive; 0: nothing
	Coil        bool    // a coil: judged by its pull-in volts, not by percent of drop
	EitherWay   bool    // it does not mind which of its terminals is fed
	DutyFrac    float64 // share of the time it draws, 0 to 1; 1 when not said
	PeakA       float64 // drawn at every start for PeakS seconds; 0: not said
	PeakS       float64
	OnS         float64 // how long it is on at a time; 0: not said
	PeriodS     float64 // from one time on to the next; 0: not said
	At          diag.Span
}

// Contact is a path that something makes or breaks.
type Contact struct {
	A, B         string
	ResistiveA   float64 // 0: not said
	MotorA       float64
	LampA        float64
	Ohm          float64 // of the closed contact, as the draft states; 0: not said
	By           string  // "coil", "key", "hand", "step"
	CoilA, CoilB string  // By coil
	AtRest       bool    // closed at rest (87a)
	Stops        string  // what it is there to stop while it is open: StopsStarter, StopsPump, StopsEngine; "" for nothing in particular
	At           diag.Span
}

// Output is a controller output: it sinks or sources current while commanded.
type Output struct {
	Pin      string
	Other    string // the ground or the feed to which it joins its pin; "" where there is none
	Sinks    bool   // low-side; otherwise high-side
	RatedA   float64
	Steps    StepSet
	Clamps   bool    // the driver takes the kick of the coil itself
	DutyFrac float64 // share of the time that it is on; 1 when not said
	At       diag.Span
}

// Kick is an inductance between two terminals.
type Kick struct {
	A, B       string
	Suppressed string // "", "diode", "resistor", "zener"
	At         diag.Span
}

// Return is a way back to the battery, and what the maker wants of it.
type Return struct {
	Pin    string
	Wanted string // metal that the maker asks for; "" for none
	Sensor bool   // a sensor ground: nothing else may share it
	At     diag.Span
}

// Path is a fixed way through a device.
type Path struct {
	A, B   string
	OneWay bool    // only from A to B
	Ohm    float64 // resistance that limits a short behind it; 0: none to speak of
}

// Held is a terminal that a device keeps at volts of its own.
type Held struct {
	Pin   string
	Volts float64
	At    diag.Span
}

// Pair is two terminals that are one point, with the nominal resistance
// between them (a low figure: it counts only at grade Nominal).
type Pair struct {
	A, B string
	Ohm  float64
}

// Purchase is a row of a parts list.
type Purchase struct {
	What  string
	Count int
}

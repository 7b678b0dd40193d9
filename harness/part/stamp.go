package part

import "legwork/harness/circuit"

// Engine is what the engine does in a step.
type Engine string

// What an engine may do in a step.
const (
	Still       Engine = "still"
	Locked      Engine = "locked"  // held by the starter's first pull
	Turning     Engine = "turning" // turned by the starter
	Running     Engine = "running"
	RunningDown Engine = "coasting"
)

// Step is what a kind may know of a step of use.
type Step struct {
	Name   string
	Key    string // key position
	Engine Engine
}

// Corner is a pair of extremes that belong together.
type Corner uint8

const (
	// HotSoak: warm battery, hot coils, hot copper: places at their stated temperature.
	HotSoak Corner = iota
	// ColdStart: weak cold battery, cold coils, cold copper: -18 C throughout, or as a [Start] says.
	ColdStart
)

// Grade says which figures count.
type Grade uint8

const (
	// Sure counts read figures, computed ones and what the draft states.
	Sure Grade = iota
	// Nominal adds low and remembered figures: what a meter would usually show.
	Nominal
)

// Metal is the terminal name that stands for the metal that a device grounds to.
const Metal = "metal"

// Branch is one electrical element of a device.
type Branch struct {
	A, B  string // terminals; Metal for the metal it grounds to
	Law   circuit.Law
	Steps StepSet // the steps in which it can conduct
	State int     // index of the state that has to be on; -1: none
	Rest  bool    // conducts while that state is off
	Use   Use

	// Regulator only: the terminals between which it senses; solve turns them
	// into the nodes of the law.
	SenseA, SenseB string
}

// Use says what a branch stands for, so that results can be read by meaning.
type Use uint8

// What a branch may stand for.
const (
	Element Use = iota // anything else
	FuseElement
	ContactElement
	CoilElement
	LoadElement
	LeakElement
	SourceElement
	OutputElement
)

// StateKind tells solve how a state moves.
type StateKind uint8

const (
	// RelayState follows its coil volts: on at pull-in, off under release, else as it was.
	RelayState StateKind = iota + 1
	// SolenoidState is a starter's solenoid: as a relay, but it closes only after all hand-driven relays have moved.
	SolenoidState
	// AliveState is a module: on while every watched feed has its volts; once lost it stays off for the step.
	AliveState
)

// Watch is a pair of terminals whose volts a state follows. Steps limits it.
type Watch struct {
	Plus, Minus string
	AtLeastV    float64 // AliveState: feed must have this
	Steps       StepSet
}

// State is one remembered on-or-off of a device.
type State struct {
	Name    string // the device, or device and part
	Kind    StateKind
	Watch   []Watch // RelayState: the coil, alone; AliveState: every feed
	CoilOhm float64 // at 20 C
	// Pull-in at 20 C: surely out below OutBelowV, surely in from InAboveV.
	OutBelowV, InAboveV float64
	PairSaid            bool    // the draft gave both volts of the pair
	ReleaseV            float64 // surely released below, 20 C
	OperateS, ReleaseS  float64
	HoldsS              float64 // AliveState: bridges a loss of its feeds this long
	AmbientC            float64
	DrivenByOutput      bool // set by solve
}

// Stamper collects what a device puts into the network. Steps are those of
// the model; Corner, Grade and Start belong to the case.
type Stamper struct {
	Steps    []Step
	Corner   Corner
	Grade    Grade
	Start    Start // of the cold start
	RunDown  bool  // machines that still turn as the engine runs down are sources then
	Branches []Branch
	States   []State
}

// Where gives the set of steps for which ok is true.
func (s *Stamper) Where(ok func(Step) bool) StepSet {
	var set StepSet
	for i, st := range s.Steps {
		if ok(st) {
			set |= 1 << uint(i)
		}
	}
	return set
}

// All gives the set of all steps.
func (s *Stamper) All() StepSet { return s.Where(func(Step) bool { return true }) }

// Add puts a branch that conducts in the given steps.
func (s *Stamper) Add(use Use, a, b string, law circuit.Law, steps StepSet) {
	s.Branches = append(s.Branches, Branch{A: a, B: b, Law: law, Steps: steps, State: -1, Use: use})
}

// AddIf puts a branch that conducts in the given steps while state is on, or
// off where rest is true.
func (s *Stamper) AddIf(use Use, a, b string, law circuit.Law, steps StepSet, state int, rest bool) {
	s.Branches = append(s.Branches, Branch{A: a, B: b, Law: law, Steps: steps, State: state, Rest: rest, Use: use})
}

// Remember adds a state and gives its index.
func (s *Stamper) Remember(st State) int {
	s.States = append(s.States, st)
	return len(s.States) - 1
}

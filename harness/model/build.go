package model

import (
	"cmp"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// builder is what Build knows while it reads.
type builder struct {
	m     *Model
	f     *draft.File
	setup Setup
	files map[string]*draft.File // by name: the draft and what it includes
	order map[string]int         // of the files, as they are included
	found diag.List

	header, steps, places, legs, metals []*draft.Stmt
	devices                             []deviceStmt
	circuits                            []*draft.Stmt
	wires                               []wireStmt
	joint                               []*draft.Stmt // together and spare
	parts, options                      []*draft.Stmt
	accepts                             []acceptStmt

	like       map[string]string // added steps that are like another
	ghosts     map[string]bool   // names whose statement could not be read: their use is no second fault
	unknown    map[string]*missing
	details    map[string]int // how often a list of words was given
	unsaid     int            // unknown names beyond what a report holds
	placeSet   *nameSet
	metalSet   *nameSet
	circSet    *nameSet
	numSet     *nameSet
	devSet     *nameSet
	circuit    map[*draft.Stmt]*Circuit
	placeBy    map[string]*Place
	metalBy    map[string]*Metal
	legBy      map[string]*Leg // by both of its names
	partSet    *nameSet
	partBy     map[string]*shelfPart
	terminalBy map[string]*TerminalPart
	sealBy     map[string]*SealPart
	cables     []cableStmt
	cable      map[*draft.Stmt]*Cable
	optionSet  *nameSet
	optionBy   map[string]*Option
	guessCount int
	gapSaid    bool
	full       bool // no more terminals are taken
	lenient    map[*Device]bool

	buses  []busStmt
	spares []spareStmt

	room formRoom
	dev  *reading // whose line is read

	wire  *Wire // whose line is read
	owner string

	deviceWords map[string]func(*cursor, draft.Item) // of all devices: they go by dev
	wireWords   map[string]func(*cursor, draft.Item) // of all wires: they go by wire
	bareOfWires func(draft.Item, string) bool

	watch func(*form) // tests see every form before it is read; nil otherwise
}

type deviceStmt struct {
	stmt *draft.Stmt
	kind *part.Kind
}

type wireStmt struct {
	stmt    *draft.Stmt
	role    Role
	circuit *draft.Stmt // nil: loose
	cable   *draft.Stmt // it stands under, nil for none
}

type acceptStmt struct{ stmt, scope *draft.Stmt }

// Build reads a syntax tree into a model. It reports every mistake it can
// find, sorted, at most 200, and always gives a model: of what could be read.
// Wires whose ends are not known, and devices of an unknown kind, are not in
// it. A list with a fault in it means that the model is not what was drafted.
func Build(f *draft.File) (*Model, diag.List) { return BuildWith(f, Setup{}) }

// BuildWith is Build with files that the draft includes, and options.
func BuildWith(f *draft.File, setup Setup) (*Model, diag.List) {
	return newBuilder(f, setup).build()
}

func (b *builder) build() (*Model, diag.List) {
	for _, s := range b.f.Stmts {
		b.sort(s, nil)
	}
	b.buildHeader()
	b.buildSteps()
	b.buildMetals()
	b.buildPlaces()
	b.buildLegs()
	b.buildOptions()
	b.buildParts()
	b.buildDevices()
	b.buildCircuits()
	b.buildCables()
	b.buildWires()
	b.settleOpen()
	b.buildJoint()
	b.buildAccepts()
	b.prune()
	b.finish()
	b.sayMissing()
	return b.m, b.findings()
}

func newBuilder(f *draft.File, setup Setup) *builder {
	b := &builder{
		m: &Model{File: f.Name, SystemV: 12, Profile: "road"}, f: f, setup: setup,
		files: map[string]*draft.File{f.Name: f}, order: map[string]int{f.Name: 0},
		partSet: newNameSet(), partBy: map[string]*shelfPart{}, optionSet: newNameSet(), cable: map[*draft.Stmt]*Cable{}, terminalBy: map[string]*TerminalPart{}, sealBy: map[string]*SealPart{}, optionBy: map[string]*Option{},
		ghosts: map[string]bool{}, unknown: map[string]*missing{}, lenient: map[*Device]bool{},
		placeSet: newNameSet(), metalSet: newNameSet(), circSet: newNameSet(), numSet: newNameSet(), devSet: newNameSet(),
		circuit: map[*draft.Stmt]*Circuit{}, placeBy: map[string]*Place{}, metalBy: map[string]*Metal{}, legBy: map[string]*Leg{},
	}
	b.deviceWords, b.wireWords, b.bareOfWires = b.wordsOfDevices(), b.wordsOfWires(), b.bareWord
	b.m.deviceNamed, b.m.wireNumbered = map[string]*Device{}, map[string]*Wire{}
	return b
}

// maxDrawA bounds what an assumed draw is moved to.
const maxDrawA = 1000

// finish works out what needs the whole graph.
func (b *builder) finish() {
	all := make([]*part.Device, len(b.m.Devices))
	for i, d := range b.m.Devices {
		all[i] = d.Device
		for j, t := range d.Terminals {
			d.Pins[j].Wired = len(t.Ends) > 0 || len(t.Bus) > 0
		}
	}
	for _, t := range b.m.Terminals {
		if t.Shown == "" {
			t.Shown = fullName(t)
		}
	}
	b.needLines()
	part.Acquaint(all)
	b.m.ask()
	moved := false
	for _, d := range b.m.Devices {
		if d.Kind.Assumes == nil {
			continue
		}
		for _, a := range d.Kind.Assumes(d.Device) {
			g := b.guess(a.What, a.Value, a.Source, d.At)
			if a.DrawsA > 0 {
				g.Num, g.Dim, g.Least, g.Most = a.DrawsA, quantity.Current, 0, maxDrawA
			}
			moved = moved || b.setup.Move.Key == g.Key
			if b.setup.Move.Key == g.Key && a.DrawsA > 0 {
				b.moveDraw(d, b.setup.Move.To)
			}
		}
	}
	if moved {
		b.m.ask()
	}
	b.m.nets = findNets(b.m)
	b.chooseColors()
	slices.SortStableFunc(b.m.Guesses, func(x, y Guess) int {
		return cmp.Or(b.order[x.At.File]-b.order[y.At.File], x.At.Off-y.At.Off)
	})
}

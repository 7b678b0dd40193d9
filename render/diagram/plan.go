package diagram

import (
	"legwork/harness/diag"
	"legwork/harness/model"
)

// plan is a schematic while it takes shape. Every stage fills what the next
// ones read.
type plan struct {
	in     Input
	m      *model.Model
	items  []*item
	joints []*joint
	runs   []*run
	pins   []*pin   // by terminal ID; nil where the terminal has no symbol pin
	meets  []*joint // by terminal ID; nil where at most one thing ends
	flow   *flow

	rails    []*joint // promoted joints, from the top down
	sections []*section
	strands  []*strand
	panels   []*panel
	sheets   []*page
	paper    paper
	notes    diag.List
	now      *moment // state view; nil for the plain schematic
}

// item is one symbol of the drawing: a device, a part of one (coil, contact),
// one cavity pair of a connector, or one pin of a unit.
type item struct {
	id   int
	dev  *model.Device
	form form
	pins []*pin
	slot int // row of the sheet, 1 to lastSlot
	sect *section
	mate *item // the coil of a contact, a contact of a coil
	unit bool  // one pin of a unit; its neighbors share the outline
	sub  string
	cols []*col
	flip bool // a two-column item drawn from right to left
}

// pin is where a terminal sits on its item.
type pin struct {
	item *item
	term *model.Terminal
	col  int
	dx   float64 // modules beside its column's track
	y    float64 // modules below the middle of the item

	loose bool // could not be tied to the bar of its joint: boxed
}

// up reports whether the pin points to the rails.
func (p *pin) up() bool { return p.y < 0 }

// jointKind says how a joint is drawn.
type jointKind uint8

const (
	localJoint jointKind = iota // a bar between two rows
	railJoint                   // a bar at the top, through all sections
	studJoint                   // a bar at the foot, on its metal
)

// joint is a set of terminals that are one point: a splice, a stud, a bus bar
// with what sits on it, or a terminal where several wires land.
type joint struct {
	id    int
	kind  jointKind
	name  string
	dev   *model.Device
	terms []*model.Terminal
	metal *model.Metal
	rank  int // rails: place from the top
	tag   string
	small string // number beside the tag
	about string // words over the rail
	class int    // sorting of rails: class, then distance from the battery
	far   float64
	self  bool // has a name of its own (splice, stud, bus), not that of a pin
	gaps  []*bar
}

// run is one wire of the model.
type run struct {
	w      *model.Wire
	ends   [2]end // from, to
	cut    bool   // drawn as two stubs with boxed path numbers
	strap  bool   // between two studs: drawn lying
	broken []*strand
}

// end is where a wire ends: on a pin or on a joint.
type end struct {
	pin   *pin
	joint *joint
}

func newPlan(in Input) *plan {
	n := len(in.Model.Terminals)
	p := &plan{in: in, m: in.Model, pins: make([]*pin, n), meets: make([]*joint, n)}
	if p.now, p.notes = momentOf(in); p.now != nil {
		p.in.Title.Extra = p.now.title()
	}
	return p
}

// collect turns the model into items, joints and runs.
func (p *plan) collect() {
	p.collectItems()
	p.collectJoints()
	for _, w := range p.m.Wires {
		if w.From == nil || w.To == nil {
			continue
		}
		p.runs = append(p.runs, &run{w: w, ends: [2]end{p.endAt(w.From), p.endAt(w.To)}})
	}
	p.flow = measureFlow(p.m)
}

func (p *plan) endAt(t *model.Terminal) end {
	if j := p.meets[t.ID]; j != nil {
		return end{joint: j}
	}
	return end{pin: p.pins[t.ID]}
}

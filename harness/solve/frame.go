package solve

import (
	"slices"

	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
)

// leastOhm is the resistance below which a link is taken as ideal: anything
// smaller would only cost the solver digits.
const leastOhm = 1e-6

// usualLinks is how many links a device has on average, or a little more.
const usualLinks = 2

// noBranch marks a link whose two ends are one node: it is not in the network.
const noBranch circuit.Branch = -1

// metalPoint stands for the metal that a device grounds to, where terminals
// are told apart by ID.
const metalPoint int32 = -2

// link is one branch of the network with what has to be known of it.
type link struct {
	a, b   circuit.Node
	ta, tb int32 // terminals by ID, or metalPoint
	branch circuit.Branch
	steps  part.StepSet
	state  int32 // relay that has to be on, or off where rest is true; -1: none
	out    int32 // index of the controller output that it belongs to; -1: none
	dev    int32 // device by ID; -1: a wire or a tie
	rest   bool
	path   bool // leads current on: a wire, fuse, contact, output, not a load
	use    part.Use
	kind   circuit.LawKind
	leaks  bool // lets next to nothing through, whatever the state
}

// frame is the network of one corner and grade, without the wires'
// resistances. It is read-only once built.
type frame struct {
	model   *model.Model
	corner  part.Corner
	grade   part.Grade
	start   part.Start // of a cold start
	rated   []float64  // see chosenRatings
	lay     *layout
	net     *circuit.Net
	links   []link // first one for each wire, by wire ID
	first   []int32
	last    []int32 // links of a device by ID: first to last, last excluded
	moving  []int32 // links that are not on in every step
	diodes  []int32 // links that are diodes
	runDown func(*model.Device) bool
	open    []int // devices by ID whose diodes are left out
	relays  []Relay
	movers  []mover // beside relays
	pullers []int32 // relays whose windings' currents count while they are in
	outs    []output
	meters  meters
	beside  adjacency
	device  []int32 // device by branch, -1: none
}

// newFrame builds the network of a model in a case, without the diodes of the devices that it lists.
func newFrame(m *model.Model, k Case) *frame {
	f := &frame{model: m, corner: k.Corner, grade: k.Grade, start: k.Start, open: k.open(), lay: lay(m, k.Grade), net: circuit.NewNet()}
	for i := 1; i < f.lay.count; i++ {
		f.net.AddNode()
	}
	f.runDown = k.runDown
	f.links = make([]link, 0, len(m.Wires)+len(f.lay.ties)+usualLinks*len(m.Devices))
	f.net.Grow(cap(f.links))
	f.device = make([]int32, 0, cap(f.links))
	f.addWires()
	f.addTies()
	f.addDevices()
	f.beside = adjoin(f.lay.count, f.links)
	f.classify()
	f.meters = newMeters(f)
	for i := range f.links {
		if l := &f.links[i]; l.steps != f.all() || l.state >= 0 || l.out >= 0 {
			f.moving = append(f.moving, int32(i))
		}
		if f.links[i].kind == circuit.Diode {
			f.diodes = append(f.diodes, int32(i))
		}
	}
	return f
}

// alike reports whether another network has the same links of the same kinds
// between the same nodes.
func (f *frame) alike(o *frame) bool {
	return f.lay.count == o.lay.count && slices.EqualFunc(f.links, o.links, func(x, y link) bool {
		at, other := f.net.Law(x.branch), o.net.Law(y.branch)
		return x.a == y.a && x.b == y.b && x.kind == y.kind && at.SenseA == other.SenseA && at.SenseB == other.SenseB
	})
}

// all is the set of all steps.
func (f *frame) all() part.StepSet {
	return part.StepSet(1)<<uint(len(f.model.Steps)) - 1
}

// add puts a link into the network, unless both ends are one node.
func (f *frame) add(l link, law circuit.Law) {
	l.branch, l.kind = noBranch, law.Kind
	l.leaks = law.Kind == circuit.Resistor && (l.use == part.LeakElement || law.Ohm >= leakOhm)
	if l.a != l.b {
		l.branch = f.net.Add(l.a, l.b, law)
		f.device = append(f.device, l.dev)
	}
	f.links = append(f.links, l)
}

func (f *frame) addWires() {
	for _, w := range f.model.Wires {
		l := link{ta: -1, tb: -1, state: -1, out: -1, dev: -1, path: true, steps: f.all()}
		if w.From != nil && w.To != nil {
			l.a, l.b = f.lay.node[w.From.ID], f.lay.node[w.To.ID]
			l.ta, l.tb = int32(w.From.ID), int32(w.To.ID)
		}
		f.add(l, resistor(1))
	}
}

func (f *frame) addTies() {
	for _, t := range f.lay.ties {
		l := link{ta: int32(t.a.ID), tb: metalPoint, state: -1, out: -1, dev: -1, path: true, steps: f.all()}
		l.a = f.lay.node[t.a.ID]
		if t.b != nil {
			l.b, l.tb = f.lay.node[t.b.ID], int32(t.b.ID)
		} else {
			l.b = f.lay.metal[t.to.ID]
		}
		f.add(l, resistor(t.ohm))
	}
}

func resistor(ohm float64) circuit.Law {
	return circuit.Law{Kind: circuit.Resistor, Ohm: max(ohm, leastOhm)}
}

// adjacency lists the links at each node.
type adjacency struct {
	start []int32
	link  []int32
}

func adjoin(nodes int, links []link) adjacency {
	adj := adjacency{start: make([]int32, nodes+1)}
	for i := range links {
		if l := &links[i]; l.branch != noBranch {
			adj.start[l.a+1]++
			adj.start[l.b+1]++
		}
	}
	for i := range nodes {
		adj.start[i+1] += adj.start[i]
	}
	adj.link = make([]int32, adj.start[nodes])
	fill := append([]int32(nil), adj.start[:nodes]...)
	for i := range links {
		if l := &links[i]; l.branch != noBranch {
			adj.link[fill[l.a]] = int32(i)
			fill[l.a]++
			adj.link[fill[l.b]] = int32(i)
			fill[l.b]++
		}
	}
	return adj
}

// at lists the links at a node.
func (a *adjacency) at(n circuit.Node) []int32 { return a.link[a.start[n]:a.start[n+1]] }

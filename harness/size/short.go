package size

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// shorts finds the current that flows from one bank when a wire's far end
// touches metal: the crank e.m.f. over the bank's own resistance, the way out
// along the path of least resistance, and the worst way back from any metal.
// Its graphs hold for every round of sizing; only the wires' resistances differ.
type shorts struct {
	emf       float64   // of the bank while the engine is cranked
	sources   float64   // the bank's own resistance
	out, back *ohmGraph // from the bank's positive post; from its negative one through metal and wires
	metals    int       // the first point of back that is metal
	outOhms   []float64 // by terminal ID: ohms from the positive post, +Inf where nothing leads
	backOhm   float64   // ohms from the worst-placed metal to the negative post
}

func newShorts(m *model.Model, rated func(*model.Device, int) float64, b bank) *shorts {
	return &shorts{
		emf: gauge.CrankEMF * m.SystemV / 12, sources: b.ohm, metals: len(m.Terminals),
		out: outwardGraph(m, rated, b.plus), back: metalGraph(m, b.minus),
	}
}

// fit takes over the wires as they now stand.
func (s *shorts) fit(wires []solve.Conductor) {
	s.outOhms, s.backOhm = s.out.least(wires), 0
	for _, ohm := range s.back.least(wires)[s.metals:] {
		if !math.IsInf(ohm, 1) {
			s.backOhm = max(s.backOhm, ohm)
		}
	}
}

// least gives the current of a short at the end of the wire that lies farther
// from the bank, 0 where the bank does not reach it.
func (s *shorts) least(w *model.Wire) float64 {
	far := max(s.outOhms[w.From.ID], s.outOhms[w.To.ID])
	if math.IsInf(far, 1) {
		return 0
	}
	return s.emf / (s.sources + far + s.backOhm)
}

// outwardGraph is the ways by which battery current can reach a terminal
// without passing a load, with their resistance.
func outwardGraph(m *model.Model, rated func(*model.Device, int) float64, plus *model.Terminal) *ohmGraph {
	g := newOhmGraph(len(m.Terminals), plus.ID)
	add := func(a, b *model.Terminal, ohm float64) {
		if a != nil && b != nil && a.Metal == nil && b.Metal == nil {
			g.add(a.ID, b.ID, noWire, ohm)
		}
	}
	for _, w := range m.Wires {
		if w.From.Metal == nil && w.To.Metal == nil {
			g.add(w.From.ID, w.To.ID, w.ID, jointOhm(w.From)+jointOhm(w.To))
		}
	}
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			if t.ID < o.ID { // each lists the other
				add(t, o, 0)
			}
		}
	}
	for _, d := range m.Devices {
		for i, f := range d.Protects() {
			ohm, grade := gauge.FuseOhm(f.Family, rated(d, i))
			if !grade.MayDecide() {
				ohm = 0
			}
			add(d.Terminal(f.In), d.Terminal(f.Out), ohm*(1+gauge.FuseRise))
		}
		for _, c := range d.Switches() {
			add(d.Terminal(c.A), d.Terminal(c.B), contactOhm(c))
		}
		for _, c := range d.Couples() {
			add(d.Terminal(c.A), d.Terminal(c.B), c.Ohm)
		}
	}
	g.adjoin()
	return g
}

func contactOhm(c part.Contact) float64 {
	if c.Ohm > 0 {
		return c.Ohm
	}
	if c.CoilA != "" {
		return gauge.RelayContactOhm
	}
	return gauge.SwitchContactOhm
}

func jointOhm(t *model.Terminal) float64 {
	if t.Landing == part.Post {
		return gauge.RingJointOhm
	}
	return 0
}

// metalGraph is the ways back from metal to the battery's negative post. The
// metals follow the terminals among its points.
func metalGraph(m *model.Model, minus *model.Terminal) *ohmGraph {
	point := func(t *model.Terminal) int {
		if t.Metal != nil {
			return len(m.Terminals) + t.Metal.ID
		}
		return t.ID
	}
	g := newOhmGraph(len(m.Terminals)+len(m.Metals), point(minus))
	for _, w := range m.Wires {
		g.add(point(w.From), point(w.To), w.ID, jointOhm(w.From)+jointOhm(w.To))
	}
	g.adjoin()
	return g
}

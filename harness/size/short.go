package size

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// shorts finds the current that flows when a wire's far end touches metal:
// the battery's crank e.m.f. over its own resistance, the way out along the
// path of least resistance, and the worst way back from any metal.
type shorts struct {
	out     []float64 // by terminal ID: ohms from the battery's positive post, +Inf where nothing leads
	backOhm float64   // ohms from the worst-placed metal to the battery's negative post
	sources float64   // the battery's own resistance
}

func newShorts(m *model.Model, wires []solve.Conductor, rated func(*model.Device, int) float64) shorts {
	p := batteryPosts(m)
	s := shorts{}
	if p.plus == nil || p.minus == nil {
		return s
	}
	s.sources = p.plus.Device.BatteryOhm
	s.out = leastOhms(outwardGraph(m, wires, rated), p.plus.ID)
	for _, ohm := range metalOhms(m, wires, p.minus) {
		if !math.IsInf(ohm, 1) {
			s.backOhm = math.Max(s.backOhm, ohm)
		}
	}
	return s
}

// least gives the current of a short at the end of the wire that lies farther
// from the battery, 0 where the battery does not reach it.
func (s shorts) least(w *model.Wire) float64 {
	if s.out == nil {
		return 0
	}
	far := math.Max(s.out[w.From.ID], s.out[w.To.ID])
	if math.IsInf(far, 1) {
		return 0
	}
	return gauge.CrankEMF / (s.sources + far + s.backOhm)
}

// ohmLink is a way on from a terminal with its resistance.
type ohmLink struct {
	to  int
	ohm float64
}

// outwardGraph is the ways by which battery current can reach a terminal
// without passing a load, with their resistance.
func outwardGraph(m *model.Model, wires []solve.Conductor, rated func(*model.Device, int) float64) [][]ohmLink {
	g := make([][]ohmLink, len(m.Terminals))
	add := func(a, b *model.Terminal, ohm float64, oneWay bool) {
		if a == nil || b == nil || a.Metal != nil || b.Metal != nil {
			return
		}
		g[a.ID] = append(g[a.ID], ohmLink{b.ID, ohm})
		if !oneWay {
			g[b.ID] = append(g[b.ID], ohmLink{a.ID, ohm})
		}
	}
	for _, w := range m.Wires {
		add(w.From, w.To, wires[w.ID].Ohm+jointOhm(w.From)+jointOhm(w.To), false)
	}
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			add(t, o, 0, true)
		}
	}
	for _, d := range m.Devices {
		for i, f := range d.Protects() {
			ohm, grade := gauge.FuseOhm(f.Family, rated(d, i))
			if !grade.MayDecide() {
				ohm = 0
			}
			add(d.Terminal(f.In), d.Terminal(f.Out), ohm*(1+gauge.FuseRise), false)
		}
		for _, c := range d.Switches() {
			ohm := gauge.SwitchContactOhm
			if c.CoilA != "" {
				ohm = gauge.RelayContactOhm
			}
			add(d.Terminal(c.A), d.Terminal(c.B), ohm, false)
		}
		for _, c := range d.Couples() {
			add(d.Terminal(c.A), d.Terminal(c.B), c.Ohm, false)
		}
	}
	return g
}

func jointOhm(t *model.Terminal) float64 {
	if t.Landing == part.Post {
		return gauge.RingJointOhm
	}
	return 0
}

// metalOhms gives the resistance of the way back from each metal to the
// battery's negative post, by metal ID.
func metalOhms(m *model.Model, wires []solve.Conductor, minus *model.Terminal) []float64 {
	metal := func(t *model.Terminal) int {
		if t.Metal != nil {
			return len(m.Terminals) + t.Metal.ID
		}
		return t.ID
	}
	g := make([][]ohmLink, len(m.Terminals)+len(m.Metals))
	for _, w := range m.Wires {
		a, b := metal(w.From), metal(w.To)
		ohm := wires[w.ID].Ohm + jointOhm(w.From) + jointOhm(w.To)
		g[a] = append(g[a], ohmLink{b, ohm})
		g[b] = append(g[b], ohmLink{a, ohm})
	}
	return leastOhms(g, metal(minus))[len(m.Terminals):]
}

// leastOhms is the path of least resistance from one point to every other.
func leastOhms(g [][]ohmLink, root int) []float64 {
	ohms := make([]float64, len(g))
	for i := range ohms {
		ohms[i] = math.Inf(1)
	}
	ohms[root] = 0
	q := queue[wideAt]{{0, root}}
	for len(q) > 0 {
		at := q.pop()
		if -at.width > ohms[at.id] {
			continue
		}
		for _, l := range g[at.id] {
			if o := ohms[at.id] + l.ohm; o < ohms[l.to] {
				ohms[l.to] = o
				q.push(wideAt{-o, l.to}) // the queue gives its largest first
			}
		}
	}
	return ohms
}

package size

import (
	"context"
	"math"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Charging is what stands in the place of a step where a current flows that no
// step plays: every machine that charges gives all it is rated for into a flat
// battery. A run after a jump start or a night with the lights on is so.
const Charging = "flat-battery charging"

// farAboveV is a setpoint that no path of copper reaches: it holds a machine
// at its rating.
const farAboveV = 1e6

// charging is the network of that case: the conductors, fuses and closed
// contacts on the ways between the machines and the batteries, and no load, as
// a load only takes from what the way has to carry.
type charging struct {
	m        *model.Model
	point    []int // by terminal ID: its node in the full network
	ways     []chargeWay
	machines []charger
	cells    []chargeCell
	wireA    []float64 // by wire ID
	fuseA    map[fuseKey]float64
	fallV    []fall // by machine
}

type fuseKey struct {
	device *model.Device
	index  int
}

// chargeWay is an edge of the tracer, and the one sense that a diode lets through.
type chargeWay struct {
	*edge
	ohm    float64 // of what is in a device
	oneWay bool
	amps   float64 // from its first end to its second
}

// charger is a machine that charges.
type charger struct {
	device      *model.Device
	index       int // of its Supplies
	plus, minus int
	amps        float64
}

// chargeCell is a battery.
type chargeCell struct {
	plus, minus *model.Terminal
	ohm         float64
}

// fall is what is lost between a machine and the battery that it charges.
type fall struct {
	feedV, backV float64
	feed, back   []flow
	cell         *chargeCell
}

// newCharging finds the ways; nil where no machine charges a battery.
func newCharging(m *model.Model, t *tracer, h *solve.History) *charging {
	k := &charging{m: m, point: t.point}
	k.findSources()
	if len(k.machines) == 0 || len(k.cells) == 0 {
		return nil
	}
	for i := range t.edges {
		if w, ok := wayOf(&t.edges[i], h); ok {
			k.ways = append(k.ways, w)
		}
	}
	k.prune(len(t.width))
	return k
}

func (k *charging) findSources() {
	for _, d := range k.m.Devices {
		for i, s := range d.Supplies() {
			plus, minus := pinOrMetal(k.m, d, s.Plus), pinOrMetal(k.m, d, s.Minus)
			switch {
			case plus == nil || minus == nil || k.point[plus.ID] == k.point[minus.ID]:
			case s.Battery:
				k.cells = append(k.cells, chargeCell{plus, minus, s.Ohm})
			case s.MaxA > 0 && s.SetpointV > 0:
				k.machines = append(k.machines, charger{d, i, k.point[plus.ID], k.point[minus.ID], s.MaxA})
			}
		}
	}
}

// wayOf makes a way of an edge; ok is false for a contact that is open
// whenever the engine runs.
func wayOf(e *edge, h *solve.History) (w chargeWay, ok bool) {
	w.edge = e
	switch e.sort {
	case wireEdge, fuseEdge:
	case contactEdge:
		if c := e.device.Switches()[e.index]; c.CoilA != "" || c.Ohm > 0 {
			w.ohm = contactOhm(c) // the usual one of a switch is too unsure to judge by
		}
		return w, closedRunning(e, h)
	case fixedEdge:
		p := e.device.Passes()[e.index]
		w.ohm, w.oneWay = p.Ohm, p.OneWay
	default: // what a controller drives is no way for a machine's output
		return w, false
	}
	return w, e.a != e.b
}

// closedRunning reports whether a contact is closed while the engine runs: an
// open one carries nothing at all.
func closedRunning(e *edge, h *solve.History) bool {
	for _, s := range h.States {
		if s.Skipped == "" && s.Step.Engine == part.Running && e.amps(s) > 0 {
			return true
		}
	}
	return false
}

// prune leaves out the ways that lead nowhere: current goes from machine to
// battery, so a point with one way that is neither is an end.
func (k *charging) prune(points int) {
	degree := make([]int, points)
	for _, s := range k.machines {
		degree[s.plus], degree[s.minus] = 2, 2
	}
	for _, c := range k.cells {
		degree[k.point[c.plus.ID]], degree[k.point[c.minus.ID]] = 2, 2
	}
	for _, w := range k.ways {
		degree[w.a]++
		degree[w.b]++
	}
	for changed := true; changed; {
		changed = false
		kept := k.ways[:0]
		for _, w := range k.ways {
			if degree[w.a] > 1 && degree[w.b] > 1 {
				kept = append(kept, w)
				continue
			}
			degree[w.a]--
			degree[w.b]--
			changed = true
		}
		k.ways = kept
	}
}

// play finds the currents with the wires as they stand: the larger of what
// flows when all batteries share, and when the one that takes the most of that
// takes it alone.
func (k *charging) play(ctx context.Context, wireOhm func(*model.Wire) float64, fuseOhm func(*edge) float64) error {
	all := k.network(k.cells, wireOhm, fuseOhm) // with the copper as the older currents warm it
	if err := all.solve(ctx); err != nil {
		return err
	}
	nets := []*chargeNet{all}
	if most := all.thirstiest(); len(k.cells) > 1 {
		alone := k.network(k.cells[most:most+1], wireOhm, fuseOhm)
		if err := alone.solve(ctx); err != nil {
			return err
		}
		nets = append(nets, alone)
	}
	k.wireA, k.fuseA = make([]float64, len(k.m.Wires)), map[fuseKey]float64{}
	k.fallV = make([]fall, len(k.machines))
	for _, n := range nets {
		k.take(n)
	}
	return nil
}

// take keeps the larger currents and losses.
func (k *charging) take(n *chargeNet) {
	for i := range k.ways {
		w := &k.ways[i]
		w.amps = n.amps(i)
		switch a := math.Abs(w.amps); {
		case w.wire != nil:
			k.wireA[w.wire.ID] = math.Max(k.wireA[w.wire.ID], a)
		case w.sort == fuseEdge:
			key := fuseKey{w.device, w.index}
			k.fuseA[key] = math.Max(k.fuseA[key], a)
		}
	}
	for i := range k.machines {
		if f := k.fallOf(n, i); f.feedV+f.backV > k.fallV[i].feedV+k.fallV[i].backV {
			k.fallV[i] = f
		}
	}
}

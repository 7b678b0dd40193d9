package size

import (
	"context"
	"math"

	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/model"
)

// leastWayOhm stands for a way that nothing is known to resist: currents that
// meet nothing would divide by chance.
const leastWayOhm = 1e-6

// chargeNet is one case of charging as a network of resistances.
type chargeNet struct {
	nodes    map[int]circuit.Node // by point
	net      *circuit.Net
	branches []circuit.Branch // by way
	gives    []circuit.Branch // by machine, -1 for one that charges none of the batteries
	oneWay   []bool           // by way
	cells    []chargeCell
	takes    []circuit.Branch // by cell
	sol      *circuit.Solution
	solver   *circuit.Solver
}

func (k *charging) network(cells []chargeCell, wireOhm func(*model.Wire) float64, fuseOhm func(*edge) float64) *chargeNet {
	n := &chargeNet{net: circuit.NewNet(), nodes: map[int]circuit.Node{k.point[cells[0].minus.ID]: 0}, cells: cells}
	reach := newUnion(len(k.point) + len(k.m.Metals))
	for i := range k.ways {
		w := &k.ways[i]
		ohm := w.ohm
		switch {
		case w.wire != nil:
			ohm = wireOhm(w.wire) + jointOhm(w.wire.From) + jointOhm(w.wire.To)
		case w.sort == fuseEdge:
			ohm = fuseOhm(w.edge)
		}
		n.branches = append(n.branches, n.add(w.a, w.b, resistance(ohm)))
		n.oneWay = append(n.oneWay, w.oneWay)
		reach.join(w.a, w.b)
	}
	stacked := k.stacked(cells, reach)
	for i, c := range cells {
		a, b := k.point[c.plus.ID], k.point[c.minus.ID]
		ohm := c.ohm
		if stacked[i] { // what a battery has inside is no loss of the way to the next one
			ohm = 0
		}
		n.takes = append(n.takes, n.add(a, b, resistance(ohm)))
		reach.join(a, b)
	}
	for _, s := range k.machines {
		b := circuit.Branch(-1)
		if reach.find(s.plus) == reach.find(s.minus) {
			law := circuit.Law{Kind: circuit.Regulator, Volt: farAboveV, Amp: s.amps, SenseA: n.node(s.plus), SenseB: n.node(s.minus)}
			b = n.add(s.plus, s.minus, law)
		}
		n.gives = append(n.gives, b)
	}
	n.solver = circuit.NewSolver(n.net)
	return n
}

// stacked tells which batteries stand in series with others: no way without a
// battery leads from both posts to one machine.
func (k *charging) stacked(cells []chargeCell, ways union) []bool {
	list := make([]bool, len(cells))
	for i, c := range cells {
		plus, minus := ways.find(k.point[c.plus.ID]), ways.find(k.point[c.minus.ID])
		list[i] = true
		for _, s := range k.machines {
			if ways.find(s.plus) == plus && ways.find(s.minus) == minus {
				list[i] = false
			}
		}
	}
	return list
}

func resistance(ohm float64) circuit.Law {
	return circuit.Law{Kind: circuit.Resistor, Ohm: math.Max(ohm, leastWayOhm)}
}

func (n *chargeNet) node(point int) circuit.Node {
	if at, ok := n.nodes[point]; ok {
		return at
	}
	at := n.net.AddNode()
	n.nodes[point] = at
	return at
}

func (n *chargeNet) add(a, b int, law circuit.Law) circuit.Branch {
	return n.net.Add(n.node(a), n.node(b), law)
}

// solve finds the currents; a diode against which current would flow is taken
// out, and the rest is solved again.
func (n *chargeNet) solve(ctx context.Context) (err error) {
	for {
		if n.sol, err = n.solver.Solve(ctx); err != nil {
			return err
		}
		again := false
		for i, b := range n.branches {
			if n.oneWay[i] && n.sol.I(b) < -1e-9 {
				n.solver.SetOn(b, false)
				n.oneWay[i], again = false, true
			}
		}
		if !again {
			return nil
		}
	}
}

// thirstiest is the battery that takes the most, the first one of those that
// take as much.
func (n *chargeNet) thirstiest() (at int) {
	most := 0.0
	for i, b := range n.takes {
		if a := n.sol.I(b); a > most*(1+sameCharge) {
			at, most = i, a
		}
	}
	return at
}

// sameCharge is how far currents of batteries that are alike differ by the
// order of solving alone.
const sameCharge = 1e-6

func (n *chargeNet) amps(way int) float64 { return n.sol.I(n.branches[way]) }

// fallOf measures what is lost between a machine and the battery that it
// loses most to, out and back, and lists the wires that carry it there.
func (k *charging) fallOf(n *chargeNet, machine int) (worst fall) {
	s := k.machines[machine]
	if n.gives[machine] < 0 {
		return worst
	}
	for i := range n.cells {
		c := &n.cells[i]
		plus, minus := k.point[c.plus.ID], k.point[c.minus.ID]
		feedV, ok1 := n.sol.Across(n.node(s.plus), n.node(plus))
		backV, ok2 := n.sol.Across(n.node(minus), n.node(s.minus))
		if ok1 && ok2 && (worst.cell == nil || feedV+backV > worst.feedV+worst.backV) {
			worst = fall{feedV: feedV, backV: backV, feed: k.along(s.plus, plus), back: k.along(minus, s.minus), cell: c}
		}
	}
	return worst
}

// along lists the wires on the way from one point to another that carries the
// most, going with the current.
func (k *charging) along(from, to int) (list []flow) {
	seen := map[int]bool{from: true}
	for from != to {
		var best *chargeWay
		next := 0
		for i := range k.ways {
			w := &k.ways[i]
			at, on, amps := w.a, w.b, w.amps
			if amps < 0 {
				at, on, amps = w.b, w.a, -amps
			}
			if at == from && !seen[on] && amps > 0 && (best == nil || amps > math.Abs(best.amps)) {
				best, next = w, on
			}
		}
		if best == nil {
			return list
		}
		if best.wire != nil {
			list = append(list, flow{best.wire, math.Abs(best.amps)})
		}
		from, seen[next] = next, true
	}
	return list
}

// sureFuseOhm is the resistance of a fuse at its rating, as far as it is surely known.
func (c *chooser) sureFuseOhm(e *edge) float64 {
	ohm, grade := gauge.FuseOhm(e.device.Protects()[e.index].Family, c.rated(e.device, e.index))
	if !grade.MayDecide() {
		return 0
	}
	return ohm * (1 + gauge.FuseRise)
}

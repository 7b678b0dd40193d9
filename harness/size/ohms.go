package size

import (
	"math"

	"legwork/harness/solve"
)

// noWire marks a way that is in a device.
const noWire = -1

// ohmGraph finds paths of least resistance from one point to every other.
type ohmGraph struct {
	root  int
	ways  []ohmWay
	start []int32 // by point, and one more: its first way on in on
	on    []ohmWay
	ohms  []float64
	queue queue[wideAt]
}

// ohmWay is a way from a point to another, along a wire or within a device.
type ohmWay struct {
	from, to int32
	wire     int32 // by ID, or noWire
	ohm      float64
}

func newOhmGraph(points, root int) *ohmGraph {
	return &ohmGraph{root: root, start: make([]int32, points+1), ohms: make([]float64, points)}
}

// add lays a way in both senses; ohm is what there is besides the wire.
func (g *ohmGraph) add(a, b, wire int, ohm float64) {
	g.ways = append(g.ways,
		ohmWay{int32(a), int32(b), int32(wire), ohm}, ohmWay{int32(b), int32(a), int32(wire), ohm})
}

// adjoin lists the ways by the point that they lead on from.
func (g *ohmGraph) adjoin() {
	for _, w := range g.ways {
		g.start[w.from+1]++
	}
	for i := range g.ohms {
		g.start[i+1] += g.start[i]
	}
	next := append([]int32(nil), g.start...)
	g.on = make([]ohmWay, len(g.ways))
	for _, w := range g.ways {
		g.on[next[w.from]] = w
		next[w.from]++
	}
	g.ways = nil
}

// least gives the least resistance from the root to every point, +Inf where no
// way leads. The list is overwritten by the next call.
func (g *ohmGraph) least(wires []solve.Conductor) []float64 {
	for i := range g.ohms {
		g.ohms[i] = math.Inf(1)
	}
	g.ohms[g.root] = 0
	g.queue = append(g.queue[:0], wideAt{0, g.root})
	for len(g.queue) > 0 {
		at := g.queue.pop()
		if -at.width > g.ohms[at.id] {
			continue
		}
		for _, w := range g.on[g.start[at.id]:g.start[at.id+1]] {
			ohm := g.ohms[at.id] + w.ohm
			if w.wire != noWire {
				ohm += wires[w.wire].Ohm
			}
			if ohm < g.ohms[w.to] {
				g.ohms[w.to] = ohm
				g.queue.push(wideAt{-ohm, int(w.to)}) // the queue gives its largest first
			}
		}
	}
	return g.ohms
}

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
	start []int32 // by point, and one more: its first in ends
	ends  []int32 // the ways at each point, by index
	ohms  []float64
	queue queue[wideAt]
}

// ohmWay is a way between two points, along a wire or within a device.
type ohmWay struct {
	a, b int32
	wire int32   // by ID, or noWire
	ohm  float64 // what there is besides the wire
}

func newOhmGraph(points, root int) *ohmGraph {
	return &ohmGraph{root: root, start: make([]int32, points+1), ohms: make([]float64, points)}
}

func (g *ohmGraph) add(a, b, wire int, ohm float64) {
	g.ways = append(g.ways, ohmWay{int32(a), int32(b), int32(wire), ohm})
	g.start[a+1]++
	g.start[b+1]++
}

// adjoin lists the ways by the points that they lead on from.
func (g *ohmGraph) adjoin() {
	for i := range g.ohms {
		g.start[i+1] += g.start[i]
	}
	next := append([]int32(nil), g.start...)
	g.ends = make([]int32, 2*len(g.ways))
	for i, w := range g.ways {
		for _, p := range [...]int32{w.a, w.b} {
			g.ends[next[p]] = int32(i)
			next[p]++
		}
	}
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
		for _, i := range g.ends[g.start[at.id]:g.start[at.id+1]] {
			w := &g.ways[i]
			to := w.a + w.b - int32(at.id)
			ohm := g.ohms[at.id] + w.ohm
			if w.wire != noWire {
				ohm += wires[w.wire].Ohm
			}
			if ohm < g.ohms[to] {
				g.ohms[to] = ohm
				g.queue.push(wideAt{-ohm, int(to)}) // the queue gives its largest first
			}
		}
	}
	return g.ohms
}

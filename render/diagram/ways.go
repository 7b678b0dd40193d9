package diagram

import (
	"container/heap"
	"math"
)

// spreadFrom finds the shortest ways from the sources; it ends at the blocked
// terminals (it enters them, but does not leave).
func spreadFrom(g [][]edge, sources []int, blocked []bool) ([]float64, []step) {
	dist, back := make([]float64, len(g)), make([]step, len(g))
	for i := range dist {
		dist[i], back[i] = math.Inf(1), step{prev: -1}
	}
	q := &queue{}
	for _, s := range sources {
		dist[s] = 0
		heap.Push(q, place{s, 0})
	}
	for q.Len() > 0 {
		at := heap.Pop(q).(place)
		if at.dist > dist[at.id] || blocked[at.id] && at.dist > 0 {
			continue
		}
		for _, e := range g[at.id] {
			if d := at.dist + e.weight; d < dist[e.to] {
				dist[e.to], back[e.to] = d, step{at.id, e.dev, e.what}
				heap.Push(q, place{e.to, d})
			}
		}
	}
	return dist, back
}

type place struct {
	id   int
	dist float64
}

type queue []place

func (q queue) Len() int { return len(q) }
func (q queue) Less(i, j int) bool {
	return q[i].dist < q[j].dist || q[i].dist == q[j].dist && q[i].id < q[j].id
}
func (q queue) Swap(i, j int) { q[i], q[j] = q[j], q[i] }
func (q *queue) Push(x any)   { *q = append(*q, x.(place)) }
func (q *queue) Pop() any {
	old := *q
	x := old[len(old)-1]
	*q = old[:len(old)-1]
	return x
}

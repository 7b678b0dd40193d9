package route

import (
	"cmp"
	"container/heap"

	"legwork/harness/model"
)

// hop is one leg out of a place.
type hop struct {
	leg *model.Leg
	to  *model.Place
}

// label is the best way known to a place: shortest, then fewest legs, then
// the leg that stands first in the draft.
type label struct {
	lengthM float64
	legs    int
	last    *model.Leg // nil at the start
	from    *model.Place
	done    bool
	known   bool
}

// before orders labels; equal ways are told apart by draft order, so that the
// same draft always gives the same way.
func (a label) before(b label) bool {
	if !b.known {
		return true
	}
	return cmp.Or(cmp.Compare(a.lengthM, b.lengthM), cmp.Compare(a.legs, b.legs), cmp.Compare(a.last.ID, b.last.ID)) < 0
}

// tree holds the shortest ways from one place to all others, by place ID.
type tree []label

// grow works out a tree by Dijkstra's algorithm.
func grow(start *model.Place, hops [][]hop) tree {
	t := make(tree, len(hops))
	t[start.ID] = label{known: true}
	queue := &frontier{{place: start}}
	for queue.Len() > 0 {
		at := heap.Pop(queue).(reach).place
		if t[at.ID].done {
			continue
		}
		t[at.ID].done = true
		for _, h := range hops[at.ID] {
			next := label{
				lengthM: t[at.ID].lengthM + h.leg.LengthM, legs: t[at.ID].legs + 1,
				last: h.leg, from: at, known: true,
			}
			if old := t[h.to.ID]; !old.done && next.before(old) {
				t[h.to.ID] = next
				heap.Push(queue, reach{h.to, next.lengthM, next.legs})
			}
		}
	}
	return t
}

// reach is a place with the length of a way to it.
type reach struct {
	place   *model.Place
	lengthM float64
	legs    int
}

// frontier is a heap of places by length, legs and draft order.
type frontier []reach

func (f frontier) Len() int { return len(f) }

func (f frontier) Less(i, j int) bool {
	a, b := f[i], f[j]
	return cmp.Or(cmp.Compare(a.lengthM, b.lengthM), cmp.Compare(a.legs, b.legs), cmp.Compare(a.place.ID, b.place.ID)) < 0
}

func (f frontier) Swap(i, j int) { f[i], f[j] = f[j], f[i] }

// Push is for container/heap.
func (f *frontier) Push(x any) { *f = append(*f, x.(reach)) }

// Pop is for container/heap.
func (f *frontier) Pop() any {
	last := len(*f) - 1
	x := (*f)[last]
	*f = (*f)[:last]
	return x
}

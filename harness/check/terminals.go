package check

import (
	"container/heap"
	"math"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// protects reports whether a terminal is a side of a protective element.
func protects(t *model.Terminal) bool {
	if t.Device.Kind.Protects == nil {
		return false
	}
	for _, f := range t.Device.Protects() {
		if f.In == t.Name || f.Out == t.Name {
			return true
		}
	}
	return false
}

// passesOn reports whether a terminal is a side of a contact or of a fixed way.
func passesOn(t *model.Terminal) bool {
	d := t.Device
	for _, c := range d.Switches() {
		if c.A == t.Name || c.B == t.Name {
			return true
		}
	}
	for _, w := range d.Passes() {
		if w.A == t.Name || w.B == t.Name {
			return true
		}
	}
	return false
}

// takesStart reports whether a terminal is where a starter motor takes its
// current.
func takesStart(t *model.Terminal) bool {
	if t.Device.Kind.Draws == nil {
		return false
	}
	for _, d := range t.Device.Draws() {
		if d.Starter && d.Plus == t.Name {
			return true
		}
	}
	return false
}

// isSupply reports whether a terminal is the positive one of a source.
func isSupply(t *model.Terminal) bool { return supplies(t, false) }

// isBattery reports whether a terminal is the positive post of a battery.
func isBattery(t *model.Terminal) bool { return supplies(t, true) }

func supplies(t *model.Terminal, batteryOnly bool) bool {
	if t.Device.Kind.Supplies == nil {
		return false
	}
	for _, s := range t.Device.Supplies() {
		if s.Plus == t.Name && (s.Battery || !batteryOnly) {
			return true
		}
	}
	return false
}

// starterA is the current of all starter motors in a step.
func (p *Pass) starterA(s *solve.State) float64 {
	if p.starters == nil {
		p.starters = []behind{}
		p.eachStarter(func(b behind) { p.starters = append(p.starters, b) })
	}
	sum := 0.0
	for _, b := range p.starters {
		sum += math.Abs(s.DrawA.Of(b.device, b.index))
	}
	return sum
}

// turning reports whether the starters draw their current in a step, and not
// what leaks through one that stays out.
func (p *Pass) turning(s *solve.State) bool {
	asked := 0.0
	p.eachStarter(func(b behind) { asked += b.device.Draws()[b.index].Amps })
	return s.Step.Engine == part.Turning && asked > 0 && p.starterA(s) >= onShare*asked
}

// lengthTo is a terminal with the length of a way to it.
type lengthTo struct {
	lengthM float64
	id      int
}

// lengths is a heap of ways, the shortest first, equal ones by terminal.
type lengths []lengthTo

func (q lengths) Len() int { return len(q) }
func (q lengths) Less(i, j int) bool {
	if q[i].lengthM != q[j].lengthM {
		return q[i].lengthM < q[j].lengthM
	}
	return q[i].id < q[j].id
}
func (q lengths) Swap(i, j int) { q[i], q[j] = q[j], q[i] }

// Push adds a way; it serves container/heap.
func (q *lengths) Push(x any) { *q = append(*q, x.(lengthTo)) }

// Pop takes the last way; it serves container/heap.
func (q *lengths) Pop() any {
	last := (*q)[len(*q)-1]
	*q = (*q)[:len(*q)-1]
	return last
}

func (q *lengths) push(w lengthTo) { heap.Push(q, w) }
func (q *lengths) pop() lengthTo   { return heap.Pop(q).(lengthTo) }

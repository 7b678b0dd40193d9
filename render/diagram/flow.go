package diagram

import (
	"math"

	"legwork/harness/model"
)

// flow says how far each terminal is from the battery and from ground, by the
// number of elements between. It decides which end of a thing is drawn up.
type flow struct {
	fromPlus, fromMinus []float64 // by terminal ID; +Inf where there is no way
	back                []step    // way to the battery's plus
	fromUnit            []float64 // from the pins of units that look down
	net                 []int     // what wires, buses and mated cavities join
	grounded            []bool    // by net: has a way to ground without an element
}

// step is the way from a terminal towards the battery's plus.
type step struct {
	prev int // terminal ID, -1 at the source
	dev  *model.Device
	what stepKind
}

type stepKind uint8

const (
	plainStep stepKind = iota // wire, bus, mated cavities
	fuseStep
	contactStep
	outputStep
	loadStep
)

// What an element weighs: a way through a load counts only where there is no
// other, so that less than loadWeight means "fed without a load between".
const (
	wireWeight    = 0.01
	elementWeight = 1
	loadWeight    = 1000
)

type edge struct {
	to     int
	weight float64
	dev    *model.Device
	what   stepKind
}

func measureFlow(m *model.Model) *flow {
	g := make([][]edge, len(m.Terminals))
	both := func(a, b *model.Terminal, w float64, d *model.Device, k stepKind) {
		if a == nil || b == nil {
			return
		}
		g[a.ID] = append(g[a.ID], edge{b.ID, w, d, k})
		g[b.ID] = append(g[b.ID], edge{a.ID, w, d, k})
	}
	for _, w := range m.Wires {
		both(w.From, w.To, wireWeight, nil, plainStep)
	}
	var plus, minus []int
	metal := make([]bool, len(m.Terminals))
	for _, d := range m.Devices {
		elements(d, both)
		if d.Kind.Supplies != nil {
			for _, s := range d.Kind.Supplies(d.Device) {
				if a := terminalOf(d, s.Plus); a != nil && s.Battery {
					plus = append(plus, a.ID)
				}
				if a := terminalOf(d, s.Minus); a != nil {
					minus = append(minus, a.ID)
					metal[a.ID] = true
				}
			}
		}
	}
	for _, t := range m.Terminals {
		for _, u := range t.Bus {
			both(t, u, wireWeight/10, nil, plainStep)
		}
		if t.Metal != nil {
			minus = append(minus, t.ID)
			metal[t.ID] = true
		}
	}
	f := &flow{}
	source := make([]bool, len(m.Terminals))
	for _, i := range plus {
		source[i] = true
	}
	f.fromPlus, f.back = spreadFrom(g, plus, metal)
	f.fromMinus, _ = spreadFrom(g, minus, source)
	f.findNets(g, minus)
	return f
}

// height is 1 at the battery's plus and 0 at ground, 0.5 where unknown.
func (f *flow) height(t *model.Terminal) float64 {
	a, b := f.fromPlus[t.ID], f.fromMinus[t.ID]
	switch {
	case math.IsInf(a, 1) && math.IsInf(b, 1):
		if f.fromUnit == nil || math.IsInf(f.fromUnit[t.ID], 1) {
			return 0.5
		}
		return 0.5 - 0.1*(1-1/(1+f.fromUnit[t.ID]))
	case math.IsInf(a, 1):
		return 0.4 * (1 - 1/(1+b))
	case math.IsInf(b, 1):
		return 0.6 + 0.4/(1+a)
	case a+b == 0:
		return 0.5
	}
	return b / (a + b)
}

// fed reports whether the terminal has a way to the battery without a load
// between.
func (f *flow) fed(t *model.Terminal) bool { return f.fromPlus[t.ID] < loadWeight }

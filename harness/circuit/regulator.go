package circuit

import "slices"

// regulator is a current source that holds a voltage somewhere else.
type regulator struct {
	b            Branch
	a, z, sa, sz int32
	volt, amp    float64
	able         bool // closed, and both pairs of ends hang together
	mode, mode0  Mode
	pushed       float64
	dropped      bool    // adds nothing that a higher set point doesn't already hold
	blind        bool    // its current does not raise what it senses
	free         float64 // sensed volts while no regulator pushes
	push, sense  trail   // of its own current, and of what it senses
}

// governor settles several regulators against each other. They are few.
type governor struct {
	regs   []regulator
	order  []int     // highest set point first, then the lowest number
	effect []float64 // effect[r*len(regs)+q]: volts sensed by r from one ampere of q
	matrix []float64
	want   []float64
}

func (g *governor) allot() {
	m := len(g.regs)
	g.effect, g.matrix, g.want = make([]float64, m*m), make([]float64, m*m), make([]float64, m)
	g.order = make([]int, m)
}

// rank lets the higher set point come first: of two regulators that sense the
// same point, it is the one that carries.
func (g *governor) rank() {
	for i := range g.order {
		g.order[i] = i
	}
	slices.SortStableFunc(g.order, func(i, j int) int {
		switch a, b := g.regs[i].volt, g.regs[j].volt; {
		case a > b:
			return -1
		case a < b:
			return 1
		}
		return 0
	})
}

// reset starts from all regulating, as at open circuit.
func (g *governor) reset() {
	for i := range g.regs {
		r := &g.regs[i]
		r.mode, r.pushed, r.dropped, r.blind = Blocked, 0, false, false
		if r.able {
			r.mode = Regulating
		}
	}
}

// act finds what the regulators push, given x, the voltages without them. It is
// false if they did not come to rest.
func (g *governor) act(f *factor, x []float64) bool {
	if len(g.regs) == 0 {
		return true
	}
	g.measure(f, x)
	if g.choose() || g.tryAll() {
		return true
	}
	for i := range g.regs {
		r := &g.regs[i]
		r.pushed = min(max(r.pushed, 0), r.amp)
	}
	return false
}

// blindBelow is the share of its own voltage rise below which a regulator's
// sense counts as out of its reach.
const blindBelow = 1e-9

func (g *governor) measure(f *factor, x []float64) {
	m := len(g.regs)
	for q := range g.regs {
		r := &g.regs[q]
		if !r.able {
			continue
		}
		f.trace(&r.push, r.a, r.z)
		f.trace(&r.sense, r.sa, r.sz)
		r.free = x[r.sa] - x[r.sz]
	}
	for r := range g.regs {
		for q := range g.regs {
			g.effect[r*m+q] = 0
			if g.regs[r].able && g.regs[q].able {
				g.effect[r*m+q] = f.between(&g.regs[r].sense, &g.regs[q].push)
			}
		}
		own := &g.regs[r]
		own.blind = own.able && !(g.effect[r*m+r] > blindBelow*f.between(&own.push, &own.push))
	}
}

// choose finds currents within their limits. Wrong modes are changed all at
// once at first, later only the first wrong one, so that it comes to an end.
func (g *governor) choose() bool {
	const block = 4
	for round := range block + 8*len(g.regs) {
		g.balance()
		wrong := false
		for i := range g.regs {
			if next := g.nextMode(i); next != g.regs[i].mode {
				g.regs[i].mode = next
				wrong = true
				if round >= block {
					break
				}
			}
		}
		if !wrong {
			return true
		}
	}
	return false
}

// nextMode is the mode that suits what regulator i pushes and senses now.
func (g *governor) nextMode(i int) Mode {
	r := &g.regs[i]
	if !r.able {
		return Blocked
	}
	over := g.sensed(i) - r.volt
	tol := 1e-11 * max(1, r.volt)
	switch {
	case r.blind && over < 0:
		return AtLimit
	case r.blind:
		return Blocked
	case r.mode == Regulating && r.pushed < 0:
		return Blocked
	case r.mode == Regulating && (r.pushed > r.amp || r.dropped && over < -tol):
		return AtLimit
	case r.mode == Blocked && over < -tol, r.mode == AtLimit && over > tol:
		return Regulating
	}
	return r.mode
}

func (g *governor) sensed(i int) float64 {
	v := g.regs[i].free
	for q := range g.regs {
		v += g.effect[i*len(g.regs)+q] * g.regs[q].pushed
	}
	return v
}

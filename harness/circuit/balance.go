package circuit

// balance finds what each regulator pushes if all keep their modes.
func (g *governor) balance() {
	for i := range g.regs {
		r := &g.regs[i]
		r.pushed = 0
		if r.mode == AtLimit {
			r.pushed = r.amp
		}
	}
	for i := range g.regs {
		g.want[i] = g.regs[i].volt - g.sensed(i)
	}
	g.solveRegulating()
	for i := range g.regs {
		if g.active(i) {
			g.regs[i].pushed = g.want[i]
		}
	}
}

func (g *governor) active(i int) bool {
	r := &g.regs[i]
	return r.able && !r.blind && r.mode == Regulating && !r.dropped
}

// solveRegulating turns want, the volts by which each regulating sense has to
// rise, into the amperes that do it. A regulator that adds nothing to those
// before it is dropped.
func (g *governor) solveRegulating() {
	m := len(g.regs)
	copy(g.matrix, g.effect)
	for i := range g.regs {
		g.regs[i].dropped = false
	}
	for at, p := range g.order {
		if !g.active(p) {
			continue
		}
		pivot := g.matrix[p*m+p]
		if !(pivot > blindBelow*g.effect[p*m+p]) {
			g.regs[p].dropped = true
			continue
		}
		for _, r := range g.order[at+1:] {
			if !g.active(r) {
				continue
			}
			share := g.matrix[r*m+p] / pivot
			for _, q := range g.order[at:] {
				g.matrix[r*m+q] -= share * g.matrix[p*m+q]
			}
			g.want[r] -= share * g.want[p]
		}
	}
	for at := m - 1; at >= 0; at-- {
		p := g.order[at]
		if !g.active(p) {
			g.want[p] = 0
			continue
		}
		for _, q := range g.order[at+1:] {
			g.want[p] -= g.matrix[p*m+q] * g.want[q]
		}
		g.want[p] /= g.matrix[p*m+p]
	}
}

// mostTried is the number of regulators up to which all combinations of modes
// are tried, 3 to that power, where changing over does not come to rest.
const mostTried = 6

// tryAll looks for any combination of modes that holds. Regulators that sense
// each other's doing more than their own can keep choose going round.
func (g *governor) tryAll() bool {
	if len(g.regs) > mostTried {
		return false
	}
	combinations := 1
	for range g.regs {
		combinations *= 3
	}
	for code := range combinations {
		for i := range g.regs {
			g.regs[i].mode = [...]Mode{Regulating, Blocked, AtLimit}[code%3]
			code /= 3
		}
		g.balance()
		holds := true
		for i := range g.regs {
			holds = holds && g.nextMode(i) == g.regs[i].mode
		}
		if holds {
			return true
		}
	}
	return false
}

// correct moves what is pushed so that each regulating sense comes to its set
// point, given the voltages x that were reached. It is false if none regulates.
func (g *governor) correct(x []float64) bool {
	any := false
	for i := range g.regs {
		r := &g.regs[i]
		g.want[i] = r.volt - (x[r.sa] - x[r.sz])
		any = any || g.active(i)
	}
	g.solveRegulating()
	for i := range g.regs {
		if r := &g.regs[i]; g.active(i) {
			r.pushed = min(max(r.pushed+g.want[i], 0), r.amp)
		}
	}
	return any
}

// report is the mode of regulator i as a user sees it.
func (g *governor) report(i int) Mode {
	if r := &g.regs[i]; r.dropped && r.mode == Regulating {
		return Blocked
	}
	return g.regs[i].mode
}

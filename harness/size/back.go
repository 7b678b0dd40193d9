package size

import (
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
)

// Back is what a wire behind loads can be overloaded with: the largest fuse of
// those ahead of these loads. A motor that stalls, or a load with a short in
// it, takes what its fuse lets through, and all of it comes back here.
type Back struct {
	RatedA float64       // 0: nothing comes back through it that a fuse limits
	Fuse   *model.Device // nil where RatedA is 0
	Index  int           // of Fuse in the device's protective elements
	Load   *model.Device
}

// findBacks finds the ways of the loads' currents back to metal or to a battery's
// negative post, each by the fewest steps, and gives each wire on them the
// largest single fuse; their sum is not asked, for one fault at a time is.
// Left out are coils, whose winding is far thinner than any wire, sensor
// grounds, loads without a fuse, and what goes into a controller's output: its
// driver lets no overload through. It reads the guards of all terminals.
func (c *chooser) findBacks(at []Guard) []Back {
	g := newReturns(c.m, c.rated)
	list := make([]Back, len(c.m.Wires))
	for _, d := range c.m.Devices {
		for _, w := range d.Draws() {
			plus := d.Terminal(w.Plus)
			if plus == nil || w.Coil || w.Starter || at[plus.ID].Fuse == nil || math.IsInf(at[plus.ID].RatedA, 1) {
				continue
			}
			b := Back{at[plus.ID].RatedA, at[plus.ID].Fuse, at[plus.ID].Index, d}
			for _, t := range backPins(d, w) {
				g.carry(t.ID, b, list)
			}
		}
	}
	return list
}

// backPins gives the terminals by which a load's current leaves it: where the
// device has several grounds each of them, for any one may have to take it all.
func backPins(d *model.Device, w part.Draw) []*model.Terminal {
	var pins []*model.Terminal
	if slices.ContainsFunc(d.Grounds(), func(r part.Return) bool { return r.Pin == w.Minus }) {
		for _, r := range d.Grounds() {
			if t := d.Terminal(r.Pin); t != nil && !r.Sensor {
				pins = append(pins, t)
			}
		}
		return pins
	}
	if t := d.Terminal(w.Minus); t != nil {
		pins = append(pins, t)
	}
	return pins
}

// returns is the ways back, each terminal with its steps from ground.
type returns struct {
	next  [][]backLink
	steps []int // by terminal ID; -1 where no way leads back
	best  []float64
}

type backLink struct {
	to     int
	wire   *model.Wire
	ratedA float64 // +Inf: no fuse here
	fuse   *model.Device
	index  int
}

func newReturns(m *model.Model, rated func(*model.Device, int) float64) *returns {
	n := len(m.Terminals)
	g := &returns{next: make([][]backLink, n), steps: make([]int, n), best: make([]float64, n)}
	free := backLink{ratedA: math.Inf(1)}
	for _, w := range m.Wires {
		g.join(w.From, w.To, backLink{wire: w, ratedA: free.ratedA})
	}
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			if t.ID < o.ID { // each lists the other
				g.join(t, o, free)
			}
		}
	}
	for _, d := range m.Devices {
		for i, f := range d.Protects() {
			g.join(d.Terminal(f.In), d.Terminal(f.Out), backLink{ratedA: rated(d, i), fuse: d, index: i})
		}
		for _, k := range d.Switches() {
			g.join(d.Terminal(k.A), d.Terminal(k.B), free)
		}
		for _, k := range d.Couples() {
			g.join(d.Terminal(k.A), d.Terminal(k.B), free)
		}
	}
	g.measure(m)
	return g
}

func (g *returns) join(a, b *model.Terminal, l backLink) {
	if a == nil || b == nil {
		return
	}
	l.to = b.ID
	g.next[a.ID] = append(g.next[a.ID], l)
	l.to = a.ID
	g.next[b.ID] = append(g.next[b.ID], l)
}

// measure counts the steps of every terminal from metal and from the
// batteries' negative posts.
func (g *returns) measure(m *model.Model) {
	var todo []int
	for i := range g.steps {
		g.steps[i] = -1
		if m.Terminals[i].Metal != nil {
			g.steps[i], todo = 0, append(todo, i)
		}
	}
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			if t := d.Terminal(s.Minus); s.Battery && t != nil && g.steps[t.ID] < 0 {
				g.steps[t.ID], todo = 0, append(todo, t.ID)
			}
		}
	}
	for ; len(todo) > 0; todo = todo[1:] {
		for _, l := range g.next[todo[0]] {
			if g.steps[l.to] < 0 {
				g.steps[l.to], todo = g.steps[todo[0]]+1, append(todo, l.to)
			}
		}
	}
}

// carry hands what comes out of a terminal on toward ground.
func (g *returns) carry(at int, b Back, list []Back) {
	if g.steps[at] <= 0 || b.RatedA <= g.best[at] {
		return
	}
	g.best[at] = b.RatedA
	for _, l := range g.next[at] {
		if g.steps[l.to] != g.steps[at]-1 {
			continue
		}
		on := b
		if l.ratedA < b.RatedA {
			on.RatedA, on.Fuse, on.Index = l.ratedA, l.fuse, l.index
		}
		if l.wire != nil && on.RatedA > list[l.wire.ID].RatedA {
			list[l.wire.ID] = on
		}
		g.carry(l.to, on, list)
	}
}

package check

import (
	"legwork/harness/model"
	"legwork/harness/part"
)

// way is a passage from one net to another through a device.
type way struct {
	to     int
	device *model.Device
	output bool // a controller output
	field  bool // a winding inside a source
}

// graph is the ways between nets, each contact, fuse, diode and output taken
// as closed; loads and coils are no ways. on follows the current, back goes
// against it; most ways are in both.
type graph struct {
	on, back [][]way
	sources  []bool // nets of a source's positive terminal
	grounds  []bool // nets of a battery's negative terminal
}

func (p *Pass) graph() *graph {
	if p.ways != nil {
		return p.ways
	}
	n := len(p.Nets.Members)
	g := &graph{on: make([][]way, n), back: make([][]way, n), sources: make([]bool, n), grounds: make([]bool, n)}
	p.ways = g
	for _, d := range p.Model.Devices {
		p.deviceWays(d)
		p.outputWays(d)
		for _, s := range d.Supplies() {
			p.mark(g.sources, d, s.Plus)
			if s.Battery {
				p.mark(g.grounds, d, s.Minus)
			}
		}
	}
	return g
}

func (p *Pass) mark(set []bool, d *model.Device, pin string) {
	if n := p.netOf(d, pin); n >= 0 {
		set[n] = true
	}
}

// netOf gives the net of a device's terminal, -1 where there is none.
func (p *Pass) netOf(d *model.Device, pin string) int {
	if t := pinOf(d, pin); t != nil {
		return p.Nets.Of[t.ID]
	}
	return -1
}

// addWay adds a way through a device, w with all but its end.
func (p *Pass) addWay(d *model.Device, a, b string, oneWay bool, w way) {
	na, nb := p.netOf(d, a), p.netOf(d, b)
	if na < 0 || nb < 0 {
		return
	}
	g := p.ways
	w.device = d
	toA, toB := w, w
	toA.to, toB.to = na, nb
	g.on[na] = append(g.on[na], toB)
	g.back[nb] = append(g.back[nb], toA)
	if !oneWay {
		g.on[nb] = append(g.on[nb], toA)
		g.back[na] = append(g.back[na], toB)
	}
}

// deviceWays adds the ways through a device that needs no command.
func (p *Pass) deviceWays(d *model.Device) {
	k := d.Kind
	for _, f := range d.Protects() {
		p.addWay(d, f.In, f.Out, false, way{})
	}
	for _, c := range d.Switches() {
		p.addWay(d, c.A, c.B, false, way{})
	}
	for _, list := range []func(*part.Device) []part.Path{k.Passes, k.Inside} {
		if list == nil {
			continue
		}
		for _, w := range list(d.Device) {
			p.addWay(d, w.A, w.B, w.OneWay, way{field: len(d.Supplies()) > 0})
		}
	}
}

// outputWays adds the ways through a controller: a low-side output leads to
// its grounds, a high-side output comes from its feeds.
func (p *Pass) outputWays(d *model.Device) {
	if d.Kind.Drives == nil || d.Kind.Draws == nil {
		return
	}
	feeds := d.Draws()
	for _, o := range d.Drives() {
		for _, w := range feeds {
			if o.Sinks {
				p.addWay(d, o.Pin, w.Minus, true, way{output: true})
			} else {
				p.addWay(d, w.Plus, o.Pin, true, way{output: true})
			}
		}
	}
}

// spread marks every net that can be come to from a set of nets; outputs says
// whether controller outputs count as ways.
func spread(next [][]way, from []bool, outputs bool) []bool {
	seen := make([]bool, len(next))
	var todo []int
	for n, in := range from {
		if in {
			todo = append(todo, n)
		}
	}
	for len(todo) > 0 {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if seen[at] {
			continue
		}
		seen[at] = true
		for _, w := range next[at] {
			if !w.output || outputs {
				todo = append(todo, w.to)
			}
		}
	}
	return seen
}

// beyond lists the nets that can be come to from one net, that one included,
// without going through one device, and short of the nets of sources and of
// ground: what lies behind a contact.
func (g *graph) beyond(next [][]way, start int, not *model.Device) map[int]bool {
	seen := map[int]bool{}
	for todo := []int{start}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at < 0 || seen[at] {
			continue
		}
		if g.sources[at] || g.grounds[at] {
			continue
		}
		seen[at] = true
		for _, w := range next[at] {
			if w.device != not {
				todo = append(todo, w.to)
			}
		}
	}
	return seen
}

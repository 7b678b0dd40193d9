package check

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/solve"
)

// hop is one device on the way of a current, with the nets on both its sides:
// from is the nearer to the source.
type hop struct {
	device   *model.Device
	from, to int
	load     bool // a load or a coil, not a contact or a fuse
}

// wayTo finds the way by which a net has its volts in a state: from a source,
// through closed contacts and fuses that go downhill, and through as few loads
// as will do; nil where there is none. The source's hop is not on it.
func (p *Pass) wayTo(s *solve.State, net int) []hop {
	g := p.graph()
	came := map[int]hop{}
	seen := map[int]bool{net: true}
	now, later := []int{net}, []int(nil)
	for len(now)+len(later) > 0 {
		if len(now) == 0 {
			now, later = later, nil
		}
		at := now[0]
		now = now[1:]
		if p.gives(s, at) {
			return trail(came, at, net)
		}
		for _, w := range g.back[at] {
			if w.to >= 0 && !seen[w.to] && !g.grounds[w.to] && p.carries(s, w, at) {
				seen[w.to], came[w.to] = true, hop{w.device, w.to, at, false}
				now = append(now, w.to)
			}
		}
		for _, e := range append(slices.Clone(p.series().back[at]), p.series().on[at]...) {
			if u := p.uses()[e.use]; !seen[e.other] && !g.grounds[e.other] && p.netV(s, e.other) > p.netV(s, at)+leastFallV {
				seen[e.other], came[e.other] = true, hop{u.device, e.other, at, true}
				later = append(later, e.other)
			}
		}
	}
	return nil
}

// leastFallV is the fall across a load from which it is taken to carry current.
const leastFallV = 0.01

// trail lists the hops from a source's net to the one that was asked for.
func trail(came map[int]hop, at, net int) []hop {
	list := []hop{}
	for at != net {
		h := came[at]
		list, at = append(list, h), h.to
	}
	return list
}

// netV gives the volts of a net in a state, NaN where it floats.
func (p *Pass) netV(s *solve.State, net int) float64 {
	if r := s.Reading(p.Nets.Members[net][0]); r.OK {
		return r.Volts
	}
	return math.NaN()
}

// carries reports whether a way leads current to a net in a state: it is
// closed, its other side is not lower, and it is no winding or idle output.
func (p *Pass) carries(s *solve.State, w way, at int) bool {
	if w.field || !(p.netV(s, w.to) >= p.netV(s, at)-sameV) {
		return false
	}
	if w.output {
		for i, o := range w.device.Drives() {
			if !o.Sinks && p.netOf(w.device, o.Pin) == at && s.OutputA.Of(w.device, i) > 0 {
				return true
			}
		}
		return false
	}
	return p.passesIn(s, w, at)
}

// gives reports whether a source stands on a net and gives current.
func (p *Pass) gives(s *solve.State, net int) bool {
	for _, t := range p.Nets.Members[net] {
		d := t.Device
		if d == nil {
			continue
		}
		for i, x := range d.Supplies() {
			if p.netOf(d, x.Plus) == net && s.SupplyA.Of(d, i) > 0 || x.Pilot != "" && p.netOf(d, x.Pilot) == net && p.leads(s, d, x.Plus, x.Pilot) {
				return true
			}
		}
		for i, w := range d.Draws() {
			if w.CoastKnown && p.netOf(d, w.Plus) == net && s.DrawA.Of(d, i) < 0 {
				return true
			}
		}
	}
	return false
}

// leads reports whether a machine's pilot terminal follows its output.
func (p *Pass) leads(s *solve.State, d *model.Device, plus, pilot string) bool {
	volts, ok := across(s, d, plus, pilot)
	return ok && s == p.down && volts >= -sameV
}

// told writes a way terminal by terminal, the source's side first.
func (p *Pass) told(way []hop) string {
	var list []string
	for _, h := range way {
		list = append(list, p.side(h.device, h.from)+" to "+p.side(h.device, h.to))
	}
	return strings.Join(list, ", ")
}

// side names the terminal of a device on a net.
func (p *Pass) side(d *model.Device, net int) string {
	for _, t := range d.Terminals {
		if p.Nets.Of[t.ID] == net {
			return t.Shown
		}
	}
	return d.Name
}

// along points at the devices of a way.
func (p *Pass) along(way []hop) []diag.Related {
	var list []diag.Related
	for _, h := range way {
		list = append(list, diag.Related{At: h.device.At, Msg: fmt.Sprintf("the current comes by %s to %s", p.side(h.device, h.from), p.side(h.device, h.to))})
	}
	return list[:min(len(list), mostOnWay)]
}

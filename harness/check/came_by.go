package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/solve"
)

// mostOnWay is how much of the way of a current a finding names.
const mostOnWay = 12

// coilOnA is a current that every coil which is in takes at least, in its wires.
const coilOnA = 0.04

// cameBy names the way by which a terminal gets its current in a state, the
// nearest first: the wires that carry half of it or more, and the contacts and
// fuses between them, as far as the source; and how the coils of these contacts
// get theirs.
func (p *Pass) cameBy(s *solve.State, d *model.Device, pin string, amps float64) (list []diag.Related) {
	g := p.graph()
	type point struct {
		net  int
		amps float64
	}
	seen := map[int]bool{}
	for todo := []point{{p.netOf(d, pin), amps}}; len(todo) > 0 && len(list) < mostOnWay; todo = todo[1:] {
		at, amps := todo[0].net, todo[0].amps
		if at < 0 || seen[at] {
			continue
		}
		seen[at] = true
		for _, w := range p.Nets.Wires[at] {
			if math.Abs(s.WireA[w.ID]) >= amps/2 {
				list = append(list, diag.Related{At: w.At, Msg: fmt.Sprintf("it comes by wire %s, %s to %s", w.Number, w.From.Shown, w.To.Shown)})
			}
		}
		if g.sources[at] {
			continue
		}
		for _, w := range g.back[at] {
			if !w.output && p.passesIn(s, w, at) && !seen[w.to] {
				list = append(list, diag.Related{At: w.device.At, Msg: "it comes by " + w.device.Name})
				todo = append(todo, point{w.to, amps})
				for _, c := range w.device.Switches() {
					if c.CoilA != "" {
						todo = append(todo, point{p.netOf(w.device, c.CoilA), coilOnA}, point{p.netOf(w.device, c.CoilB), coilOnA})
						break
					}
				}
			}
		}
	}
	return list[:min(len(list), mostOnWay)]
}

// passesIn reports whether a way is closed in a state: a contact may be open.
func (p *Pass) passesIn(s *solve.State, w way, from int) bool {
	contact := false
	for i, c := range w.device.Switches() {
		a, b := p.netOf(w.device, c.A), p.netOf(w.device, c.B)
		if a == from && b == w.to || b == from && a == w.to {
			contact = true
			if closedIn(s, w.device, i, c) {
				return true
			}
		}
	}
	return !contact
}

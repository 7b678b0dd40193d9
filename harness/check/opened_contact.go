package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// sameV is the most volts across a contact that is closed without current.
const sameV = 1e-6

// closedIn reports whether a contact is closed in a step: current flows
// through it, or nothing parts the volts of its sides.
func closedIn(s *solve.State, d *model.Device, i int, c part.Contact) bool {
	if s.ContactA.Of(d, i) != 0 {
		return true
	}
	volts, ok := across(s, d, c.A, c.B)
	return ok && math.Abs(volts) < sameV
}

// openedOnFeed points at the wires on the near side of the contact that takes
// the feed from a load in its dead step and was closed while it was alive: of
// those on the way the nearest to the load, with the terminal that the wire is on.
func (p *Pass) openedOnFeed(l deadLoad) []diag.Related {
	g := p.graph()
	seen := map[int]bool{}
	for todo := []int{p.netOf(l.device, l.draw.Plus)}; len(todo) > 0; {
		at := todo[0]
		todo = todo[1:]
		if at < 0 || seen[at] {
			continue
		}
		seen[at] = true
		for _, w := range g.back[at] {
			if pin, opens := p.opens(l, w, at); opens {
				return terminalWires(w.device, pin, l.step.Step.Name)
			}
			if w.to >= 0 && !w.output && !g.sources[at] {
				todo = append(todo, w.to)
			}
		}
	}
	return nil
}

// opens gives the terminal, on the load's side, of the contact by which a way
// was closed in the live step and is open in the dead one.
func (p *Pass) opens(l deadLoad, w way, at int) (pin string, yes bool) {
	for i, c := range w.device.Switches() {
		for _, ends := range [][2]string{{c.A, c.B}, {c.B, c.A}} {
			if p.netOf(w.device, ends[0]) == w.to && p.netOf(w.device, ends[1]) == at &&
				closedIn(l.alive, w.device, i, c) && !closedIn(l.step, w.device, i, c) {
				return ends[1], true
			}
		}
	}
	return "", false
}

// terminalWires points at the wires of a terminal that is open in a step.
func terminalWires(d *model.Device, pin, step string) []diag.Related {
	t := pinOf(d, pin)
	var list []diag.Related
	for _, e := range t.Ends {
		list = append(list, diag.Related{At: e.Wire.At, Msg: fmt.Sprintf("wire %s is on %s, which is open in %s", e.Wire.Number, t.Shown, step)})
	}
	return list
}

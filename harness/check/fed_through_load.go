package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "fed-through-load",
	Severity: diag.Fault,
	Title:    "A load or a coil whose own feed is open works all the same, fed through another load.",
	Why: "An indicator lamp, a coil or a motor that lies between two switched feeds joins them: where one is off, current comes through it from the other. " +
		"A lamp takes little of the volts where what follows takes little current: it holds a relay in, or wakes a controller. " +
		"Sneak analysis has two clues for it: a power-to-power path, where two feeds meet in one load, and a reversed current path, where the load between carries its current against the direction of its own use. " +
		"Give the lamp a return of its own, or a diode.",
	Equation: "no closed way without a load leads from a source to it, and yet its coil is in, or it has half its current; with the key off, 1 V at it",
	Figures:  []string{gauge.SneakClues},
	Misses:   "What comes through a load in amounts that work nothing while the key is on: a lamp that glows. A return that is lost: lost returns are another matter. Moments that are no step of the draft.",
	Needs:    Bonded,
	Polar:    true,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  "Left feed"   closed when prime, running
switch  S2  "Right feed"  closed when koeo
switch  S3  "Brightness"  closed when prime, koeo  grounds-to frame
relay   K1  suppress resistor
lamp    P1  "Left"    21W
lamp    P2  "Right"   21W
lamp    P3  "Beacon"  21W  grounds-to frame
stud    E1  on frame  M6
splice  J1
splice  J2
splice  J3
wire 1   G1.+   F1.1   6in
wire 2   F1.2   J1     1ft
wire 3   J1     S1.1   1ft
wire 4   J1     S2.1   1ft
wire 5   J1     K1.30  1ft
wire 6   S1.2   P1.1   1ft
wire 7   S2.2   J3     1ft
wire 8   J3     P2.1   1ft
wire 9   P1.2   J2     1ft
wire 10  P2.2   J2     1ft
wire 11  J2     S3.1   1ft
wire 12  J3     K1.86  1ft
wire 13  K1.85  E1     1ft
wire 14  K1.87  P3.1   1ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  "Left feed"   closed when prime, running
switch  S2  "Right feed"  closed when koeo
switch  S3  "Brightness"  closed when prime, koeo  grounds-to frame
relay   K1  suppress resistor
lamp    P1  "Left"    21W
lamp    P2  "Right"   21W
lamp    P3  "Beacon"  21W  grounds-to frame
diode   V1
stud    E1  on frame  M6
splice  J1
splice  J2
splice  J3
wire 1   G1.+   F1.1   6in
wire 2   F1.2   J1     1ft
wire 3   J1     S1.1   1ft
wire 4   J1     S2.1   1ft
wire 5   J1     K1.30  1ft
wire 6   S1.2   P1.1   1ft
wire 7   S2.2   J3     1ft
wire 8   J3     V1.A   1ft
wire 15  V1.K   P2.1   1ft
wire 9   P1.2   J2     1ft
wire 10  P2.2   J2     1ft
wire 11  J2     S3.1   1ft
wire 12  J3     K1.86  1ft
wire 13  K1.85  E1     1ft
wire 14  K1.87  P3.1   1ft
`,
	Run: fedThroughLoad,
})

// A switched feed that is open has less than this with the key off (common
// practice in fault lists), unless less than leastSneakA comes to it.
const (
	mostOffV    = 1.0
	leastSneakA = 0.02
)

func fedThroughLoad(p *Pass) {
	all := states(p.Sizes.Hot)
	if down := p.ranDown(); down != nil {
		all = append(all, down)
	}
	reach, told := p.reach(), map[[2]int]bool{}
	for _, s := range all {
		fed := p.fedIn(s)
		for _, u := range p.uses() {
			at := p.higher(s, u)
			if at < 0 || fed[at] || !reach.plus[at] {
				continue
			}
			does, severity := p.doesWork(s, u, at)
			if does == "" {
				continue
			}
			way := p.wayTo(s, at)
			if by, ok := through(way, u); ok && !told[[2]int{by.device.ID, u.device.ID}] {
				told[[2]int{by.device.ID, u.device.ID}] = true
				p.reportThrough(s, u, at, by, way, does, severity)
			}
		}
	}
}

// fedIn marks the nets that a source feeds in a state by closed contacts,
// fuses and outputs, without a load between.
func (p *Pass) fedIn(s *solve.State) []bool {
	g := p.graph()
	seen := make([]bool, len(p.Nets.Members))
	var todo []int
	for n := range seen {
		if g.sources[n] || p.gives(s, n) {
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
		for _, w := range g.on[at] {
			if w.to >= 0 && !seen[w.to] && p.leadsOn(s, w, at) {
				todo = append(todo, w.to)
			}
		}
	}
	return seen
}

// leadsOn reports whether a way is closed in a state, seen from where it begins.
func (p *Pass) leadsOn(s *solve.State, w way, at int) bool {
	back := w
	back.to = at
	return p.carries(s, back, w.to)
}

// higher gives the net at that side of a use that can be its feed: of one that
// does not mind, the side with the higher volts.
func (p *Pass) higher(s *solve.State, u use) int {
	a, b := p.netOf(u.device, u.plus), p.netOf(u.device, u.minus)
	if a < 0 || b < 0 || a == b {
		return -1
	}
	if u.eitherWay && p.netV(s, b) > p.netV(s, a) {
		return b
	}
	return a
}

// doesWork says what a use does in a state that it should not, "" for nothing.
// While the engine runs down only coils count: what is critical has a rule of
// its own, and a gauge may fall a second later.
func (p *Pass) doesWork(s *solve.State, u use, at int) (string, diag.Severity) {
	if u.coil {
		for r, x := range p.Sizes.Hot.Relays {
			if x.Device == u.device && s.Relay[r].On {
				return "is pulled in", diag.Fault
			}
		}
	}
	draws := 0.0
	for i, w := range u.device.Draws() {
		if w.Plus == u.plus && w.Minus == u.minus {
			draws = math.Abs(s.DrawA.Of(u.device, i))
			if s != p.down && p.netV(s, at) > mostOffV && w.Amps > 0 && draws >= halfOn*w.Amps && !w.Asleep {
				return "works", diag.Fault
			}
		}
	}
	volts, ok := across(s, u.device, u.plus, u.minus)
	if u.coil && keyOff(s) && ok && math.Abs(volts) > mostOffV {
		return "has volts", diag.Warning
	}
	if keyOff(s) && draws >= leastSneakA && p.netV(s, at) > mostOffV {
		return "has volts", diag.Warning
	}
	return "", 0
}

// through gives the last load on a way that is another device than the use.
func through(way []hop, u use) (hop, bool) {
	for i := len(way) - 1; i >= 0; i-- {
		if way[i].load && way[i].device != u.device {
			return way[i], true
		}
	}
	return hop{}, false
}

func (p *Pass) reportThrough(s *solve.State, u use, at int, by hop, way []hop, does string, severity diag.Severity) {
	volts := p.netV(s, at)
	p.Report(diag.Finding{
		Severity: severity,
		At:       u.at,
		Msg: fmt.Sprintf("%s %s in %s with its own feed open: %s comes to %s through %s", u.device.Name, does, s.Step.Name,
			quantity.Text(volts, quantity.Voltage), p.side(u.device, at), by.device.Name),
		Detail:  "A " + p.clue(s, by) + ": " + p.told(way) + ". Give " + by.device.Name + " a return of its own, or a diode.",
		Related: p.along(way),
	})
}

// clue names the class of a path in the words of sneak analysis.
func (p *Pass) clue(s *solve.State, by hop) string {
	sign := func(s *solve.State) float64 { return p.netV(s, by.from) - p.netV(s, by.to) }
	for _, o := range states(p.Sizes.Hot) {
		if o != s && sign(o) < -mostOffV {
			return "reversed current path"
		}
	}
	if p.minds(by) {
		return "reversed current path"
	}
	return "power-to-power path"
}

// minds reports whether a load that minds its direction is fed at its return.
func (p *Pass) minds(by hop) bool {
	for _, w := range by.device.Draws() {
		if !w.EitherWay && p.netOf(by.device, w.Minus) == by.from {
			return true
		}
	}
	return false
}

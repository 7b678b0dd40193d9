package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "source-leads-nowhere",
	Severity: diag.Fault,
	Title:    "An alternator charges no battery, or a battery beside others has a post on which nothing hangs.",
	Why: "An alternator whose output reaches no battery charges nothing and may burn its regulator. " +
		"A battery beside others that has lost a cable leaves all of the work to the others. " +
		"A wire is missing, or ends at a fuse or a contact with nothing behind it.",
	Equation: "by ways that can be closed an alternator reaches a battery; from each post of a battery a way leads to a use or to another source",
	Misses:   "A way that is closed in no step. A source that is in the vehicle already and has no wire drawn there. The only battery: its loads are told then.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery    G1  cca 600A  grounds-to frame
alternator G2  55A  grounds-to frame
fuse       F1  10A  from G1 6in
switch     S1  closed when running
lamp       P1  21W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.1  1ft
wire 3  S1.2  P1.1  1ft
`,
	Good: `battery    G1  cca 600A  grounds-to frame
alternator G2  55A  grounds-to frame
fuse       F1  10A  from G1 6in
fuse       F2  80A  bolt-down  from G1 6in
switch     S1  closed when running
lamp       P1  21W  grounds-to frame
wire 1  G1.+  F1.1   6in
wire 2  F1.2  S1.1   1ft
wire 3  S1.2  P1.1   1ft
wire 4  G1.+  F2.1   6in
wire 5  F2.2  G2.B+  1ft
`,
	Run: sourceLeadsNowhere,
})

func sourceLeadsNowhere(p *Pass) {
	g := p.graph()
	uses, batteries := p.ends()
	for _, d := range p.Model.Devices {
		for i, s := range d.Supplies() {
			plus, minus := pinOf(d, s.Plus), pinOf(d, s.Minus)
			switch {
			case plus == nil || leftOut(plus):
			case !s.Battery:
				if !p.meets(plus, g.on, batteries, source{d, i}) {
					p.reportNowhere(d, s.Plus, g.on, fmt.Sprintf("%s charges nothing: no way leads from %s to a battery", d.Name, plus.Shown))
				}
			case len(batteries) < 2: // all else is dead, and told
			case !p.meets(plus, g.on, uses[0], source{d, i}):
				p.reportNowhere(d, s.Plus, g.on, fmt.Sprintf("nothing hangs on %s: no way leads from it to a use or to another source", shown(d, s.Plus)))
			case minus != nil && !leftOut(minus) && !p.meets(minus, g.back, uses[1], source{d, i}):
				p.reportNowhere(d, s.Minus, g.back, fmt.Sprintf("nothing returns to %s: no way leads to it from a use or from another source", shown(d, s.Minus)))
			}
		}
	}
}

// source is one of the supplies of a device; nowhere for what is none.
type source struct {
	device *model.Device
	index  int
}

// ends gives, by net, what uses and sources lie there: with the side that is
// fed, and with the side that returns; and the batteries by their positive post.
func (p *Pass) ends() (uses [2]map[int][]source, batteries map[int][]source) {
	uses, batteries = [2]map[int][]source{{}, {}}, map[int][]source{}
	put := func(set map[int][]source, d *model.Device, pin string, s source) {
		if n := p.netOf(d, pin); n >= 0 {
			set[n] = append(set[n], s)
		}
	}
	p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
		put(uses[0], d, w.Plus, source{})
		put(uses[1], d, w.Minus, source{})
	})
	for _, d := range p.Model.Devices {
		for i, s := range d.Supplies() {
			put(uses[0], d, s.Plus, source{d, i})
			put(uses[0], d, s.Minus, source{d, i}) // the next one of a row
			put(uses[1], d, s.Minus, source{d, i})
			put(uses[1], d, s.Plus, source{d, i})
			if s.Battery {
				put(batteries, d, s.Plus, source{d, i})
			}
		}
	}
	return uses, batteries
}

// meets reports whether ways from a terminal lead to an end that is not its own.
func (p *Pass) meets(t *model.Terminal, ways [][]way, ends map[int][]source, own source) bool {
	from := make([]bool, len(ways))
	from[p.Nets.Of[t.ID]] = true
	for n, in := range spread(ways, from, true) {
		if !in {
			continue
		}
		for _, e := range ends[n] {
			if e != own {
				return true
			}
		}
	}
	return false
}

func (p *Pass) reportNowhere(d *model.Device, pin string, ways [][]way, msg string) {
	p.Report(diag.Finding{At: d.At, Msg: msg, Detail: landing(pinOf(d, pin)), Related: append(feedingWires(d, pin), p.deadEnds(d, pin, ways)...)})
}

package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "positive-ground",
	Severity: diag.Fault,
	Title:    "The metal of the vehicle lies on the positive post of the battery.",
	Why: "Older vehicles had positive ground. Controllers, injectors, diodes and nearly all that is sold today want negative ground, and would be destroyed. " +
		"legwork takes the negative side as ground: what it would say of fuses, wires, starters and volts would not hold, so those rules do not run. " +
		"Change the vehicle over before it gets injection, and draft it as it will be.",
	Equation: "no metal is joined to a positive post and to no negative one",
	Misses:   "A vehicle with two systems apart from each other, of which one has positive ground.",
	Needs:    Model,
	Bad: `battery G1
stud    E1  on frame  M8
fuse    F1  10A  from G1 6in
switch  S1  closed when running
lamp    P1  21W  grounds-to frame
wire 1  G1.+  E1    6AWG   1ft
wire 2  G1.-  F1.1  14AWG  6in
wire 3  F1.2  S1.1  2ft
wire 4  S1.2  P1.1  2ft
`,
	Good: `battery G1
stud    E1  on frame  M8
fuse    F1  10A  from G1 6in
switch  S1  closed when running
lamp    P1  21W  grounds-to frame
wire 1  G1.-  E1    6AWG   1ft
wire 2  G1.+  F1.1  14AWG  6in
wire 3  F1.2  S1.1  2ft
wire 4  S1.2  P1.1  2ft
`,
	Run: func(p *Pass) {
		t := p.positiveGround()
		if t == nil {
			return
		}
		p.Report(diag.Finding{
			At: t.Device.At,
			Msg: fmt.Sprintf("%s lies on metal and %s does not: positive ground, which most electronics do not stand", t.Shown,
				otherPost(t)),
			Detail:  "Change the vehicle over to negative ground: battery cables, starter and generator field as their makers say. Fuses, wires and volts were not judged.",
			Related: feedingWires(t.Device, t.Name),
		})
	},
})

// positiveGround gives the positive post of a battery that is joined to metal
// to which no negative post is, nil where there is none.
func (p *Pass) positiveGround() *model.Terminal {
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			if !s.Battery {
				continue
			}
			if t := pinOf(d, s.Plus); t != nil && p.onMetalAlone(p.Nets.Of[t.ID]) {
				return t
			}
		}
	}
	return nil
}

// onMetalAlone reports whether a net has metal and no battery's negative post.
func (p *Pass) onMetalAlone(net int) bool {
	metal := false
	for _, t := range p.Nets.Members[net] {
		if isReturn(t) {
			return false
		}
		metal = metal || t.Metal != nil
	}
	return metal
}

func otherPost(t *model.Terminal) string {
	for _, s := range t.Device.Supplies() {
		if s.Plus == t.Name {
			return shown(t.Device, s.Minus)
		}
	}
	return ""
}

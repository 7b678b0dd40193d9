package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "load-without-return",
	Severity: diag.Fault,
	Title:    "A load or a coil has no way back to the battery.",
	Why: "Current needs a way back as much as a way in. A forgotten ground wire, or a ground on metal that nothing joins to the battery, " +
		"leaves a load dead, or worse: it finds its way back through another load, a cable sheath or a sensor wire. " +
		"A controller without any ground is told once, with all that it switches. " +
		"One of several ground terminals left open is a warning: its drivers then share the others.",
	Equation: "from the load's return there is a way, through any contact or output as if closed and through loads in series, to the negative post of a battery",
	Misses:   "A way back that exists but is poor: drop-over-limit judges that. What is in the vehicle already and has no wire drawn there.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
wire 3  P1.2  E1    1ft
`,
	Run: loadWithoutReturn,
})

func loadWithoutReturn(p *Pass) {
	wrong, roots := p.mismatched(), p.lostReturns()
	told := map[*model.Terminal]bool{}
	for _, l := range p.lays() {
		t := pinOf(l.device, l.minus)
		if l.led || l.reversed || wrong[l.device] || !anyWire(l.device) || told[t] || leftOut(t) || roots.take(l.device, p.Nets.Of[t.ID]) {
			continue
		}
		told[t] = true
		roots.taken[p.Nets.Of[t.ID]] = t.Metal != nil
		p.reportNoReturn(l, t)
	}
	for _, r := range roots.list {
		p.reportUngrounded(r)
	}
	p.openGrounds()
}

// reportNoReturn tells of a load, or of the metal that it returns to.
func (p *Pass) reportNoReturn(l lay, t *model.Terminal) {
	f := diag.Finding{
		At: l.at, Msg: fmt.Sprintf("%s has no way back to the battery", shown(l.device, l.minus)),
		Detail: landing(t), Related: append(feedingWires(l.device, l.minus), p.deadEnds(l.device, l.minus, p.graph().on)...),
	}
	if metal := t.Metal; metal != nil {
		f.Msg = fmt.Sprintf("%s returns to %s, which nothing joins to the battery", l.device.Name, metal.Name)
		f.Detail = fmt.Sprintf("Join %s to the battery's negative post by a cable or a strap; whatever else returns to it is dead too.", metal.Name)
		f.Related = []diag.Related{{At: metal.At, Msg: "the metal"}}
	}
	p.Report(f)
}

// landing tells what a terminal has by way of wires.
func landing(t *model.Terminal) string {
	if len(t.Ends) == 0 {
		return "Nothing is wired to it."
	}
	return fmt.Sprintf("Wire %s lands there; follow it to where it ends.", t.Ends[0].Wire.Number)
}

// islands gives the nets of metal that carries a starter or a machine that
// charges and that nothing joins to a battery.
func (p *Pass) islands() map[int]bool {
	nets := map[int]bool{}
	for _, d := range p.Model.Devices {
		if heavyReturn(d) != nil && !p.bonded(d) {
			nets[p.netOf(d, d.Kind.Ground)] = true
		}
	}
	return nets
}

// openGrounds reports controllers without any ground, and ground terminals
// that no wire reaches while others have one.
func (p *Pass) openGrounds() {
	for _, d := range p.Model.Devices {
		if d.Kind.Grounds == nil || !anyWire(d) {
			continue
		}
		if len(d.Grounds()) == 0 {
			p.Report(diag.Finding{At: d.At, Msg: fmt.Sprintf("%s has no ground terminal, so nothing in it works", d.Name),
				Detail: "Give it a line such as: GND ground."})
		}
		list := powerGrounds(d)
		wired := slices.ContainsFunc(list, func(r part.Return) bool { return wiredAt(d, r.Pin) })
		for _, r := range list {
			if wired && !wiredAt(d, r.Pin) && !leftOut(pinOf(d, r.Pin)) {
				p.Report(diag.Finding{Severity: diag.Warning, At: r.At, Msg: fmt.Sprintf("%s, a ground of %s, has no wire", shown(d, r.Pin), d.Name),
					Detail: "Wire every ground that its maker asks for; the others carry its current meanwhile."})
			}
		}
	}
}

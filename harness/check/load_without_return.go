package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "load-without-return",
	Severity: diag.Fault,
	Title:    "A load or a coil has no way back to the battery.",
	Why: "Current needs a way back as much as a way in. A forgotten ground wire, or a ground on metal that nothing joins to the battery, " +
		"leaves a load dead, or worse: it finds its way back through another load, a cable sheath or a sensor wire. " +
		"A controller with one of several ground terminals left open is a warning: its drivers then share the others.",
	Equation: "from the load's return there is a way, through any contact or output as if closed, to the negative post of a battery",
	Misses:   "A way back that exists but is poor: drop-over-limit judges that.",
	Needs:    Model,
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
	wrong, islands := p.mismatched(), p.islands()
	type point struct {
		device *model.Device
		pin    string
	}
	told := map[point]bool{}
	for _, l := range p.lays() {
		t := pinOf(l.device, l.minus)
		at := point{l.device, l.minus}
		if l.led || l.reversed || wrong[l.device] || told[at] || !anyWire(l.device) {
			continue
		}
		told[at] = true
		metal, net := t.Metal, p.Nets.Of[t.ID]
		if islands[net] {
			continue // engine-not-bonded tells of it, or this rule has
		}
		f := diag.Finding{
			At: l.at, Msg: fmt.Sprintf("%s has no way back to the battery", shown(l.device, l.minus)),
			Detail: landing(t), Related: feedingWires(l.device, l.minus),
		}
		if metal != nil {
			islands[net] = true
			f.Msg = fmt.Sprintf("%s returns to %s, which nothing joins to the battery", l.device.Name, metal.Name)
			f.Detail = fmt.Sprintf("Join %s to the battery's negative post by a cable or a strap; whatever else returns to it is dead too.", metal.Name)
			f.Related = []diag.Related{{At: metal.At, Msg: "the metal"}}
		}
		p.Report(f)
	}
	p.openGrounds()
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
// that no wire reaches.
func (p *Pass) openGrounds() {
	for _, d := range p.Model.Devices {
		if d.Kind.Grounds == nil || !anyWire(d) {
			continue
		}
		list := d.Grounds()
		if len(list) == 0 {
			p.Report(diag.Finding{At: d.At, Msg: fmt.Sprintf("%s has no ground terminal, so nothing in it works", d.Name),
				Detail: "Give it a line such as: GND ground."})
		}
		wired := 0
		for _, r := range list {
			if wiredAt(d, r.Pin) {
				wired++
			}
		}
		for _, r := range list {
			if wired > 0 && !wiredAt(d, r.Pin) && !r.Sensor {
				p.Report(diag.Finding{Severity: diag.Warning, At: r.At, Msg: fmt.Sprintf("%s, a ground of %s, has no wire", shown(d, r.Pin), d.Name),
					Detail: "Wire every ground that its maker asks for; the others carry its current meanwhile."})
			}
		}
	}
}

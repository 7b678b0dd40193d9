package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "main-switch-bypassed",
	Severity: diag.Danger,
	Title:    "The switch that has to stop the engine leaves its ignition, its pump or its controller fed.",
	Why: "While the engine runs there are two sources, the battery and the alternator, and the alternator's charge lamp terminal is a third. " +
		"A switch that parts the battery alone leaves the engine running on the alternator, whose volts are then held down by no battery and spike. " +
		"After a crash nothing stops the pump. " +
		"Lead the alternator's output to the battery's side of the switch, or use a switch with more contacts that breaks the ignition feed as well.",
	Equation: "with all contacts of the switch open and all else closed, no way leads from a battery, B+ or D+ to the load",
	Misses:   "A switch that does not say that it stops the engine (stops engine), and whose label says none of main switch, master switch, kill switch. A lead that stays live from the battery to the open switch.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
switch     S1  "Battery switch"  closed when running  stops  engine
fuse       F1  80A  bolt-down  from E2 6in
fuse       F2  15A  from E2 6in
coil       T1  draws 3A  grounds-to frame
switch     S2  "Ignition"  closed when running
stud       E2  M8
wire 1  G1.+  S1.1   1/0AWG  1ft
wire 2  S1.2  E2     1/0AWG  1ft
wire 3  E2    F1.1   6AWG    6in
wire 4  F1.2  G2.B+  4AWG    2ft
wire 5  E2    F2.1   12AWG   6in
wire 6  F2.2  S2.1   14AWG   2ft
wire 7  S2.2  T1.+   14AWG   2ft
`,
	Good: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
switch     S1  "Battery switch"  closed when running  stops  engine
fuse       F1  80A  bolt-down  from G1 6in
fuse       F2  15A  from E2 6in
coil       T1  draws 3A  grounds-to frame
switch     S2  "Ignition"  closed when running
stud       E2  M8
wire 1  G1.+  S1.1   1/0AWG  1ft
wire 2  S1.2  E2     1/0AWG  1ft
wire 3  G1.+  F1.1   6AWG    6in
wire 4  F1.2  G2.B+  4AWG    2ft
wire 5  E2    F2.1   12AWG   6in
wire 6  F2.2  S2.1   14AWG   2ft
wire 7  S2.2  T1.+   14AWG   2ft
`,
	Run: mainSwitchBypassed,
})

// stopsEngine are words in the label of a switch that has to stop everything.
var stopsEngine = []string{"main switch", "master switch", "kill switch"}

func mainSwitchBypassed(p *Pass) {
	for _, sw := range p.Model.Devices {
		if !stops(sw, part.StopsEngine, stopsEngine) || !byHand(sw) {
			continue
		}
		with, open := p.cutFrom(nil, p.sourcesAndPilots()), p.cutFrom(sw, p.sourcesAndPilots())
		var left []fedLoad
		p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
			engine := w.Critical && !w.Asleep && (d.Kind.Drives == nil || len(d.Drives()) > 0)
			if engine && with.works(d, w.Plus, w.Minus) && open.works(d, w.Plus, w.Minus) {
				left = append(left, fedLoad{d, w})
			}
		})
		if len(left) > 0 {
			p.reportMainSwitch(sw, left)
		}
	}
}

// sourcesAndPilots is the nets of all sources, and those that a machine feeds
// by its pilot terminal while it charges.
func (p *Pass) sourcesAndPilots() []bool {
	nets := slices.Clone(p.graph().sources)
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			if s.Pilot != "" && wiredAt(d, s.Plus) {
				p.mark(nets, d, s.Pilot)
			}
		}
	}
	return nets
}

// fedLoad is a load that a switch leaves fed.
type fedLoad struct {
	device *model.Device
	draw   part.Draw
}

func (p *Pass) reportMainSwitch(sw *model.Device, left []fedLoad) {
	var names []string
	var related []diag.Related
	for _, l := range left {
		names = append(names, shown(l.device, l.draw.Plus))
		related = append(related, diag.Related{At: l.device.At, Msg: l.device.Name + " has to stop"})
	}
	first := left[0]
	text := strings.Join(names[:min(len(names), mostNamed)], ", ")
	if n := len(names) - mostNamed; n > 0 {
		text += fmt.Sprintf(" and %d more", n)
	}
	p.Report(diag.Finding{
		At:      sw.At,
		Msg:     fmt.Sprintf("%s does not stop the engine: with it open, %s feeds %s", called(sw), p.fedFrom(sw, first.device, first.draw), text),
		Detail:  "Lead the alternator's output to the battery's side of the switch, or break the ignition feed with a further contact of it.",
		Related: append(related, feedingWires(first.device, first.draw.Plus)...),
	})
}

// fedFrom names the terminals of the sources that still reach a load with a
// switch open.
func (p *Pass) fedFrom(sw, load *model.Device, w part.Draw) string {
	var names []string
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			for _, pin := range []string{s.Plus, s.Pilot} {
				if pin == "" || !wiredAt(d, pin) {
					continue
				}
				from := make([]bool, len(p.Nets.Members))
				if p.mark(from, d, pin); p.cutFrom(sw, from).works(load, w.Plus, w.Minus) {
					names = append(names, shown(d, pin))
				}
			}
		}
	}
	if len(names) == 0 {
		return "what remains"
	}
	return strings.Join(names[:min(len(names), mostNamed)], ", ")
}

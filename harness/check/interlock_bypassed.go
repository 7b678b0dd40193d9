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
	ID:       "interlock-bypassed",
	Severity: diag.Fault,
	Title:    "What a safety switch is there to stop can work with that switch open.",
	Why: "A neutral or clutch switch keeps the starter out in gear; an inertia switch stops the fuel pump in a crash. " +
		"A second feed, an old wire that was left in, or a relay whose coil is fed past the switch takes that away, and nobody notices before the day it counts. " +
		"Every way to the starter's solenoid, or to the pump, has to pass the switch, or the coil of a relay that does.",
	Equation: "with the switch held open and all else closed, the load has no feed or no way back",
	Misses:   "A switch that does not say what it stops (stops starter, stops pump), and whose label says none of neutral, clutch, inertia, crash, roll-over. A switch that only a controller reads. A safety switch that is not drawn.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S2  "Start"          closed when crank
switch  S3  "Clutch switch"  closed when crank
switch  S4  "Remote start"   closed when crank
splice  J1
splice  J2
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  10AWG  6in
wire 3  F1.2  J1    8AWG   1ft
wire 4  J1    S2.1  8AWG   1ft
wire 5  S2.2  S3.1  8AWG   1ft
wire 6  S3.2  J2    8AWG   1ft
wire 7  J2    M1.S  8AWG   1ft
wire 8  J1    S4.1  8AWG   1ft
wire 9  S4.2  J2    8AWG   1ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  pull-in 30A 8V  hold 9A 3V  grounds-to frame
fuse    F1  30A  from G1 6in
switch  S2  "Start"          closed when crank
switch  S3  "Clutch switch"  closed when crank
switch  S4  "Remote start"   closed when crank
splice  J1
splice  J2
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  10AWG  6in
wire 3  F1.2  J1    8AWG   1ft
wire 4  J1    S2.1  8AWG   1ft
wire 5  S2.2  J2    8AWG   1ft
wire 6  J2    S3.1  8AWG   1ft
wire 7  S3.2  M1.S  8AWG   1ft
wire 8  J1    S4.1  8AWG   1ft
wire 9  S4.2  J2    8AWG   1ft
`,
	Run: interlockBypassed,
})

// Words in the label of a switch that say what it is there to stop.
var (
	stopsStarter = []string{"neutral", "clutch"}
	stopsPump    = []string{"inertia", "crash", "roll-over", "rollover"}
)

func interlockBypassed(p *Pass) {
	for _, sw := range p.Model.Devices {
		starter, pump := stops(sw, part.StopsStarter, stopsStarter), stops(sw, part.StopsPump, stopsPump)
		if !starter && !pump || !byHand(sw) {
			continue
		}
		open := p.without(sw)
		p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
			guarded := starter && w.Coil && isStarter(d) || pump && w.Pump
			if guarded && (declared(sw) || open.inTheWay(d, w)) && open.works(d, w.Plus, w.Minus) {
				p.reportBypass(sw, d, w)
			}
		})
	}
}

// stops reports whether a switch is there to stop something: the draft says
// so, or says nothing and the label has one of the words.
func stops(d *model.Device, what string, words []string) bool {
	for _, c := range d.Switches() {
		if c.Stops != "" {
			return c.Stops == what
		}
	}
	return labeled(d, words)
}

// declared reports whether the draft says what a switch is there to stop.
func declared(d *model.Device) bool {
	return slices.ContainsFunc(d.Switches(), func(c part.Contact) bool { return c.Stops != "" })
}

func labeled(d *model.Device, words []string) bool {
	label := strings.ToLower(d.Label)
	return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(label, w) })
}

// byHand reports whether a device has a contact that neither a coil nor the
// key works.
func byHand(d *model.Device) bool {
	return slices.ContainsFunc(d.Switches(), func(c part.Contact) bool { return c.CoilA == "" && c.By != "key" })
}

func (p *Pass) reportBypass(sw, d *model.Device, w part.Draw) {
	p.Report(diag.Finding{
		At:     sw.At,
		Msg:    fmt.Sprintf("%s does not stop %s: with it open, %s can still be fed and led back", called(sw), d.Name, shown(d, w.Plus)),
		Detail: "Find the second way and lead it through the switch, or through the relay that the switch works.",
		Related: append([]diag.Related{{At: d.At, Msg: "what it has to stop"}},
			feedingWires(d, w.Plus)...),
	})
}

// called names a device with its label.
func called(d *model.Device) string {
	if d.Label == "" {
		return d.Name
	}
	return d.Name + " (" + d.Label + ")"
}

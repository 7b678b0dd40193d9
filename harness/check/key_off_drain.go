package check

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// leastDrainA is what is named of a drain.
const leastDrainA = 0.001

var _ = define(Rule{
	ID:       "key-off-drain",
	Severity: diag.Warning,
	Title:    "Too much is drawn from a battery while the vehicle stands with the key off.",
	Why: "Alarms, memories and controllers asleep draw a little all the time, and whatever is on by mistake draws much more. " +
		"After some days the battery no longer starts the engine, and a battery left flat is soon a bad one. " +
		"Above the limit it is a note, above 50 mA as well a warning. With the capacity in the draft the limit is RC/4 mA, and the days are told that are left until a start fails.",
	Equation: "current of the battery in rest <= RC/4 mA with RC = Ah / 0.6, or 35 mA where no capacity is stated",
	Figures:  []string{"drain-limit", "drain-35", "reserve-capacity"},
	Misses:   "A draft in which nothing tells off from running: no key, and no load that draws more in running than in rest. Self-discharge, and what wakes up now and then: a feed that has a current asleep counts as asleep.",
	Needs:    Sound,
	Bad: `battery   G1  cca 540A 60Ah  grounds-to frame
fuse      F1  10A  from G1 6in
keyswitch S1
  off
  run  B IGN
module    A1
  MEM  feed 0.2A  asleep 80mA  always
  IGN  feed 1A  above 7V  holds 60ms  when run
  GND  ground
splice    J1
stud      E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    J1      1ft
wire 3  J1      S1.B    1ft
wire 4  J1      A1.MEM  1ft
wire 5  S1.IGN  A1.IGN  1ft
wire 6  A1.GND  E1      1ft
`,
	Good: `battery   G1  cca 540A 60Ah  grounds-to frame
fuse      F1  10A  from G1 6in
keyswitch S1
  off
  run  B IGN
module    A1
  MEM  feed 0.2A  asleep 8mA  always
  IGN  feed 1A  above 7V  holds 60ms  when run
  GND  ground
splice    J1
stud      E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    J1      1ft
wire 3  J1      S1.B    1ft
wire 4  J1      A1.MEM  1ft
wire 5  S1.IGN  A1.IGN  1ft
wire 6  A1.GND  E1      1ft
`,
	Run: keyOffDrain,
})

func keyOffDrain(p *Pass) {
	s := p.parked()
	if s == nil || !p.tellsOffFromOn(s) {
		return
	}
	loads := p.drawing(s)
	sum, given := 0.0, 0.0
	for _, l := range loads {
		sum += l.amps
	}
	var list []drain
	for _, d := range p.Model.Devices {
		for i, b := range d.Supplies() {
			if a := s.SupplyA.Of(d, i); b.Battery && a > 0 {
				list = append(list, drain{battery: d, amps: a, capacityAh: b.AmpHours})
				given += a
			}
		}
	}
	var worst drain
	for _, x := range list {
		if x.amps *= min(1, sum/given); x.over() > worst.over() { // of what flows, the part that counts
			worst = x
		}
	}
	if worst.over() > 1 {
		p.reportDrain(s, worst, loads)
	}
}

// parked gives the last solved step with the key off and the engine still,
// those apart that the draft adds: in them something is at work.
func (p *Pass) parked() *solve.State {
	for _, s := range slices.Backward(states(p.Sizes.Hot)) {
		if keyOff(s) && !s.Step.Added {
			return s
		}
	}
	return nil
}

// tellsOffFromOn reports whether the draft says anything about what is on
// when parked: it has a key, or a load that draws more in running.
func (p *Pass) tellsOffFromOn(rest *solve.State) bool {
	for _, d := range p.Model.Devices {
		if slices.ContainsFunc(d.Switches(), func(c part.Contact) bool { return c.By == "key" }) {
			return true
		}
	}
	tells := false
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Engine != part.Running {
			continue
		}
		p.eachDraw(func(d *model.Device, i int, w part.Draw) {
			more := math.Abs(s.DrawA.Of(d, i)) - math.Abs(rest.DrawA.Of(d, i))
			tells = tells || !w.Starter && !w.Coil && w.Amps > 0 && more >= 0.5*w.Amps
		})
	}
	return tells
}

func (p *Pass) reportDrain(s *solve.State, x drain, loads []share) {
	f := diag.Finding{
		At: x.battery.At,
		Msg: fmt.Sprintf("%s gives %s in %s; %s is the most to leave on", x.battery.Name, quantity.Text(x.amps, quantity.Current), s.Step.Name,
			quantity.Text(x.limitA(), quantity.Current)),
		Detail: "State its capacity (60Ah), and the days are told until a start fails.",
		Values: []diag.Value{{Name: "drain", Got: x.amps, Limit: x.limitA(), Unit: "A", Bound: diag.AtMost}},
	}
	if x.amps <= gauge.DrainUsualA {
		f.Severity = diag.Note
	}
	if days, _, ok := gauge.DrainDays(x.reserveMin(), x.amps); ok && x.capacityAh > 0 {
		f.Msg += fmt.Sprintf("; %.2g days until a start fails", days)
		f.Detail = "Feed it from the key, or let it sleep deeper."
	}
	var names []string
	for _, l := range loads {
		text := l.device.Name + " " + quantity.Text(l.amps, quantity.Current)
		names = append(names, text)
		f.Related = append(f.Related, diag.Related{At: l.draw.At, Msg: text})
	}
	for _, l := range loads[:min(len(loads), mostNamed)] {
		f.Related = append(f.Related, p.cameBy(s, l.device, l.draw.Plus, l.amps)...)
	}
	f.Detail = "It goes to " + strings.Join(names[:min(len(names), mostNamed)], ", ") + ". " + f.Detail
	p.Report(f)
}

package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "restart-in-key-gap",
	Severity: diag.Fault,
	Title:    "A controller loses its feed while the key travels from run to start.",
	Why: "Between run and start a key switch may open one contact before it closes the next. " +
		"A controller that is without its feed for longer than it can bridge restarts just as the engine begins to turn, " +
		"and loses the first revolutions or the whole start. " +
		"Feed it from a contact that stays closed through the gap, or join run and start with diodes.",
	Equation: "time bridged >= time that the key is between its contacts",
	Misses:   "A controller that neither has to be fed nor has an output to work while the starter turns is not judged. Bounce of worn contacts. A gap that the draft does not state is taken as 50 ms between the contacts that run and crank share.",
	Needs:    Bonded,
	Bad: `battery   G1  cca 540A  grounds-to frame
starter   M1  draws 160A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run    B IGN
  gap    B  lasts 50ms
  crank  B IGN ST
module    A1
  IGN  feed 1A  holds 20ms  when run, crank
  GND  ground
stud      E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    S1.B    14AWG  2ft
wire 3  S1.IGN  A1.IGN  18AWG  2ft
wire 4  A1.GND  E1      18AWG  2ft
wire 5  G1.+    M1.B    2AWG   2ft
wire 6  S1.ST   M1.S    14AWG  2ft
`,
	Good: `battery   G1  cca 540A  grounds-to frame
starter   M1  draws 160A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run    B IGN
  gap    B IGN  lasts 50ms
  crank  B IGN ST
module    A1
  IGN  feed 1A  holds 20ms  when run, crank
  GND  ground
stud      E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    S1.B    14AWG  2ft
wire 3  S1.IGN  A1.IGN  18AWG  2ft
wire 4  A1.GND  E1      18AWG  2ft
wire 5  G1.+    M1.B    2AWG   2ft
wire 6  S1.ST   M1.S    14AWG  2ft
`,
	Run: restartInKeyGap,
})

func restartInKeyGap(p *Pass) {
	h := p.Sizes.Hot
	for _, s := range states(h) {
		if s.Step.LastS <= 0 || s.Step.Engine != part.Still {
			continue
		}
		for i, r := range h.Relays {
			if r.Kind != part.AliveState || !s.Relay[i].Lost || !p.worksWhileTurning(r.Device) {
				continue
			}
			bridges := "nothing"
			if r.HoldsS > 0 {
				bridges = quantity.Text(r.HoldsS, quantity.Time)
			}
			p.Report(diag.Finding{
				At: r.Device.At,
				Msg: fmt.Sprintf("%s restarts in the key gap: it is without a feed for %s and bridges %s", r.Device.Name,
					quantity.Text(s.Step.LastS, quantity.Time), bridges),
				Detail:  "Take its feed from a contact that the gap keeps closed, or state how long it bridges a loss (holds).",
				Values:  []diag.Value{{Name: "bridges", Got: 1000 * r.HoldsS, Limit: 1000 * s.Step.LastS, Unit: "ms", Bound: diag.AtLeast}},
				Related: p.keys(s.Step),
			})
		}
	}
}

// keys names the keys of the draft, with the line that says what each joins in
// a step.
func (p *Pass) keys(s *model.Step) (list []diag.Related) {
	for _, d := range p.Model.Devices {
		if !slices.ContainsFunc(d.Switches(), func(c part.Contact) bool { return c.By == "key" }) {
			continue
		}
		at := d.At
		for _, l := range d.Lines {
			if l.Name == s.Key {
				at = l.At
			}
		}
		list = append(list, diag.Related{At: at, Msg: d.Name + " joins this then"})
	}
	return list
}

// worksWhileTurning reports whether a device has to be fed, or has an output
// to work, in a step in which the starter turns.
func (p *Pass) worksWhileTurning(d *model.Device) bool {
	for i := range p.Model.Steps {
		s := &p.Model.Steps[i]
		if s.Engine != part.Turning {
			continue
		}
		if slices.ContainsFunc(d.Draws(), func(w part.Draw) bool { return mustWork(w, s.ID) }) {
			return true
		}
		if slices.ContainsFunc(d.Drives(), func(o part.Output) bool { return o.Steps.Has(s.ID) }) {
			return true
		}
	}
	return false
}

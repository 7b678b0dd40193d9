package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// The starter's first pull is over within 15 to 40 ms.
const (
	pullShortestS = 0.015
	pullLongestS  = 0.040
)

var _ = define(Rule{
	ID:       "feed-low-while-cranking",
	Severity: diag.Fault,
	Title:    "A load has fewer volts than it needs while the starter draws its current.",
	Why: "The battery sags under the starter, and what is left loses more in key, fuse, wire and ground. " +
		"A controller under its least volts restarts in mid-crank, and a pump under its own delivers too little. " +
		"The steady crank is judged with a warm battery and hot copper (a fault) and with a weak cold battery (a warning). " +
		"The first pull of the starter is deeper but over in 15 to 40 ms: a module that bridges 40 ms does not notice it, one that bridges 15 may (a warning). " +
		"Where the draft gives a module no least volts, half the system's are taken, and falling under them in the first pull is a warning.",
	Equation: "volts across the load in crank >= the volts it states; in engage, time bridged >= 40 ms",
	Figures:  []string{"engage"},
	Misses:   "A load that states no least volts is not judged. Sag from a battery with a bad cell is worse than that of the stated rating.",
	Needs:    Bonded,
	Bad: `battery   G1  cca 540A  grounds-to frame
starter   M1  draws 160A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run    B IGN
  gap    B IGN
  crank  B IGN ST
module    A1
  IGN  feed 1A  above 11V  holds 50ms  when run, crank
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
  gap    B IGN
  crank  B IGN ST
module    A1
  IGN  feed 1A  above 7V  holds 50ms  when run, crank
  GND  ground
stud      E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    S1.B    14AWG  2ft
wire 3  S1.IGN  A1.IGN  18AWG  2ft
wire 4  A1.GND  E1      18AWG  2ft
wire 5  G1.+    M1.B    2AWG   2ft
wire 6  S1.ST   M1.S    14AWG  2ft
`,
	Run: feedLowWhileCranking,
})

func feedLowWhileCranking(p *Pass) {
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		if !p.lowWhileTurning(d, w, p.Sizes.Hot, diag.Fault, "") {
			p.lowWhileTurning(d, w, p.Sizes.Cold, diag.Warning, " in a cold start")
		}
	})
	p.shortAtFirstPull()
}

// lowWhileTurning judges the steady crank of one case.
func (p *Pass) lowWhileTurning(d *model.Device, w part.Draw, h *solve.History, sev diag.Severity, where string) bool {
	for _, s := range states(h) {
		if s.Step.Engine != part.Turning {
			continue
		}
		for _, n := range w.Needs {
			volts, ok := feedV(s, d, w)
			if !n.Steps.Has(s.Step.ID) || !ok || volts < deadBelowV || volts >= n.Volts {
				continue
			}
			p.Report(diag.Finding{
				Severity: sev, At: n.At,
				Msg: fmt.Sprintf("%s has %s in %s%s but needs %s", shown(d, w.Plus), quantity.Text(volts, quantity.Voltage),
					s.Step.Name, where, quantity.Text(n.Volts, quantity.Voltage)),
				Detail:  "Shorten or thicken what carries its current and its return, feed it nearer the battery, or fit a stronger battery.",
				Values:  []diag.Value{{Name: "volts in " + s.Step.Name, Got: volts, Limit: n.Volts, Unit: "V", Bound: diag.AtLeast}},
				Related: feedingWires(d, w.Plus),
			})
			return true
		}
	}
	return false
}

// shortAtFirstPull judges how modules get over the starter's first pull.
func (p *Pass) shortAtFirstPull() {
	h := p.Sizes.Hot
	for _, s := range states(h) {
		if s.Step.Engine != part.Locked {
			continue
		}
		for _, r := range h.Relays {
			low, needed := lowFeed(s, r)
			if r.Kind != part.AliveState || low == nil || r.HoldsS >= pullLongestS || !p.worksWhileTurning(r.Device) {
				continue
			}
			sev := diag.Warning
			if r.HoldsS < pullShortestS && stated(r.Device, needed.Plus) {
				sev = diag.Fault
			}
			p.Report(diag.Finding{
				Severity: sev, At: r.Device.At,
				Msg: fmt.Sprintf("%s has %s at %s in %s, under %s, and bridges %s of up to 40 ms", r.Device.Name,
					quantity.Text(*low, quantity.Voltage), shown(r.Device, needed.Plus), s.Step.Name,
					quantity.Text(needed.AtLeastV, quantity.Voltage), quantity.Text(r.HoldsS, quantity.Time)),
				Detail:  "State how long it bridges a loss (holds 50ms) if its sheet says so, or lift its feed over the sag.",
				Values:  []diag.Value{{Name: "bridges", Got: 1000 * r.HoldsS, Limit: 1000 * pullLongestS, Unit: "ms", Bound: diag.AtLeast}},
				Related: feedingWires(r.Device, needed.Plus),
			})
		}
	}
}

// stated reports whether the draft gives the least volts of a feed; half the
// system's volts, taken without, are no ground for more than a warning.
func stated(d *model.Device, feed string) bool {
	for _, w := range d.Draws() {
		if w.Plus == feed {
			return len(w.Needs) > 0
		}
	}
	return false
}

// lowFeed gives the volts of the first feed of a module that is under its
// least volts in a step though not dead, nil where there is none.
func lowFeed(s *solve.State, r solve.Relay) (*float64, part.Watch) {
	for _, w := range r.Watch {
		volts, ok := across(s, r.Device, w.Plus, w.Minus)
		if ok && w.Steps.Has(s.Step.ID) && volts >= deadBelowV && volts < w.AtLeastV {
			return &volts, w
		}
	}
	return nil, part.Watch{}
}

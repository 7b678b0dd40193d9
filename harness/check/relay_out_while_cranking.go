package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "relay-out-while-cranking",
	Severity: diag.Fault,
	Title:    "A relay that has to pull in while the starter turns can't, or is not sure to.",
	Why: "A relay sheet promises pull-in at so many volts with the coil at 20 C. A hot coil has more resistance and asks for more volts, " +
		"while the starter leaves it less: a start that works cold fails hot. " +
		"Under the volts that surely leave it out this is a fault; between those and the volts that surely pull it in nothing is promised, which is a warning. " +
		"Without both volts in the draft, only a coil under its release volts is a fault.",
	Equation: "coil volts >= pull-in at 20 C x (234.5 + T) / 254.5",
	Figures:  []string{"relay-pull-in", "relay-coil-rise", "relay-temperature"},
	Misses:   "A relay that was in before the starter drew its current only has to hold; how low it holds is in no sheet.",
	Needs:    Bonded,
	Bad: `place     bay  85C
battery   G1  cca 400A  at bay  grounds-to frame
starter   M1  draws 160A  at bay  grounds-to frame
fuse      F1  20A  at bay  from G1 6in
keyswitch S1  at bay
  off
  run    B IGN
  gap    B IGN
  crank  B IGN ST
relay     K1  coil 85ohm  pull-in 8.5V 9.5V  at bay  suppress resistor
module    A1  at bay
  IGN   feed 1A  holds 50ms  when run, crank
  PUMP  low-side 0.5A  when crank-only
  GND   ground
splice    J1  at bay
stud      E1  on frame  at bay  M6
wire 1  G1.+    F1.1     14AWG   6in
wire 2  F1.2    S1.B     14AWG   2ft
wire 3  S1.IGN  J1       14AWG   1ft
wire 4  J1      A1.IGN   14AWG   1ft
wire 5  J1      K1.86    14AWG   2ft
wire 6  K1.85   A1.PUMP  14AWG   2ft
wire 7  A1.GND  E1       14AWG   2ft
wire 8  G1.+    M1.B     2/0AWG  2ft
wire 9  S1.ST   M1.S     14AWG   2ft
`,
	Good: `place     bay  85C
battery   G1  cca 400A  at bay  grounds-to frame
starter   M1  draws 160A  at bay  grounds-to frame
fuse      F1  20A  at bay  from G1 6in
keyswitch S1  at bay
  off
  run    B IGN
  gap    B IGN
  crank  B IGN ST
relay     K1  coil 85ohm  pull-in 5V 6.5V  at bay  suppress resistor
module    A1  at bay
  IGN   feed 1A  holds 50ms  when run, crank
  PUMP  low-side 0.5A  when crank-only
  GND   ground
splice    J1  at bay
stud      E1  on frame  at bay  M6
wire 1  G1.+    F1.1     14AWG   6in
wire 2  F1.2    S1.B     14AWG   2ft
wire 3  S1.IGN  J1       14AWG   1ft
wire 4  J1      A1.IGN   14AWG   1ft
wire 5  J1      K1.86    14AWG   2ft
wire 6  K1.85   A1.PUMP  14AWG   2ft
wire 7  A1.GND  E1       14AWG   2ft
wire 8  G1.+    M1.B     2/0AWG  2ft
wire 9  S1.ST   M1.S     14AWG   2ft
`,
	Run: relayOutWhileCranking,
})

func relayOutWhileCranking(p *Pass) {
	for i := range p.Sizes.Hot.Relays {
		hot, okHot := pullAt(p.Sizes.Hot, i)
		cold, okCold := pullAt(p.Sizes.Cold, i)
		switch {
		case okHot && (!okCold || hot.state.Zone <= cold.state.Zone):
			p.reportPull(p.Sizes.Hot.Relays[i], hot, "hot coil")
		case okCold:
			p.reportPull(p.Sizes.Cold.Relays[i], cold, "cold start")
		}
	}
}

// pull is how a relay stands in a step.
type pull struct {
	step  string
	state solve.RelayState
}

// pullAt gives the worst place of a relay that has to pull in while the
// starter turns; ok is false where it is not asked to, or does so surely.
func pullAt(h *solve.History, i int) (worst pull, ok bool) {
	for _, s := range states(h) {
		st := s.Relay[i]
		if s.Step.Engine != part.Turning || h.Relays[i].Kind != part.RelayState || !st.Asked || st.Held || st.Zone == solve.SurelyIn {
			continue
		}
		if !ok || st.Zone < worst.state.Zone {
			worst, ok = pull{s.Step.Name, st}, true
		}
	}
	return worst, ok
}

func (p *Pass) reportPull(r solve.Relay, w pull, where string) {
	sev, how := diag.Fault, "can't pull in"
	limit := w.state.OutBelowV
	if w.state.Zone == solve.NotSure {
		sev, how, limit = diag.Warning, "is not sure to pull in", w.state.InAboveV
	}
	volts := w.state.PullV
	p.Report(diag.Finding{
		Severity: sev, At: r.Device.At,
		Msg: fmt.Sprintf("%s %s in %s (%s): its coil has %s and at %.0f C needs %s", r.Device.Name, how, w.step, where,
			quantity.Text(volts, quantity.Voltage), w.state.CoilC, quantity.Text(limit, quantity.Voltage)),
		Detail: "Give the coil a feed and a return of its own near the battery, fit a relay with a lower pull-in, move it to a cooler place, or hold it in through the start.",
		Values: []diag.Value{{Name: "coil volts", Got: volts, Limit: limit, Unit: "V", Bound: diag.AtLeast}},
	})
}

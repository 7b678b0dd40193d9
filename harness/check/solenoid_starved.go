package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "solenoid-starved",
	Severity: diag.Fault,
	Title:    "The wires to a starter's solenoid are too thin for its pull-in.",
	Why: "Both windings of the solenoid draw thirty amperes and more until its contact closes, and a hot coil needs more volts for it. " +
		"With thin wire the starter only clicks, most of all when the engine is hot. " +
		"And when the contact does not close, that current flows for as long as the key is held; a wire too thin for that is a warning. " +
		"So is a starved solenoid whose current or volts are a guess.",
	Equation: "volts at S while it pulls in >= pull-in volts, hot; I^2 10 s <= (k S)^2 up to the class of the insulation",
	Figures:  []string{"solenoid-volts", "crank-attempt", "adiabatic-k"},
	Misses:   "A burnt key contact and a worn plunger, which ask for more. A cold start, in which the coil asks for less.",
	Needs:    States,
	Bad: `place     bay   85C
place     dash  50C
leg       bay  dash  20ft
metal     block
metal     frame
stud      E1  on block  at bay  M8
stud      E2  on frame  at bay  M8
strap 91  E1  E2  2AWG  1ft
battery   G1  cca 600A  at bay
starter   M1  draws 150A  stall 400A  pull-in 38A 8V  hold 9A 3V  at bay  grounds-to block
fuse      F1  30A  at bay  bolt-down  from G1 6in
keyswitch S1  at dash
  off
  run    B IGN
  gap    B IGN
  crank  B IGN ST
wire 1  G1.+   M1.B  2AWG   24in
wire 2  G1.+   F1.1  12AWG  6in
wire 3  F1.2   S1.B  12AWG
wire 4  S1.ST  M1.S  12AWG
wire 5  G1.-   E1    2AWG   12in
`,
	Good: `place     bay   85C
place     dash  50C
leg       bay  dash  20ft
metal     block
metal     frame
stud      E1  on block  at bay  M8
stud      E2  on frame  at bay  M8
strap 91  E1  E2  2AWG  1ft
battery   G1  cca 600A  at bay
starter   M1  draws 150A  stall 400A  pull-in 38A 8V  hold 9A 3V  at bay  grounds-to block
fuse      F1  30A  at bay  bolt-down  from G1 6in
keyswitch S1  at dash
  off
  run    B IGN
  gap    B IGN
  crank  B IGN ST
wire 1  G1.+   M1.B  2AWG   24in
wire 2  G1.+   F1.1  12AWG  6in
wire 3  F1.2   S1.B  8AWG
wire 4  S1.ST  M1.S  8AWG
wire 5  G1.-   E1    2AWG   12in
`,
	Run: solenoidStarved,
})

func solenoidStarved(p *Pass) {
	for _, x := range p.Sizes.Pulls {
		if x.Volts < x.LeastV {
			p.reportStarved(x)
		}
	}
	p.failing(gauge.FloorStart, func(w size.Wire, l gauge.Limit) {
		p.Report(diag.Finding{
			Severity: diag.Warning, At: sizeSpan(w),
			Msg: fmt.Sprintf("wire %s (%s) gets hotter than its class when a solenoid draws %s for %.0f s", w.Wire.Number,
				w.Conductor.Size.Name, quantity.Text(w.PullA, quantity.Current), w.Judgement.Case.StartS),
			Detail: "It is so when the contact does not close and the key is held.",
			Values: []diag.Value{{Name: "heat", Got: l.Got, Limit: l.Asked, Unit: "A2s", Bound: diag.AtLeast}},
		})
	})
}

// reportStarved tells of a solenoid that does not surely pull in, at the wire
// that loses most. Only what the draft states of the solenoid makes a fault.
func (p *Pass) reportStarved(x size.Pull) {
	d := x.Device
	f := diag.Finding{
		At: d.At,
		Msg: fmt.Sprintf("%s does not surely pull in: %s in %s, needs %s", d.Name,
			quantity.Text(x.Volts, quantity.Voltage), x.Step.Name, quantity.Text(x.LeastV, quantity.Voltage)),
		Detail: "Give its wires more copper, or let a relay near the starter switch it.",
		Values: []diag.Value{{Name: "solenoid volts", Got: x.Volts, Limit: x.LeastV, Unit: "V", Bound: diag.AtLeast}},
	}
	if w, lostV := p.losesMost(x); w != nil {
		f.At = sizeSpan(*w)
		f.Msg += fmt.Sprintf("; wire %s loses most, %s", w.Wire.Number, quantity.Text(lostV, quantity.Voltage))
		f.Related = []diag.Related{{At: d.At, Msg: fmt.Sprintf("both windings draw %s at that moment", quantity.Text(x.Amps, quantity.Current))}}
	}
	if !p.pullSaid(x) {
		f.Severity = diag.Warning
		f.Detail += " Its current or its volts are a guess: state both from the sheet (pull-in 40A 8V)."
	}
	p.Report(f)
}

// losesMost gives the wire on a pull's way with the greatest drop, nil where
// there is none.
func (p *Pass) losesMost(x size.Pull) (most *size.Wire, lostV float64) {
	for _, w := range x.Wires {
		if v := x.Amps * p.Sizes.Wires[w.ID].Conductor.Ohm; v > lostV {
			most, lostV = &p.Sizes.Wires[w.ID], v
		}
	}
	return most, lostV
}

// pullSaid reports whether the draft states both the current and the volts of
// a pull.
func (p *Pass) pullSaid(x size.Pull) bool {
	for _, r := range p.Sizes.Hot.Relays {
		if r.Device == x.Device && r.Kind == part.SolenoidState {
			return r.PairSaid && x.Device.Draws()[x.Draw].AmpsKnown
		}
	}
	return false
}

// starved gives the devices whose solenoid does not surely pull in.
func (p *Pass) starved() map[*model.Device]bool {
	list := map[*model.Device]bool{}
	for _, x := range p.Sizes.Pulls {
		if x.Volts < x.LeastV {
			list[x.Device] = true
		}
	}
	return list
}

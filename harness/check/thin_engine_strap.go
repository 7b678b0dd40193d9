package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/size"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "thin-engine-strap",
	Severity: diag.Warning,
	Title:    "The starter's current returns through far less copper than it comes by.",
	Why: "Whatever flows into the starter flows back through the engine's strap. A strap much thinner than the starter cable turns the engine slowly, " +
		"gets hot in a long start, and lifts the engine against the battery, so that sensor grounds and cable sheaths take a part. " +
		"Make it as heavy as the starter cable; side by side, several straps count by the current that each takes.",
	Equation: "area of the conductor >= 0.45 x area of the starter cable x the share of the starter's current in it",
	Figures:  []string{"engine-strap"},
	Misses:   "A conductor that takes less than a quarter of the current. Paint, rust and loose bolts under a ring. A strap above three times its ampacity is told of by engine-not-bonded. One that is in the vehicle already and whose size is a guess.",
	Needs:    States,
	Bad: `metal   block
metal   frame
battery G1  cca 600A  grounds-to frame
starter M1  draws 150A  grounds-to block
fuse    F1  30A  from G1 6in
stud    E2  on block  M8
stud    E3  on frame  M8
strap 90  E2  E3  6AWG  14in
switch  S1  closed when crank
wire 1  G1.+  M1.B  2/0AWG  3ft
wire 2  G1.+  F1.1  10AWG   6in
wire 3  F1.2  S1.1  8AWG    2ft
wire 4  S1.2  M1.S  8AWG    2ft
`,
	Good: `metal   block
metal   frame
battery G1  cca 600A  grounds-to frame
starter M1  draws 150A  grounds-to block
fuse    F1  30A  from G1 6in
stud    E2  on block  M8
stud    E3  on frame  M8
strap 90  E2  E3  2/0AWG  14in
switch  S1  closed when crank
wire 1  G1.+  M1.B  2/0AWG  3ft
wire 2  G1.+  F1.1  10AWG   6in
wire 3  F1.2  S1.1  8AWG    2ft
wire 4  S1.2  M1.S  8AWG    2ft
`,
	Run: thinEngineStrap,
})

func thinEngineStrap(p *Pass) {
	told := map[int]bool{}
	for _, s := range states(p.Sizes.Hot) {
		cable, starter := p.starterCopper(s)
		if starter == nil {
			continue
		}
		for _, w := range p.Sizes.Wires {
			amps := math.Abs(s.WireA[w.Wire.ID])
			share := amps / p.starterA(s)
			least := gauge.StrapShare * share * cable
			if told[w.Wire.ID] || share < starterShare || w.Conductor.Size.AreaMM2 >= least || !p.returns(w.Wire) || tooThin(w, amps) || assumedSize(w.Wire) {
				continue
			}
			told[w.Wire.ID] = true
			p.Report(diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("wire %s (%s, %.3g mm2) leads %.0f A of %s back in %s; its cable has %.3g mm2", w.Wire.Number, w.Conductor.Size.Name,
					w.Conductor.Size.AreaMM2, amps, starter.Name, s.Step.Name, cable),
				Detail: "Fit a strap as heavy as the starter cable, or a second one beside it.",
				Values: []diag.Value{{Name: "area", Got: w.Conductor.Size.AreaMM2, Limit: least, Unit: "mm2", Bound: diag.AtLeast}},
				Fix:    p.ofArea(w, least),
			})
		}
	}
}

// starterCopper gives the copper of the cables that land on the starters that
// turn in a step, and the first of these; nil where none turns.
func (p *Pass) starterCopper(s *solve.State) (areaMM2 float64, first *model.Device) {
	if !p.turning(s) {
		return 0, nil
	}
	for _, w := range p.Sizes.Wires {
		for _, t := range []*model.Terminal{w.Wire.From, w.Wire.To} {
			if takesStart(t) && math.Abs(s.WireA[w.Wire.ID]) >= starterShare*p.starterA(s) {
				areaMM2 += w.Conductor.Size.AreaMM2
				if first == nil {
					first = t.Device
				}
			}
		}
	}
	return areaMM2, first
}

// returns reports whether a wire is one with the negative post of a battery.
func (p *Pass) returns(w *model.Wire) bool { return p.graph().grounds[p.Nets.Of[w.From.ID]] }

// tooThin reports whether a conductor carries more than any start may ask.
func tooThin(w size.Wire, amps float64) bool {
	carries, _ := gauge.Ampacity30(w.Conductor.Size, w.Conductor.Family)
	return amps > thinBond*carries
}

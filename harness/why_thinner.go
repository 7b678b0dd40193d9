package harness

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// thinner answers the question that a chosen size raises first: why not the
// next one down? It judges the whole chain on it and names what fails.
func (r *Result) thinner(s size.Wire) Group {
	if !s.Chosen {
		return Group{}
	}
	down, ok := nextDown(s.Conductor.Size)
	if !ok {
		return Group{Title: "Why not thinner", Steps: []gauge.Step{{Text: s.Conductor.Size.Name + " is the thinnest size that is ever chosen"}}}
	}
	g := Group{Title: "Why not " + down.Name}
	for _, o := range r.Sizes.Wires {
		if o.Chain == s.Chain && o.Chosen {
			g.Steps = append(g.Steps, failsOn(o, down)...)
		}
	}
	if worst, extraV, found := r.lossOn(s, down); found && worst.DropV+extraV > worst.LimitV {
		g.Steps = append(g.Steps, gauge.Step{
			Text: fmt.Sprintf("%s in %s would lose more than the %s allowed, taking its currents as they are",
				loadName(worst), worst.Step.Name, quantity.Text(worst.LimitV, quantity.Voltage)),
			Equation: fmt.Sprintf("%s + sum(I dR)", quantity.Text(worst.DropV, quantity.Voltage)),
			Value:    worst.DropV + extraV, Unit: "V", Source: gauge.NodeLaw,
		})
	}
	g.Steps = append(g.Steps, r.unmetOn(s)...)
	if len(g.Steps) == 0 {
		g.Steps = append(g.Steps, gauge.Step{
			Text: "nothing on its own way forbids it: a wire that shares a load with it would have to grow instead, which takes more copper",
		})
	}
	return g
}

// nextDown is the size below one in its own series; ok is false for the
// smallest.
func nextDown(s gauge.Size) (down gauge.Size, ok bool) {
	for _, o := range gauge.Ladder(s.Metric) {
		if o.Name == s.Name {
			return down, ok
		}
		down, ok = o, true
	}
	return down, false
}

// failsOn lists the floors that a wire fails on another size.
func failsOn(w size.Wire, s gauge.Size) []gauge.Step {
	k := w.Judgement.Case
	if k.Family.Name == gauge.FamilyFor(k.Size).Name {
		k.Family = gauge.FamilyFor(s)
	}
	k.Size, k.MaxOhm = s, 0
	var steps []gauge.Step
	for _, l := range gauge.JudgeWire(k).Limits {
		if l.OK || l.Hint {
			continue
		}
		steps = append(steps, gauge.Step{
			Text:  fmt.Sprintf("wire %s, %s: %s asked, it gives", w.Wire.Number, l.Name, amount(l.Asked, l.Unit)),
			Value: l.Got, Unit: l.Unit, Source: lawOf(l.Why),
		})
	}
	return steps
}

// lossOn finds the load that suffers most when a chain takes another size, and
// what it would lose more.
func (r *Result) lossOn(s size.Wire, down gauge.Size) (worst size.Path, extraV float64, found bool) {
	most := math.Inf(-1)
	for _, p := range r.Sizes.Drops() {
		more := 0.0
		for _, w := range p.Wires {
			o := r.Sizes.Wires[w.ID]
			if o.Chain != s.Chain || !o.Chosen {
				continue
			}
			amps := r.ampsIn(w, p.Step)
			tempC := gauge.ConductorTempC(down, o.Conductor.Family, r.Routes.Paths[w.ID].HotC, o.HeatA)
			more += amps * (down.OhmPerM(tempC)*o.Conductor.LengthM - o.Conductor.Ohm)
		}
		if over := p.DropV + more - p.LimitV; more > 0 && over > most {
			most, worst, extraV, found = over, p, more, true
		}
	}
	return worst, extraV, found
}

// ampsIn is the current of a wire in a step, hot and with sure figures.
func (r *Result) ampsIn(w *model.Wire, step *model.Step) float64 {
	s := r.Sizes.Hot.Step(step.Name)
	if s == nil || s.Skipped != "" {
		return 0
	}
	return math.Abs(s.WireA[w.ID])
}

// lawOf gives the source on which the last worked figure rests, leaving out
// what the draft itself states.
func lawOf(steps []gauge.Step) string {
	for i := len(steps) - 1; i >= 0; i-- {
		if source := steps[i].Source; source != "" && source != "stated" {
			return source
		}
	}
	return ""
}

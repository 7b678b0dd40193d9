package gauge

import "fmt"

// CrankAttemptS is the longest that a starter is held in at a time, in seconds
// (source crank-attempt).
const CrankAttemptS = 10.0

// StrapShare is the least copper of a starter's way back over that of its
// cable: half, less what the strandings of one gauge differ by (source
// engine-strap).
const StrapShare = 0.45

// start: a current of seconds brings the copper no higher than its insulation
// stands for ever, with no heat lost on the way.
func (j *Judgement) start() {
	c := &j.Case
	if !(c.StartA > 0 && c.StartS > 0) {
		return
	}
	l := Limit{
		Name: FloorStart, Got: WithstandA2S(c.Size.AreaMM2, c.AmbientC, j.base.ratedC),
		Asked: c.StartA * c.StartA * c.StartS, Unit: "A2s",
	}
	j.add(l, min(j.wireConf(), confidenceOf("crank-attempt")), func() []Step {
		return []Step{
			{
				Text:     fmt.Sprintf("%.4g A for as long as a start is tried at a time, %.4g s", c.StartA, c.StartS),
				Equation: "I^2 t", Value: l.Asked, Unit: "A2s", Source: "crank-attempt",
			},
			{
				Text:     fmt.Sprintf("copper from %.4g C to its class, %.4g C, no heat lost", c.AmbientC, j.base.ratedC),
				Equation: "k = 226 sqrt(ln((T2+234.5)/(T1+234.5)))", Value: K(c.AmbientC, j.base.ratedC), Unit: "A s^0.5/mm2", Source: "adiabatic-k",
			},
			{
				Text:     fmt.Sprintf("%s, %.4g mm2", c.Size.Name, c.Size.AreaMM2),
				Equation: "(k S)^2", Value: l.Got, Unit: "A2s", Source: "adiabatic-k",
			},
		}
	})
}

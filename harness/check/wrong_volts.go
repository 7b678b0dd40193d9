package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "wrong-volts",
	Severity: diag.Fault,
	Title:    "A source or a load gets far other volts than it is made for.",
	Why: "A 24 V battery in a 12 V harness, two batteries in series by mistake, or a 12 V lamp on the whole of a 24 V battery: the load burns out, or controllers die. " +
		"The other way round, with half of the volts, nothing works as it should: a load made for 24 V on 12 V is a warning. " +
		"Make the batteries, the system volts of the harness and the ratings of the loads agree, or tap the middle of the batteries for the load.",
	Equation: "3/4 of rated volts <= volts of the sources together; volts of source or load <= 4/3 of rated volts",
	Figures:  []string{"system-volts"},
	Misses:   "Load dump and other peaks of milliseconds; a boost from a 24 V vehicle.",
	Needs:    States,
	Bad: `harness "Mixed"  system 12V
battery G1  24V  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  5W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
`,
	Good: `harness "Mixed"  system 24V
battery G1  24V  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  5W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
`,
	Run: wrongVolts,
})

// wrongVolts judges the sources first: where they are wrong, so is every load.
func wrongVolts(p *Pass) {
	list := states(p.Sizes.Hot)
	strong, weak := p.strongSources(list), p.weakMachines()
	if strong || weak || p.weakSources(list) {
		return
	}
	for _, d := range p.Model.Devices {
		for _, w := range d.Draws() {
			p.judgeLoadVolts(list, d, w)
		}
	}
}

// strongSources reports every source that brings more volts than the system has.
func (p *Pass) strongSources(list []*solve.State) (any bool) {
	limit := gauge.MostOfRatedVolts * p.Model.SystemV
	for _, d := range p.Model.Devices {
		for _, u := range d.Supplies() {
			at, volts := highest(list, d.Terminal(u.Plus), d.Terminal(u.Minus))
			if !(volts > limit) {
				continue
			}
			any = true
			p.Report(diag.Finding{
				At:     d.At,
				Msg:    fmt.Sprintf("%s brings %s in %s, in a harness of %s", d.Name, quantity.Text(volts, quantity.Voltage), at, quantity.Text(p.Model.SystemV, quantity.Voltage)),
				Detail: "Say the system volts in the harness line, or take a source of these volts.",
				Values: []diag.Value{{Name: d.Name, Got: volts, Limit: limit, Unit: "V", Bound: diag.AtMost}},
			})
		}
	}
	return any
}

// weakMachines reports every alternator that charges less than the system
// holds: the battery goes flat behind it, or is pulled down to its volts.
func (p *Pass) weakMachines() (any bool) {
	limit := gauge.LeastOfRatedVolts * p.Model.SystemV
	for _, d := range p.Model.Devices {
		for _, u := range d.Supplies() {
			if u.Battery || !(u.SetpointV > 0) || u.SetpointV >= limit {
				continue
			}
			any = true
			p.Report(diag.Finding{
				At: d.At,
				Msg: fmt.Sprintf("%s holds %s, in a harness of %s", d.Name, quantity.Text(u.SetpointV, quantity.Voltage),
					quantity.Text(p.Model.SystemV, quantity.Voltage)),
				Detail: "Take a machine of the volts of the system, or say the system volts in the harness line.",
				Values: []diag.Value{{Name: d.Name, Got: u.SetpointV, Limit: limit, Unit: "V", Bound: diag.AtLeast}},
			})
		}
	}
	return any
}

// weakSources reports, once, that no two terminals have the system volts
// between them while the starter stands still.
func (p *Pass) weakSources(list []*solve.State) bool {
	var first *model.Device
	for _, d := range p.Model.Devices {
		if first == nil && len(d.Supplies()) > 0 {
			first = d
		}
	}
	most, solved := 0.0, false
	for _, s := range list {
		if !cranking(s) {
			most, solved = math.Max(most, furthest(s)), true
		}
	}
	limit := gauge.LeastOfRatedVolts * p.Model.SystemV
	if first == nil || !solved || most >= limit || p.wantsReturn(first) {
		return false
	}
	p.Report(diag.Finding{
		At:     first.At,
		Msg:    fmt.Sprintf("the sources give %s together, in a harness of %s", quantity.Text(most, quantity.Voltage), quantity.Text(p.Model.SystemV, quantity.Voltage)),
		Detail: "Say the system volts in the harness line, or join batteries in series: the positive post of one to the negative post of the next.",
		Values: []diag.Value{{Name: first.Name, Got: most, Limit: limit, Unit: "V", Bound: diag.AtLeast}},
	})
	return true
}

// wantsReturn reports whether a source is joined to nothing, which other rules tell.
func (p *Pass) wantsReturn(d *model.Device) bool {
	for _, t := range d.Terminals {
		if len(t.Ends) == 0 && t.Metal == nil {
			return true
		}
	}
	return false
}

func (p *Pass) judgeLoadVolts(list []*solve.State, d *model.Device, w part.Draw) {
	where := w.At
	if where.IsZero() {
		where = d.At
	}
	if least := w.RatedV * gauge.LeastOfRatedVolts; gauge.MostOfRatedVolts*p.Model.SystemV < least {
		p.Report(diag.Finding{
			Severity: diag.Warning,
			At:       where,
			Msg: fmt.Sprintf("%s is made for %s, in a harness of %s", d.Name, quantity.Text(w.RatedV, quantity.Voltage),
				quantity.Text(p.Model.SystemV, quantity.Voltage)),
			Detail: "It does little at these volts: take one that is made for them.",
			Values: []diag.Value{{Name: d.Name, Got: p.Model.SystemV, Limit: least, Unit: "V", Bound: diag.AtLeast}},
		})
		return
	}
	limit := gauge.MostOfRatedVolts * w.RatedV
	at, volts := highest(list, d.Terminal(w.Plus), d.Terminal(w.Minus))
	if !(w.RatedV > 0) || !(volts > limit) {
		return
	}
	p.Report(diag.Finding{
		At:     where,
		Msg:    fmt.Sprintf("%s has %s across it in %s and is made for %s", shown(d, w.Plus), quantity.Text(volts, quantity.Voltage), at, quantity.Text(w.RatedV, quantity.Voltage)),
		Detail: "Feed it from a source of its own volts, or take one that is made for these.",
		Values: []diag.Value{{Name: d.Name, Got: volts, Limit: limit, Unit: "V", Bound: diag.AtMost}},
	})
}

// highest gives the most volts from one terminal to another and their step.
func highest(list []*solve.State, plus, minus *model.Terminal) (step string, volts float64) {
	if plus == nil || minus == nil {
		return "", 0
	}
	for _, s := range list {
		if v := s.Volts[plus.ID] - s.Volts[minus.ID]; v > volts {
			step, volts = s.Step.Name, v
		}
	}
	return step, volts
}

// furthest is the most volts between any two terminals that do not float.
func furthest(s *solve.State) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, v := range s.Volts {
		if !math.IsNaN(v) {
			low, high = math.Min(low, v), math.Max(high, v)
		}
	}
	return math.Max(high-low, 0)
}

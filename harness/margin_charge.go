package harness

import (
	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// What margins of charge, standby and cranking are about.
const (
	MarginSpeed = "charge at speed"
	MarginIdle  = "charge at idle"
	MarginDrain = "key-off drain"
	MarginCrank = "volts while cranking"
)

// chargeMargins holds the average current of every step with the engine
// running against what the machines are rated for, or give at idle.
func (r *Result) chargeMargins(sort string) []Margin {
	var all []Margin
	for _, b := range check.Balances(r.Sizes.Hot) {
		have := b.SpeedA
		if sort == MarginIdle {
			if have = b.IdleA; !b.IdleSaid {
				continue
			}
		}
		all = append(all, Margin{
			Check: sort, Name: b.Machines[0].Name, Step: b.Step.Name,
			Value: diag.Value{Got: b.NeedA, Limit: have, Unit: "A", Bound: diag.AtMost},
		})
	}
	return all
}

// drainMargins holds what each battery gives at rest against the drain limit.
func (r *Result) drainMargins() []Margin {
	var all []Margin
	for _, s := range r.Sizes.Hot.States {
		if s.Skipped != "" || s.Step.Name != "rest" || !r.hasKey() {
			continue
		}
		for _, d := range r.Model.Devices {
			for i, b := range d.Supplies() {
				if a := s.SupplyA.Of(d, i); b.Battery && a > 0 {
					all = append(all, Margin{
						Check: MarginDrain, Name: d.Name, Step: s.Step.Name,
						Value: diag.Value{Got: a, Limit: drainLimitA(b), Unit: "A", Bound: diag.AtMost},
					})
				}
			}
		}
	}
	return all
}

// hasKey reports whether a key tells off from on; without one, what is drawn
// at rest may be meant to be.
func (r *Result) hasKey() bool {
	for _, d := range r.Model.Devices {
		for _, c := range d.Switches() {
			if c.By == "key" {
				return true
			}
		}
	}
	return false
}

func drainLimitA(b part.Supply) float64 {
	if b.AmpHours > 0 {
		return gauge.DrainLimitA(b.AmpHours / gauge.AmpHours(1))
	}
	return gauge.DrainGoodA
}

// crankMargins holds the volts of controllers, pump and ignition while the
// starter turns against the least they need.
func (r *Result) crankMargins() []Margin {
	var all []Margin
	for _, s := range r.Sizes.Hot.States {
		if s.Skipped != "" || s.Step.Engine != part.Turning {
			continue
		}
		for _, d := range r.Model.Devices {
			for _, w := range d.Draws() {
				for _, n := range w.Needs {
					volts, ok := feedVolts(s, d, w)
					if w.Critical && !w.Asleep && n.Said && n.Steps.Has(s.Step.ID) && ok {
						all = append(all, atLeastV(MarginCrank, d.Name, s.Step.Name, volts, n.Volts))
					}
				}
			}
		}
	}
	return all
}

// feedVolts gives the volts that a load has in a state.
func feedVolts(s *solve.State, d *model.Device, w part.Draw) (volts float64, ok bool) {
	ends := [2]*model.Terminal{}
	for i, pin := range [2]string{w.Plus, w.Minus} {
		for _, t := range d.Terminals {
			if pin == part.Metal && t.Metal != nil || pin != part.Metal && t == d.Terminal(pin) {
				ends[i] = t
			}
		}
		if ends[i] == nil {
			return 0, false
		}
	}
	a, b := s.Reading(ends[0]), s.Reading(ends[1])
	return a.Volts - b.Volts, a.OK && b.OK
}

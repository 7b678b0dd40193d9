package harness

import (
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/size"
	"legwork/harness/solve"
)

// What margins are about.
const (
	MarginDrop       = "drop"
	MarginAmpacity   = gauge.FloorAmpacity
	MarginProtection = gauge.FloorProtection
	MarginFuse       = "fuse load"
	MarginPull       = "pull-in"
	MarginHold       = "hold"
)

// Margin is the check of one sort that passes, or fails, most narrowly.
type Margin struct {
	Check string // what was compared: MarginDrop and so on
	Name  string // the wire, fuse or device it is about
	Step  string // step in which it is so, "" where it holds in all
	diag.Value
}

// Left is the part of the limit that is left; negative when it is passed.
func (m Margin) Left() float64 {
	if m.Bound == diag.AtLeast {
		return (m.Got - m.Limit) / math.Max(m.Got, 1e-9)
	}
	return (m.Limit - m.Got) / math.Max(m.Limit, 1e-9)
}

// Margins gives, for each sort of check, the narrowest case; nil where the
// draft was not solved.
func (r *Result) Margins() []Margin {
	if r.Sizes == nil {
		return nil
	}
	var list []Margin
	for _, all := range [][]Margin{r.dropMargins(), r.wireMargins(MarginAmpacity), r.wireMargins(MarginProtection), r.fuseMargins(), r.pullMargins(), r.holdMargins(),
		r.crankMargins(), r.chargeMargins(MarginSpeed), r.chargeMargins(MarginIdle), r.drainMargins()} {
		if tight, ok := narrowest(all); ok {
			list = append(list, tight)
		}
	}
	return list
}

// idle is the part of a limit that is left where next to nothing flows: such a
// case says nothing of how near the limits a harness comes.
const idle = 0.99

func narrowest(all []Margin) (tight Margin, ok bool) {
	for _, m := range all {
		if m.Left() > idle {
			continue
		}
		if !ok || m.Left() < tight.Left() {
			tight, ok = m, true
		}
	}
	return tight, ok
}

func (r *Result) dropMargins() []Margin {
	var all []Margin
	for _, p := range r.Sizes.Drops() {
		all = append(all, Margin{
			Check: MarginDrop, Name: p.Device.Name, Step: p.Step.Name,
			Value: diag.Value{Got: p.DropV, Limit: p.LimitV, Unit: "V", Bound: diag.AtMost},
		})
	}
	for _, x := range r.Sizes.Charges {
		all = append(all, Margin{
			Check: MarginDrop, Name: x.Device.Name, Step: size.Charging,
			Value: diag.Value{Got: x.DropV, Limit: x.LimitV, Unit: "V", Bound: diag.AtMost},
		})
	}
	return all
}

// wireMargins looks at one floor of every wire that was judged by it.
func (r *Result) wireMargins(floor string) []Margin {
	var all []Margin
	for _, w := range r.Sizes.Wires {
		for _, l := range w.Judgement.Limits {
			if l.Name == floor && !l.Hint && l.Asked > 0 {
				all = append(all, Margin{
					Check: floor, Name: "wire " + w.Wire.Number,
					Value: diag.Value{Got: l.Got, Limit: l.Asked, Unit: l.Unit, Bound: diag.AtLeast},
				})
			}
		}
	}
	return all
}

func (r *Result) fuseMargins() []Margin {
	var all []Margin
	for _, f := range r.Sizes.Fuses {
		if f.RatedA > 0 && f.LoadA >= gauge.LeastTellA {
			all = append(all, Margin{
				Check: MarginFuse, Name: f.Device.Name, Step: f.At,
				Value: diag.Value{Got: f.LoadA, Limit: r.Profile.LoadOfFuse * f.RatedA, Unit: "A", Bound: diag.AtMost},
			})
		}
	}
	return all
}

// pullMargins looks at the coils that have to pull in: relays while the
// starter turns, starters' solenoids at the moment they close.
func (r *Result) pullMargins() []Margin {
	var all []Margin
	for _, x := range r.Sizes.Pulls {
		all = append(all, atLeastV(MarginPull, x.Device.Name, x.Step.Name, x.Volts, x.LeastV))
	}
	r.eachCoil(func(name, step string, relay solve.RelayState, kind part.StateKind) {
		if kind == part.RelayState && !relay.Held && relay.InAboveV > 0 {
			all = append(all, atLeastV(MarginPull, name, step, relay.PullV, relay.InAboveV))
		}
	})
	return all
}

// holdMargins looks at the coils that are in as the starter begins to turn,
// and have to hold.
func (r *Result) holdMargins() []Margin {
	var all []Margin
	r.eachCoil(func(name, step string, relay solve.RelayState, _ part.StateKind) {
		if relay.Held && relay.ReleaseV > 0 {
			all = append(all, atLeastV(MarginHold, name, step, relay.Volts, relay.ReleaseV))
		}
	})
	return all
}

// eachCoil goes through the coils that are meant to be energized while the
// starter turns.
func (r *Result) eachCoil(do func(name, step string, relay solve.RelayState, kind part.StateKind)) {
	for _, s := range r.Sizes.Hot.States {
		if s.Skipped != "" || s.Step.Engine != part.Turning {
			continue
		}
		for i, relay := range s.Relay {
			if x := r.Sizes.Hot.Relays[i]; relay.Asked {
				do(x.Device.Name, s.Step.Name, relay, x.Kind)
			}
		}
	}
}

func atLeastV(check, name, step string, got, limit float64) Margin {
	return Margin{Check: check, Name: name, Step: step, Value: diag.Value{Got: got, Limit: limit, Unit: "V", Bound: diag.AtLeast}}
}

// NotLookedAt lists what no check of this version covers, so that silence
// about it is not taken for a pass.
func NotLookedAt() []string {
	return []string{
		"crimps, and the fit of terminals and seals that no part names",
		"bend, chafe, heat-shield and fuel-line clearance",
		"charge balance over days",
		"what happens within milliseconds, noise and interference, signal levels",
		"the heat of a loose or corroded joint",
	}
}

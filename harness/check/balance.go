package check

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Balance is what machines give and loads take in a step with the engine
// running, averaged over the loads' duty.
type Balance struct {
	Step     *model.Step
	NeedA    float64 // taken by loads and coils; no charge of a battery
	SpeedA   float64 // rated output of the machines
	IdleA    float64 // output at idle that the draft states
	IdleSaid bool    // it does so for every machine
	Machines []*model.Device
}

// Balances gives the balance of every solved step of a history in which the
// engine runs; none where nothing charges.
func Balances(h *solve.History) []Balance {
	var list []Balance
	for _, s := range states(h) {
		if s.Step.Engine != part.Running {
			continue
		}
		b := Balance{Step: s.Step, IdleSaid: true}
		for _, d := range h.Model.Devices {
			b.add(s, d)
		}
		if len(b.Machines) > 0 {
			list = append(list, b)
		}
	}
	return list
}

// add counts one device: what leaves all sources, less what its loads take
// above their average.
func (b *Balance) add(s *solve.State, d *model.Device) {
	for i, x := range d.Supplies() {
		b.NeedA += s.SupplyA.Of(d, i)
		if x.Battery || !wiredAt(d, x.Plus) {
			continue
		}
		b.SpeedA += x.MaxA
		b.IdleA += x.IdleA
		b.IdleSaid = b.IdleSaid && x.IdleSaid
		b.Machines = append(b.Machines, d)
	}
	for i, w := range d.Draws() {
		if w.DutyFrac > 0 {
			b.NeedA -= math.Abs(s.DrawA.Of(d, i)) * (1 - w.DutyFrac)
		}
	}
}

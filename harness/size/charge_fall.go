package size

import (
	"context"

	"legwork/harness/model"
)

// What a charge path may lose at 12 V with the machine at its rating.
const (
	chargeFeedV   = 0.4 // machine to battery; 0.8 at 24 V (source journal-limits)
	chargeReturnV = 0.2 // battery back to machine (source drop-guide-part)
)

// Charge is one side of the way between a machine that charges and a battery,
// or both, with the machine at its rated output.
type Charge struct {
	Device  *model.Device // the machine
	Battery *model.Device
	RatedA  float64
	Side    string // "feed", "return", or "feed and return" where the circuit says how much both may lose
	DropV   float64
	LimitV  float64
	Wires   []*model.Wire

	flows []flow
}

// The sides of a charge path.
const (
	FeedSide   = "feed"
	ReturnSide = "return"
	BothSides  = "feed and return"
)

func (x *Charge) loss() *loss {
	return &loss{dropV: x.DropV, limitV: x.LimitV, flows: x.flows, hot: true}
}

// Amps is what the machine puts through one of the path's wires.
func (x *Charge) Amps(w *model.Wire) float64 {
	for _, f := range x.flows {
		if f.wire == w {
			return f.amps
		}
	}
	return 0
}

// recharge finds the charging currents with the wires as they were played.
func (c *chooser) recharge(ctx context.Context) error {
	if c.charge == nil {
		return nil
	}
	return c.charge.play(ctx, c.hotOhms, c.sureFuseOhm)
}

// hotOhms gives the resistance of an edge that is a wire, as it was played but
// as warm as the charging current makes it.
func (c *chooser) hotOhms(w *model.Wire) float64 {
	k := &c.played[w.ID]
	return c.hotOhm(w, c.ratingOf(w, k.Size))
}

// through gives the charging current of a wire, 0 where nothing charges.
func (k *charging) through(w *model.Wire) float64 {
	if k == nil || k.wireA == nil {
		return 0
	}
	return k.wireA[w.ID]
}

// throughFuse gives the charging current of a protective element.
func (k *charging) throughFuse(d *model.Device, index int) float64 {
	if k == nil {
		return 0
	}
	return k.fuseA[fuseKey{d, index}]
}

// charges lists what every machine loses on its way, each side by itself.
func (c *chooser) charges() []Charge {
	if c.charge == nil {
		return nil
	}
	var list []Charge
	scale := c.m.SystemV / 12
	for i, s := range c.charge.machines {
		f := c.charge.fallV[i]
		if f.cell == nil {
			continue
		}
		add := func(side string, dropV, limitV float64, flows []flow) {
			x := Charge{Device: s.device, Battery: f.cell.plus.Device, RatedA: s.amps, Side: side, DropV: dropV, LimitV: limitV, flows: flows}
			for _, o := range flows {
				x.Wires = append(x.Wires, o.wire)
			}
			list = append(list, x)
		}
		if k := circuitFeeding(s.device, s.device.Supplies()[s.index].Plus); k != nil && k.DropFrac > 0 {
			add(BothSides, f.feedV+f.backV, k.DropFrac*c.m.SystemV, append(f.feed[:len(f.feed):len(f.feed)], f.back...))
			continue
		}
		add(FeedSide, f.feedV, chargeFeedV*scale, f.feed)
		add(ReturnSide, f.backV, chargeReturnV*scale, f.back)
	}
	return list
}

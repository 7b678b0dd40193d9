package harness

import (
	"cmp"
	"fmt"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/shop"
	"legwork/harness/size"
)

// loadName names a load by its device, and by its feed where the device has
// several.
func loadName(p size.Path) string {
	draws := p.Device.Kind.Draws(p.Device.Device)
	if len(draws) < 2 || p.Draw >= len(draws) {
		return p.Device.Name
	}
	if t, ok := terminalOf(p.Device, draws[p.Draw].Plus); ok {
		return t.Shown
	}
	return p.Device.Name
}

func terminalOf(d *model.Device, pin string) (*model.Terminal, bool) {
	i, ok := d.PinOf(pin)
	if !ok || i >= len(d.Terminals) {
		return nil, false
	}
	return d.Terminals[i], true
}

// lossesThrough lists the loads whose current passes a wire, tightest first,
// with what each loses and what of it this wire takes.
func (r *Result) lossesThrough(w *model.Wire) Group {
	paths := r.Sizes.Through(w)
	if len(paths) == 0 {
		return Group{}
	}
	slices.SortStableFunc(paths, func(a, b size.Path) int { return cmp.Compare(a.LimitV-a.DropV, b.LimitV-b.DropV) })
	t := lossTable()
	t.Columns = append(t.Columns, shop.Column{Key: "wire_mv", Name: "of it here", Unit: "mV", Kind: shop.Number})
	for _, p := range paths {
		here := r.ampsIn(w, p.Step) * r.Sizes.Wires[w.ID].Conductor.Ohm
		t.Rows = append(t.Rows, append(lossRow(p), shop.Figure(1000*here, 1)))
	}
	return Group{Title: "Loads on its way, each in its tightest step", Steps: []gauge.Step{lossLaw}, Table: &t}
}

// lossLaw says how the loss of a load is counted.
var lossLaw = gauge.Step{Text: "lost from the battery's posts to the load, feed and return", Equation: "(volts post to post) - (volts across the load)", Source: gauge.NodeLaw}

func lossTable() shop.Table {
	return shop.Table{Columns: []shop.Column{
		{Key: "load", Name: "Load"},
		{Key: "step", Name: "Step"},
		{Key: "lost_mv", Name: "lost", Unit: "mV", Kind: shop.Number},
		{Key: "allowed_mv", Name: "allowed", Unit: "mV", Kind: shop.Number},
		{Key: "usual_mv", Name: "usual contacts", Unit: "mV", Kind: shop.Number},
	}}
}

func lossRow(p size.Path) []shop.Cell {
	return []shop.Cell{
		shop.Word(loadName(p)), shop.Word(p.Step.Name),
		shop.Figure(1000*p.DropV, 1), shop.Figure(1000*p.LimitV, 1), shop.Figure(1000*p.UsualV, 1),
	}
}

// lossesOf shows where a device's loads lose their volts: the share of each
// wire, fuse and contact, of the joints and of metal.
func (r *Result) lossesOf(d *model.Device) []Group {
	if d.Kind.Draws == nil {
		return nil
	}
	var groups []Group
	for i := range d.Kind.Draws(d.Device) {
		if p, ok := r.Sizes.WorstDrop(d, i); ok {
			groups = append(groups, r.shares(p))
		}
	}
	return groups
}

func (r *Result) shares(p size.Path) Group {
	state := "passes"
	if p.DropV > p.LimitV {
		state = "fails"
	}
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	g := Group{Title: fmt.Sprintf("Drop of %s in %s: %s, at most %s: %s; %s with usual contacts",
		loadName(p), p.Step.Name, volts(p.DropV), volts(p.LimitV), state, volts(p.UsualV))}
	rest, joints, drivers := p.DropV+p.DriverV+p.StatedV, 0.0, []gauge.Step(nil)
	for _, x := range p.Shares {
		rest -= x.Volts + x.JointV
		joints += x.JointV
		if step := r.shareStep(x); x.Kind == size.DriverShare && p.DriverV > 0 || x.Stated() && p.StatedV > 0 {
			step.Text += ": no wiring, left out of the drop"
			drivers = append(drivers, step)
		} else {
			g.Steps = append(g.Steps, step)
		}
	}
	if joints > 0 {
		g.Steps = append(g.Steps, gauge.Step{Text: "bolted joints at the ends of these wires", Equation: "sum(I R)", Value: joints, Unit: "V", Source: "ring-joint"})
	}
	if rest > leastRestV {
		g.Steps = append(g.Steps, gauge.Step{Text: "metal and the rest of the way", Equation: "loss - sum of the above", Value: round(rest, 9), Unit: "V"})
	}
	g.Steps = append(g.Steps, drivers...)
	g.Steps = append(g.Steps, gauge.Step{Text: lossLaw.Text, Equation: lossLaw.Equation, Value: p.DropV, Unit: "V", Source: lossLaw.Source})
	return g
}

// leastRestV is the least that is shown of what no share explains.
const leastRestV = 1e-6

// shareStep shows what one thing on the way takes.
func (r *Result) shareStep(x size.Share) gauge.Step {
	if x.Wire == nil {
		return gauge.Step{Text: x.Name(), Equation: quantity.Text(x.Amps, quantity.Current) + " through it", Value: x.Volts, Unit: "V"}
	}
	k := r.Sizes.Wires[x.Wire.ID].Conductor
	return gauge.Step{
		Text:     fmt.Sprintf("wire %s, %s", x.Wire.Number, k.Size.Name),
		Equation: fmt.Sprintf("%s x %s", quantity.Text(x.Amps, quantity.Current), quantity.Text(k.Ohm, quantity.Resistance)),
		Value:    x.Volts, Unit: "V",
	}
}

package check

import (
	"fmt"
	"slices"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// farAboveLoad is the rating over the load from which a fuse is large for it.
const farAboveLoad = 3.0

var _ = define(Rule{
	ID:       "fuse-far-above-load",
	Severity: diag.Note,
	Title:    "A fuse is so large for its load that it makes the wire thick.",
	Why: "A wire has to carry what its fuse lets through for ever, whatever its load draws. " +
		"Where the fuse is rated more than three times the load, the wire that legwork chooses behind it is thick for the fuse alone. " +
		"A smaller fuse serves the load, protects better and saves copper. A fuse ahead of other fuses is left alone: it has to be larger than they are.",
	Equation: "rating <= 3 x steady load, where protection governs a chosen wire",
	Figures:  []string{"fuse-margin"},
	Misses:   "Loads that come later, and starts that a smaller fuse would not outlive: a motor may need the larger one.",
	Needs:    Grounded,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  40A  from G1 6in
heater  R1  draws 7A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  R1.1  4ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
heater  R1  draws 7A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  R1.1  4ft
`,
	Run: fuseFarAboveLoad,
})

func fuseFarAboveLoad(p *Pass) {
	behind := p.thickened()
	for _, f := range p.Sizes.Fuses {
		wires := behind[fuseOf{f.Device, f.Index}]
		if len(wires) == 0 || f.Chosen || f.RatedA <= farAboveLoad*f.LoadA || p.pulledThrough(f) {
			continue
		}
		wires = slices.DeleteFunc(wires, func(w size.Wire) bool { return w.DesignA > fedBeside*f.LoadA }) // another fuse feeds it too
		most, w, found := p.mostSaved(wires)
		if !found {
			continue
		}
		p.Report(diag.Finding{
			At: f.Device.Protects()[f.Index].At,
			Msg: fmt.Sprintf("%s %s protects %s of load; behind %s wire %s could be %s in place of %s", f.Device.Name,
				quantity.Text(f.RatedA, quantity.Current), quantity.Text(f.LoadA, quantity.Current),
				quantity.Text(most.RatedA, quantity.Current), w.Wire.Number, most.Size.Name, w.Conductor.Size.Name),
			Detail: "Fit the smaller fuse, unless more load is to come or a start needs the larger one.",
			Values: []diag.Value{{Name: "rating", Got: f.RatedA, Limit: farAboveLoad * f.LoadA, Unit: "A", Bound: diag.AtMost}},
			Fix:    p.rerated(f.Device, f.Index, most.RatedA),
		})
	}
}

// fedBeside is the share of a fuse's load from which a wire behind it must have
// more than that fuse to come by: rounding makes no tenth.
const fedBeside = 1.1

// pulledThrough reports whether a starter's solenoid pulls in by a fuse: that
// current asks for more than what flows for long.
func (p *Pass) pulledThrough(f size.Fuse) bool {
	x := f.Device.Protects()[f.Index]
	for _, pin := range []string{x.In, x.Out} {
		n := p.netOf(f.Device, pin)
		if n < 0 || !slices.ContainsFunc(p.Nets.Wires[n], func(w *model.Wire) bool { return p.Sizes.Wires[w.ID].PullA > 0 }) {
			return false
		}
	}
	return true
}

// fuseOf names one protective element of the model.
type fuseOf struct {
	device *model.Device
	index  int
}

// thickened lists the wires whose size protection governs, by their fuse.
func (p *Pass) thickened() map[fuseOf][]size.Wire {
	list := map[fuseOf][]size.Wire{}
	for _, w := range p.Sizes.Wires {
		if g := p.Sizes.Guards[w.Wire.ID]; g.Fuse != nil && w.Chosen && w.Governs == gauge.FloorProtection {
			at := fuseOf{g.Fuse, g.Index}
			list[at] = append(list[at], w)
		}
	}
	return list
}

// mostSaved finds the wire that gains most by a smaller fuse.
func (p *Pass) mostSaved(wires []size.Wire) (most size.Smaller, wire size.Wire, found bool) {
	for _, w := range wires {
		if s, ok := p.Sizes.Smaller(w.Wire, p.Profile); ok && s.Fewer > most.Fewer {
			most, wire, found = s, w, true
		}
	}
	return most, wire, found
}

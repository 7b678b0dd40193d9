package check

import (
	"fmt"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "drop-over-limit",
	Severity: diag.Warning,
	Title:    "A load loses more volts between the battery and itself than its class allows.",
	Why: "Every wire, fuse, contact and bolted joint on the way in and on the way back takes its share. " +
		"A pump loses flow, a lamp light, a controller margin. The loss is counted from the battery's posts to the load's own terminals, " +
		"feed and return together, in the steps where it works. " +
		"What a controller's own driver takes is left out: no wire cures it, and the volts at the load have it in. " +
		"Where only usual plug contacts, which no standard promises, would take it over the limit, that is a note.",
	Equation: "(volts post to post) - (volts across the load) <= limit",
	Figures:  []string{"drop-3", "drop-10"},
	Misses:   "Corroded and loose contacts. While the starter turns, feed-low-while-cranking judges by volts instead.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
motor   M1  draws 7A 13.5V
stud    E1  on frame  M6
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  M1.+  18AWG  20ft
wire 3  M1.-  E1    18AWG  3ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
motor   M1  draws 7A 13.5V
stud    E1  on frame  M6
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  M1.+  12AWG  20ft
wire 3  M1.-  E1    18AWG  3ft
`,
	Run: dropOverLimit,
})

// loadOf names one load of the model.
type loadOf struct {
	device *model.Device
	draw   int
}

func dropOverLimit(p *Pass) {
	paths := map[loadOf][]size.Path{}
	for _, path := range p.Sizes.Drops() {
		l := loadOf{path.Device, path.Draw}
		paths[l] = append(paths[l], path)
	}
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		worst, ok := worstDrop(paths[loadOf{d, i}], w)
		if !ok {
			return
		}
		f := diag.Finding{
			At:     w.At,
			Msg:    dropMessage(p.Model, worst, worst.DropV, ""),
			Detail: dropDetail(p, worst),
			Values: []diag.Value{{Name: "drop", Got: worst.DropV, Limit: worst.LimitV, Unit: "V", Bound: diag.AtMost}},
		}
		if worst.DropV <= worst.LimitV {
			f.Severity = diag.Note
			f.Msg = dropMessage(p.Model, worst, worst.UsualV, " with usual contacts")
			f.Values[0].Got = worst.UsualV
			f.Detail = fmt.Sprintf("Figures that are sure give %s; usual contacts of plugs and switches add the rest.",
				quantity.Text(worst.DropV, quantity.Voltage))
		}
		p.Report(f)
	})
}

// worstDrop gives the path of a load that is farthest over its limit; ok is
// false where every path keeps it, usual contacts included.
func worstDrop(paths []size.Path, w part.Draw) (worst size.Path, ok bool) {
	most := 0.0
	for _, path := range paths {
		if path.Step.Engine == part.Turning && !w.Starter {
			continue
		}
		over := path.DropV - path.LimitV
		if over <= 0 {
			over = (path.UsualV - path.LimitV) * 1e-6 // any sure excess outweighs a usual one
		}
		if over > most {
			most, worst, ok = over, path, true
		}
	}
	return worst, ok
}

func dropMessage(m *model.Model, path size.Path, volts float64, how string) string {
	return fmt.Sprintf("%s loses %s (%.1f %%)%s in %s; the limit is %s (%.1f %%)", path.Device.Name,
		quantity.Text(volts, quantity.Voltage), 100*volts/m.SystemV, how, path.Step.Name,
		quantity.Text(path.LimitV, quantity.Voltage), 100*path.LimitV/m.SystemV)
}

// dropDetail names what takes the largest share, wire or not, and whether
// thicker wire can cure it.
func dropDetail(p *Pass, path size.Path) string {
	most, wires := greatest(path)
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	detail := ""
	if most.volts > 0 {
		detail = fmt.Sprintf("%s takes the most of it: %s.", most.name(p), volts(most.volts))
	}
	if wires < path.DropV/2 {
		detail += fmt.Sprintf(" The copper of all wires together takes %s: thicker wire alone does not cure it.", volts(wires))
	}
	if path.DriverV > 0 {
		detail += fmt.Sprintf(" The controller's own driver takes %s more, which is no wiring and not counted.", volts(path.DriverV))
	}
	if path.ExtraA > 0 {
		detail += fmt.Sprintf(" That is at its start, with %s more than steady.", quantity.Text(path.ExtraA, quantity.Current))
	}
	return strings.TrimSpace(detail)
}

// lossPart is a share of a loss, or the bolted joints of a wire.
type lossPart struct {
	size.Share
	joints bool
	volts  float64
}

// name says what it is, fit to begin a sentence.
func (l lossPart) name(p *Pass) string {
	name := l.Name()
	switch {
	case l.joints:
		name = "the bolted joints of " + name
	case l.Wire != nil:
		name += ", " + p.Sizes.Wires[l.Wire.ID].Conductor.Size.Name + ","
	}
	return strings.ToUpper(name[:1]) + name[1:]
}

// greatest finds the part of a path that takes most, drivers left out where
// they are not counted, and what the copper of all wires takes.
func greatest(path size.Path) (most lossPart, wires float64) {
	for _, x := range path.Shares {
		if x.Kind == size.WireShare {
			wires += x.Volts
		}
		if x.Kind == size.DriverShare && path.DriverV > 0 {
			continue
		}
		if x.Volts > most.volts {
			most = lossPart{Share: x, volts: x.Volts}
		}
		if x.JointV > most.volts {
			most = lossPart{Share: x, joints: true, volts: x.JointV}
		}
	}
	return most, wires
}

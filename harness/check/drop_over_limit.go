package check

import (
	"cmp"
	"fmt"
	"slices"

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
		"What a controller's own driver takes, or a resistor that the draft puts in the line, is left out: no wire cures it, and the volts at the load have it in. " +
		"Where only usual plug contacts, which no standard promises, would take it over the limit, that is a note. " +
		"Where one wire or part takes more than half of what several loads lose, they are told of once.",
	Equation: "(volts post to post) - (volts across the load) <= limit",
	Figures:  []string{"drop-3", "drop-10"},
	Misses:   "Corroded and loose contacts. Loads in series with one another, which share the volts as they are made to. While the starter turns, feed-low-while-cranking judges by volts instead.",
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
		w := path.Device.Draws()[path.Draw]
		if p.inSeries(w, p.netOf(path.Device, w.Plus), p.netOf(path.Device, w.Minus)) {
			continue
		}
		l := loadOf{path.Device, path.Draw}
		paths[l] = append(paths[l], path)
	}
	var list []*overLimit
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
		f.Related = losses(p, worst)
		if worst.DropV <= worst.LimitV {
			f.Severity = diag.Note
			f.Msg = dropMessage(p.Model, worst, worst.UsualV, " with usual contacts")
			f.Values[0].Got = worst.UsualV
			f.Detail = fmt.Sprintf("Figures that are sure give %s; usual contacts of plugs and switches add the rest.",
				quantity.Text(worst.DropV, quantity.Voltage))
		}
		list = append(list, &overLimit{Finding: f, path: worst})
	})
	for _, o := range oneEach(list) {
		p.Report(o.Finding)
	}
}

// overLimit is a finding with the path that it tells of.
type overLimit struct {
	diag.Finding
	path size.Path
}

// oneEach leaves, of the findings with one thing to blame for most of the
// loss, the one that is farthest over its limit; the others are named in it.
func oneEach(list []*overLimit) []*overLimit {
	type blame struct {
		wire   *model.Wire
		device *model.Device
		joints bool
	}
	first := map[blame]*overLimit{}
	var out []*overLimit
	for _, o := range sortedByExcess(list) {
		most, _ := greatest(o.path)
		b := blame{most.Wire, most.Device, most.joints}
		if o.Severity == diag.Note || most.volts < o.path.DropV/2 {
			out = append(out, o)
			continue
		}
		if f := first[b]; f != nil {
			f.Related = append(f.Related, diag.Related{At: o.At, Msg: o.Msg + ", for the same reason"})
			continue
		}
		first[b] = o
		out = append(out, o)
	}
	return out
}

// sortedByExcess puts the loss that is the largest share of its limit first.
func sortedByExcess(list []*overLimit) []*overLimit {
	return slices.SortedStableFunc(slices.Values(list), func(a, b *overLimit) int {
		return cmp.Compare(b.path.DropV/b.path.LimitV, a.path.DropV/a.path.LimitV)
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

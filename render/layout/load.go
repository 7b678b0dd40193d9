package layout

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/route"
)

// load is what runs through a leg where the most wires are side by side.
type load struct {
	wires    []*model.Wire
	bundleMM float64 // 0: not known
}

// weigh finds the load of every leg.
func (p *plan) weigh() {
	p.loads = make([]load, len(p.m.Legs))
	if p.in.Routes == nil {
		return
	}
	runs := make([][]run, len(p.m.Legs))
	for id, path := range p.in.Routes.Paths {
		for _, s := range path.Legs {
			r := runOn(p.m.Wires[id], s, path)
			runs[s.Leg.ID] = append(runs[s.Leg.ID], r)
		}
	}
	for _, l := range p.m.Legs {
		wires := fullest(runs[l.ID])
		p.loads[l.ID] = load{wires, p.bundle(wires)}
	}
}

// run is the stretch of a leg that one wire lies in, from its first place, m.
type run struct {
	wire     *model.Wire
	from, to float64
}

// runOn says where in a leg a stretch lies: a wire that ends within the leg
// comes in from the place on its way.
func runOn(w *model.Wire, s route.Stretch, path route.Path) run {
	const eps = 1e-6
	r := run{w, 0, s.Leg.LengthM}
	var within []float64
	for _, t := range []*model.Terminal{w.From, w.To} {
		if t.Device.Spot.Leg == s.Leg {
			within = append(within, t.Device.Spot.OffsetM)
		}
	}
	if s.LengthM > s.Leg.LengthM-eps || len(within) == 0 {
		return r
	}
	if len(within) == 2 && math.Abs(math.Abs(within[0]-within[1])-s.LengthM) < eps {
		r.from, r.to = min(within[0], within[1]), max(within[0], within[1])
		return r
	}
	for _, o := range within {
		first := math.Abs(o-s.LengthM) < eps
		last := math.Abs(s.Leg.LengthM-o-s.LengthM) < eps
		if first && (!last || slices.Contains(path.Places, s.Leg.A)) {
			return run{w, 0, o}
		}
		if last {
			return run{w, o, s.Leg.LengthM}
		}
	}
	return r
}

// fullest gives the wires side by side where they are most.
func fullest(runs []run) []*model.Wire {
	var best []*model.Wire
	for _, at := range runs {
		var here []*model.Wire
		for _, r := range runs {
			if r.from <= at.from && at.from < r.to {
				here = append(here, r.wire)
			}
		}
		if len(here) > len(best) {
			best = here
		}
	}
	return best
}

// bundle is the diameter of wires side by side, mm; 0 where a size is missing.
func (p *plan) bundle(wires []*model.Wire) float64 {
	if p.in.Sizes == nil {
		return 0
	}
	var across []float64
	for _, w := range wires {
		c := p.in.Sizes.Wires[w.ID].Conductor
		across = append(across, gauge.DiameterOf(c.Size, c.Family).OutsideMM)
	}
	b, ok := gauge.BundleOf(across...)
	if !ok {
		return 0
	}
	return b.MM
}

// thickMM is how thick a leg is drawn: thick bundles look thick, and none is a
// hair or a slab.
func (l load) thickMM() float64 { return min(max(0.9+0.22*l.bundleMM, 1.6), 6) }

// old reports whether all that runs through the leg is in the vehicle already.
func (l load) old() bool {
	return len(l.wires) > 0 && !slices.ContainsFunc(l.wires, func(w *model.Wire) bool { return !w.Existing })
}

// option is the option that all its wires belong to, "" for none.
func (l load) option() string {
	name := ""
	for i, w := range l.wires {
		o := optionOf(w)
		if o == "" || i > 0 && o != name {
			return ""
		}
		name = o
	}
	return name
}

func optionOf(w *model.Wire) string {
	for _, o := range []*model.Option{w.Option, w.Circuit.Option, w.From.Device.Option, w.To.Device.Option} {
		if o != nil {
			return o.Name
		}
	}
	return ""
}

// words are what a leg is labeled with: length, wires and bundle, covering.
func (p *plan) words(l *model.Leg) []string {
	long := quantity.LengthText(l.LengthM, p.m.Metric)
	if !l.Known {
		long += " assumed"
	}
	load := p.loads[l.ID]
	second := count(len(load.wires), "wire")
	if d := load.bundleMM; d > 0 {
		second += ", \u00d8 " + p.across(d)
	}
	cover := l.Covering
	if cover == "" {
		cover = "covering not said"
	}
	if o := load.option(); o != "" {
		cover += ", option " + o
	}
	if load.old() {
		cover += ", existing"
	}
	return []string{l.Name + " " + long, second, strings.ReplaceAll(cover, "split-loom", "split loom")}
}

func (p *plan) across(mm float64) string {
	if p.m.Metric {
		return fmt.Sprintf("%.1f mm", mm)
	}
	return fmt.Sprintf("%.2f in", mm/25.4)
}

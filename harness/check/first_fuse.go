package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// pastFuses tells of the wires that lead past a fuse, and gives them.
func (p *Pass) pastFuses(open *openCircuit) map[*model.Wire]bool {
	told := map[*model.Wire]bool{}
	p.eachFuse(func(d *model.Device, f part.Fuse) {
		w := open.past(pinOf(d, f.In), pinOf(d, f.Out))
		if w != nil && !told[w] {
			told[w] = true
			p.reportPast(w, d)
		}
	})
	return told
}

// firstFuses judges how far the first fuse on every unfused way lies from the
// battery. Of several fuses at the end of one wire, as on a bus, the first one
// stands for all.
func (p *Pass) firstFuses(open *openCircuit, told map[*model.Wire]bool) {
	p.eachFuse(func(d *model.Device, f part.Fuse) {
		for _, t := range []*model.Terminal{pinOf(d, f.In), pinOf(d, f.Out)} {
			if w := open.by[t.ID]; w != nil && !told[w] && p.reportDistance(open, w, t) {
				told[w] = true
			}
		}
	})
}

func (p *Pass) eachFuse(do func(d *model.Device, f part.Fuse)) {
	for _, d := range p.Model.Devices {
		for _, f := range d.Protects() {
			if pinOf(d, f.In) != nil && pinOf(d, f.Out) != nil {
				do(d, f)
			}
		}
	}
}

// past gives the wire by which one battery reaches both sides of a fuse
// without any fuse: the one that leaves where the longer way parts from the
// other, a starter's cable apart. Nil where there is none.
func (o *openCircuit) past(in, out *model.Terminal) *model.Wire {
	if math.IsInf(o.distM[in.ID], 1) || math.IsInf(o.distM[out.ID], 1) || o.root[in.ID] != o.root[out.ID] {
		return nil
	}
	near, far := in.ID, out.ID
	if onBus := len(out.Bus) > 0; onBus || len(in.Bus) == 0 && o.distM[near] > o.distM[far] {
		near, far = far, near // a bus is where a fuse is fed
	}
	common := map[int]bool{}
	for id := near; id >= 0; id = o.parent[id] {
		common[id] = true
	}
	last := o.by[far]
	for id := far; !common[id]; id = o.parent[id] {
		if w := o.by[id]; w != o.by[o.parent[id]] && !o.starter[w.ID] {
			last = w
		}
	}
	return last
}

// reportPast tells of a fuse that a wire leads past.
func (p *Pass) reportPast(w *model.Wire, fuse *model.Device) {
	p.Report(diag.Finding{
		At:      w.At,
		Msg:     fmt.Sprintf("wire %s, %s to %s, leads past %s: what lies behind it has no fuse", w.Number, w.From.Shown, w.To.Shown, fuse.Name),
		Detail:  fmt.Sprintf("Take the wire out, or begin it behind %s.", fuse.Name),
		Related: []diag.Related{{At: fuse.At, Msg: "the fuse"}},
	})
}

// reportDistance judges the way from the battery to the first fuse.
func (p *Pass) reportDistance(open *openCircuit, w *model.Wire, t *model.Terminal) bool {
	fuse, battery, length := t.Device, p.Model.Terminals[open.root[t.ID]], open.distM[t.ID]
	if fuse.FromM > 0 && len(t.Ends) > 0 {
		length = fuse.FromM
	}
	if length <= p.Profile.FirstFuseM+1e-9 || math.IsInf(length, 1) {
		return false // where every way passes a fuse, that fuse could not be rated
	}
	f := diag.Finding{
		Severity: diag.Note, At: w.At,
		Msg: fmt.Sprintf("%s without a fuse lie ahead of %s, the first one at the end of wire %s; %s is the figure to keep",
			quantity.LengthText(length, p.Model.Metric), fuse.Name, w.Number, quantity.LengthText(p.Profile.FirstFuseM, p.Model.Metric)),
		Detail: "Move the fuse nearer to the battery, or run the wire in its own sheath away from metal.",
		Values: []diag.Value{{Name: "unprotected length", Got: length, Limit: p.Profile.FirstFuseM, Unit: "m", Bound: diag.AtMost}},
	}
	switch leaves := fuse.Spot.Place != battery.Device.Spot.Place; {
	case p.Profile.NearMust:
		f.Severity = diag.Fault
	case p.guessed(open, t): // a note
	case leaves || length > p.Profile.SheathedM+1e-9:
		f.Severity = diag.Warning
		f.Detail = "Put a fuse at the battery: along the whole of that way a chafed wire burns with nothing to stop it."
	}
	p.Report(f)
	return true
}

// guessed reports whether the length of any wire on the way is an assumed one.
func (p *Pass) guessed(open *openCircuit, t *model.Terminal) bool {
	for id := t.ID; open.parent[id] >= 0; id = open.parent[id] {
		if w := open.by[id]; w != nil && (!p.Routes.Paths[w.ID].Known || p.Routes.Paths[w.ID].Assumed) {
			return true
		}
	}
	return false
}

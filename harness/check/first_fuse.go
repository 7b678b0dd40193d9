package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// pastFuses gives the wires that lead past a fuse, each with that fuse.
func (p *Pass) pastFuses(open *openCircuit) map[*model.Wire]*model.Device {
	past := map[*model.Wire]*model.Device{}
	one := open.joined()
	p.eachFuse(func(d *model.Device, f part.Fuse) {
		w := open.past(one, pinOf(d, f.In), pinOf(d, f.Out))
		if w != nil && past[w] == nil {
			past[w] = d
		}
	})
	return past
}

// firstFuses judges how far the first fuse on every unfused way lies from the
// battery. Of several fuses at the end of one wire, as on a bus, the first one
// stands for all; of several behind one wire that is too long, it is told with
// the others.
func (p *Pass) firstFuses(open *openCircuit, past map[*model.Wire]*model.Device) {
	told := map[*model.Wire]bool{}
	var list []*diag.Finding
	behind := map[*model.Wire]*diag.Finding{}
	p.eachFuse(func(d *model.Device, f part.Fuse) {
		for _, t := range []*model.Terminal{pinOf(d, f.In), pinOf(d, f.Out)} {
			w := open.by[t.ID]
			if w == nil || past[w] != nil || told[w] {
				continue
			}
			f, far := p.farFuse(open, w, t)
			if !far {
				continue
			}
			told[w] = true
			long := open.crossing(t, p.Profile.FirstFuseM)
			if first := behind[long]; first != nil && first.Severity == f.Severity {
				first.Related = append(first.Related, diag.Related{At: w.At, Msg: fmt.Sprintf("%s lies behind wire %s too", d.Name, long.Number)})
				continue
			}
			behind[long] = &f
			list = append(list, &f)
		}
	})
	for _, f := range list {
		p.Report(*f)
	}
}

// crossing gives the wire on the way to a terminal on which a length is passed.
func (o *openCircuit) crossing(t *model.Terminal, lengthM float64) *model.Wire {
	w := o.by[t.ID]
	for id := t.ID; o.parent[id] >= 0 && o.distM[id] > lengthM+1e-9; id = o.parent[id] {
		w = o.by[id]
	}
	return w
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

// past gives the wire by which a battery reaches both sides of a fuse without
// any fuse: the one that leaves where the longer way parts from the other, a
// starter's cable apart, or leaves the other of two batteries that are joined
// without a fuse. Nil where there is none.
func (o *openCircuit) past(one func(a, b int) bool, in, out *model.Terminal) *model.Wire {
	if math.IsInf(o.distM[in.ID], 1) || math.IsInf(o.distM[out.ID], 1) || !one(o.root[in.ID], o.root[out.ID]) {
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
	for id := far; o.parent[id] >= 0 && !common[id]; id = o.parent[id] {
		if w := o.by[id]; w != o.by[o.parent[id]] && !o.starter[w.ID] {
			last = w
		}
	}
	return last
}

// joined tells of two terminals whether an unfused way lies between them.
func (o *openCircuit) joined() func(a, b int) bool {
	group := make([]int, len(o.next))
	for id := range o.next {
		for todo := []int{id}; len(todo) > 0; {
			at := todo[len(todo)-1]
			todo = todo[:len(todo)-1]
			if group[at] != 0 {
				continue
			}
			group[at] = id + 1
			for _, w := range o.next[at] {
				todo = append(todo, w.to)
			}
		}
	}
	return func(a, b int) bool { return group[a] == group[b] }
}

// farFuse judges the way from the battery to the first fuse; far is false
// where it is short enough.
func (p *Pass) farFuse(open *openCircuit, w *model.Wire, t *model.Terminal) (f diag.Finding, far bool) {
	fuse, battery, length := t.Device, p.Model.Terminals[open.root[t.ID]], open.distM[t.ID]
	if fuse.FromM > 0 && len(t.Ends) > 0 {
		length = fuse.FromM
	}
	if length <= p.Profile.FirstFuseM+1e-9 || math.IsInf(length, 1) {
		return f, false // where every way passes a fuse, that fuse could not be rated
	}
	f = diag.Finding{
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
	return f, true
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

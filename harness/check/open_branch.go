package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
)

// branch is the wires without a fuse behind one of them, which is the place to
// put one.
type branch struct {
	first *model.Wire
	past  *model.Device // the fuse that it leads past, nil for none
	wires []*model.Wire // behind it, in the draft's order
}

// bare reports whether what lies behind a wire's end wants a fuse ahead of it.
// One that leads to uses and to fuses, as to a stud at the battery, may do so
// without as far as the first fuse may be away, unless a use hangs on its very
// end: the way on to the use is told then.
func (o *openCircuit) bare(far *model.Terminal, freeM float64) bool {
	switch leads := o.leads[far.ID]; {
	case leads == 0: // nothing at all
		return true
	case leads&toBattery != 0: // a link between batteries
		return o.near[far.ID]&toUse != 0
	case leads&toFuse == 0:
		return leads&toUse != 0
	}
	return o.near[far.ID]&toUse != 0 || o.leads[far.ID]&toUse != 0 && o.distM[far.ID] > freeM+1e-9
}

// branches puts each of the bare wires, and of those that lead past a fuse,
// under the first one on its way. What the draft accepts of one wire covers
// that wire alone.
func (p *Pass) branches(open *openCircuit, bare []*model.Wire, past map[*model.Wire]*model.Device) []*branch {
	told, index := map[*model.Wire]bool{}, map[*model.Wire]*branch{}
	for _, w := range bare {
		told[w] = true
	}
	for w := range past {
		told[w] = true
	}
	var list []*branch
	for _, w := range p.Model.Wires {
		if !told[w] {
			continue
		}
		first := w
		for id := open.farEnd(w).ID; open.parent[id] >= 0 && !p.accepted(w); id = open.parent[id] {
			if up := open.by[id]; up != nil && told[up] && !p.accepted(up) {
				first = up
			}
		}
		b := index[first]
		if b == nil {
			b = &branch{first: first, past: past[first]}
			index[first] = b
			list = append(list, b)
		}
		if w != first {
			b.wires = append(b.wires, w)
		}
	}
	return list
}

// accepted reports whether the draft accepts the running rule at a wire.
func (p *Pass) accepted(w *model.Wire) bool {
	return covering(p.Model.Accepts, diag.Finding{Rule: p.rule.ID, At: w.At}) >= 0
}

// reportBranch tells once of a branch without a fuse.
func (p *Pass) reportBranch(open *openCircuit, b *branch) {
	w := b.first
	f := diag.Finding{
		At: w.At,
		Msg: fmt.Sprintf("wire %s, %s to %s, can be fed from %s without a fuse", w.Number, w.From.Shown, w.To.Shown,
			p.Model.Terminals[open.root[open.farEnd(w).ID]].Device.Name),
		Detail: "Put a fuse where its current leaves the battery, no larger than the wire carries." + open.way(p.Model, w),
	}
	if b.past != nil {
		f.Msg = fmt.Sprintf("wire %s, %s to %s, leads past %s: what lies behind it has no fuse", w.Number, w.From.Shown, w.To.Shown, b.past.Name)
		f.Detail = fmt.Sprintf("Take the wire out, or begin it behind %s.", b.past.Name) + open.way(p.Model, w)
		f.Related = []diag.Related{{At: b.past.At, Msg: "the fuse"}}
	} else if n := len(b.wires); n == 1 {
		f.Msg += ", and a wire behind it"
	} else if n > 1 {
		f.Msg += fmt.Sprintf(", and %d wires behind it", n)
	}
	for _, o := range b.wires {
		f.Related = append(f.Related, diag.Related{At: o.At, Msg: fmt.Sprintf("wire %s, %s to %s, lies behind it", o.Number, o.From.Shown, o.To.Shown)})
	}
	p.Report(f)
}

// way names what the current passes from the battery to a wire, "" where the
// wire begins at the battery.
func (o *openCircuit) way(m *model.Model, w *model.Wire) string {
	var names []string
	id := o.farEnd(w).ID
	for ; o.parent[id] >= 0; id = o.parent[id] {
		name := m.Terminals[id].Device.Name
		if m.Terminals[o.parent[id]].Device != m.Terminals[id].Device {
			if o.by[id] == w {
				continue
			}
			name = "wire " + o.by[id].Number
		}
		names = append(names, name)
	}
	if len(names) == 0 {
		return ""
	}
	names = append(names, m.Terminals[id].Shown)
	slices.Reverse(names)
	return fmt.Sprintf(" The current comes by %s.", strings.Join(slices.Compact(names), ", "))
}

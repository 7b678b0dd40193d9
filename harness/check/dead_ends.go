package check

import (
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// mostEnds is how many dead ends of one way a finding names.
const mostEnds = 3

// deadEnds tells where the way of a terminal stops that leads to no source, or
// back to none: at contacts, fuses and cavities without a wire on their other
// side, else at the joints and the metal that nothing leads on from.
func (p *Pass) deadEnds(d *model.Device, pin string, ways [][]way) []diag.Related {
	net := p.netOf(d, pin)
	if net < 0 {
		return nil
	}
	from := make([]bool, len(ways))
	from[net] = true
	var ends, joints []diag.Related
	metals := map[*model.Metal]bool{}
	for n, in := range spread(ways, from, true) {
		if !in {
			continue
		}
		for _, t := range p.Nets.Members[n] {
			switch {
			case t.Metal != nil && !metals[t.Metal]:
				metals[t.Metal] = true
				joints = append(joints, diag.Related{At: t.Metal.At, Msg: "its way ends at " + t.Metal.Name})
			case t.Device == d || t.Metal != nil:
			case isInputLine(t):
				ends = append(ends, diag.Related{At: t.At, Msg: "its way ends at " + t.Shown + ", an input"})
			case t.Device.Kind.Joins && len(t.Ends) > 0:
				if t.Landing != part.Cavity {
					joints = append(joints, diag.Related{At: t.Device.At, Msg: "its way ends at " + t.Shown})
				}
			case len(t.Ends) == 0 && (t.Device.Kind.Joins || len(t.Bus) == 0 && (passesOn(t) || protects(t))):
				ends = append(ends, diag.Related{At: t.Device.At, Msg: "its way ends at " + t.Shown + ", where no wire lands"})
			}
		}
	}
	if len(ends) == 0 {
		ends = joints
	}
	return ends[:min(len(ends), mostEnds)]
}

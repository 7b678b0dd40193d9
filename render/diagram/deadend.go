package diagram

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// isDeadEnd reports whether the kind is the end of a single wire that leads
// nowhere: a thing with a symbol of its own, where a splice or stud is a bar.
func isDeadEnd(k *part.Kind) bool {
	return k.Self && len(k.Symbol.Pins) == 1 && len(k.Terminals) == 1 && k.Terminals[0].Landing == part.Joint
}

// turnDeadEnds makes every dead end face what its wire comes from: it hangs
// under a lower pin, a rail or a bar, and stands over an upper pin or a stud.
func (p *plan) turnDeadEnds() {
	for _, r := range p.runs {
		for i := range r.ends {
			q := r.ends[i].pin
			if q == nil || !isDeadEnd(q.item.dev.Kind) {
				continue
			}
			o := r.ends[1-i]
			down := o.pin != nil && o.pin.up() || o.joint != nil && o.joint.kind == studJoint
			if down == q.up() {
				q.item.take(q.item.form.mirrored())
			}
		}
	}
}

// calledOn is the designation that a device has on the drawing: an end that
// the draft leaves open has no name of its own but that word.
func calledOn(d *model.Device) string {
	if isDeadEnd(d.Kind) {
		return d.Name[strings.LastIndexByte(d.Name, '.')+1:]
	}
	return d.Name
}

// named reports whether the draft gave the device its name.
func named(d *model.Device) bool { return calledOn(d) == d.Name }

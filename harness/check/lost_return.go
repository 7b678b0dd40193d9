package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// root is a controller that has no way back, which takes the way back from
// everything that it switches and from the sensors that return to it.
type root struct {
	device *model.Device
	nets   []bool // that lead to its grounds
	behind []*model.Device
}

// lost is what has no way back for one cause: controllers without a ground,
// and nets that another finding tells of.
type lost struct {
	list  []*root
	taken map[int]bool
}

// lostReturns finds the causes. What returns by metal that carries a starter
// or a machine that charges is told of by engine-not-bonded.
func (p *Pass) lostReturns() lost {
	l := lost{taken: map[int]bool{}}
	g := p.graph()
	afloat := make([]bool, len(g.grounds))
	for n := range p.islands() {
		afloat[n] = true
	}
	for n, in := range spread(g.back, afloat, true) {
		l.taken[n] = in
	}
	for _, d := range p.ungrounded() {
		own := make([]bool, len(g.grounds))
		for _, r := range powerGrounds(d) {
			own[p.netOf(d, r.Pin)] = true
		}
		l.list = append(l.list, &root{device: d, nets: spread(g.back, own, true)})
	}
	return l
}

// take puts a device that has no way back to its cause; it reports whether
// there is one.
func (l lost) take(d *model.Device, net int) bool {
	if l.taken[net] {
		return true
	}
	for _, r := range l.list {
		if r.device == d {
			return true
		}
		if r.nets[net] {
			if !slices.Contains(r.behind, d) {
				r.behind = append(r.behind, d)
			}
			return true
		}
	}
	return false
}

// ungrounded lists the controllers of which no ground leads back, for no
// reason that lies in the metal.
func (p *Pass) ungrounded() []*model.Device {
	back, islands := p.reach().minus, p.islands()
	var list []*model.Device
	for _, d := range p.Model.Devices {
		if d.Kind.Grounds == nil || !anyWire(d) || len(powerGrounds(d)) == 0 {
			continue
		}
		sound := slices.ContainsFunc(powerGrounds(d), func(r part.Return) bool {
			t := pinOf(d, r.Pin)
			return t == nil || leftOut(t) || t.Metal != nil || back[p.Nets.Of[t.ID]] || islands[p.Nets.Of[t.ID]]
		})
		if !sound {
			list = append(list, d)
		}
	}
	return list
}

// powerGrounds lists the grounds that carry a controller's current.
func powerGrounds(d *model.Device) []part.Return {
	var list []part.Return
	for _, r := range d.Grounds() {
		if !r.Sensor {
			list = append(list, r)
		}
	}
	return list
}

// leftOut reports whether a terminal has no wire on purpose: it is a spare, or
// its device is in the vehicle already and wired where the draft does not look.
func leftOut(t *model.Terminal) bool {
	return len(t.Ends) == 0 && len(t.Bus) == 0 && t.Metal == nil && (t.Device.Existing || t.Device.Pins[t.Pin].Quiet)
}

// afloat reports whether a controller, or the metal of a starter or of a
// machine that charges, has no way back: then much else only looks at fault.
func (p *Pass) afloat() bool { return len(p.ungrounded()) > 0 || len(p.islands()) > 0 }

// mostNamed is how many devices a message names one by one.
const mostNamed = 3

// reportUngrounded tells of a controller without a ground and of what it
// takes with it.
func (p *Pass) reportUngrounded(r *root) {
	d := r.device
	first := powerGrounds(d)[0]
	t := pinOf(d, first.Pin)
	f := diag.Finding{
		At: first.At, Msg: fmt.Sprintf("%s has no way back to the battery", d.Name), Detail: landing(t),
		Related: append([]diag.Related{{At: d.At, Msg: "the device"}}, feedingWires(d, first.Pin)...),
	}
	if len(t.Ends) == 0 {
		f.Msg = fmt.Sprintf("%s has no wire: %s", shown(d, first.Pin), f.Msg)
		f.Detail = "Wire it to the battery's negative post, or to metal that is bonded to it."
	} else {
		f.Msg += " by " + shown(d, first.Pin)
	}
	if n := len(r.behind); n > 0 {
		var names []string
		for _, b := range r.behind[:min(n, mostNamed)] {
			names = append(names, b.Name)
			f.Related = append(f.Related, diag.Related{At: b.At, Msg: b.Name + " returns through it"})
		}
		verb := ", nor have "
		if n == 1 {
			verb = ", nor has "
		}
		f.Msg += verb + strings.Join(names, ", ")
		if n > mostNamed {
			f.Msg += fmt.Sprintf(" and %d more", n-mostNamed)
		}
	}
	p.Report(f)
}

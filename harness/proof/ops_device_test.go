package proof

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/model"
)

// deviceOperators are mistakes with fuses, relays, keys and diodes.
var deviceOperators = []operator{
	{name: "fuse doubled", does: "a fuse of twice the rating is fitted", notes: true, sites: doubledFuses},
	{name: "fuse halved", does: "a fuse of half the rating is fitted where more than half is drawn", sites: halvedFuses},
	{name: "87 and 87a exchanged", does: "a change-over relay is fitted, and the load hangs on its rest contact", sites: restContacts},
	{name: "coil behind its own contact", does: "the coil of a relay is fed from its load side", sites: ownContacts},
	{name: "weak relay", does: "a relay for half the current is fitted where more than half is switched", sites: weakRelays},
	{name: "no suppression", does: "a relay without suppression is fitted on a controller's output", sites: baredCoils},
	{name: "feed moved to ACC", does: "a wire moves from the key's IGN to ACC", sites: func(b *base) []mutant { return keyMoves(b, "IGN", "ACC") }},
	{name: "feed moved to START", does: "a wire moves from the key's IGN to ST", sites: func(b *base) []mutant { return keyMoves(b, "IGN", "ST") }},
	{name: "feed always live", does: "a wire moves from the key's IGN to B", sites: func(b *base) []mutant { return keyMoves(b, "IGN", "B") }},
	{name: "start moved to run", does: "a wire moves from the key's ST to IGN", sites: func(b *base) []mutant { return keyMoves(b, "ST", "IGN") }},
	{name: "key lets go", does: "a key is fitted that joins nothing for 80 ms on its way to start", sites: gappyKeys},
	{name: "diode turned", does: "a diode sits the wrong way round", sites: turnedDiodes},
	{name: "battery turned", does: "the posts of a battery are exchanged", sites: turnedBatteries},
}

func doubledFuses(b *base) []mutant { return ratedFuses(b, 2, func(_, _ float64) bool { return true }) }

func halvedFuses(b *base) []mutant {
	return ratedFuses(b, 0.5, func(loadA, ratedA float64) bool { return loadA > ratedA/2 })
}

// ratedFuses gives fuses that state their rating another one.
func ratedFuses(b *base, times float64, where func(loadA, ratedA float64) bool) (list []mutant) {
	for _, f := range b.result.Sizes.Fuses {
		line, was := b.line(f.Device.Stmt.Line), number(f.RatedA)+"A"
		if !slices.Contains(words(line), was) || f.Device.Stmt.At.File != "x.draft" || !where(f.LoadA, f.RatedA) {
			continue
		}
		to := number(times*f.RatedA) + "A"
		list = append(list, mutant{sound: times > 1 && b.carry(f.Device, times*f.RatedA), what: fmt.Sprintf("%s is %s for %s", f.Device.Name, to, was), names: []string{f.Device.Name},
			edits: map[int]string{f.Device.Stmt.Line: swapped(line, map[string]string{was: to})}})
	}
	return list
}

// relaysOf gives the relays of the draft with what lies on a terminal of each.
func relaysOf(b *base) (list []*model.Device) {
	for _, d := range b.result.Model.Devices {
		if d.Kind.Name == "relay" && d.Stmt.At.File == "x.draft" {
			list = append(list, d)
		}
	}
	return list
}

func restContacts(b *base) (list []mutant) {
	for _, d := range relaysOf(b) {
		t := d.Terminal("87")
		if t == nil || len(t.Ends) == 0 || slices.ContainsFunc(b.lines, func(l string) bool { return strings.HasPrefix(l, "spare "+d.Name+".") }) {
			continue
		}
		m := mutant{what: "the load of " + d.Name + " hangs on 87a", names: []string{d.Name}, edits: map[int]string{}}
		m.edits[d.Stmt.Line] = b.line(d.Stmt.Line) + "  change-over"
		for _, e := range t.Ends {
			m.edits[e.Wire.Stmt.Line] = swapped(b.line(e.Wire.Stmt.Line), map[string]string{t.Shown: d.Name + ".87a"})
			m.names = append(m.names, wireNames(e.Wire)...)
		}
		m.added = []string{"spare " + d.Name + ".87"}
		list = append(list, m)
	}
	return list
}

func ownContacts(b *base) (list []mutant) {
	for _, d := range relaysOf(b) {
		coil := d.Terminal("86")
		load := d.Terminal("87")
		if coil == nil || load == nil || len(coil.Ends) != 1 || len(load.Ends) == 0 {
			continue
		}
		w := coil.Ends[0].Wire
		other := w.From
		if other == coil {
			other = w.To
		}
		m := b.rewired(w, fmt.Sprintf("%s comes from %s", wireText(w), load.Shown), map[string]string{other.Shown: load.Shown})
		m.names = append(m.names, d.Name)
		together := "together " + load.Shown + " " + w.Number
		for _, e := range load.Ends {
			together += " " + e.Wire.Number
			b.forget(&m, e.Wire.Number, load.Shown)
		}
		m.added = []string{together}
		list = append(list, m)
	}
	return list
}

// weakRelays halves every rating of the contact.
func weakRelays(b *base) (list []mutant) {
	for _, d := range relaysOf(b) {
		line := b.line(d.Stmt.Line)
		by := map[string]string{}
		for _, name := range []string{"contact", "motor", "lamp"} {
			if v := number(d.Num(name)); d.Said(name) && slices.Contains(words(line), v+"A") {
				by[v+"A"] = number(d.Num(name)/2) + "A"
			}
		}
		if len(by) == 0 || throughA(b, d) < d.Num("contact")/2 {
			continue
		}
		list = append(list, mutant{what: d.Name + " is good for half the current", names: []string{d.Name},
			edits: map[int]string{d.Stmt.Line: swapped(line, by)}})
	}
	return list
}

// throughA is the largest current of a wire at a relay's 87, for which its
// contact has to be good.
func throughA(b *base, d *model.Device) (amps float64) {
	for _, e := range d.Terminal("87").Ends {
		if w := b.result.Sizes.Wires[e.Wire.ID]; w.At != "crank" && w.At != "engage" {
			amps = max(amps, w.DesignA)
		}
	}
	return amps
}

func baredCoils(b *base) (list []mutant) {
	for _, d := range relaysOf(b) {
		line := b.line(d.Stmt.Line)
		at := strings.Index(line, " suppress ")
		if at < 0 || !workedByOutput(b, d) {
			continue
		}
		list = append(list, mutant{what: d.Name + " has nothing across its coil", names: []string{d.Name}, edits: map[int]string{
			d.Stmt.Line: line[:at] + strings.TrimPrefix(line[at:], " suppress "+words(line[at:])[1]),
		}})
	}
	return list
}

// keyMoves lands wires of one terminal of the key on another one.
func keyMoves(b *base, from, to string) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		if d.Kind.Name != "keyswitch" {
			continue
		}
		t, other := d.Terminal(from), d.Terminal(to)
		if t == nil || other == nil {
			continue
		}
		shown := other.Shown
		for _, e := range t.Ends {
			m := b.rewired(e.Wire, fmt.Sprintf("%s lands on %s", wireText(e.Wire), shown), map[string]string{t.Shown: shown})
			line := "together " + shown + " " + e.Wire.Number
			for _, o := range other.Ends {
				line += " " + o.Wire.Number
			}
			if len(other.Ends) > 0 {
				m.added = []string{line}
			}
			m.names = append(m.names, d.Name)
			list = append(list, m)
		}
	}
	return list
}

func gappyKeys(b *base) (list []mutant) {
	for i, line := range b.lines {
		if list0 := words(line); len(list0) > 1 && list0[0] == "gap" {
			list = append(list, mutant{what: "the key joins nothing for 80 ms", edits: map[int]string{i + 1: "  gap lasts 80ms"}, names: []string{"S1", "S1.IGN"}})
		}
	}
	return list
}

func turnedDiodes(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		if d.Kind.Name != "diode" {
			continue
		}
		a, k := d.Terminal("A"), d.Terminal("K")
		if len(a.Ends) == 1 && len(k.Ends) == 1 {
			list = append(list, b.exchanged(a.Ends[0].Wire, k.Ends[0].Wire, a, k))
		}
	}
	return list
}

func turnedBatteries(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		if d.Kind.Name != "battery" {
			continue
		}
		plus, minus := d.Terminal("+"), d.Terminal("-")
		m := mutant{what: "the posts of " + d.Name + " are exchanged", names: []string{d.Name}, edits: map[int]string{}}
		for _, w := range b.own() {
			for _, t := range []*model.Terminal{w.From, w.To} {
				if t == plus || t == minus {
					m.edits[w.Stmt.Line] = swapped(b.line(w.Stmt.Line), map[string]string{plus.Shown: minus.Shown, minus.Shown: plus.Shown})
					m.names = append(m.names, wireNames(w)...)
				}
			}
		}
		if len(minus.Ends) > 0 {
			list = append(list, m)
		}
	}
	return list
}

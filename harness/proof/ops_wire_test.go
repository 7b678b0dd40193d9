package proof

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// wireOperators are mistakes with one wire.
var wireOperators = []operator{
	{name: "wire cut", does: "a wire is missing", sites: cutWires},
	{name: "strap lost", does: "a strap is missing", sites: lostStraps},
	{name: "two sizes thinner", does: "a wire two steps down the ladder from the size that legwork chose is fitted", notes: true, sites: thinnerWires},
	{name: "fed ahead of the fuse", does: "a wire behind a fuse lands on the side ahead of it", sites: aheadOfFuses},
	{name: "fuse far away", does: "the wire to the first fuse is six times as long", notes: true, sites: farFuses},
	{name: "wire too short", does: "a wire is cut to half of its way", sites: shortWires},
	{name: "load's feed grounded", does: "the feed of a coil that a controller works lands on ground", sites: groundedFeeds},
	{name: "feed and return exchanged", does: "a load that minds it has its two wires exchanged", sites: reversedLoads},
}

func cutWires(b *base) (list []mutant) {
	for _, w := range b.own() {
		if w.Role != model.Strap && w.Cable == nil && !w.Existing {
			list = append(list, b.without(w, wireText(w)+" is missing"))
		}
	}
	return list
}

func lostStraps(b *base) (list []mutant) {
	for _, w := range b.own() {
		if w.Role == model.Strap {
			list = append(list, b.without(w, wireText(w)+" is missing"))
		}
	}
	return list
}

func thinnerWires(b *base) (list []mutant) {
	for _, w := range b.own() {
		down, ok := lower(w.Size, 2)
		if !ok || !b.chosen[w.Number] {
			continue
		}
		m := b.rewired(w, fmt.Sprintf("%s in %s for %s", wireText(w), down.Name, w.Size.Name), map[string]string{sizeWord(w.Size): sizeWord(down)})
		list = append(list, m)
	}
	return list
}

func aheadOfFuses(b *base) (list []mutant) {
	for _, w := range b.own() {
		for _, end := range []*model.Terminal{w.From, w.To} {
			if len(end.Device.Protects()) == 1 && end.Name == "2" {
				to := end.Device.Name + ".1"
				m := b.rewired(w, fmt.Sprintf("%s lands on %s", wireText(w), to), map[string]string{end.Shown: to})
				m.sound = b.carry(end.Device, b.ahead(end.Device))
				list = append(list, m)
			}
		}
	}
	return list
}

// carry reports whether every wire that a fuse alone protects would do behind
// a larger one.
func (b *base) carry(fuse *model.Device, ratedA float64) bool {
	for id, g := range b.result.Sizes.Guards {
		if g.Fuse != fuse {
			continue
		}
		w := b.result.Sizes.Wires[id]
		if l, ok := w.Judgement.Limit("protection"); !ok || l.Got < ratedA {
			return false
		}
	}
	return true
}

// ahead is the rating of what protects the wires ahead of a fuse.
func (b *base) ahead(fuse *model.Device) (ratedA float64) {
	nets := b.result.Model.Nets()
	for _, w := range nets.Wires[nets.Of[fuse.Terminal("1").ID]] {
		ratedA = max(ratedA, b.result.Sizes.Guards[w.ID].RatedA)
	}
	if ratedA == 0 {
		return math.Inf(1)
	}
	return ratedA
}

func farFuses(b *base) (list []mutant) {
	for _, f := range b.result.Sizes.Fuses {
		line := b.line(f.Device.Stmt.Line)
		at := strings.Index(line, " from G")
		if at < 0 || f.Device.From == nil {
			continue
		}
		given := words(line[at:])[2]
		m := mutant{what: f.Device.Name + " sits six times as far from its battery", names: []string{f.Device.Name}, edits: map[int]string{
			f.Device.Stmt.Line: swapped(line, map[string]string{given: number(6*f.Device.FromM*1000) + "mm"}),
		}}
		for _, w := range b.own() {
			if (w.From.Device == f.Device && w.From.Name == "1" || w.To.Device == f.Device && w.To.Name == "1") && !w.LengthAt.IsZero() {
				longer := swapped(b.line(w.Stmt.Line), map[string]string{lengthWord(b, w): number(6*w.LengthM*1000) + "mm"})
				m.edits[w.Stmt.Line] = longer
				m.names = append(m.names, wireNames(w)...)
			}
		}
		list = append(list, m)
	}
	return list
}

func lengthWord(b *base, w *model.Wire) string {
	return b.line(w.Stmt.Line)[w.LengthAt.Col-1 : w.LengthAt.End-1]
}

func shortWires(b *base) (list []mutant) {
	for _, w := range b.own() {
		length := b.result.Routes.Paths[w.ID].LengthM
		if w.Existing || w.Cable != nil || !w.LengthAt.IsZero() || w.Role == model.Strap || length < 0.5 {
			continue
		}
		short := fmt.Sprintf("%.0fmm", length*500)
		list = append(list, mutant{what: fmt.Sprintf("%s is cut to %s", wireText(w), short), names: wireNames(w),
			edits: map[int]string{w.Stmt.Line: b.line(w.Stmt.Line) + " " + short}})
	}
	return list
}

// metalStud is a stud of the draft that lies on metal.
func metalStud(b *base) string {
	for _, d := range b.result.Model.Devices {
		if d.BoltedTo != nil && len(d.Terminals) == 1 {
			return d.Name
		}
	}
	return ""
}

func groundedFeeds(b *base) (list []mutant) {
	for _, w := range b.own() {
		for _, ends := range [][2]*model.Terminal{{w.From, w.To}, {w.To, w.From}} {
			coil, other := ends[0], ends[1]
			if coil.Name == "86" && workedByOutput(b, coil.Device) {
				list = append(list, b.rewired(w, fmt.Sprintf("%s lands on %s", wireText(w), metalStud(b)), map[string]string{other.Shown: metalStud(b)}))
			}
		}
	}
	return list
}

// workedByOutput reports whether a line of a controller lies on the net of a
// relay's 85.
func workedByOutput(b *base, d *model.Device) bool {
	t := d.Terminal("85")
	if t == nil {
		return false
	}
	nets := b.result.Model.Nets()
	for _, o := range nets.Members[nets.Of[t.ID]] {
		if slices.ContainsFunc(o.Device.Drives(), func(out part.Output) bool { return out.Pin == o.Name }) {
			return true
		}
	}
	return false
}

func reversedLoads(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		plus, minus := d.Terminal("+"), d.Terminal("-")
		if plus == nil || minus == nil || len(plus.Ends) != 1 || len(minus.Ends) != 1 || len(d.Supplies()) > 0 || !minds(d) {
			continue
		}
		list = append(list, b.exchanged(plus.Ends[0].Wire, minus.Ends[0].Wire, plus, minus))
	}
	return list
}

// minds reports whether a load runs backwards, or dies, the wrong way round.
func minds(d *model.Device) bool {
	for _, w := range d.Draws() {
		if w.Type == part.MotorLoad {
			return true
		}
	}
	return false
}

// exchanged lands two wires on each other's terminal.
func (b *base) exchanged(one, two *model.Wire, at, other *model.Terminal) mutant {
	m := b.rewired(one, fmt.Sprintf("%s and %s are exchanged", at.Shown, other.Shown), map[string]string{at.Shown: other.Shown})
	n := b.rewired(two, "", map[string]string{other.Shown: at.Shown})
	for line, text := range n.edits {
		m.edits[line] = text
	}
	m.names = append(append(m.names, n.names...), at.Device.Name)
	return m
}

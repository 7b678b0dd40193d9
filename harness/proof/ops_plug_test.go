package proof

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/model"
)

// plugOperators are mistakes at plugs, controllers and sensors.
var plugOperators = []operator{
	{name: "halves crossed", does: "two neighbors in one half of a plug are exchanged", sites: crossedHalves},
	{name: "wire in the neighbor cavity", does: "a wire sits in the empty cavity beside its own", sites: neighborCavities},
	{name: "unsealed in the wet", does: "an unsealed plug is fitted in a wet place", sites: unsealedPlugs},
	{name: "ground on other metal", does: "a controller's ground goes to metal that its maker does not want", sites: otherMetals},
	{name: "sensor ground tied", does: "a sensor ground is joined to metal besides", sites: tiedGrounds},
	{name: "sensor returned to metal", does: "the return of a sensor goes to metal in place of the controller", sites: metalReturns},
	{name: "controller's lines exchanged", does: "neighbors of unlike kind on a controller are exchanged", sites: crossedLines},
	{name: "two in a cavity", does: "nobody said that two wires share a terminal", notes: true, sites: unsaidPairs},
}

// cavities gives, for each half of a connector, the terminals in order.
func cavities(b *base) (halves [][]*model.Terminal) {
	for _, d := range b.result.Model.Devices {
		if d.Kind.Name != "connector" || d.Stmt.At.File != "x.draft" {
			continue
		}
		by := map[string][]*model.Terminal{}
		var order []string
		for _, t := range d.Terminals {
			half, _, _ := strings.Cut(t.Name, ".")
			if by[half] == nil {
				order = append(order, half)
			}
			by[half] = append(by[half], t)
		}
		for _, half := range order {
			halves = append(halves, by[half])
		}
	}
	return halves
}

func crossedHalves(b *base) (list []mutant) {
	for _, half := range cavities(b) {
		for i := 1; i < len(half); i++ {
			one, two := half[i-1], half[i]
			if len(one.Ends) == 1 && len(two.Ends) == 1 {
				list = append(list, b.exchanged(one.Ends[0].Wire, two.Ends[0].Wire, one, two))
			}
		}
	}
	return list
}

func neighborCavities(b *base) (list []mutant) {
	for _, half := range cavities(b) {
		for i := 1; i < len(half); i++ {
			full, empty := half[i-1], half[i]
			if len(empty.Ends) > 0 {
				full, empty = empty, full
			}
			if len(full.Ends) != 1 || len(empty.Ends) > 0 {
				continue
			}
			w := full.Ends[0].Wire
			shown := full.Device.Name + "." + empty.Name
			m := b.rewired(w, fmt.Sprintf("%s sits in %s", wireText(w), shown), map[string]string{full.Shown: shown})
			b.fill(&m, full.Device, empty.Name)
			list = append(list, m)
		}
	}
	return list
}

// fill takes a cavity out of the line that says which stay empty.
func (b *base) fill(m *mutant, d *model.Device, cavity string) {
	for _, c := range d.Stmt.Children {
		line := b.line(c.Line)
		list := words(line)
		if list[0] != "spare" {
			continue
		}
		left := slices.DeleteFunc(list, func(w string) bool { return strings.TrimSuffix(w, ",") == cavity })
		m.edits[c.Line] = ""
		if len(left) > 1 {
			m.edits[c.Line] = indent(line) + strings.Join(left, " ")
		}
	}
}

func unsealedPlugs(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		line := b.line(d.Stmt.Line)
		if d.Kind.Name == "connector" && slices.Contains(words(line), "sealed") && d.Spot.Place != nil && d.Spot.Place.Wet {
			list = append(list, mutant{what: d.Name + " is not sealed", names: []string{d.Name},
				edits: map[int]string{d.Stmt.Line: swapped(line, map[string]string{"sealed": ""})}})
		}
	}
	return list
}

func otherMetals(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		wanted := map[string]bool{}
		for _, r := range d.Grounds() {
			wanted[r.Wanted] = r.Wanted != ""
		}
		for _, t := range d.Terminals {
			for _, e := range t.Ends {
				stud := e.Wire.To
				if stud == t {
					stud = e.Wire.From
				}
				if stud.Metal == nil || !wanted[stud.Metal.Name] {
					continue
				}
				if to := studOn(b, stud.Metal); to != "" {
					list = append(list, b.rewired(e.Wire, fmt.Sprintf("%s goes to %s", wireText(e.Wire), to), map[string]string{stud.Shown: to}))
				}
			}
		}
	}
	return list
}

// studOn is a stud on other metal.
func studOn(b *base, not *model.Metal) string {
	for _, d := range b.result.Model.Devices {
		if d.BoltedTo != nil && d.BoltedTo != not && len(d.Terminals) == 1 {
			return d.Name
		}
	}
	return ""
}

// sensorGrounds gives the terminals of controllers that sensors return to.
func sensorGrounds(b *base) (list []*model.Terminal) {
	for _, d := range b.result.Model.Devices {
		for _, l := range d.Lines {
			if l.Role != nil && l.Role.Word == "sensor-ground" {
				list = append(list, d.Terminal(l.Name))
			}
		}
	}
	return list
}

func tiedGrounds(b *base) (list []mutant) {
	nets := b.result.Model.Nets()
	for _, t := range sensorGrounds(b) {
		at := t
		for _, o := range nets.Members[nets.Of[t.ID]] {
			if o.Device.Kind.Name == "splice" {
				at = o
			}
		}
		m := mutant{what: fmt.Sprintf("%s is joined to %s", at.Shown, metalStud(b)), edits: map[int]string{}, names: []string{t.Shown, at.Shown, "wire 9901"}}
		m.added = []string{fmt.Sprintf("wire 9901 %s %s 18AWG 1ft", at.Shown, metalStud(b))}
		if at == t {
			line := "together " + at.Shown + " 9901"
			for _, e := range t.Ends {
				line += " " + e.Wire.Number
			}
			m.added = append(m.added, line)
		}
		list = append(list, m)
	}
	return list
}

func metalReturns(b *base) (list []mutant) {
	nets := b.result.Model.Nets()
	for _, t := range sensorGrounds(b) {
		for _, o := range nets.Members[nets.Of[t.ID]] {
			if o.Device.Kind.Name != "sensor" || len(o.Ends) != 1 || o.Ends[0].Wire.Cable != nil {
				continue
			}
			w := o.Ends[0].Wire
			other := w.From
			if other == o {
				other = w.To
			}
			m := b.rewired(w, fmt.Sprintf("%s goes to %s", wireText(w), metalStud(b)), map[string]string{other.Shown: metalStud(b)})
			m.names = append(m.names, o.Device.Name)
			list = append(list, m)
		}
	}
	return list
}

// crossedLines exchanges neighbors of a controller that are not of one role.
func crossedLines(b *base) (list []mutant) {
	for _, d := range b.result.Model.Devices {
		for i := 1; i < len(d.Lines); i++ {
			one, two := d.Lines[i-1], d.Lines[i]
			if one.Role == nil || two.Role == nil || one.Role.Word == two.Role.Word {
				continue
			}
			a, c := d.Terminal(one.Name), d.Terminal(two.Name)
			if a != nil && c != nil && len(a.Ends) == 1 && len(c.Ends) == 1 && a.Ends[0].Wire != c.Ends[0].Wire {
				list = append(list, b.exchanged(a.Ends[0].Wire, c.Ends[0].Wire, a, c))
			}
		}
	}
	return list
}

func unsaidPairs(b *base) (list []mutant) {
	for i, line := range b.lines {
		if list0 := words(line); len(list0) > 2 && list0[0] == "together" {
			list = append(list, mutant{what: "nobody said that wires share " + list0[1], names: []string{list0[1]}, edits: map[int]string{i + 1: ""}})
		}
	}
	return list
}

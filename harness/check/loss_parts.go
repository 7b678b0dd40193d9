package check

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// dropDetail names what takes the largest share, wire or not, and whether
// thicker wire can cure it.
func dropDetail(p *Pass, path size.Path) string {
	most, wires := greatest(path)
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	detail := ""
	if most.volts > 0 {
		detail = fmt.Sprintf("%s takes the most of it: %s.", most.name(p), volts(most.volts))
	}
	if unmet := Unmet(p.Sizes, path); unmet != "" {
		detail += " " + unmet
	} else if wires < path.DropV/2 {
		detail += fmt.Sprintf(" The copper of all wires together takes %s: thicker wire alone does not cure it.", volts(wires))
	}
	if path.DriverV > 0 {
		detail += fmt.Sprintf(" The controller's own driver takes %s more, which is no wiring and not counted.", volts(path.DriverV))
	}
	if path.ExtraA > 0 {
		detail += fmt.Sprintf(" That is at its start, with %s more than steady.", quantity.Text(path.ExtraA, quantity.Current))
	}
	return strings.TrimSpace(detail)
}

// lossPart is a share of a loss, or the bolted joints of a wire.
type lossPart struct {
	size.Share
	joints bool
	volts  float64
}

// name says what it is, fit to begin a sentence.
func (l lossPart) name(p *Pass) string {
	name := l.Name()
	switch {
	case l.joints:
		name = "the bolted joints of " + name
	case l.Wire != nil:
		name += ", " + p.Sizes.Wires[l.Wire.ID].Conductor.Size.Name + ","
	}
	return strings.ToUpper(name[:1]) + name[1:]
}

// greatest finds the part of a path that takes most, drivers left out where
// they are not counted, and what the copper of all wires takes.
func greatest(path size.Path) (most lossPart, wires float64) {
	for _, x := range path.Shares {
		if x.Kind == size.WireShare {
			wires += x.Volts
		}
		if x.Kind == size.DriverShare && path.DriverV > 0 || x.Stated() && path.StatedV > 0 {
			continue
		}
		if x.Volts > most.volts {
			most = lossPart{Share: x, volts: x.Volts}
		}
		if x.JointV > most.volts {
			most = lossPart{Share: x, joints: true, volts: x.JointV}
		}
	}
	return most, wires
}

// losses names the wires that take a twentieth of a loss or more, the worst first:
// what may have become thinner or longer than it was meant.
func losses(p *Pass, path size.Path) (list []diag.Related) {
	shares := slices.Clone(path.Shares)
	slices.SortStableFunc(shares, func(a, b size.Share) int { return cmp.Compare(b.Volts+b.JointV, a.Volts+a.JointV) })
	for _, x := range shares {
		if volts := x.Volts + x.JointV; x.Wire != nil && volts >= path.DropV/20 && len(list) < mostOnWay {
			name := lossPart{Share: x}.name(p)
			list = append(list, diag.Related{At: x.Wire.At, Msg: fmt.Sprintf("%s takes %s", strings.ToLower(name[:1])+name[1:], quantity.Text(volts, quantity.Voltage))})
		}
	}
	return list
}

// Unmet says why no size of the wires left open brings a path within its
// limit: the part that the draft fixes and that takes most, or these wires
// themselves. It is "" where the limit is met, or no wire is open.
func Unmet(s *size.Sizes, path size.Path) string {
	if !path.Unmet || !(path.DropV > path.LimitV) {
		return ""
	}
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	open := fmt.Sprintf("the wires left open take %s at the size where growth stops paying", volts(path.OpenV))
	fixed := path.Fixed.Volts
	if fixed < path.OpenV/2 {
		return fmt.Sprintf("No size that goes into its ends meets the limit: %s.", open)
	}
	name := path.Fixed.Name()
	if w := path.Fixed.Wire; w != nil {
		name += ", given as " + s.Wires[w.ID].Conductor.Size.Name + ","
	}
	return fmt.Sprintf("No size of the open wires meets the limit: %s takes %s of the %s allowed; %s.",
		name, volts(fixed), volts(path.LimitV), open)
}

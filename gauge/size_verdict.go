package gauge

import (
	"fmt"
	"slices"
)

// WhyNot says in a builder's words what keeps a candidate from serving, one
// text for each limit that it fails.
func (a Answer) WhyNot(c Candidate) (out []string) {
	for _, l := range c.Fails() {
		switch l.Name {
		case FloorDrop:
			out = append(out, fmt.Sprintf("loses %.3g V, %.3g V allowed", c.DropV, a.mostV()))
		case FloorAmpacity:
			out = append(out, fmt.Sprintf("carries %.3g A, %.4g A asked", l.Got, l.Asked))
		case FloorProtection:
			out = append(out, fmt.Sprintf("allows a fuse of %.3g A, %.4g A needed", l.Got, l.Asked))
		case FloorMechanical:
			out = append(out, fmt.Sprintf("too thin to handle: %.3g mm2, %.3g mm2 asked", l.Got, l.Asked))
		default:
			out = append(out, l.Name)
		}
	}
	return out
}

// MostV is the largest drop in volts that was allowed.
func (a Answer) MostV() float64 { return a.mostV() }

// lastPrimaryAWG is where SAE J1128 primary wire ends; J1127 battery cable
// begins at 6 AWG (source sae-types).
const lastPrimaryAWG = 8

// batteryCable are the families of SAE J1127.
var batteryCable = [...]string{"SGR", "SGT", "SGX", "STX"}

// familyNote tells where a family is not made in the size.
func (a *Answer) familyNote(say func(string, ...any)) {
	f, s := a.Chosen.Family, a.Chosen.Size
	if s.Metric || f.Source == "asked" || f.metric() {
		return
	}
	primary := !slices.Contains(batteryCable[:], f.Name)
	switch {
	case primary && s.AWG < lastPrimaryAWG:
		say("%s is primary wire, made to 8 AWG: at %s take battery cable, SGX or SGT", f.Name, s.Name)
	case !primary && s.AWG >= lastPrimaryAWG:
		say("%s is battery cable, made from 6 AWG up: at %s take primary wire, GXL or GPT", f.Name, s.Name)
	}
}

package harness

import (
	"errors"
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/shop"
)

// Working is how one thing was worked out: titled groups of steps, each with
// its equation, value and source.
type Working struct {
	Title  string
	Groups []Group
}

// Group is the steps behind one limit, one fuse or one step of use, or a
// table of readings.
type Group struct {
	Title string
	Steps []gauge.Step
	Table *shop.Table // nil where there is none
}

// ErrName is wrapped by the error for a name that the draft does not hold.
var ErrName = errors.New("no such name")

// errUnsized is the answer where the draft has mistakes.
var errUnsized = errors.New("nothing was worked out: the draft has mistakes")

// The sets of names that Why knows; before a name they ask for one set alone.
const (
	setWire     = "wire"
	setDevice   = "device"
	setTerminal = "terminal"
	setCircuit  = "circuit"
)

// Why gives the working behind a wire, a device (fuse, relay, load), a
// terminal or a circuit. A name that stands in several sets gives one working
// for each. "wire 201" or "circuit 201" asks for one set alone.
func (r *Result) Why(name string) ([]Working, error) {
	if r.Sizes == nil {
		return nil, errUnsized
	}
	set, bare := splitSet(name)
	asked := func(s string) bool { return set == "" || set == s }
	var list []Working
	if w, ok := r.Model.WireByNumber(bare); ok && asked(setWire) {
		list = append(list, r.whyWire(w))
	}
	if c, ok := r.Model.CircuitByName(bare); ok && asked(setCircuit) {
		list = append(list, r.whyCircuit(c))
	}
	if d, ok := r.Model.DeviceByName(bare); ok && asked(setDevice) {
		list = append(list, r.whyDevice(d))
	}
	// A splice or a stud is its own terminal: the device says it all.
	if t, ok := r.Model.TerminalByName(bare); ok && (set == setTerminal || set == "" && !t.Device.Kind.Self) {
		list = append(list, r.whyTerminal(t))
	}
	if len(list) == 0 {
		return nil, r.unknown(set, bare)
	}
	return list, nil
}

func splitSet(name string) (set, bare string) {
	first, rest, ok := strings.Cut(strings.TrimSpace(name), " ")
	if rest = strings.TrimSpace(rest); !ok || rest == "" {
		return "", strings.TrimSpace(name)
	}
	for _, s := range []string{setWire, setDevice, setTerminal, setCircuit, "strap", "lead"} {
		if first != s {
			continue
		}
		if s == "strap" || s == "lead" {
			s = setWire
		}
		return s, rest
	}
	return "", strings.TrimSpace(name)
}

// unknown tells that a name is in no set, with the nearest one that is.
func (r *Result) unknown(set, name string) error {
	if r.Model.LeftOut(name) {
		return fmt.Errorf("%w in the draft as fitted: %q belongs to an option; fit it with --with", ErrName, name)
	}
	sets := map[string][]string{}
	for _, w := range r.Model.Wires {
		sets[setWire] = append(sets[setWire], w.Number)
	}
	for _, c := range r.Model.Circuits {
		sets[setCircuit] = append(sets[setCircuit], c.Name)
	}
	for _, d := range r.Model.Devices {
		sets[setDevice] = append(sets[setDevice], d.Name)
	}
	for _, t := range r.Model.Terminals {
		sets[setTerminal] = append(sets[setTerminal], t.Shown)
	}
	names, what := sets[set], set+" "
	if set == "" {
		what = ""
		for _, s := range []string{setWire, setCircuit, setDevice, setTerminal} {
			names = append(names, sets[s]...)
		}
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("%w in the draft: %s%q; did you mean %s?", ErrName, what, name, near)
	}
	return fmt.Errorf("%w in the draft: %s%q", ErrName, what, name)
}

// withGroups adds the groups that hold something.
func withGroups(w Working, groups ...Group) Working {
	for _, g := range groups {
		if len(g.Steps) > 0 || g.Table != nil {
			w.Groups = append(w.Groups, g)
		}
	}
	return w
}

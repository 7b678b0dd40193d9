package harness

import (
	"errors"
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
)

// Working is how one thing was worked out: titled groups of steps, each with
// its equation, value and source.
type Working struct {
	Title  string
	Groups []Group
}

// Group is the steps behind one limit, one fuse or one step of use.
type Group struct {
	Title string
	Steps []gauge.Step
}

// ErrName is wrapped by the error for a name that the draft does not hold.
var ErrName = errors.New("no such name")

// Why gives the working behind a wire, a device (fuse, relay, load) or a
// terminal. A name that stands in several sets gives one working for each.
// "wire 201" or "device K1" asks for one set alone.
func (r *Result) Why(name string) ([]Working, error) {
	if r.Sizes == nil {
		return nil, errors.New("nothing was worked out: the draft has mistakes")
	}
	set, bare := splitSet(name)
	var list []Working
	if w, ok := r.Model.WireByNumber(bare); ok && (set == "" || set == "wire") {
		list = append(list, r.whyWire(w))
	}
	if d, ok := r.Model.DeviceByName(bare); ok && (set == "" || set == "device") {
		list = append(list, r.whyDevice(d))
	}
	if t, ok := r.Model.TerminalByName(bare); ok && set == "" && (t.Shown != t.Device.Name || len(list) == 0) {
		list = append(list, r.whyTerminal(t))
	}
	if len(list) == 0 {
		return nil, r.unknown(name)
	}
	return list, nil
}

func splitSet(name string) (set, bare string) {
	for _, s := range []string{"wire", "device"} {
		if len(name) > len(s)+1 && name[:len(s)+1] == s+" " {
			return s, name[len(s)+1:]
		}
	}
	return "", name
}

func (r *Result) unknown(name string) error {
	var names []string
	for _, w := range r.Model.Wires {
		names = append(names, w.Number)
	}
	for _, d := range r.Model.Devices {
		names = append(names, d.Name)
	}
	for _, t := range r.Model.Terminals {
		names = append(names, t.Shown)
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("%w %q in the draft; did you mean %s?", ErrName, name, near)
	}
	return fmt.Errorf("%w %q in the draft", ErrName, name)
}

func (r *Result) whyTerminal(t *model.Terminal) Working {
	w := Working{Title: "terminal " + t.Shown}
	g := Group{Title: "Volts against the battery's negative post, usual case"}
	for _, s := range r.Sizes.Usual.States {
		if s.Skipped != "" {
			g.Steps = append(g.Steps, gauge.Step{Text: s.Step.Name + ": not solved, " + s.Skipped})
			continue
		}
		reading := s.Reading(t)
		if !reading.OK {
			g.Steps = append(g.Steps, gauge.Step{Text: s.Step.Name + ": open, " + reading.Reason})
			continue
		}
		g.Steps = append(g.Steps, gauge.Step{Text: s.Step.Name, Value: round(reading.Volts, 1e-6), Unit: "V"})
	}
	w.Groups = append(w.Groups, g)
	return w
}

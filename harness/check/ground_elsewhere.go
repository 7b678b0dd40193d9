package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "ground-elsewhere",
	Severity: diag.Warning,
	Title:    "A controller's ground lands elsewhere than its maker asks for.",
	Why: "Makers do not agree: one wants the engine block and never the battery, another the battery's post and nothing else, and each has built its inputs for that. " +
		"Between two places of ground there are volts whenever much current flows, and what the controller reads is off by them, most of all while the starter turns. " +
		"The draft says what the maker of this one wants (ground-wanted); its ground wires have to end there, each by itself or at a splice, and not by way of a strap.",
	Equation: "the first metal that a ground's wires come to is the wanted one",
	Misses:   "A controller for which the draft does not say it. How good the joint at that place is. Grounds for signals, which end in the controller.",
	Needs:    Model,
	Polar:    true,
	Bad: `metal   block
metal   frame
battery G1  grounds-to frame
fuse    F1  5A  from G1 6in
module  A1  ground-wanted block
  BAT  feed 0.4A  asleep 1mA  always
  GND  ground
stud    E1  on frame  M6
stud    E2  on block  M8
stud    E3  on frame  M8
strap 9  E2  E3  4AWG  1ft
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  2ft
wire 3  A1.GND  E1      2ft
`,
	Good: `metal   block
metal   frame
battery G1  grounds-to frame
fuse    F1  5A  from G1 6in
module  A1  ground-wanted block
  BAT  feed 0.4A  asleep 1mA  always
  GND  ground
stud    E1  on block  M6
stud    E2  on block  M8
stud    E3  on frame  M8
strap 9  E2  E3  4AWG  1ft
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  2ft
wire 3  A1.GND  E1      2ft
`,
	Run: groundElsewhere,
})

func groundElsewhere(p *Pass) {
	for _, d := range p.Model.Devices {
		for _, r := range d.Grounds() {
			t := pinOf(d, r.Pin)
			if r.Sensor || r.Wanted == "" || t == nil {
				continue
			}
			ends := landings(t)
			lands := func(e *model.Terminal) bool { return e.Metal != nil && e.Metal.Name == r.Wanted }
			if len(ends) == 0 || slices.ContainsFunc(ends, lands) && !slices.ContainsFunc(ends, func(e *model.Terminal) bool { return !lands(e) }) {
				continue
			}
			p.reportElsewhere(d, t, r.Wanted, ends)
		}
	}
}

// landings gives the metals and battery posts to which wires lead from a
// terminal, through splices and plugs, without straps and without going on
// through metal.
func landings(from *model.Terminal) []*model.Terminal {
	var list []*model.Terminal
	seen := map[*model.Terminal]bool{from: true}
	for todo := []*model.Terminal{from}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at.Metal != nil || isReturn(at) {
			list = append(list, at)
			continue
		}
		for _, o := range beside(at) {
			if !seen[o] {
				seen[o] = true
				todo = append(todo, o)
			}
		}
	}
	return list
}

// beside gives the terminals that a wire, a bus or mated halves of a plug join
// to one.
func beside(t *model.Terminal) []*model.Terminal {
	list := slices.Clone(t.Bus)
	for _, e := range t.Ends {
		if e.Wire.Role == model.Strap {
			continue
		}
		if e.From {
			list = append(list, e.Wire.To)
		} else {
			list = append(list, e.Wire.From)
		}
	}
	for _, c := range t.Device.Couples() {
		switch t.Name {
		case c.A:
			list = append(list, pinOf(t.Device, c.B))
		case c.B:
			list = append(list, pinOf(t.Device, c.A))
		}
	}
	return slices.DeleteFunc(list, func(o *model.Terminal) bool { return o == nil })
}

func (p *Pass) reportElsewhere(d *model.Device, t *model.Terminal, wanted string, ends []*model.Terminal) {
	var names []string
	for _, e := range ends {
		name := e.Shown
		if e.Metal != nil && !strings.Contains(name, e.Metal.Name) {
			name += " on " + e.Metal.Name
		}
		if e.Metal == nil || e.Metal.Name != wanted {
			names = append(names, name)
		}
	}
	f := diag.Finding{
		At:      d.Pins[t.Pin].At,
		Msg:     fmt.Sprintf("%s lands at %s; its maker wants %s", t.Shown, strings.Join(names, ", "), wanted),
		Detail:  fmt.Sprintf("Lead its ground wire to a stud on %s, or change ground-wanted to what its sheet says.", wanted),
		Related: feedingWires(d, t.Name),
	}
	p.Report(f)
}

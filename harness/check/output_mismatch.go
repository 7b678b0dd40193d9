package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "output-mismatch",
	Severity: diag.Fault,
	Title:    "A controller output is wired to a load whose other end is on the wrong side.",
	Why: "A low-side output can only join its load to ground, so the load's other end has to be fed. " +
		"A high-side output can only feed, so the load's other end has to be grounded. " +
		"The other way round the load never works, or both its ends hang on the same side and the output is destroyed.",
	Equation: "low-side: the load's other end is fed; high-side: the load's other end is grounded",
	Misses:   "An output that the draft calls by the wrong kind.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  3W  grounds-to frame
module  A1
  BAT   feed 0.4A  asleep 2mA
  LAMP  low-side 0.5A  when running
  GND   ground
stud    E1  on frame  M6
wire 1  G1.+    F1.1     6in
wire 2  F1.2    A1.BAT   1ft
wire 3  P1.1    A1.LAMP  1ft
wire 4  A1.GND  E1       1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  3W  grounds-to frame
module  A1
  BAT   feed 0.4A  asleep 2mA
  LAMP  high-side 0.5A  when running
  GND   ground
stud    E1  on frame  M6
wire 1  G1.+    F1.1     6in
wire 2  F1.2    A1.BAT   1ft
wire 3  P1.1    A1.LAMP  1ft
wire 4  A1.GND  E1       1ft
`,
	Run: outputMismatch,
})

// mismatch is a use that hangs on an output of the wrong side.
type mismatch struct {
	device *model.Device
	part.Output
	use  use
	far  string // the use's other end
	side string // what that end is on
}

func outputMismatch(p *Pass) {
	for _, m := range p.mismatches() {
		kind := "high-side"
		if m.Sinks {
			kind = "low-side"
		}
		load := m.use.device
		p.Report(diag.Finding{
			At: m.At,
			Msg: fmt.Sprintf("%s is a %s output, but the other end of %s, %s, is on %s too", shown(m.device, m.Pin), kind,
				load.Name, shown(load, m.far), m.side),
			Detail:  "Feed the other end for a low-side output, ground it for a high-side one, or put a relay between.",
			Related: []diag.Related{{At: load.At, Msg: "the load"}},
		})
	}
}

// mismatched gives the devices that hang on an output of the wrong side.
func (p *Pass) mismatched() map[*model.Device]bool {
	set := map[*model.Device]bool{}
	for _, m := range p.mismatches() {
		set[m.use.device] = true
	}
	return set
}

func (p *Pass) mismatches() []mismatch {
	sides, at := p.sides(), p.drivers()
	var list []mismatch
	for _, u := range p.uses() {
		if u.device.Kind.Drives != nil {
			continue
		}
		for _, ends := range [][2]string{{u.plus, u.minus}, {u.minus, u.plus}} {
			near, far := p.netOf(u.device, ends[0]), p.netOf(u.device, ends[1])
			if near < 0 || far < 0 {
				continue
			}
			fed, grounded := sides.plus[far], sides.minus[far]
			for _, o := range at[near] {
				switch {
				case o.Sinks && grounded && !fed:
					list = append(list, mismatch{o.device, o.Output, u, ends[1], "ground"})
				case !o.Sinks && fed && !grounded:
					list = append(list, mismatch{o.device, o.Output, u, ends[1], "the supply"})
				}
			}
		}
	}
	return list
}

package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "output-overloaded",
	Severity: diag.Fault,
	Title:    "A controller output carries more than it is good for.",
	Why: "A driver inside a controller switches coils of relays, injectors and small valves. A motor, a row of lamps or a heater on it draws many times its rating: " +
		"it limits the current, switches itself off when hot, or dies with its neighbors on the same chip. " +
		"Let the output work a relay, and the relay the load.",
	Equation: "current through the output <= its rating in the draft",
	Misses:   "First currents of milliseconds; what several outputs of one chip may carry together.",
	Needs:    States,
	Bad: `battery G1  cca 600A  grounds-to frame
fuse    F1  20A  from G1 6in
module  A1
  BAT  feed 0.3A  asleep 2mA
  FAN  low-side 0.5A  clamps  when running
  GND  ground
motor   M1  draws 4A 13.5V
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    J1      14AWG  1ft
wire 3  J1      M1.+    14AWG  1ft
wire 4  M1.-    A1.FAN  14AWG  1ft
wire 5  J1      A1.BAT  14AWG  1ft
wire 6  A1.GND  E1      14AWG  1ft
`,
	Good: `battery G1  cca 600A  grounds-to frame
fuse    F1  20A  from G1 6in
module  A1
  BAT  feed 0.3A  asleep 2mA
  FAN  low-side 6A  clamps  when running
  GND  ground
motor   M1  draws 4A 13.5V
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    J1      14AWG  1ft
wire 3  J1      M1.+    14AWG  1ft
wire 4  M1.-    A1.FAN  14AWG  1ft
wire 5  J1      A1.BAT  14AWG  1ft
wire 6  A1.GND  E1      14AWG  1ft
`,
	Run: outputOverloaded,
})

func outputOverloaded(p *Pass) {
	list := states(p.Sizes.Hot)
	for _, d := range p.Model.Devices {
		for i, o := range d.Drives() {
			if o.RatedA > 0 {
				p.judgeOutput(list, d, i, o)
			}
		}
	}
}

func (p *Pass) judgeOutput(list []*solve.State, d *model.Device, i int, o part.Output) {
	amps, step := 0.0, ""
	for _, s := range list {
		if a := s.OutputA.Of(d, i); a > amps {
			amps, step = a, s.Step.Name
		}
	}
	if amps <= o.RatedA {
		return
	}
	p.Report(diag.Finding{
		At: o.At,
		Msg: fmt.Sprintf("%s carries %s in %s and is good for %s", shown(d, o.Pin), quantity.Text(amps, quantity.Current), step,
			quantity.Text(o.RatedA, quantity.Current)),
		Detail:  "Let it work a relay that switches the load, or state its rating from the sheet.",
		Values:  []diag.Value{{Name: "current", Got: amps, Limit: o.RatedA, Unit: "A", Bound: diag.AtMost}},
		Related: feedingWires(d, o.Pin),
	})
}

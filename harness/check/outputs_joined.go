package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "outputs-joined",
	Severity: diag.Warning,
	Title:    "Two outputs of controllers lie on one wire without a diode between.",
	Why: "Either output pulls what the other one drives: a coil that is to fire alone fires with its neighbor, a relay stays in after its own controller has let go, " +
		"and current comes into a controller by the output that is off. Two coils joined for the tachometer are the usual case; so is a fan relay that two controllers share. " +
		"Put a diode into each lead, or a relay of its own behind each output. Outputs of one controller that its maker lets work side by side may be accepted.",
	Equation: "at most one output on a net",
	Misses:   "Outputs that meet behind a load. Two outputs with a resistor between them.",
	Needs:    Model,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1  suppress resistor
module  A1
  BAT    feed 0.4A  asleep 2mA
  FAN    low-side 0.5A  when running
  CLIMB  low-side 0.5A  when coast
  GND    ground
splice  J1
splice  J2
stud    E1  on frame  M6
wire 1  G1.+    F1.1      6in
wire 2  F1.2    J1        1ft
wire 3  J1      A1.BAT    1ft
wire 4  J1      K1.86     1ft
wire 5  K1.85   J2        1ft
wire 6  J2      A1.FAN    1ft
wire 7  J2      A1.CLIMB  1ft
wire 8  A1.GND  E1        1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1  suppress resistor
diode   D1
diode   D2
module  A1
  BAT    feed 0.4A  asleep 2mA
  FAN    low-side 0.5A  when running
  CLIMB  low-side 0.5A  when coast
  GND    ground
splice  J1
splice  J2
stud    E1  on frame  M6
wire 1   G1.+    F1.1      6in
wire 2   F1.2    J1        1ft
wire 3   J1      A1.BAT    1ft
wire 4   J1      K1.86     1ft
wire 5   K1.85   J2        1ft
wire 6   J2      D1.A      1ft
wire 7   D1.K    A1.FAN    1ft
wire 8   J2      D2.A      1ft
wire 9   D2.K    A1.CLIMB  1ft
wire 10  A1.GND  E1        1ft
`,
	Run: outputsJoined,
})

func outputsJoined(p *Pass) {
	on := p.drivers()
	told := map[int]bool{}
	for _, d := range p.Model.Devices {
		for _, o := range d.Drives() {
			t := pinOf(d, o.Pin)
			if t == nil || told[p.Nets.Of[t.ID]] {
				continue
			}
			told[p.Nets.Of[t.ID]] = true
			if list := on[p.Nets.Of[t.ID]]; len(list) > 1 {
				p.reportJoined(list)
			}
		}
	}
}

func (p *Pass) reportJoined(list []driver) {
	first, second := list[0], list[1]
	f := diag.Finding{
		At: second.At,
		Msg: fmt.Sprintf("%s lies on one wire with %s: each drives what the other one does", shown(second.device, second.Pin),
			shown(first.device, first.Pin)),
		Detail: "Put a diode into each lead, or give each a relay of its own; accept it if the maker lets them work side by side.",
	}
	for _, o := range append(list[:1:1], list[2:]...) {
		f.Related = append(f.Related, diag.Related{At: o.At, Msg: "another output on it"})
	}
	if sameCommand(list) {
		f.Severity = diag.Note
		f.Detail = "They belong to one controller and work in the same steps: see that its maker lets them work side by side."
	}
	p.Report(f)
}

// sameCommand reports whether all outputs belong to one controller and are
// commanded in the same steps.
func sameCommand(list []driver) bool {
	var of *model.Device
	for _, o := range list {
		if of != nil && (o.device != of || o.Steps != list[0].Steps) {
			return false
		}
		of = o.device
	}
	return true
}

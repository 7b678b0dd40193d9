package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "signal-ground-tied",
	Severity: diag.Warning,
	Title:    "A sensor ground or a shield is joined to other ground outside its controller.",
	Why: "Sensors and shields return to the controller alone, which joins them to its ground at one point inside. " +
		"Tied to metal or to a power ground as well, a part of the starter's and the pump's current flows through the thin wire: " +
		"readings shift with every load, the engine loses its speed signal while it cranks, and when a strap opens the wire burns. " +
		"Bring the sensors' returns to the controller and nowhere else; leave the far end of a shield free.",
	Equation: "no metal, no battery and no power ground in the net of a sensor ground or shield",
	Misses:   "A sensor that joins its return to its own body, when the draft does not say so.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  grounds-to frame
fuse    F1  5A  from G1 6in
module  A1
  BAT  feed 0.3A  asleep 2mA
  CLT  input  pull-up 2kohm
  SG   sensor-ground
  GND  ground
sensor  B1
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  1ft
wire 3  A1.GND  E1      1ft
wire 4  A1.CLT  B1.S    1ft
wire 5  A1.SG   J1      1ft
wire 6  J1      B1.-    1ft
wire 7  J1      E1      1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  5A  from G1 6in
module  A1
  BAT  feed 0.3A  asleep 2mA
  CLT  input  pull-up 2kohm
  SG   sensor-ground
  GND  ground
sensor  B1
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  1ft
wire 3  A1.GND  E1      1ft
wire 4  A1.CLT  B1.S    1ft
wire 5  A1.SG   J1      1ft
wire 6  J1      B1.-    1ft
`,
	Run: signalGroundTied,
})

func signalGroundTied(p *Pass) {
	for _, d := range p.Model.Devices {
		for _, g := range d.Grounds() {
			t := pinOf(d, g.Pin)
			if !g.Sensor || t == nil || len(t.Ends) == 0 {
				continue
			}
			if other := p.powerGround(p.Nets.Of[t.ID]); other != "" {
				p.Report(diag.Finding{
					At:      g.At,
					Msg:     fmt.Sprintf("%s, a return for signals, is joined to %s outside of %s", shown(d, g.Pin), other, d.Name),
					Detail:  "Take the wire between them out: the controller joins the two inside.",
					Related: feedingWires(d, g.Pin),
				})
			}
		}
	}
}

// powerGround names what makes a net a power ground: a metal, a battery post
// or a power ground of a controller. It is "" where nothing does.
func (p *Pass) powerGround(net int) string {
	for _, t := range p.Nets.Members[net] {
		if t.Metal != nil {
			return t.Metal.Name
		}
		for _, s := range t.Device.Supplies() {
			if t.Name == s.Minus || t.Name == s.Plus {
				return t.Shown
			}
		}
		if powerReturn(t) {
			return t.Shown
		}
	}
	return ""
}

// powerReturn reports whether a terminal is a power ground of a controller.
func powerReturn(t *model.Terminal) bool {
	for _, g := range t.Device.Grounds() {
		if g.Pin == t.Name {
			return !g.Sensor
		}
	}
	return false
}

package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "sensor-landed-wrong",
	Severity: diag.Fault,
	Title:    "A sensor's signal or return lands elsewhere than on the line that its controller has for it.",
	Why: "A signal on a ground of the controller reads nothing, or shorts what feeds the sensor. " +
		"A sensor that returns to metal, while the controller that reads it has a ground for sensors, is a warning: " +
		"it is read against another point than it stands on, and the reading moves with every load in between.",
	Equation: "signal on an input; return on a sensor ground of the controller that reads it",
	Misses:   "Signals exchanged among one another: which input a signal is for. A return that leads nowhere: load-without-return. A return on a reference: load-reversed.",
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
sensor  B2
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  1ft
wire 3  A1.GND  E1      1ft
wire 4  A1.CLT  B1.S    1ft
wire 5  B1.-    E1      1ft
wire 6  A1.SG   B2.-    1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  5A  from G1 6in
module  A1
  BAT  feed 0.3A  asleep 2mA
  CLT  input  pull-up 2kohm
  SG   sensor-ground
  GND  ground
sensor  B1
sensor  B2
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    A1.BAT  1ft
wire 3  A1.GND  E1      1ft
wire 4  A1.CLT  B1.S    1ft
wire 5  B1.-    J1      1ft
wire 6  A1.SG   J1      1ft
wire 7  B2.-    J1      1ft
`,
	Run: sensorLandedWrong,
})

func sensorLandedWrong(p *Pass) {
	for _, d := range p.Model.Devices {
		var reader *model.Device
		for _, t := range signals(d) {
			if onto, _ := p.landsOn(t, isReturnLine, isHeldLine); onto != nil {
				p.reportLanding(t, onto)
			} else if in, _ := p.landsOn(t, isInputLine); in != nil {
				reader = in.Device
			}
		}
		if reader == nil {
			continue
		}
		for _, w := range d.Draws() {
			if t := pinOf(d, w.Minus); t != nil && t.Metal == nil && len(t.Ends) > 0 {
				p.judgeReturn(t, reader)
			}
		}
	}
}

// signals gives the wired terminals of a device that carry no current of its
// own: those of a sensor or a gauge that say something.
func signals(d *model.Device) (list []*model.Terminal) {
	k := d.Kind
	if k.Draws == nil || k.Drives != nil || k.Switches != nil || k.Supplies != nil || k.Grounds != nil || k.Kicks != nil {
		return nil
	}
	for _, t := range d.Terminals {
		own := slices.ContainsFunc(d.Draws(), func(w part.Draw) bool { return w.Plus == t.Name || w.Minus == t.Name })
		if !own && t.Metal == nil && t.Name != k.Ground && len(t.Ends) > 0 {
			list = append(list, t)
		}
	}
	return list
}

// landsOn finds a terminal of a controller on a terminal's net that is one of
// several sorts.
func (p *Pass) landsOn(t *model.Terminal, sorts ...func(*model.Terminal) bool) (onto *model.Terminal, ok bool) {
	for _, o := range p.Nets.Members[p.Nets.Of[t.ID]] {
		if o.Device != t.Device && slices.ContainsFunc(sorts, func(is func(*model.Terminal) bool) bool { return is(o) }) {
			return o, true
		}
	}
	return nil, false
}

func isReturnLine(t *model.Terminal) bool {
	return slices.ContainsFunc(t.Device.Grounds(), func(r part.Return) bool { return r.Pin == t.Name })
}

func isSensorGround(t *model.Terminal) bool {
	return slices.ContainsFunc(t.Device.Grounds(), func(r part.Return) bool { return r.Pin == t.Name && r.Sensor })
}

// isHeldLine reports whether a terminal is a reference for sensors. An input
// with a resistor to steady volts is held too, and is an input all the same.
func isHeldLine(t *model.Terminal) bool {
	return lineWord(t.Device, t.Name) != "input" && slices.ContainsFunc(t.Device.Holds(), func(h part.Held) bool { return h.Pin == t.Name })
}

// isInputLine reports whether a terminal of a controller is neither fed nor a
// ground nor an output nor a reference: it reads, or talks.
func isInputLine(t *model.Terminal) bool {
	d := t.Device
	return d.Kind.Grounds != nil && !isReturnLine(t) && !isHeldLine(t) &&
		!slices.ContainsFunc(d.Draws(), func(w part.Draw) bool { return w.Plus == t.Name }) &&
		!slices.ContainsFunc(d.Drives(), func(o part.Output) bool { return o.Pin == t.Name })
}

// judgeReturn judges where the return of a sensor lands that a controller reads.
// One that leads nowhere is told by load-without-return.
func (p *Pass) judgeReturn(t *model.Terminal, reader *model.Device) {
	if _, ok := p.landsOn(t, isSensorGround); ok {
		return
	}
	for _, r := range reader.Grounds() {
		ground := pinOf(reader, r.Pin)
		other := p.powerGround(p.Nets.Of[t.ID])
		if r.Sensor && other != "" && ground != nil && len(ground.Ends) > 0 && !isShield(reader, r) {
			p.Report(diag.Finding{
				Severity: diag.Warning, At: t.Device.At,
				Msg:     fmt.Sprintf("%s returns to %s, and %s, which reads it, has %s for that", shown(t.Device, t.Name), other, reader.Name, ground.Shown),
				Detail:  fmt.Sprintf("Take its wire to %s.", ground.Shown),
				Related: feedingWires(t.Device, t.Name),
			})
			return
		}
	}
}

// isShield reports whether a return is for a shield, which no sensor returns to.
func isShield(d *model.Device, r part.Return) bool {
	return lineWord(d, r.Pin) == "shield"
}

// lineWord is what a controller's own line says a terminal is for.
func lineWord(d *model.Device, pin string) string {
	for _, l := range d.Lines {
		if l.Name == pin && l.Role != nil {
			return l.Role.Word
		}
	}
	return ""
}

func (p *Pass) reportLanding(t, onto *model.Terminal) {
	is := "a ground"
	if isHeldLine(onto) {
		is = "a reference"
	}
	p.Report(diag.Finding{
		At:      t.Device.At,
		Msg:     fmt.Sprintf("%s, a signal of %s, lands on %s, which is %s", shown(t.Device, t.Name), t.Device.Name, onto.Shown, is),
		Detail:  "Compare the terminals of the sensor and of the controller with their sheets.",
		Related: feedingWires(t.Device, t.Name),
	})
}

package check

import (
	"fmt"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "coil-without-suppression",
	Severity: diag.Warning,
	Title:    "A coil that a controller switches has nothing to take its kick.",
	Why: "When a coil is switched off its field collapses and drives the wire to a thousand volts and more. " +
		"That kills the driver in a controller sooner or later, and upsets what is wired nearby. " +
		"Use a relay with a resistor or diode across its coil, put one there, or a driver that clamps. " +
		"A coil that only hand contacts switch is a note: its spark wears the contact.",
	Equation: "across the coil there is a resistor, a diode or a zener, or its driver clamps",
	Figures:  []string{"suppress-peak"},
	Misses: "A suppressor that is too slow for the job: a plain diode makes a relay let go five to ten times slower. " +
		"A controller output with a further switch between it and the coil.",
	Needs: Model,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1
module  A1
  BAT   feed 0.4A  asleep 2mA
  PUMP  low-side 0.5A  when running
  GND   ground
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1     6in
wire 2  F1.2    J1       1ft
wire 3  J1      A1.BAT   1ft
wire 4  J1      K1.86    1ft
wire 5  K1.85   A1.PUMP  1ft
wire 6  A1.GND  E1       1ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1  suppress resistor
module  A1
  BAT   feed 0.4A  asleep 2mA
  PUMP  low-side 0.5A  when running
  GND   ground
splice  J1
stud    E1  on frame  M6
wire 1  G1.+    F1.1     6in
wire 2  F1.2    J1       1ft
wire 3  J1      A1.BAT   1ft
wire 4  J1      K1.86    1ft
wire 5  K1.85   A1.PUMP  1ft
wire 6  A1.GND  E1       1ft
`,
	Run: coilWithoutSuppression,
})

func coilWithoutSuppression(p *Pass) {
	drivers := p.drivers()
	clamped := p.clampedNets()
	for _, d := range p.Model.Devices {
		starter := isStarter(d)
		for _, k := range d.Kicks() {
			a, b := pinOf(d, k.A), pinOf(d, k.B)
			if k.Suppressed != "" || a == nil || b == nil || clamped[pair(p.Nets.Of[a.ID], p.Nets.Of[b.ID])] {
				continue
			}
			by := slices.Concat(drivers[p.Nets.Of[a.ID]], drivers[p.Nets.Of[b.ID]])
			if starter && len(by) == 0 {
				continue // its windings lie across the motor, which takes the kick
			}
			p.reportKick(d, k, by)
		}
	}
}

// mayBeSuppressed reports whether a word on the device's own line can say so.
func mayBeSuppressed(d *model.Device) bool {
	named := func(s part.Setting) bool { return s.Name == "suppress" }
	return slices.ContainsFunc(d.Kind.Settings, named) && !d.Existing && d.Part == ""
}

// driver is an output with the device that it belongs to.
type driver struct {
	device *model.Device
	part.Output
}

func (p *Pass) reportKick(d *model.Device, k part.Kick, by []driver) {
	if !anyWire(d) || d.Existing && (leftOut(pinOf(d, k.A)) || leftOut(pinOf(d, k.B))) {
		return
	}
	for _, o := range by {
		if o.Clamps {
			return
		}
	}
	f := diag.Finding{
		At:     k.At,
		Msg:    fmt.Sprintf("the coil of %s (%s to %s) has nothing across it", d.Name, shown(d, k.A), shown(d, k.B)),
		Detail: "State what suppresses it (suppress resistor), fit a part that has it built in, or say that the driver clamps.",
	}
	if mayBeSuppressed(d) {
		f.Fix = p.appended(d.At, "put a resistor across the coil of "+d.Name, "suppress resistor")
	}
	if len(by) == 0 {
		f.Severity = diag.Note
	} else {
		f.Msg += fmt.Sprintf(", and %s switches it", shown(by[0].device, by[0].Pin))
		f.Related = []diag.Related{{At: by[0].At, Msg: "the output"}}
	}
	p.Report(f)
}

// drivers lists the controller outputs by net.
func (p *Pass) drivers() map[int][]driver {
	at := map[int][]driver{}
	for _, d := range p.Model.Devices {
		for _, o := range d.Drives() {
			if t := pinOf(d, o.Pin); t != nil {
				n := p.Nets.Of[t.ID]
				at[n] = append(at[n], driver{d, o})
			}
		}
	}
	return at
}

// clampedNets gives the pairs of nets between which a diode, a resistor or
// the like lies.
func (p *Pass) clampedNets() map[[2]int]bool {
	nets := map[[2]int]bool{}
	for _, d := range p.Model.Devices {
		for _, w := range d.Passes() {
			if a, b := pinOf(d, w.A), pinOf(d, w.B); a != nil && b != nil {
				nets[pair(p.Nets.Of[a.ID], p.Nets.Of[b.ID])] = true
			}
		}
	}
	return nets
}

func isStarter(d *model.Device) bool {
	return slices.ContainsFunc(d.Terminals, takesStart)
}

func pair(a, b int) [2]int { return [2]int{min(a, b), max(a, b)} }

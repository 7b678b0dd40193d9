package check

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "wire-above-ampacity",
	Severity: diag.Danger,
	Title:    "A wire carries more than it can in its place and its bundle.",
	Why: "A wire's table current holds at 30 C and alone. In a hot engine bay, and beside other loaded wires, it gets rid of less heat. " +
		"Above its ampacity the insulation ages fast, softens, and in the end bares the copper. Use the next size, or a cooler way.",
	Equation: "I <= table current x sqrt((class - place) / (class - 30)) x bundle factor",
	Figures:  []string{"ampacity-33cfr183"},
	Misses:   "Heat from an exhaust nearby that the place's temperature does not tell; current of a few seconds, such as cranking.",
	Needs:    States,
	Bad: `place   bay   60C
place   dash  40C
leg     bay  dash  4ft
battery G1  cca 540A  at bay  grounds-to frame
fuse    F1  60A  bolt-down  at bay  from G1 6in
box     A2  at bay
  bus BAT  F2.1 F3.1 F4.1
fuse    F2  20A  in A2
fuse    F3  20A  in A2
fuse    F4  20A  in A2
heater  R1  draws 17.5A 13.5V  at dash  grounds-to frame
heater  R2  draws 17.5A 13.5V  at dash  grounds-to frame
heater  R3  draws 17.5A 13.5V  at dash  grounds-to frame
wire 1  G1.+  F1.1    6AWG
wire 2  F1.2  A2.BAT  6AWG
wire 3  F2.2  R1.1    18AWG
wire 4  F3.2  R2.1    16AWG
wire 5  F4.2  R3.1    16AWG
`,
	Good: `place   bay   60C
place   dash  40C
leg     bay  dash  4ft
battery G1  cca 540A  at bay  grounds-to frame
fuse    F1  60A  bolt-down  at bay  from G1 6in
box     A2  at bay
  bus BAT  F2.1 F3.1 F4.1
fuse    F2  20A  in A2
fuse    F3  20A  in A2
fuse    F4  20A  in A2
heater  R1  draws 17.5A 13.5V  at dash  grounds-to frame
heater  R2  draws 17.5A 13.5V  at dash  grounds-to frame
heater  R3  draws 17.5A 13.5V  at dash  grounds-to frame
wire 1  G1.+  F1.1    6AWG
wire 2  F1.2  A2.BAT  6AWG
wire 3  F2.2  R1.1    16AWG
wire 4  F3.2  R2.1    16AWG
wire 5  F4.2  R3.1    16AWG
`,
	Run: func(p *Pass) {
		p.failing(gauge.FloorAmpacity, func(w size.Wire, l gauge.Limit) {
			p.Report(diag.Finding{
				At: sizeSpan(w),
				Msg: fmt.Sprintf("wire %s carries %s in %s; %s is good for %s there", w.Wire.Number,
					quantity.Text(l.Asked, quantity.Current), w.At, w.Conductor.Size.Name, under(l.Got, l.Asked)),
				Detail: fmt.Sprintf("Its way passes %.0f C, %s.", w.Judgement.Case.AmbientC, together(w.Loaded)) + noThicker(w),
				Values: []diag.Value{{Name: "current", Got: l.Asked, Limit: l.Got, Unit: "A", Bound: diag.AtMost}},
				Fix:    p.thicker(w),
			})
		})
	},
})

// noThicker says why a wire whose size was left open is no thicker.
func noThicker(w size.Wire) string {
	if !w.Chosen {
		return ""
	}
	return " It is the thickest that goes into the ends of this wire and of those it is one size with: take parts with studs for it."
}

// under tells of a current that is less than another one, with as many digits
// as it takes to see that.
func under(amps, than float64) string {
	text := quantity.Text(amps, quantity.Current)
	if text == quantity.Text(than, quantity.Current) {
		return fmt.Sprintf("%.2f A", amps)
	}
	return text
}

// together says how many loaded conductors lie side by side, this one among them.
func together(loaded int) string {
	if loaded <= 1 {
		return "with no other loaded conductor beside it"
	}
	return fmt.Sprintf("with %d loaded conductors together", loaded)
}

package gauge

import "slices"

// DropLimit is one published limit of a drop, in volts at 12 and 24 V or in
// percent of the system; 0 where none is printed. Most count the positive
// wire alone: Scope says so.
type DropLimit struct {
	Case         string
	At12V, At24V float64
	Percent      float64
	Scope        string
	Note         string
	Source       string
}

var dropLimits = [...]DropLimit{
	{"lighting, lamps under 15 W", 0.1, 0, 0, "positive wire, switch to lamp", "", "journal-limits"},
	{"lighting, lamps over 15 W", 0.5, 0, 0, "positive wire", "", "journal-limits"},
	{"headlamps", 0.3, 0, 0, "positive wire, switch to lamp", "", "journal-limits"},
	{"charging cable B+ to battery", 0.4, 0.8, 0, "positive wire", "three-phase machine", "journal-limits"},
	{"alternator to separate regulator", 0.1, 0.2, 0, "control", "", "journal-limits"},
	{"starter main cable", 0.5, 1.0, 0, "positive wire", "", "journal-limits"},
	{"starter control, single winding", 1.4, 2.0, 0, "switch to terminal 50", "", "journal-limits"},
	{"starter control, pull-in and hold-in winding", 2.4, 2.8, 0, "switch to terminal 50", "", "journal-limits"},
	{"other control, switch to relay/horn", 0.5, 1.0, 0, "", "", "journal-limits"},
	{"lighting, complete circuit incl. return (<15 W)", 0.6, 0.6, 0, "complete circuit", "", "drop-handbook"},
	{"lighting over 15 W, complete circuit", 0.9, 0.9, 0, "complete circuit", "", "drop-handbook"},
	{"headlamps, complete circuit", 0.6, 0.6, 0, "complete circuit", "", "drop-handbook"},
	{"other control, complete circuit", 1.5, 2.0, 0, "complete circuit", "", "drop-handbook"},
	{"small wire joint", 0, 0, 0, "measured under load", "quoted as SAE figures", "meter-limits"},
	{"high-current joint", 0.1, 0, 0, "", "", "meter-limits"},
	{"high-current cable", 0.2, 0, 0, "", "", "meter-limits"},
	{"switch or solenoid contact", 0.3, 0, 0, "", "", "meter-limits"},
	{"any circuit, fault threshold", 1.0, 0, 0, "", "", "meter-limits"},
	{"ground", 0.1, 0, 0, "", "", "meter-limits-guide"},
	{"wire or cable", 0.2, 0, 0, "", "", "meter-limits-guide"},
	{"switch", 0.3, 0, 0, "", "", "meter-limits-guide"},
	{"starter positive side total", 0.6, 0, 0, "", "", "drop-guide-part"},
	{"starter ground side total", 0.3, 0, 0, "", "", "meter-limits-guide"},
	{"starter positive side", 0.5, 0, 0, "", "", "starter-limits"},
	{"starter total both sides", 0.8, 0, 0, "", "", "starter-limits"},
	{"charging positive", 0.5, 0, 0, "under load", "", "drop-guide-part"},
	{"charging ground", 0.2, 0, 0, "", "", "drop-guide-part"},
	{"alternator/starter/battery cables", 0, 0.6, 2.5, "24 V engine installation", "subtract 0.1 V per connection point, 0.3 V per joint", "drop-engine-manual"},
	{"other cables", 0, 1.2, 5.0, "24 V engine installation", "", "drop-engine-manual"},
	{"navigation lamps", 0.6, 0, 5, "chandlery note", "", "drop-chandlery"},
	{"other loads (chandlery)", 0.84, 0, 7, "", "", "drop-chandlery"},
	{"ISO 10133 vital (panel mains, nav lamps, blowers, bilge pumps)", 0.36, 0.72, 3, "", "", "drop-3"},
	{"ISO 10133 / ABYC other", 1.2, 2.4, 10, "", "", "drop-10"},
	{"general training rule", 0.63, 0, 5, "whole circuit", "", "drop-training"},
}

// DropLimits lists published limits of drops; they disagree (sources
// journal-limits, drop-handbook, meter-limits, meter-limits-guide,
// drop-guide-part, starter-limits, drop-engine-manual, drop-chandlery, drop-3,
// drop-10, drop-training).
func DropLimits() []DropLimit { return slices.Clone(dropLimits[:]) }

// DropAreaMM2 is the area that loses volts over a length of conductor at
// amps: A = rho L I / V, with rho in ohm mm2/m, 0.0175 to 0.018 for copper at
// room temperature in published examples. ok is false unless rho is from
// 0.001 to 10, length and current are from 0 on and not absurd, and volts
// from 1 mV to 60 V (source drop-area).
func DropAreaMM2(rhoOhmMM2PerM float64, l ConductorM, amps, volts float64) (areaMM2 float64, ok bool) {
	if !(rhoOhmMM2PerM >= 0.001 && rhoOhmMM2PerM <= 10) || !(l >= 0 && l <= 1e5) || !(amps >= 0 && amps <= mostA) || !(volts >= 1e-3 && volts <= MostSystemV) {
		return 0, false
	}
	return rhoOhmMM2PerM * float64(l) * amps / volts, true
}

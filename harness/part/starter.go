package part

import (
	"legwork/gauge"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "starter",
	Title: "A starter motor with its solenoid.",
	Law: "draws and stall hold on the draft's own battery, resistance Rb, with ideal cables. Held fast: R = (12.6 V - stall x Rb) / stall. Turning: back e.m.f. E = 12.6 V - draws (Rb + R) behind the same R. " +
		"At -18 C draws doubles unless cold says otherwise. The solenoid has a pull-in winding from S through the motor and a holding winding to the return; it closes at its pull-in volts and holds until release.",
	Letter:   "M",
	Settings: starterSettings(),
	Terminals: []Terminal{
		{Name: "B", Aliases: []string{"BAT", "30"}, Landing: Post, Doc: "feed"},
		{Name: "M", Aliases: []string{"MOTOR", "45"}, Landing: Post, Doc: "motor side of the solenoid's contact", Quiet: true},
		{Name: "S", Aliases: []string{"ST", "50"}, Doc: "solenoid"},
		{Name: "R", Aliases: []string{"I", "15a"}, Doc: "bypass: joined to B while the solenoid is closed", Quiet: true},
		{Name: "-", Aliases: []string{"GND", "31"}, Landing: Post, Doc: "return; the metal when the starter grounds to it"},
	},
	Ground: "-",
	Stamp:  stampStarter,
	Symbol: starterSymbol(),
	Draws: func(d *Device) []Draw {
		pull, hold := d.Num("pull-in"), d.Num("hold")
		return []Draw{
			{Plus: "B", Minus: "-", Amps: d.Num("draws"), RatedV: gauge.CrankEMF * d.scale(), Type: MotorLoad, InrushA: stallA(d),
				Starter: true, AmpsKnown: d.Said("draws"), DutyFrac: 1, At: d.At},
			{Plus: "S", Minus: "-", Amps: hold, RatedV: 12 * d.scale(), Type: MotorLoad, InrushA: pull, Coil: true,
				AmpsKnown: d.Said("pull-in") && d.Said("hold"), DutyFrac: 1, At: d.At},
		}
	},
	Switches: func(d *Device) []Contact {
		main := Contact{A: "B", B: "M", By: "coil", CoilA: "S", CoilB: "-", At: d.At}
		bypass := main
		bypass.B = "R"
		return []Contact{main, bypass}
	},
	Kicks: func(d *Device) []Kick {
		return []Kick{{A: "S", B: "-", Suppressed: d.Word("suppress"), At: d.At}}
	},
	Buys: func(d *Device) []Purchase { return buy("starter", d) },
})

func starterSettings() []Setting {
	amp := func(name, doc string) Figure {
		return Figure{Name: name, Dim: quantity.Current, Min: 0.1, Max: maxA, Doc: doc}
	}
	closes := Figure{Name: "volts", Dim: quantity.Voltage, Min: 1, Max: 48, Doc: "solenoid closes from"}
	release := Figure{Name: "volts", Dim: quantity.Voltage, Min: 0.1, Max: 48, Doc: "solenoid has let go below"}
	return []Setting{
		named("draws", "current while it turns the warm engine", amp("current", "turning current").guess(gauge.UsualStarterA, "usual-starter").by(OverVolts)),
		named("stall", "current while it is held fast; 2.6 x draws when not said, a guess", amp("current", "stall current")),
		named("cold", "current while it turns the engine at -18 C; 2 x draws when not said", amp("current", "cold turning current")),
		named("pull-in", "current of both solenoid windings at 12 V, and the volts that close it",
			amp("current", "both windings").guess(gauge.UsualPullInA, "usual-solenoid").by(OverVolts), closes.optional().guess(gauge.SolenoidPullInV, "solenoid-volts").by(ByVolts)),
		named("hold", "current of the holding winding at 12 V, and the volts under which it lets go",
			amp("current", "holding winding").guess(gauge.UsualHoldA, "usual-solenoid").by(OverVolts), release.optional().guess(gauge.SolenoidReleaseV, "solenoid-volts").by(ByVolts)),
		{Name: "suppress", Words: []string{"diode", "resistor", "zener"}, Doc: "what lies across the solenoid to take its kick"},
	}
}

func starterSymbol() Symbol {
	return Symbol{
		Half: 4, Columns: 2, Row: LoadRow, Body: Box{X1: -3.2, Y1: -3.2, X2: 2.6, Y2: 3.2, Col2: 1},
		Pins: []SymbolPin{pin("B", 0, -4), pin("R", 2.4, -4), pinAt("S", 1, 0, -4), pin("M", -2.4, 4), pin("-", 0, 4)},
		Strokes: []Stroke{
			stroke(Unit, Point{X: -3.2, Y: -3.2}, at(1, 2.6, 3.2)), line(0, -4, 0, -2.7), line(2.4, -4, 2.4, -3.2), line(-2.4, 4, -2.4, 3.2), dot(0, -2.7, 0.2), blade(0, -2.7, -1, -0.9),
			closed(0, -2.7, -0.1, -0.65), line(0, -0.7, 0, -0.2), circle(0, 1.2, 1.4), text("M", 0, 1.65), line(0, 2.6, 0, 4),
			stroke(Thin, at(1, 0, -4), at(1, 0, -1.9)), stroke(Rect, at(1, -1.6, -1.9), Point{X: 3.2, Y: 1.5}),
			stroke(Thin, at(1, 0, -0.4), at(1, 0, 2.9)), stroke(Thin, Point{Y: 2.9}, at(1, 0, 2.9)),
			stroke(Dashed, Point{X: -0.75, Y: -1.25}, at(1, -1.6, -1.25)),
		},
	}
}

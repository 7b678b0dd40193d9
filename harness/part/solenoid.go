package part

import (
	"legwork/gauge"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:   "solenoid",
	Title:  "A solenoid: valve, injector, clutch or lock.",
	Law:    "A resistance: as stated, or rated volts / rated current. Suppression lies across it as across a relay's coil.",
	Letter: "Q",
	Settings: loadSettings(
		named("coil", "resistance of the coil at 20 C", Figure{Name: "resistance", Dim: quantity.Resistance, Min: 0.1, Max: 1e4, Doc: "coil resistance"}),
		oneOf("action", "what it is", "valve", "injector", "clutch", "lock"),
		Setting{Name: "suppress", Words: []string{"diode", "resistor", "zener"}, Doc: "what lies across the coil to take its kick"},
	),
	Terminals: []Terminal{
		{Name: "1", Aliases: []string{"+"}, Doc: "feed"},
		{Name: "2", Aliases: []string{"-"}, Doc: "return or driver; the metal when the solenoid grounds to it"},
	},
	Ground: "2",
	Stamp: func(d *Device, s *Stamper) {
		s.Add(LoadElement, "1", "2", resistor(solenoidRating(d).ohm()), s.All())
		stampSuppression(d, s, "1", "2")
	},
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("1", "2", 4), Body: Box{X1: -3.4, Y1: -1, X2: 2, Y2: 1},
		Strokes: append(leads(4, 1), rect(-2, -1, 4, 2), line(-2, 0, -2.4, 0),
			fill(-3.4, -0.9, -2.4, -0.9, -2.9, 0), fill(-3.4, 0.9, -2.4, 0.9, -2.9, 0)),
	},
	Assumes: func(d *Device) []Assumption {
		if d.Said("coil") {
			return nil
		}
		return usual(usualSolenoid(d))(d)
	},
	Draws: func(d *Device) []Draw {
		return []Draw{eitherWay(d.draw(solenoidRating(d), "1", "2", ResistiveLoad))}
	},
	Kicks: func(d *Device) []Kick {
		return []Kick{{A: "1", B: "2", Suppressed: d.Word("suppress"), At: d.At}}
	},
	Buys: func(d *Device) []Purchase { return buy(d.Word("action"), d) },
})

// usualSolenoid is what such a coil usually draws, and its source.
func usualSolenoid(d *Device) (amps float64, source string) {
	if d.Word("action") == "injector" {
		return gauge.UsualInjectorA, "usual-injector"
	}
	return gauge.UsualValveA, "usual-valve"
}

// solenoidRating takes the coil's resistance before anything else.
func solenoidRating(d *Device) rating {
	if v := d.Value("coil"); v.Said && v.num(0) > 0 {
		rated := gauge.LampRatedV * d.scale()
		return rating{rated / v.num(0), rated, true, v}
	}
	usualA, _ := usualSolenoid(d)
	return d.rated(usualA)
}

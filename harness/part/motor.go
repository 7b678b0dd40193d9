package part

import (
	"legwork/gauge"
	"strings"
)

var _ = define(Kind{
	Name:  "motor",
	Title: "A motor: pump, fan, wiper, window.",
	Law: "Constant current down to the least volts it needs (half the system's when not said), below that in proportion to the volts. " +
		"With two needs the smaller one bends the law. Its first current (inrush) is judged against contacts and fuses, not played. In the steps it gives nothing back while it runs down; with coasts it is played apart as a source: that share of the rated volts behind the resistance.",
	Letter:   "M",
	Settings: loadSettings(coasting(), flag("fuel", "it moves fuel: strict drop class, and it must not run with the engine stopped")),
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"1"}, Doc: "feed"},
		{Name: "-", Aliases: []string{"2"}, Doc: "return; the metal when the motor grounds to it"},
	},
	Ground: "-",
	Stamp: func(d *Device, s *Stamper) {
		var gives StepSet
		if law, ok := coastLaw(d); ok && s.RunDown {
			gives = s.Where(func(st Step) bool { return st.Engine == RunningDown })
			s.Add(LoadElement, "+", "-", law, gives)
		}
		s.Add(LoadElement, "+", "-", constant(d.rated(gauge.UsualMotorA).amps, d.kneeV()), s.All()&^gives)
	},
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("+", "-", 4), Body: Box{X1: -2.4, Y1: -2.4, X2: 2.4, Y2: 2.4},
		Strokes: append(leads(4, 2.4), circle(0, 0, 2.4), text("M", 0, 0.45), line(-0.8, 1.1, 0.8, 1.1),
			line(-0.8, 1.45, -0.4, 1.45), line(-0.2, 1.45, 0.2, 1.45), line(0.4, 1.45, 0.8, 1.45)),
	},
	Assumes: func(d *Device) []Assumption {
		out := usual(gauge.UsualMotorA, "usual-motor")(d)
		if movesFuel(d) && !d.Said("fuel") {
			out = append(out, Assumption{What: d.Name + " moves fuel", Value: "by its label"})
		}
		return out
	},
	Draws: func(d *Device) []Draw {
		w := d.draw(d.rated(gauge.UsualMotorA), "+", "-", MotorLoad)
		w.Constant, w.Pump = true, movesFuel(d)
		w.Critical = w.Pump
		law, known := coastLaw(d)
		w.Turns, w.CoastV, w.CoastKnown = true, law.Volt, known
		return []Draw{w}
	},
	Buys: func(d *Device) []Purchase { return buy("motor", d) },
})

// movesFuel reports whether a motor is a fuel pump: by its word, or by what
// its label says.
func movesFuel(d *Device) bool {
	label := strings.ToLower(d.Label)
	burns := strings.Contains(label, "fuel") || strings.Contains(label, "diesel")
	return d.Said("fuel") || strings.Contains(label, "fuel pump") || burns && strings.Contains(label, "lift pump")
}

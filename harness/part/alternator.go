package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "alternator",
	Title: "An alternator with its rectifier and regulator.",
	Law: "Engine running: pushes the current that holds its sense point at the setpoint, never below 0 (blocked) and never above its rating (at limit). It senses at S where a wire lands there, else at B+. " +
		"Otherwise B+ only leaks. D+ is the field, 4 ohm to the return, while the engine stands, and follows B+ while it runs: the charge lamp lights, then goes out. In the steps it gives nothing while the engine runs down; what it feeds back then is played apart.",
	Letter: "G",
	Settings: []Setting{
		bare("rating", "rated output", Figure{Name: "current", Dim: quantity.Current, Min: 1, Max: 1000, Doc: "rated output"}.guess(gauge.UsualAlternatorA, "usual-alternator")),
		named("idle", "output hot with the engine idling, from its sheet or curve", Figure{Name: "current", Dim: quantity.Current, Min: 0, Max: 1000, Doc: "output at idle"}),
		named("setpoint", "volts that its regulator holds", Figure{Name: "volts", Dim: quantity.Voltage, Min: 6, Max: 60, Doc: "regulated volts"}.guess(gauge.UsualSetpointV, "usual-setpoint").by(ByVolts)),
	},
	Terminals: []Terminal{
		{Name: "B+", Aliases: []string{"BAT", "B"}, Landing: Post, Doc: "output"},
		{Name: "D+", Aliases: []string{"L", "61"}, Doc: "charge lamp and first field current", Quiet: true},
		{Name: "S", Aliases: []string{"SENSE"}, Doc: "senses the volts that it holds", Quiet: true},
		{Name: "W", Aliases: []string{"TACH"}, Doc: "pulses for a tachometer", Quiet: true},
		{Name: "-", Aliases: []string{"GND", "31"}, Landing: Post, Doc: "return; the metal when the alternator grounds to it"},
	},
	Ground: "-",
	Stamp:  stampAlternator,
	Symbol: alternatorSymbol(),
	Supplies: func(d *Device) []Supply {
		return []Supply{{Plus: "B+", Minus: "-", Pilot: "D+", MaxA: d.Num("rating"), IdleA: d.Num("idle"), IdleSaid: d.Said("idle"), SetpointV: d.Num("setpoint")}}
	},
	Inside: func(d *Device) []Path { return []Path{{A: "D+", B: "-", OneWay: true}} },
	Buys: func(d *Device) []Purchase {
		return buy("alternator", d, quantity.Text(d.Num("rating"), quantity.Current))
	},
})

func alternatorSymbol() Symbol {
	return Symbol{
		Half: 4, Columns: 2, Row: LoadRow, Body: Box{X1: -3.2, Y1: -3, X2: 2.4, Y2: 3, Col2: 1},
		Pins: []SymbolPin{pin("B+", 0, -4), pinAt("S", 0, 3.6, -4), pinAt("D+", 1, 0, -4), pinAt("W", 1, 0, 4), pin("-", 0, 4)},
		Strokes: []Stroke{
			stroke(Unit, Point{X: -3.2, Y: -3}, at(1, 2.4, 3)), line(0, -4, 0, -1.9), line(0, 1.9, 0, 4), line(3.6, -4, 3.6, -3), stroke(Thin, at(1, 0, 4), at(1, 0, 3)), circle(0, 0, 1.9),
			text("G", 0, 0.1), text("3~", 0, 1.35), stroke(Thin, at(1, 0, -4), at(1, 0, 0)), stroke(Thin, Point{X: 1.9}, at(1, 0, 0)),
			fill(3.6, -0.8, 3.6, 0.8, 5, 0), line(5, -0.8, 5, 0.8),
		},
	}
}

func stampAlternator(d *Device, s *Stamper) {
	running := s.Where(func(st Step) bool { return st.Engine == Running || st.Engine == RunningDown && s.RunDown })
	still := s.All() &^ running
	sense := "B+"
	if d.wired("S") {
		sense = "S"
	}
	s.Branches = append(s.Branches, Branch{
		A: "B+", B: "-", Steps: running, State: -1, Use: SourceElement, SenseA: sense, SenseB: "-",
		Law: circuit.Law{Kind: circuit.Regulator, Volt: d.Num("setpoint"), Amp: d.Num("rating")},
	})
	s.Add(LeakElement, "B+", "-", circuit.Law{Kind: circuit.Resistor, Ohm: gauge.DiodeLeakOhm}, s.All())
	s.Add(LeakElement, "S", "-", leak(), s.All())
	s.Add(LeakElement, "W", "-", leak(), s.All())
	field := circuit.Law{Kind: circuit.Resistor, Ohm: gauge.UsualFieldOhm * d.scale() * d.scale()}
	s.Add(Element, "D+", "-", field, still)
	s.Add(Element, "B+", "D+", field, running)
	s.Add(LeakElement, "D+", "-", leak(), running)
}

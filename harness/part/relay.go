package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "relay",
	Title: "A relay with a make contact, or with a change-over contact.",
	Law: "Coil: a resistance, at its temperature R x (234.5 + T) / 254.5. The contact closes at pull-in volts, opens under release volts and stays as it is between. " +
		"Closed contact 5 mohm, or what the draft states. Suppression lies across the coil: a diode conducts from 85 to 86, so that 86 has to be the positive side; a resistor always conducts; a zener does not below its volts.",
	Letter:   "K",
	Settings: append(coilSettings(), append(contactSettings(), oneOf("action", "its contact", "make", "change-over"))...),
	Terminals: []Terminal{
		{Name: "30", Aliases: []string{"COM"}, Doc: "common of the contact"},
		{Name: "85", Aliases: []string{"COIL-"}, Doc: "coil, negative side"},
		{Name: "86", Aliases: []string{"COIL+"}, Doc: "coil, positive side"},
		{Name: "87", Aliases: []string{"NO"}, Doc: "joined to 30 while the coil is energized"},
		{Name: "87a", Aliases: []string{"NC"}, Doc: "change-over: joined to 30 at rest", Quiet: true},
	},
	Bladed: []string{"85", "86"},
	Fits:   func(d *Device, t string) bool { return t != "87a" || d.Word("action") == "change-over" },
	Stamp:  stampRelay,
	Symbol: Symbol{Parts: []Symbol{relayCoilSymbol(), contact("contact", "30", "87", -1.5)}},
	Others: []Symbol{
		{Name: "change-over", Parts: []Symbol{relayCoilSymbol(), changeOver("contact", "30", "87", "87a", -2.6)}},
		{Name: "contact-up", Half: 4, Columns: 2, Row: SwitchRow, Pins: []SymbolPin{pin("30", 0, -4), pinAt("87", 1, 0, -4)},
			Body: Box{X1: -0.4, Y1: 0, X2: 0.4, Y2: 2.6, Col2: 1},
			Strokes: []Stroke{
				line(0, -4, 0, 2), line(0, 2, 2.2, 2), dot(2.2, 2, 0.22), blade(2.2, 2, 5.4, 0.4), closed(2.2, 2, 5.7, 1.9),
				stroke(Thin, at(1, -2.4, 2), at(1, 0, 2)), stroke(Thin, at(1, 0, 2), at(1, 0, -4)),
			}},
	},
	Form: func(d *Device) string {
		if d.Word("action") == "change-over" {
			return "change-over"
		}
		return ""
	},
	Switches: relayContacts,
	Kicks: func(d *Device) []Kick {
		return []Kick{{A: "86", B: "85", Suppressed: d.Word("suppress"), At: d.At}}
	},
	Buys: func(d *Device) []Purchase {
		return buy("relay", d, d.Word("action"), quantity.Text(d.SystemV, quantity.Voltage), suppressedText(d))
	},
})

// coilSettings are those of the coil of a relay.
func coilSettings() []Setting {
	least := Figure{Name: "surely-out", Dim: quantity.Voltage, Min: 0.1, Max: 60, Doc: "surely out below this, at 20 C; with one figure alone: surely in from this"}
	sure := Figure{Name: "surely-in", Dim: quantity.Voltage, Min: 0.1, Max: 60, Doc: "surely in from this, at 20 C", Optional: true}
	return []Setting{
		named("coil", "resistance of the coil at 20 C",
			Figure{Name: "resistance", Dim: quantity.Resistance, Min: 1, Max: 1e5, Doc: "coil resistance"}.guess(gauge.RelayCoilOhm, "relay-coil").by(ByVolts2)),
		named("pull-in", "volts that pull it in; when not said surely in from 8 V at 12 V, surely out only below release, and between not sure", least, sure),
		named("release", "surely let go below this, at 20 C", Figure{Name: "volts", Dim: quantity.Voltage, Min: 0.05, Max: 60, Doc: "release volts"}.or(gauge.ReleaseV, "relay-release").by(ByVolts)),
		named("moves", "time to operate, and to release", seconds("operate", "time to close", 1).or(gauge.OperateS, "relay-times"), seconds("let-go", "time to open", 1).optional().or(gauge.ReleaseS, "relay-times")),
		{Name: "suppress", Words: []string{"diode", "resistor", "zener"}, Doc: "what lies across the coil to take its kick"},
	}
}

// pullIn gives the volts under which a coil surely stays out and from which
// it surely pulls in; said is true where the draft gives the pair.
func pullIn(d *Device) (outBelow, inAbove float64, said bool) {
	v := d.Value("pull-in")
	switch {
	case v.set(1):
		return v.num(0), v.num(1), true
	case v.set(0):
		return d.Num("release"), v.num(0), false
	}
	return d.Num("release"), gauge.PullInV * d.scale(), false
}

func stampRelay(d *Device, s *Stamper) {
	coil, temp := d.Num("coil"), d.AmbientC
	if s.Corner == ColdStart {
		temp = s.Start.Temp()
	}
	outBelow, inAbove, said := pullIn(d)
	state := s.Remember(State{
		Name: d.Name, Kind: RelayState, Watch: []Watch{{Plus: "86", Minus: "85", Steps: s.All()}}, CoilOhm: coil,
		OutBelowV: outBelow, InAboveV: inAbove, PairSaid: said, ReleaseV: d.Num("release"),
		OperateS: d.Num("moves"), ReleaseS: d.NumAt("moves", 1), AmbientC: temp,
	})
	s.Add(CoilElement, "86", "85", resistor(gauge.CopperAt(coil, temp)), s.All())
	stampSuppression(d, s, "86", "85")
	ohm := gauge.RelayContactOhm
	if said := d.Num("contact-resistance"); said > 0 {
		ohm = said
	}
	s.AddIf(ContactElement, "30", "87", resistor(ohm), s.All(), state, false)
	if d.Word("action") == "change-over" {
		s.AddIf(ContactElement, "30", "87a", resistor(ohm), s.All(), state, true)
	}
}

// stampSuppression puts what lies across a coil between its positive and its
// negative side.
func stampSuppression(d *Device, s *Stamper, plus, minus string) {
	switch d.Word("suppress") {
	case "diode":
		s.Add(Element, minus, plus, diodeLaw(gauge.DiodeV, gauge.UsualDiodeA), s.All())
	case "resistor":
		s.Add(Element, plus, minus, resistor(gauge.UsualSuppressOhm*d.scale()*d.scale()), s.All())
	case "zener":
		s.Add(LeakElement, plus, minus, circuit.Law{Kind: circuit.Resistor, Ohm: gauge.DiodeLeakOhm}, s.All())
	}
}

func relayContacts(d *Device) []Contact {
	make := d.contact("30", "87", "coil")
	make.CoilA, make.CoilB = "86", "85"
	if d.Word("action") != "change-over" {
		return []Contact{make}
	}
	rest := make
	rest.B, rest.AtRest = "87a", true
	return []Contact{make, rest}
}

// suppressedText names the suppression for a parts list.
func suppressedText(d *Device) string {
	if w := d.Word("suppress"); w != "" {
		return "with " + w
	}
	return ""
}

func relayCoilSymbol() Symbol {
	return Symbol{
		Name: "coil", Half: 4, Columns: 1, Row: SwitchRow, Pins: upDown("86", "85", 4), Body: Box{X1: -2, Y1: -1, X2: 2, Y2: 1},
		Strokes: append(leads(4, 1), rect(-2, -1, 4, 2)),
	}
}

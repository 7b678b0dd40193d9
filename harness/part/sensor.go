package part

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/circuit"
)

var _ = define(Kind{
	Name:  "sensor",
	Title: "A sensor: temperature, pressure, speed, position, level, oxygen.",
	Law: "Small resistances. Single: from + to - what it draws, from S to - its resistance. Differential: the same, its signal between S+ and S-. " +
		"Inductive: a coil between S+ and S-, without a feed. Wideband: a heater from H+ to H-, its cells between IP, VS and VM. " +
		"What it says is not played: legwork shows whether it is fed, not what it measures.",
	Letter: "B",
	Settings: loadSettings(
		oneOf("sort", "its signal: against its return; between two lines; a coil between two lines; an oxygen cell with pump and heater", sensorSorts...),
		named("resistance", "between signal and return, or between its two signal terminals", ohms("resistance", "resistance at its signal").or(gauge.UsualSignalOhm, "usual-sensor"))),
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"IGN"}, Doc: "feed or reference volts", Quiet: true},
		{Name: "-", Aliases: []string{"GND"}, Doc: "return; the metal when the sensor grounds to it"},
		{Name: "S", Aliases: []string{"SIG"}, Doc: "signal", Quiet: true},
		{Name: "S+", Aliases: []string{"SIG+"}, Doc: "signal, one line"},
		{Name: "S-", Aliases: []string{"SIG-"}, Doc: "signal, the other line"},
		{Name: "H+", Aliases: []string{"HEAT+"}, Doc: "feed of the heater"},
		{Name: "H-", Aliases: []string{"HEAT-"}, Doc: "return of the heater, often an output"},
		{Name: "IP", Aliases: []string{"PUMP"}, Doc: "pump current"},
		{Name: "VS", Aliases: []string{"UN"}, Doc: "volts of the cell"},
		{Name: "VM", Aliases: []string{"CELL-"}, Doc: "common of pump and cell, not ground"},
		{Name: "RC", Aliases: []string{"TRIM"}, Doc: "trim resistor of its plug", Quiet: true},
	},
	Ground: "-",
	Fits: func(d *Device, t string) bool {
		return slices.Contains(sensorTerminals[d.Word("sort")], t)
	},
	Stamp:  stampSensor,
	Symbol: sensorSymbol(),
	Others: []Symbol{
		{Name: "temperature-up", Half: 3, Columns: 2, Row: SensorRow, Pins: bothUp("S", "-"), Body: upBody,
			Strokes: append(upLeads(2, 6), rect(2, -0.4, 4, 1.6), line(2, 1.9, 2.8, 1.9), line(2.8, 1.9, 5.4, -1.1), text("ϑ−", 1.1, 2.1))},
		{Name: "speed-up", Half: 3, Columns: 2, Row: SensorRow, Pins: bothUp("S", "-"), Body: upBody,
			Strokes: append(upLeads(1.9, 6.1), arc(1.9, 0.4, 3.3, 0.4, 0.7, true), arc(3.3, 0.4, 4.7, 0.4, 0.7, true), arc(4.7, 0.4, 6.1, 0.4, 0.7, true),
				line(1.9, 1, 6.1, 1), line(1.9, 1.35, 6.1, 1.35))},
		sensorForm("differential", "+", "S+", "S-"), inductiveSymbol(), sensorForm("wideband", "H+", "IP", "VS", "VM", "RC"),
	},
	Form: func(d *Device) string {
		if w := d.Word("sort"); w != sensorSorts[0] {
			return w
		}
		return ""
	},
	Assumes: func(d *Device) []Assumption {
		a, source, feeds := sensorFeed(d)
		if !feeds || d.leftOpen("+") {
			return nil // nothing feeds it: a sender, or a coil
		}
		return usual(a, source)(d)
	},
	Draws: func(d *Device) []Draw {
		a, _, feeds := sensorFeed(d)
		switch {
		case !feeds:
			return nil
		case d.Word("sort") == "wideband":
			return []Draw{d.draw(d.rated(a), "H+", "H-", ResistiveLoad)}
		}
		return []Draw{d.draw(d.rated(a), "+", "-", ElectronicLoad)}
	},
	Buys: func(d *Device) []Purchase {
		if w := d.Word("sort"); w != sensorSorts[0] {
			return buy(w+" sensor", d)
		}
		return buy("sensor", d)
	},
})

// sensorSorts are the sorts of signal; the first is the usual one.
var sensorSorts = []string{"single", "differential", "inductive", "wideband"}

// sensorTerminals are the terminals of each sort.
var sensorTerminals = map[string][]string{
	"single":       {"+", "-", "S"},
	"differential": {"+", "-", "S+", "S-"},
	"inductive":    {"S+", "S-"},
	"wideband":     {"H+", "H-", "IP", "VS", "VM", "RC"},
}

// sensorFeed gives what a sensor usually draws at 12 V; feeds is false for one
// that makes its own volts.
func sensorFeed(d *Device) (usualA float64, source string, feeds bool) {
	switch d.Word("sort") {
	case "inductive":
		return 0, "", false
	case "wideband":
		return gauge.UsualOxygenW / gauge.LampRatedV, "usual-oxygen", true
	}
	return gauge.UsualSensorA, "usual-sensor", true
}

func stampSensor(d *Device, s *Stamper) {
	between := func(a, b string, ohm float64) {
		s.Add(Element, a, b, circuit.Law{Kind: circuit.Resistor, Ohm: ohm}, s.All())
	}
	ohm := d.Num("resistance")
	a, _, _ := sensorFeed(d)
	switch d.Word("sort") {
	case "inductive":
		between("S+", "S-", ohm)
	case "wideband":
		s.Add(LoadElement, "H+", "H-", resistor(d.rated(a).ohm()), s.All())
		for _, cell := range []string{"IP", "VS", "RC"} {
			between(cell, "VM", ohm)
		}
		s.Add(LeakElement, "VM", "H-", leak(), s.All())
	case "differential":
		s.Add(LoadElement, "+", "-", resistor(d.rated(a).ohm()), s.All())
		between("S+", "S-", ohm)
		s.Add(LeakElement, "S-", "-", leak(), s.All())
	default:
		s.Add(LoadElement, "+", "-", resistor(d.rated(a).ohm()), s.All())
		between("S", "-", ohm)
	}
}

package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "battery",
	Title: "A lead-acid battery.",
	Law: "E.m.f. behind a resistance, v = E - i R. E is 12.65 V at rest, 12.6 V while the starter turns, and setpoint - 2 A x R while the engine runs and the battery is charged. " +
		"R = 6.0 / CCA warm, 5.4 / CCA at -18 C; asked for a charge, a cold start takes its rest volts and the resistance of a battery that just passes the load test at that temperature. A 24 V battery has twice the e.m.f. and twice the resistance.",
	Letter: "G",
	Settings: []Setting{
		named("cca", "cold cranking amperes", Figure{Name: "current", Dim: quantity.Current, Min: 20, Max: maxA, Doc: "cold cranking amperes"}.guess(gauge.UsualCCA, "usual-battery")),
		bare("capacity", "capacity", Figure{Name: "charge", Dim: quantity.Charge, Min: 1, Max: 2000, Doc: "capacity"}),
		bare("volts", "volts of the battery, those of the system when not said", Figure{Name: "volts", Dim: quantity.Voltage, Min: 6, Max: 48, Doc: "nominal volts"}.or(12, "stated").by(ByVolts)),
	},
	Terminals: []Terminal{
		{Name: "+", Aliases: []string{"POS", "30"}, Landing: Post, Doc: "positive post"},
		{Name: "-", Aliases: []string{"NEG", "31"}, Landing: Post, Doc: "negative post"},
	},
	Ground: "-",
	Stamp:  stampBattery,
	Symbol: Symbol{
		Half: 4, Columns: 1, Row: LoadRow, Pins: upDown("+", "-", 4), Body: Box{X1: -2, Y1: -1.5, X2: 2, Y2: 1.5},
		Strokes: []Stroke{
			line(0, -4, 0, -1.5), line(-2, -1.5, 2, -1.5), bold(-1, -0.75, 1, -0.75), dashed(0, -0.75, 0, 0.75),
			line(-2, 0.75, 2, 0.75), bold(-1, 1.5, 1, 1.5), line(0, 1.5, 0, 4), line(-1.9, -2.4, -1.1, -2.4), line(-1.5, -2.8, -1.5, -2),
		},
	},
	Supplies: func(d *Device) []Supply {
		cca := d.Num("cca")
		return []Supply{{Plus: "+", Minus: "-", Battery: true, RatedV: d.Num("volts"), MaxA: cca, CCA: cca, Ohm: batterySeriesOhm(d), AmpHours: d.Num("capacity")}}
	},
	Buys: func(d *Device) []Purchase {
		return buy("battery", d, "CCA "+quantity.Text(d.Num("cca"), quantity.Current))
	},
})

// batterySeriesOhm is the resistance of the whole battery, warm.
func batterySeriesOhm(d *Device) float64 {
	warm, _ := gauge.BatteryOhm(d.Num("cca"))
	return warm * d.Num("volts") / 12
}

func stampBattery(d *Device, s *Stamper) {
	k, r, rest := d.Num("volts")/12, batterySeriesOhm(d), gauge.RestEMF
	if s.Corner == ColdStart {
		r, rest = s.Start.ohm(d.Num("cca"))*k, s.Start.rest()
	}
	charge := gauge.RestEMF * k
	if d.ChargeV > 0 {
		charge = d.ChargeV*k/d.scale() - gauge.ChargeCurrentA*r // its share of the volts, where batteries stand in series
	}
	source := func(emf float64, ok func(Step) bool) {
		if set := s.Where(ok); set != NoSteps {
			s.Add(SourceElement, "+", "-", circuit.Law{Kind: circuit.Source, Volt: emf, Ohm: r}, set)
		}
	}
	starts := func(e Engine) bool { return e == Locked || e == Turning }
	charged := func(e Engine) bool { return e == Running || e == RunningDown && s.RunDown }
	source(rest*k, func(st Step) bool { return !starts(st.Engine) && !charged(st.Engine) })
	source((rest-gauge.RestEMF+gauge.CrankEMF)*k, func(st Step) bool { return starts(st.Engine) })
	source(charge, func(st Step) bool { return charged(st.Engine) })
}

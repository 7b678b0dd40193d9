package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
	"legwork/harness/quantity"
)

// loadSettings are those of every kind that uses current.
func loadSettings(more ...Setting) []Setting {
	watts := Figure{Name: "power", Dim: quantity.Power, Min: 0, Max: 50000, Doc: "power at the rated volts"}
	rated := volts("at", "volts at which that holds").optional().guess(gauge.LampRatedV, "rated-volts").by(ByVolts)
	return append([]Setting{
		named(DrawsSetting, "steady current, and the volts at which it holds", amps("current", "steady current"), rated),
		bare("power", "power instead of current, and the volts at which it holds", watts, rated),
		{Name: "needs", Doc: "least volts at its terminals with which it works, in the steps named", Steps: true, Repeats: true,
			Figures: []Figure{volts("volts", "least volts")}},
		named("inrush", "current in the first moment after switching on", amps("current", "first current")),
		named("peak", "current at every start, and for how long", amps("current", "current at start"), seconds("time", "how long it lasts", 600).optional()),
		named("cycle", "time on, and the whole period", seconds("on", "time on", 86400), seconds("period", "whole period", 86400).optional()),
		named("duty", "share of the time that it is on", percent("share", "share of the time")),
		named("pwm", "rate at which it is switched on and off", Figure{Name: "rate", Dim: quantity.Frequency, Min: 0, Max: 1e6, Doc: "switching rate"}),
		flag("continuous", "it may stay on for hours"),
	}, more...)
}

// DrawsSetting is the setting by which a load says its current.
const DrawsSetting = "draws"

// rating is what a load draws: amperes at volts, and whether the draft says so.
type rating struct {
	amps, volts float64
	known       bool
	at          *Value
}

// rated reads what a load draws; usualA is taken at the usual volts when the
// draft says neither current nor power.
func (d *Device) rated(usualA float64) rating {
	if v := d.Value("draws"); v != nil && v.Said {
		return rating{v.num(0), v.num(1), true, v}
	}
	if v := d.Value("power"); v != nil && v.Said && v.num(1) > 0 {
		return rating{v.num(0) / v.num(1), v.num(1), true, v}
	}
	return rating{usualA / d.scale(), gauge.LampRatedV * d.scale(), false, nil}
}

// ohm is the resistance of a load that follows the volts.
func (r rating) ohm() float64 {
	if !(r.amps > 0) {
		return gauge.OffLeakOhm
	}
	return r.volts / r.amps
}

// draw describes the load between two terminals.
func (d *Device) draw(r rating, plus, minus string, t LoadType) Draw {
	cadence := d.rhythm()
	out := Draw{
		Plus: plus, Minus: minus, Amps: r.amps, RatedV: r.volts, Type: t, AmpsKnown: r.known, At: d.At,
		InrushA: d.Num("inrush"), DutyFrac: cadence.dutyFrac, OnS: cadence.onS, PeriodS: cadence.periodS, PeakA: d.Num("peak"), PeakS: d.NumAt("peak", 1),
	}
	if r.at != nil && !r.at.At.IsZero() {
		out.At = r.at.At
	}
	for _, v := range d.All("needs") {
		out.Needs = append(out.Needs, Need{Volts: v.num(0), Steps: v.When, Said: true, At: v.At})
	}
	return out
}

// eitherWay marks a load that works whichever of its terminals is fed.
func eitherWay(w Draw) Draw {
	w.EitherWay = true
	return w
}

// dutyFrac is the share of the time that the load is on.
func (d *Device) dutyFrac() float64 {
	if d.Said("duty") {
		return d.Num("duty") / 100
	}
	if on, period := d.Num("cycle"), d.NumAt("cycle", 1); d.Said("cycle") && period >= on && period > 0 {
		return on / period
	}
	return 1
}

// kneeV is the least volts at which a load is known to work, half the system's
// where nothing is said. One machine has one knee: the least of its needs.
func (d *Device) kneeV() float64 {
	knee := 0.0
	for _, v := range d.All("needs") {
		if n := v.num(0); knee == 0 || n < knee {
			knee = n
		}
	}
	if knee > 0 {
		return knee
	}
	return d.halfV()
}

// constant is the law of a load whose current does not follow the volts.
func constant(amps, kneeV float64) circuit.Law {
	if !(amps > 0) {
		return leak()
	}
	return circuit.Law{Kind: circuit.ConstantCurrent, Amp: amps, Knee: kneeV, LeakOhm: gauge.OffLeakOhm}
}

// usual lists the draw that was taken for granted.
func usual(usualA float64, source string) func(d *Device) []Assumption {
	return func(d *Device) []Assumption {
		r := d.rated(usualA)
		if r.known {
			return nil
		}
		return []Assumption{{What: "draw of " + d.Name, Value: quantity.Text(r.amps, quantity.Current), Source: source, DrawsA: r.amps}}
	}
}

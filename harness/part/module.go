package part

import (
	"legwork/gauge"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:  "module",
	Title: "A controller: its terminals are its lines, each with a role.",
	Law: "Alive while every feed has its volts to the ground terminals: above where stated, else half the system's. Then a feed draws its current down to those volts, below in proportion; else it draws asleep, or leaks. " +
		"Outputs work only while it is alive: low-side to ground, high-side from a feed, each 0.5 V at rated current, in proportion below. Its ground terminals are one point inside. A reference gives 5 V behind 1 ohm, a pulled-up input its volts behind the pull-up, while it is alive.",
	Letter: "A",
	Settings: []Setting{
		{Name: "ground-wanted", Free: true, Doc: "metal that its maker wants its grounds on"},
	},
	Lines:   &Lines{Shape: TerminalLines, Landing: Cavity, Roles: moduleRoles()},
	Stamp:   stampModule,
	Symbol:  Symbol{Half: 4, Columns: 1, Row: LoadRow, Body: Box{X1: -3.2, Y1: -4, X2: 3.2, Y2: 4}, Strokes: []Stroke{stroke(Thin, pts(-3.2, -4, 3.2, -4, 3.2, 4, -3.2, 4, -3.2, -4)...)}},
	Draws:   moduleDraws,
	Drives:  moduleOutputs,
	Grounds: moduleReturns,
	Inside:  moduleInside,
	Holds:   moduleHolds,
	Assumes: func(d *Device) []Assumption {
		var out []Assumption
		for i := range d.Lines {
			if l := &d.Lines[i]; l.is("feed") && asleepA(l) > 0 && !l.Said("asleep") {
				out = append(out, Assumption{What: "asleep draw of " + d.Name + "." + l.Name, Value: quantity.Text(asleepA(l), quantity.Current), Source: "asleep"})
			}
		}
		return out
	},
	Buys: func(d *Device) []Purchase { return buy("controller", d) },
})

// moduleRoles are what a terminal of a module may be for.
func moduleRoles() []Role {
	current := func(doc string) Setting {
		return Setting{Name: "current", Bare: true, Steps: true, Doc: doc, Figures: []Figure{amps("current", doc)}}
	}
	output := []Setting{
		current("largest current, and the steps in which it is on"),
		flag("clamps", "the driver takes the kick of a coil itself"),
		named("duty", "share of the time that it is on", percent("share", "share of the time")),
		named("pwm", "rate at which it is switched", Figure{Name: "rate", Dim: quantity.Frequency, Min: 0, Max: 1e6, Doc: "switching rate"}),
	}
	return []Role{
		{Word: "feed", Doc: "draws current whenever it has volts; its steps are those in which it has to be fed", Settings: []Setting{
			current("current while the module is alive, and the steps in which it must be fed"),
			named("asleep", "current while the module is not alive; 2 mA on a feed that has to be fed at off, a guess", amps("current", "current asleep")),
			named("above", "least volts, to the ground terminals", volts("volts", "least volts")),
			named("holds", "how long it bridges a loss of this feed", seconds("time", "time bridged", 60)),
			named("inrush", "current in the first moment", amps("current", "first current")),
		}},
		{Word: "ground", Doc: "return of the module"},
		{Word: "low-side", Doc: "output that joins its load to ground", Settings: output},
		{Word: "high-side", Doc: "output that joins its load to a feed", Settings: append(output,
			Setting{Name: "fed-by", Free: true, Doc: "the feed that it takes its current from; the first one when not said"})},
		{Word: "input", Doc: "reads volts; draws next to nothing", Settings: []Setting{
			named("pull-up", "resistor inside to steady volts while the module is alive, and these volts", pullOhm,
				Figure{Name: "volts", Dim: quantity.Voltage, Min: 1, Max: 32, Doc: "volts behind it"}.or(gauge.UsualReferenceV, "usual-reference").optional()),
			named("pull-down", "resistor inside to ground", pullOhm),
		}},
		{Word: "signal", Doc: "a signal or data line, in or out; draws next to nothing"},
		{Word: "can-high", Doc: "the high line of a two-wire data bus; twisted with its partner"},
		{Word: "can-low", Doc: "the low line of a two-wire data bus"},
		{Word: "sensor-ground", Doc: "return of sensors, which nothing else may share"},
		{Word: "shield", Doc: "end of a shield or of its drain wire; one with the grounds inside, and no return for anything else"},
		{Word: "unused", Doc: "a cavity without a function; it reads as open"},
		{Word: "reference", Doc: "steady volts for sensors", Settings: []Setting{
			bare("volts", "what it gives", Figure{Name: "volts", Dim: quantity.Voltage, Min: 1, Max: 24, Doc: "reference volts"}.or(gauge.UsualReferenceV, "usual-reference")),
		}},
	}
}

var pullOhm = Figure{Name: "resistance", Dim: quantity.Resistance, Min: 10, Max: 1e7, Doc: "resistance"}

// is reports whether the line has the role.
func (l *Line) is(role string) bool { return l.Role != nil && l.Role.Word == role }

// withRole lists the terminals of a role.
func (d *Device) withRole(role string) []string {
	var out []string
	for i := range d.Lines {
		if d.Lines[i].is(role) {
			out = append(out, d.Lines[i].Name)
		}
	}
	return out
}

// returns lists the ground terminals, power grounds first.
func (d *Device) returns() []string {
	return append(append(d.withRole("ground"), d.withRole("sensor-ground")...), d.withRole("shield")...)
}

// leftOpen reports whether a terminal has no wire on purpose, as a second feed
// that this harness does not use.
func (d *Device) leftOpen(name string) bool {
	i, ok := d.PinOf(name)
	return ok && d.Pins[i].Quiet && !d.Pins[i].Wired
}

// feeds lists the lines by which a module is fed, those left open apart.
func (d *Device) feeds() []*Line {
	var out []*Line
	for i := range d.Lines {
		if l := &d.Lines[i]; l.is("feed") && !d.leftOpen(l.Name) {
			out = append(out, l)
		}
	}
	return out
}

// stepOff is the index of the step off, the first of every draft.
const stepOff = 0

// asleepA is what a feed draws while its module is not alive.
func asleepA(l *Line) float64 {
	if l.Said("asleep") {
		return l.Num("asleep")
	}
	if l.When().Has(stepOff) {
		return gauge.AsleepA
	}
	return 0
}

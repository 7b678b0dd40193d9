package part

import (
	"legwork/gauge"
	"legwork/harness/circuit"
)

// coasting is the setting of a motor that says what it gives back as it runs down.
func coasting() Setting {
	return named("coasts", "what it gives back as it runs down: share of its rated volts, and resistance of its armature",
		percent("share", "e.m.f. at the start, as a share of the rated volts"), ohms("resistance", "resistance of its armature"))
}

// coastLaw is the motor as a source while it runs down; ok is false where the
// draft does not say what it gives, for no usual figure is to be had.
func coastLaw(d *Device) (law circuit.Law, ok bool) {
	if !d.Said("coasts") {
		return circuit.Law{}, false
	}
	volts := d.rated(gauge.UsualMotorA).volts
	return circuit.Law{Kind: circuit.Source, Volt: d.Num("coasts") / 100 * volts, Ohm: d.NumAt("coasts", 1)}, true
}

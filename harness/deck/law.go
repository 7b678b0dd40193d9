package deck

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/circuit"
)

// amps is the expression of the current of a law at the volts v, itself an
// expression, for everything but a regulator.
func amps(law circuit.Law, v string) string {
	leak := v + "/" + num(leakOhm(law))
	switch law.Kind {
	case circuit.Source:
		return fmt.Sprintf("(%s-%s)/%s", v, num(law.Volt), num(law.Ohm))
	case circuit.ConstantCurrent:
		return fmt.Sprintf("(%s > %s ? %s : %s*%s/%s)+%s", v, num(law.Knee), num(law.Amp), num(law.Amp), v, num(law.Knee), leak)
	case circuit.ConstantPower:
		return fmt.Sprintf("%s > %s ? %s/%s : %s", v, num(law.Knee), num(law.Watt), v, leak)
	case circuit.Diode:
		return fmt.Sprintf("%s > %s ? %s+(%s-%s)/%s : %s", v, num(law.Volt), num(law.Volt/leakOhm(law)), v, num(law.Volt), num(law.Ohm), leak)
	case circuit.Warming:
		// The one real root of i (1 + h i^2) = v/R.
		root := fmt.Sprintf("sqrt(3*%s)", num(law.Rise/(law.Amp*law.Amp)))
		return fmt.Sprintf("2/%s*sinh(asinh(1.5*%s*%s/%s)/3)", root, root, v, num(law.Ohm))
	}
	return v + "/" + num(law.Ohm)
}

// leakOhm is what lies beside a load or a diode.
func leakOhm(law circuit.Law) float64 {
	switch {
	case law.LeakOhm > 0:
		return law.LeakOhm
	case law.Kind == circuit.Diode:
		return gauge.DiodeLeakOhm
	}
	return gauge.OffLeakOhm
}

// coilAt is a coil's resistance, or the volts that it asks for, at a
// temperature, from what holds at 20 C.
func coilAt(at20, tempC float64) float64 { return gauge.CoilAt(at20, tempC) }

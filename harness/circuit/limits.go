package circuit

import "fmt"

// MinOhm is the least resistance that is reckoned with, in ohm. A smaller one,
// zero included, counts as this; links that small are better joined.
const MinOhm = 1e-6

// MinKneeV is the least knee of a load, in volts. A smaller one, zero included,
// counts as this, for a load can't draw a fixed current from nothing.
const MinKneeV = 1e-3

// LoadLeakOhm lies across a load that states no leak of its own, in ohm (a low figure).
const LoadLeakOhm = 1e6

// DiodeLeakOhm lies across a diode that states no leak of its own, in ohm (a low figure).
const DiodeLeakOhm = 1e7

// Most of each quantity; beyond it a law is refused as a slip of the pen.
const (
	maxOhm  = 1e15
	maxVolt = 1e6
	maxAmp  = 1e6
	maxWatt = 1e9
	maxRise = 1e6
)

// check returns why the law of branch b can't be solved, or nil.
func (l Law) check(b Branch, nodes int) error {
	if l.Kind < Resistor || l.Kind > Regulator {
		return fmt.Errorf("branch %d has no law of kind %d", b, l.Kind)
	}
	for _, q := range [...]struct {
		name string
		v    float64
		most float64
	}{
		{"Ohm", l.Ohm, maxOhm}, {"LeakOhm", l.LeakOhm, maxOhm}, {"Volt", l.Volt, maxVolt},
		{"Knee", l.Knee, maxVolt}, {"Amp", l.Amp, maxAmp}, {"Watt", l.Watt, maxWatt}, {"Rise", l.Rise, maxRise},
	} {
		if !(q.v >= 0 && q.v <= q.most) {
			return fmt.Errorf("branch %d: %s is %g, allowed 0 to %g", b, q.name, q.v, q.most)
		}
	}
	for _, n := range [...]Node{l.SenseA, l.SenseB} {
		if l.Kind == Regulator && !(n >= 0 && int(n) < nodes) {
			return fmt.Errorf("branch %d senses node %d of a network of %d", b, n, nodes)
		}
	}
	return nil
}

func (l Law) conductance() float64 { return 1 / max(l.Ohm, MinOhm) }

func (l Law) leak() float64 {
	switch {
	case l.LeakOhm > 0:
		return 1 / max(l.LeakOhm, MinOhm)
	case l.Kind == Diode:
		return 1 / DiodeLeakOhm
	}
	return 1 / LoadLeakOhm
}

func (l Law) knee() float64 { return max(l.Knee, MinKneeV) }

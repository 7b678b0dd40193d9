// Package circuit solves d.c. networks: nodes joined by branches, each with a
// law between its voltage and its current. It knows nothing of vehicles.
//
// Node 0 is the reference. The linear core is a sparse star-mesh elimination
// that only ever adds positive conductances, so that a node floats exactly
// when its pivot is exactly zero. While every source stands on the reference
// with the same sign, each voltage is right to its last digits, however small
// the leak it hangs on; elsewhere it is right on the scale of the e.m.f.s.
//
// Bent laws are followed from open circuit downward, so that of several
// solutions the one with the highest voltages is found. Where a constant-power
// load has none, it is named with the closed form that says so. Every answer is
// judged by the true laws, node by node.
package circuit

// Node is a point of the network; 0 is the reference.
type Node int32

// Branch is the index of a branch, in the order in which they were added.
type Branch int32

// LawKind names the law of a branch.
type LawKind uint8

const (
	// Resistor: i = v/Ohm.
	Resistor LawKind = iota + 1
	// Warming is a resistor that warms with its own current, as a fuse element does: R = Ohm (1 + Rise (i/Amp)^2).
	Warming
	// Source is an e.m.f. Volt behind Ohm: current leaves at A, v(A)-v(B) = Volt - i_out*Ohm.
	Source
	// ConstantCurrent draws Amp from A to B down to Knee volts; below, in proportion to volts. LeakOhm always lies beside it.
	ConstantCurrent
	// ConstantPower draws Watt/v from A to B above Knee volts; at and below Knee only the leak remains.
	ConstantPower
	// Diode conducts from A to B: leak Ohm LeakOhm below Volt, then resistance Ohm above Volt.
	Diode
	// Regulator pushes the current into A (out of B) that holds v(SenseA)-v(SenseB) at Volt, never below 0 and never above Amp.
	Regulator
)

// Law is the law of one branch; which fields count depends on Kind. All
// resistances in ohm, volts, amperes; every one finite and not negative.
type Law struct {
	Kind           LawKind
	Ohm            float64
	Volt           float64
	Amp            float64
	Watt           float64
	Knee           float64
	Rise           float64
	LeakOhm        float64 // 0: default leak (1 Mohm for loads, 10 Mohm for diodes)
	SenseA, SenseB Node    // Regulator only
}

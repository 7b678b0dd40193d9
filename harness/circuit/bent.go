package circuit

import "math"

// bent is a branch whose current isn't in proportion to its voltage, with the
// straight line i = g v - s that stands for it in the pass at hand.
type bent struct {
	b         Branch
	kind      LawKind
	a, z      int32 // unknowns at A and B
	place     int32 // where its conductance is stamped
	open      bool  // switched off
	cold      float64
	heat      float64
	leak      float64
	volt, amp float64
	watt      float64
	knee      float64

	g, s    float64
	v, i    float64 // where the line is taken
	swing   float64 // by how much i moved last
	v0      float64 // with no load on
	on, on0 bool    // diode conducts; the same with no load on
	idle    bool    // constant power: out, only the leak left
	steady  bool    // constant current: by secant, for the tangent overdrew
	tries   uint8   // times the load has been let in again
}

func (e *bent) setLaw(l Law) {
	e.kind = l.Kind
	e.cold, e.leak, e.knee = l.conductance(), l.leak(), l.knee()
	e.volt, e.amp, e.watt, e.heat = l.Volt, l.Amp, l.Watt, 0
	if l.Kind == Warming && l.Amp > 0 {
		e.heat = l.Rise / (l.Amp * l.Amp)
	}
}

// hot is the part of a fuse's resistance due to warming, against the cold one,
// beyond which secants would drive its current away from the answer.
const hot = 0.5

// move takes the line of the next pass at v volts and what the line of this one
// lets through. A fuse's current that swings back is met half way.
func (e *bent) move(v float64) {
	e.v = v
	to := e.g*v - e.s
	if e.kind == Warming && (to-e.i)*e.swing < 0 {
		to = (to + e.i) / 2
	}
	e.i, e.swing = to, to-e.i
}

// amps is the true law: the current from A to B at v volts.
func (e *bent) amps(v float64) float64 {
	switch {
	case e.open:
		return 0
	case e.kind == Warming:
		return warmAmps(v*e.cold, e.heat)
	case e.kind == ConstantCurrent && v >= e.knee:
		return e.amp + v*e.leak
	case e.kind == ConstantCurrent:
		return v * (e.amp/e.knee + e.leak)
	case e.kind == ConstantPower && !e.idle && v > e.knee:
		return e.watt / v
	case e.kind == Diode && v > e.volt:
		return e.volt*e.leak + (v-e.volt)*e.cold
	}
	return v * e.leak
}

// warmAmps solves i (1 + heat i^2) = cold for i: the one real root of the cubic.
func warmAmps(cold, heat float64) float64 {
	if heat*cold*cold < unit/8 { // off, or so little that its own heat is lost in rounding
		return cold
	}
	r := math.Sqrt(3 * heat)
	return 2 / r * math.Sinh(math.Asinh(1.5*r*cold)/3)
}

// rest lays the line of a branch in a network without load: loads at their
// leak, fuses cold, diodes as they stand.
func (e *bent) rest() {
	e.g, e.s = e.leak, 0
	switch {
	case e.open:
		e.g = 0
	case e.kind == Warming:
		e.g = e.cold
	case e.kind == Diode:
		e.tangent()
	}
}

// tangent lays the line along the law at e.v, for a fuse at e.i: volts over
// amperes are a convex cubic, on which this can't swing ever wider. For constant
// power the slope is negative: fast, but not for the last pass.
func (e *bent) tangent() {
	e.g, e.s = e.leak, 0
	switch {
	case e.open:
		e.g = 0
	case e.kind == Warming:
		h := e.heat * e.i * e.i
		e.g, e.s = e.cold/(1+3*h), -2*e.i*h/(1+3*h)
	case e.kind == ConstantCurrent && e.v >= e.knee && !e.steady:
		e.s = -e.amp
	case e.kind == ConstantCurrent:
		e.secant()
	case e.kind == ConstantPower && !e.idle:
		v := max(e.v, e.knee)
		e.g, e.s = -e.watt/(v*v), -2*e.watt/v
	case e.kind == Diode && e.on:
		e.g, e.s = e.cold, e.volt*(e.cold-e.leak)
	}
}

// secant lays the line from the origin to the law at e.v, so that the branch is
// a plain positive conductance.
func (e *bent) secant() {
	switch {
	case e.kind == Diode, e.open:
		e.tangent()
	case e.kind == Warming:
		h := e.heat * e.i * e.i
		if h > hot {
			e.tangent()
			return
		}
		e.g, e.s = e.cold/(1+h), 0
	case e.kind == ConstantCurrent:
		e.g, e.s = e.amp/max(e.v, e.knee)+e.leak, 0
	case e.idle:
		e.g, e.s = e.leak, 0
	default:
		v := max(e.v, e.knee)
		e.g, e.s = e.watt/(v*v), 0
	}
}

package gauge

import "slices"

// PulseShape is a shape of current pulse and the share of peak^2 x time that
// its I^2 t comes to.
type PulseShape struct {
	Name   string
	Share  float64 // I2t = Share x peak^2 x time
	Time   string  // what the time is
	Source string
}

var pulseShapes = [...]PulseShape{
	{"square", 1, "length of the pulse", "pulse-life"},
	{"ramp", 1.0 / 3, "length, from zero to the peak", "pulse-life"},
	{"half-sine", 1.0 / 2, "length of the half wave", "pulse-life"},
	{"quadratic", 1.0 / 5, "length, i = k t^2", "pulse-life"},
	{"decay", 1.0 / 2, "time constant", "pulse-life"},
}

// PulseShapes lists the shapes that [PulseA2S] knows (source pulse-life).
func PulseShapes() []PulseShape { return slices.Clone(pulseShapes[:]) }

// PulseA2S is the I^2 t in A2 s of one pulse of a shape (square, ramp,
// half-sine, quadratic, decay): share x peakA^2 x seconds; ok is false for
// another shape or figures outside 0 to 1e6 A and 0 to 1e6 s (source
// pulse-life).
func PulseA2S(shape string, peakA, seconds float64) (a2s float64, ok bool) {
	i := slices.IndexFunc(pulseShapes[:], func(p PulseShape) bool { return p.Name == shape })
	if i < 0 || !(peakA >= 0 && peakA <= mostA) || !(seconds >= 0 && seconds <= mostS) {
		return 0, false
	}
	return pulseShapes[i].Share * peakA * peakA * seconds, true
}

// TrapezoidA2S is the I^2 t in A2 s of a pulse that goes straight from fromA
// to peakA: (ip^2 + ip ib + ib^2) t / 3; ok as [PulseA2S] (source pulse-life).
func TrapezoidA2S(fromA, peakA, seconds float64) (a2s float64, ok bool) {
	if !(fromA >= 0 && fromA <= mostA) || !(peakA >= 0 && peakA <= mostA) || !(seconds >= 0 && seconds <= mostS) {
		return 0, false
	}
	return (peakA*peakA + peakA*fromA + fromA*fromA) * seconds / 3, true
}

// pulseLife is the share of its melting I^2 t that a fuse takes so often.
var pulseLife = [...]struct{ pulses, share float64 }{
	{100, 0.48}, {1000, 0.38}, {10000, 0.29}, {100000, 0.22},
}

// PulseShare is the largest I^2 t of a pulse, over the nominal melting I^2 t
// of the fuse, that it outlives so many times with 10 s of rest between; the
// next column up is taken between the points. ok is false for fewer than one
// and more than 100,000 pulses (source pulse-life).
func PulseShare(pulses float64) (share float64, ok bool) {
	if !(pulses >= 1) {
		return 0, false
	}
	for _, row := range pulseLife {
		if pulses <= row.pulses {
			return row.share, true
		}
	}
	return 0, false
}

const mostS = 1e6 // no time above is taken for a figure of this trade

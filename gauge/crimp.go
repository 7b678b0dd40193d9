package gauge

import (
	"fmt"
	"slices"
)

// CrimpPull is the least force that pulls a wire out of its joint, by one
// standard. Standards differ up to six times on one size: always name the one
// that a figure is from.
type CrimpPull struct {
	Standard string  // ul486a, military, space, abyc, ul486e (screws, no crimps), iec60352, iso10133, jaso
	AWG      int     // 99: the row is by area
	MM2      float64 // nominal
	Lbf      float64 // as printed
	N        float64
	Source   string
}

// CrimpStandards lists the standards that [CrimpPullOf] knows, those that may
// decide first.
func CrimpStandards() []string {
	return []string{"ul486a", "military", "space", "abyc", "ul486e", "iec60352", "iso10133", "jaso"}
}

// CrimpPulls lists the rows of every standard (sources crimp-ul486a,
// crimp-ul486a-large, crimp-ul486a-memory, crimp-military,
// crimp-military-memory, crimp-space, crimp-abyc, crimp-abyc-memory,
// screw-ul486e, crimp-iec60352, crimp-iso10133, crimp-jaso).
func CrimpPulls() []CrimpPull { return slices.Clone(crimpPulls[:]) }

// CrimpPullOf is the least pull-out force for a gauge by one standard; ok is
// false where it has no row (sources as [CrimpPulls]).
func CrimpPullOf(standard string, awg int) (p CrimpPull, c Confidence, ok bool) {
	i := slices.IndexFunc(crimpPulls[:], func(p CrimpPull) bool {
		return p.Standard == standard && p.AWG == awg && awg != metricPull
	})
	if i < 0 {
		return CrimpPull{}, 0, false
	}
	return crimpPulls[i], confidenceOf(crimpPulls[i].Source), true
}

// CrimpPullMetric is the same for a nominal area in mm2.
func CrimpPullMetric(standard string, mm2 float64) (p CrimpPull, c Confidence, ok bool) {
	i := slices.IndexFunc(crimpPulls[:], func(p CrimpPull) bool { return p.Standard == standard && p.MM2 == mm2 })
	if i < 0 {
		return CrimpPull{}, 0, false
	}
	return crimpPulls[i], confidenceOf(crimpPulls[i].Source), true
}

const (
	softCopperMPa = 255.1   // 37,000 psi (source copper-strength)
	crimpShare    = 0.60    // of the wire's strength that a crimp has to hold (source crimp-space)
	newtonPerLbf  = 4.44822 // by definition
)

// BreakingN is the force in newtons that breaks soft annealed copper of
// areaMM2: 255.1 MPa x A. ok is false unless the area is from 0 to 1e6 mm2
// (source copper-strength).
func BreakingN(areaMM2 float64) (n float64, ok bool) {
	if !(areaMM2 >= 0 && areaMM2 <= 1e6) {
		return 0, false
	}
	return softCopperMPa * areaMM2, true
}

// CrimpByStrength is the least pull-out force where a standard has no row:
// 60 % of the force that breaks the wire, a space standard's rule (sources
// crimp-space, copper-strength).
func CrimpByStrength(areaMM2 float64) (n float64, why []Step, ok bool) {
	full, ok := BreakingN(areaMM2)
	if !ok {
		return 0, nil, false
	}
	n = crimpShare * full
	return n, []Step{
		{fmt.Sprintf("soft copper of %.4g mm2 breaks at", areaMM2), "255.1 MPa x A", full, "N", "copper-strength"},
		{"a crimp holds 60 % of it", "0.60 F", n, "N", "crimp-space"},
	}, true
}

// LbfOf turns newtons into pounds of force.
func LbfOf(n float64) float64 { return n / newtonPerLbf }

// CrimpPullPair is the least pull-out force of two wires in one barrel: that
// of the smaller, which is the higher gauge number (source crimp-rules).
func CrimpPullPair(standard string, a, b int) (p CrimpPull, c Confidence, ok bool) {
	return CrimpPullOf(standard, max(a, b))
}

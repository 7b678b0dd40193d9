package gauge

import "slices"

// MeterLimit is what a meter may read across a part under load.
type MeterLimit struct {
	Part   string
	Volts  float64
	Note   string
	Source string
}

// meterLimits is in the order in which a circuit is walked.
var meterLimits = [...]MeterLimit{
	{"small joint", 0, "crimp, splice, small terminal", "crimp-joint"},
	{"high-current joint", 0.1, "ring on a stud or post", "meter-limits"},
	{"high-current cable", 0.2, "battery and starter cables", "meter-limits"},
	{"switch or solenoid", 0.3, "closed contact", "meter-limits"},
	{"ground", 0.1, "under load current only", "meter-limits-guide"},
	{"any circuit", 1.0, "above it something is wrong", "meter-limits"},
	{"starter, positive side", 0.5, "12 V, turning", "starter-limits"},
	{"starter, ground side", 0.3, "12 V, turning", "starter-limits"},
	{"starter, both sides", 0.8, "12 V, turning", "starter-limits"},
	{"charging, positive", 0.4, "12 V, at rated output; 0.8 V at 24 V", "journal-limits"},
	{"headlamps, positive", 0.3, "switch to lamp", "journal-limits"},
	{"relay or horn control", 0.5, "12 V; 1.0 V at 24 V", "journal-limits"},
}

// MeterLimits lists what a meter may read across parts of a 12 V circuit
// under load (sources meter-limits, meter-limits-guide, starter-limits,
// journal-limits).
func MeterLimits() []MeterLimit { return slices.Clone(meterLimits[:]) }

// MeterLimitOf finds the limit of one part by its name.
func MeterLimitOf(part string) (MeterLimit, bool) {
	i := slices.IndexFunc(meterLimits[:], func(m MeterLimit) bool { return m.Part == part })
	if i < 0 {
		return MeterLimit{}, false
	}
	return meterLimits[i], true
}

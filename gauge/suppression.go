package gauge

import "slices"

// Suppression is one way to quench the kick of a coil, as measured or
// published.
type Suppression struct {
	Method    string
	Part      string  // value of the part
	Ohm       float64 // resistor
	PeakV     float64 // at the switch, over the coil; 0: no figure
	ReleaseMS float64 // 0: no figure
	Coil      string
	Effect    string
	Source    string
}

var suppressions = [...]Suppression{
	{"none", "", 0, 1500, 0, "12 V", "from 1000 V; best for the contact", "suppress-none"},
	{"none", "", 0, 750, 1.5, "55 ohm, 13.5 V", "", "suppress-table"},
	{"diode and zener", "24 V", 0, 24.8, 1.9, "55 ohm, 13.5 V", "nearly as fast as bare", "suppress-table"},
	{"resistor", "680 ohm", 680, 167, 2.3, "55 ohm, 13.5 V", "", "suppress-table"},
	{"resistor", "470 ohm", 470, 115, 2.8, "55 ohm, 13.5 V", "", "suppress-table"},
	{"resistor", "330 ohm", 330, 81, 3.2, "55 ohm, 13.5 V", "", "suppress-table"},
	{"resistor", "220 ohm", 220, 54, 3.7, "55 ohm, 13.5 V", "", "suppress-table"},
	{"resistor", "100 ohm", 100, 24.5, 5.5, "55 ohm, 13.5 V", "", "suppress-table"},
	{"resistor", "82 ohm", 82, 20.1, 6.1, "55 ohm, 13.5 V", "", "suppress-table"},
	{"diode", "", 0, 0.7, 9.8, "55 ohm, 13.5 V", "slow; contacts may touch again and weld", "suppress-table"},
	{"resistor", "680 ohm", 680, 65, 2.6, "120 ohm, 12 V", "clean", "suppress-measured"},
	{"diode", "", 0, 0.7, 8, "120 ohm, 12 V", "false openings for 2 ms; current gone after 25 to 30 ms", "suppress-measured"},
	{"resistor", "6 x coil", 0, 0, 0, "", "peak 6 x the supply", "suppress-ratio"},
	{"diode", "", 0, 0, 0, "", "5 to 10 times slower; not for heavy or inductive contacts", "suppress-slower"},
	{"diode and zener", "about supply volts", 0, 0, 0, "", "where release time matters", "suppress-zener"},
}

// Suppressions lists ways to quench a coil with peak and release time
// (sources suppress-none, suppress-table, suppress-measured, suppress-ratio,
// suppress-slower, suppress-zener).
func Suppressions() []Suppression { return slices.Clone(suppressions[:]) }

// Orientation says how a part sits across a relay coil.
type Orientation struct {
	Method   string
	Polar    bool   // it matters which way round
	Positive string // terminal on the positive side
	Negative string
	Note     string
	Source   string
}

var orientations = [...]Orientation{
	{"resistor", false, "", "", "either way round", "suppress-slower"},
	{"diode", true, "86", "85", "cathode to 86; the other way round it shorts the driver", "suppress-polarity"},
	{"diode and zener", true, "86", "85", "diode's cathode to 86, zener against it", "suppress-polarity"},
}

// OrientationOf says which way a part (resistor, diode, diode and zener) sits
// across the coil of a relay base (sources suppress-slower,
// suppress-polarity).
func OrientationOf(method string) (Orientation, bool) {
	i := slices.IndexFunc(orientations[:], func(o Orientation) bool { return o.Method == method })
	if i < 0 {
		return Orientation{}, false
	}
	return orientations[i], true
}

// ReleaseSpan is how long a relay that releases in seconds when bare takes
// with a plain diode across its coil: 5 to 10 times as long. ok is false
// unless seconds are from 0 to 1e6 (source suppress-slower).
func ReleaseSpan(bareS float64) (fromS, toS float64, ok bool) {
	if !(bareS >= 0 && bareS <= mostS) {
		return 0, 0, false
	}
	return 5 * bareS, 10 * bareS, true
}

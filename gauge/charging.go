package gauge

import "slices"

// RegulatorV is the regulated voltage of a 12 V machine whose regulator sits
// at tempC: 14.4 V - 0.01 V/K from 20 C, +-0.3 V. ok is false outside -40 to
// 120 C (source regulator-slope).
func RegulatorV(tempC float64) (volts float64, ok bool) {
	if !(tempC >= -40 && tempC <= 120) {
		return 0, false
	}
	return 14.4 - 0.01*(tempC-20), true
}

// regulatorBand is what one maker allows, by rising temperature.
var regulatorBand = [...]struct{ tempC, least, most float64 }{
	{-20, 14.0, 15.1}, {20, 13.7, 14.6}, {60, 13.2, 14.3}, {80, 12.9, 14.1},
}

// RegulatorBand is what the regulated voltage of a 12 V machine may be at
// tempC, straight between the points of the table; ok is false outside -20 to
// 80 C. A fixed 13.8 to 14.7 V would give false alarms (source
// regulator-bands).
func RegulatorBand(tempC float64) (leastV, mostV float64, ok bool) {
	if !(tempC >= -20 && tempC <= 80) {
		return 0, 0, false
	}
	i := max(1, slices.IndexFunc(regulatorBand[:], func(r struct{ tempC, least, most float64 }) bool { return tempC <= r.tempC }))
	a, b := regulatorBand[i-1], regulatorBand[i]
	share := (tempC - a.tempC) / (b.tempC - a.tempC)
	return a.least + share*(b.least-a.least), a.most + share*(b.most-a.most), true
}

// outputCurve is the output of a published 50 A machine by engine speed;
// cold 0: none printed.
var outputCurve = [...]struct{ rpm, hotA, coldA float64 }{
	{1300, 16, 24}, {2500, 41, 50}, {5000, 48, 0},
}

const (
	curveRatedA   = 50.0
	budgetTenth   = 0.1 // of an intermittent load
	acceptedShare = 0.70
)

// HotOutputA is what a machine of ratedA gives hot at an engine speed in
// turns a minute, by the curve of a published 50 A machine: straight between
// its points, the last one above, and nothing known (ok false) below 1300.
// Another machine has another curve: c is no better than medium (source
// alternator-curve).
func HotOutputA(ratedA, rpm float64) (amps float64, c Confidence, ok bool) {
	if !(ratedA >= 0 && ratedA <= mostA) || !(rpm >= outputCurve[0].rpm && rpm <= 1e5) {
		return 0, 0, false
	}
	c = min(Medium, confidenceOf("alternator-curve"))
	for i := 1; i < len(outputCurve); i++ {
		a, b := outputCurve[i-1], outputCurve[i]
		if rpm <= b.rpm {
			return ratedA / curveRatedA * (a.hotA + (b.hotA-a.hotA)*(rpm-a.rpm)/(b.rpm-a.rpm)), c, true
		}
	}
	return ratedA / curveRatedA * outputCurve[len(outputCurve)-1].hotA, c, true
}

// AmpsOf is the current of a load of watts at volts; ok is false unless watts
// are from 0 to 1e6 and volts from 0.1 to 60 (source watts-amps).
func AmpsOf(watts, volts float64) (amps float64, ok bool) {
	if !(watts >= 0 && watts <= 1e6) || !(volts >= 0.1 && volts <= MostSystemV) {
		return 0, false
	}
	return watts / volts, true
}

// AlternatorFigure is one published figure of charging.
type AlternatorFigure struct {
	Subject string
	Value   float64
	Unit    string
	Note    string
	Source  string
}

var alternatorFigures = [...]AlternatorFigure{
	{"rating, volts at 12 V", 13.5, "V", "+-0.1; 27.0 +-0.2 at 24 V; label IL/IR A VT", "alternator-rating"},
	{"rating, place", 23, "C", "+-5", "alternator-rating"},
	{"lower rated speed", 1500, "1/min", "of the machine", "alternator-speeds"},
	{"upper rated speed", 6000, "1/min", "of the machine", "alternator-speeds"},
	{"regulated volts, least", 13.5, "V", "swings outside no longer than 1 s", "usual-setpoint"},
	{"regulated volts, most", 14.5, "V", "", "usual-setpoint"},
	{"regulator at 20 C", 14.4, "V", "+-0.3, -0.1 V for each 10 K", "regulator-slope"},
	{"regulator, internal", 14.55, "V", "+-0.3, -3.5 mV/K", "regulator-internal"},
	{"output line, most at 30 A", 0.3, "V", "", "alternator-accept"},
	{"output accepted", acceptedShare, "of nominal", "", "alternator-accept"},
	{"100 A machine at idle", 70, "A", "", "alternator-idle"},
	{"140 A machine at idle", 80, "A", "", "alternator-idle"},
	{"charge line, most", 0.4, "V", "0.8 V at 24 V", "journal-limits"},
}

// AlternatorFigures lists published figures of charging (sources
// alternator-rating, alternator-speeds, usual-setpoint, regulator-slope,
// regulator-internal, alternator-accept, alternator-idle, journal-limits).
func AlternatorFigures() []AlternatorFigure { return slices.Clone(alternatorFigures[:]) }

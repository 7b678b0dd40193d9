package gauge

import "math"

// CutLengthM is the length at which a wire is cut: its path, a tail at each
// device end, two re-terminations at each end, rounded up to the next 10 mm
// or, with metric false, 1/2 in. Lengths in meters; deviceEnds is how many of
// its two ends sit at a device (the others are splices, without a tail)
// (sources tail, cut-allowance, cut-step).
func CutLengthM(pathM float64, deviceEnds int, metric bool) (m float64, why []Step) {
	tails := TailM * float64(deviceEnds)
	m = pathM + tails + 2*ReterminateM
	step := CutStepInchM
	if metric {
		step = CutStepM
	}
	// a hair under, so that a length already on the step stays there
	cut := math.Ceil(m/step-1e-9) * step
	return cut, []Step{
		{Text: "path along the legs", Value: pathM, Unit: "m", Source: "stated"},
		{Text: "tails at devices", Equation: "ends x 3 in", Value: tails, Unit: "m", Source: "tail"},
		{Text: "two re-terminations at each end", Equation: "2 x 2 x 12 mm", Value: 2 * ReterminateM, Unit: "m", Source: "cut-allowance"},
		{Text: "up to the next step", Equation: "ceil(L/step) step", Value: cut, Unit: "m", Source: "cut-step"},
	}
}

// evenGauges is what a barrel is sold for, from small to large.
var evenGauges = [...]int{30, 28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3}

// EquivalentAWG is the gauge that several conductors in one barrel count as:
// their circular mils are added and the next larger even gauge is taken,
// never the nearest (source awg-law). ok is false above 4/0.
func EquivalentAWG(awgs ...int) (awg int, ok bool) {
	var sum float64
	for _, n := range awgs {
		sum += AWGCmil(n)
	}
	for _, n := range evenGauges {
		if AWGCmil(n) >= sum*(1-1e-9) {
			return n, true
		}
	}
	return 0, false
}

// connectorPair is the resistance of a mated blade pair after test by blade
// width in mm (source connector-pair, low).
var connectorPair = [...]struct{ bladeMM, mohm float64 }{
	{0.64, 20}, {1.5, 10}, {2.8, 5}, {6.3, 1.5}, {9.5, 1.0},
}

// ConnectorPairOhm is the resistance in ohm of a mated pair of blades of a
// width in mm. It is from memory and only counts in nominal figures; ok is
// false for other widths (source connector-pair).
func ConnectorPairOhm(bladeMM float64) (ohm float64, ok bool) {
	for _, row := range connectorPair {
		if row.bladeMM == bladeMM {
			return row.mohm / 1000, true
		}
	}
	return 0, false
}

package gauge

import "slices"

// AircraftRow is one line of FAA AC 43.13-1B table 11-9: currents of copper
// in bundles of 33 or more wires, a fifth of them loaded, at 70 C and 60,000
// ft, and the largest resistance of the tin-plated wire (source ac4313-table-11-9).
type AircraftRow struct {
	AWG              int
	A105, A150, A200 float64 // amperes by conductor rating in Celsius
	OhmPerKft        float64 // largest, 20 C
	Cmil             float64 // nominal
}

var aircraftTable = [...]AircraftRow{
	{24, 2.5, 4, 5, 28.4, 475}, {22, 3, 5, 6, 16.2, 755}, {20, 4, 7, 9, 9.88, 1216}, {18, 6, 9, 12, 6.23, 1900},
	{16, 7, 11, 14, 4.81, 2426}, {14, 10, 14, 18, 3.06, 3831}, {12, 13, 19, 25, 2.02, 5874}, {10, 17, 26, 32, 1.26, 9354},
	{8, 38, 57, 71, 0.70, 16983}, {6, 50, 76, 97, 0.44, 26818}, {4, 68, 103, 133, 0.28, 42615}, {2, 95, 141, 179, 0.18, 66500},
	{1, 113, 166, 210, 0.15, 81700}, {0, 128, 192, 243, 0.12, 104500}, {-1, 147, 222, 285, 0.09, 133000},
	{-2, 172, 262, 335, 0.07, 166500}, {-3, 204, 310, 395, 0.06, 210900},
}

// What table 11-9 already holds: it is not derated again.
const (
	AircraftAmbientC   = 70.0
	AircraftAltitudeFt = 60000.0
)

// AircraftTable lists FAA AC 43.13-1B table 11-9, thin to thick (source ac4313-table-11-9).
func AircraftTable() []AircraftRow { return slices.Clone(aircraftTable[:]) }

// AircraftSize is the tin-plated wire of table 11-9 by its largest
// resistance. Its areas differ from AWG: more copper in 24 to 18, less from
// 16 to 10. ok is false for other gauges.
func AircraftSize(awg int) (s Size, ok bool) {
	for _, r := range aircraftTable {
		if r.AWG == awg {
			ohmPerM := r.OhmPerKft / (1000 * MeterPerFoot)
			return Size{
				Name: AWGName(awg), AWG: awg, AreaMM2: RhoCopper20 * 1e6 / ohmPerM,
				Source: "ac4313-table-11-9", Tinned: true,
			}, true
		}
	}
	return Size{}, false
}

// at is the current of a row in the hottest column that an insulation of
// tempC reaches, with the temperature of the column. Under 105 C the first
// column shrinks by the square-root rule.
func (r AircraftRow) at(tempC float64) (amps, ratedC float64) {
	switch {
	case tempC >= 200:
		return r.A200, 200
	case tempC >= 150:
		return r.A150, 150
	case tempC >= 105:
		return r.A105, 105
	}
	return r.A105 * AmbientFactor(tempC, AircraftAmbientC, tempC-(105-AircraftAmbientC)), tempC
}

// AircraftAmps reads table 11-9: gauge and conductor rating (105, 150 or
// 200 C). ok is false off the table.
func AircraftAmps(awg int, ratedC float64) (amps float64, ok bool) {
	for _, r := range aircraftTable {
		if r.AWG != awg {
			continue
		}
		if amps, at := r.at(ratedC); at == ratedC && ratedC >= 105 {
			return amps, true
		}
	}
	return 0, false
}

// aircraftRow is the line for a size: its gauge, or for metric cable the
// thickest gauge whose area is no more than its label.
func aircraftRow(s Size) AircraftRow {
	found := aircraftTable[0]
	for _, r := range aircraftTable {
		if AWGAreaMM2(r.AWG) <= labelMM2(s)*(1+1e-9) {
			found = r
		}
	}
	return found
}

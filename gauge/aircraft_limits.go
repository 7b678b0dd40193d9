package gauge

import "math"

// aircraftDevice is FAA AC 43.13-1B table 11-3, copper: breaker and fuse in
// amperes, 0 where none is printed (source ac4313-table-11-3).
var aircraftDevice = [...]struct {
	awg             int
	breakerA, fuseA float64
}{
	{22, 5, 5}, {20, 7.5, 5}, {18, 10, 10}, {16, 15, 10}, {14, 20, 15}, {12, 30, 20}, {10, 40, 30}, {8, 50, 50},
	{6, 80, 70}, {4, 100, 70}, {2, 125, 100}, {1, 0, 150}, {0, 0, 150},
}

// AircraftDevice gives the largest breaker and fuse in amperes for a copper
// wire in a bundle by FAA AC 43.13-1B table 11-3; 0 where none is printed. ok
// is false off the table (source ac4313-table-11-3).
func AircraftDevice(awg int) (breakerA, fuseA float64, ok bool) {
	for _, r := range aircraftDevice {
		if r.awg == awg {
			return r.breakerA, r.fuseA, true
		}
	}
	return 0, 0, false
}

// aircraftDrop is FAA AC 43.13-1B table 11-6.
var aircraftDrop = [...]struct{ systemV, continuousV, intermittentV float64 }{
	{14, 0.5, 1}, {28, 1, 2}, {115, 4, 8}, {200, 7, 14},
}

// AircraftDropV gives the drop in volts that FAA AC 43.13-1B table 11-6
// allows between bus and equipment, for continuous and for intermittent
// loads, by system volts (14, 28, 115, 200). ok is false for other volts
// (source ac4313-table-11-6).
func AircraftDropV(systemV float64) (continuousV, intermittentV float64, ok bool) {
	for _, r := range aircraftDrop {
		if r.systemV == systemV {
			return r.continuousV, r.intermittentV, true
		}
	}
	return 0, 0, false
}

// AircraftConductorC is the conductor temperature that FAA AC 43.13-1B, 11-66
// prints for a drop: T1 + (TR - T1) sqrt(I2/Imax). It lies above the square
// law, and serves only to follow the document (source ac4313-root-law).
func AircraftConductorC(ambientC, ratedC, amps, mostA float64) float64 {
	if !(amps >= 0 && mostA > 0) {
		return ambientC
	}
	return ambientC + (ratedC-ambientC)*math.Sqrt(amps/mostA)
}

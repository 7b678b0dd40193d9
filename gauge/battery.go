package gauge

import "math"

const (
	loadTestV = 6.0 // 2 x (12.6 - 9.6): a battery that just passes at half its CCA
	ccaTestV  = 5.4 // 12.6 - 7.2: a battery that just meets its rating
	enTestV   = 5.1 // 12.6 - 7.5
)

// BatteryOhm gives the resistances of a 12 V battery rated ccaA by the SAE
// test: warm is 6.0/CCA (just passes the load test at 21 C), cold is 5.4/CCA
// (at its rating, -18 C). They are acceptance limits; never prove with them
// that a device can break a short. Both are +Inf unless ccaA is above zero
// (sources battery-load-test, battery-cca).
func BatteryOhm(ccaA float64) (warm, cold float64) {
	if !(ccaA > 0) {
		return math.Inf(1), math.Inf(1)
	}
	return loadTestV / ccaA, ccaTestV / ccaA
}

// BatteryOhmEN is the resistance of a battery rated by the EN test at -18 C:
// 5.1 / Icc; +Inf unless iccA is above zero (source battery-en).
func BatteryOhmEN(iccA float64) float64 {
	if !(iccA > 0) {
		return math.Inf(1)
	}
	return enTestV / iccA
}

// LoadTest gives the current of the 15 s workshop test, half the CCA, and the
// volts a 12 V battery at 21 C must hold (source battery-load-test).
func LoadTest(ccaA float64) (amps, leastV float64) { return ccaA / 2, 9.6 }

// restVolts is state of charge against rested volts of a 12 V battery at
// 26.7 C, ascending (source battery-ocv).
var restVolts = [...]struct{ volts, percent float64 }{
	{11.89, 0}, {12.06, 25}, {12.24, 50}, {12.45, 75}, {12.65, 100},
}

// StateOfCharge is the charge of a rested 12 V battery in percent, straight
// between the points of the table, 0 and 100 beyond it (source battery-ocv).
func StateOfCharge(volts float64) float64 {
	if !(volts > restVolts[0].volts) {
		return 0
	}
	for i := 1; i < len(restVolts); i++ {
		a, b := restVolts[i-1], restVolts[i]
		if volts <= b.volts {
			return a.percent + (b.percent-a.percent)*(volts-a.volts)/(b.volts-a.volts)
		}
	}
	return 100
}

// ReadingCorrectionV is added to a rested reading at tempF to compare it with
// the table: 0.024 V for each 10 F from 80 F. It corrects a reading and is no
// law of the e.m.f. (source battery-ocv).
func ReadingCorrectionV(tempF float64) float64 { return 0.024 * (tempF - 80) / 10 }

// AmpHours is the capacity behind a reserve capacity in minutes: 0.6 RC
// (source reserve-capacity).
func AmpHours(reserveMin float64) float64 { return 0.6 * reserveMin }

// DrainGoodA and DrainUsualA are what a vehicle may draw with everything off
// where the capacity of its battery is not known: 35 mA is good, 50 mA the
// usual limit (sources drain-35, drain-practice).
const (
	DrainGoodA  = 0.035
	DrainUsualA = 0.050
)

// DrainLimitA is the most that may flow with everything off: RC/4 in
// milliamperes, here in amperes (source drain-limit).
func DrainLimitA(reserveMin float64) float64 { return reserveMin / 4 / 1000 }

// HoursToNoStart is how long a steady drain takes to use up the 40 % of the
// capacity that may go before a start fails; +Inf without a drain (sources
// reserve-capacity, drain-limit).
func HoursToNoStart(reserveMin, drainA float64) float64 {
	if !(drainA > 0) {
		return math.Inf(1)
	}
	return 0.4 * AmpHours(reserveMin) / drainA
}

// breaking is the interrupting capacity asked of breakers by battery CCA.
var breaking = [...]struct{ upToCCA, mainA, branchA float64 }{
	{650, 1500, 750},
	{1100, 3000, 1500},
	{2200, 5000, 2500},
}

// BreakingCapacity is what the first device after a battery, and one in a
// branch, must be able to break, in amperes. Above 2200 CCA the battery
// maker's short-circuit figure is needed and ok is false (source breaking-capacity).
func BreakingCapacity(ccaA float64) (mainA, branchA float64, ok bool) {
	for _, row := range breaking {
		if ccaA <= row.upToCCA {
			return row.mainA, row.branchA, true
		}
	}
	return 0, 0, false
}

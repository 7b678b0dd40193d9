package gauge

import (
	"fmt"
	"math"
	"slices"
)

// RestState is one point of a rested 12 V battery at 26.7 C.
type RestState struct {
	Percent float64
	Volts   float64
	Gravity float64 // of the acid; 0: none printed
	FreezeC float64 // where the acid freezes; 0: none printed
	Source  string
}

var restStates = [...]RestState{
	{100, 12.65, 1.265, -59.4, "battery-ocv"},
	{75, 12.45, 1.225, -48.3, "battery-ocv"},
	{50, 12.24, 1.190, -36.7, "battery-ocv"},
	{25, 12.06, 1.155, -26.7, "battery-ocv"},
	{0, 11.89, 1.120, -23.3, "battery-ocv"},
	{100, 12.6, 0, 0, "battery-ocv-rounded"},
	{75, 12.4, 0, 0, "battery-ocv-rounded"},
	{50, 12.2, 0, 0, "battery-ocv-rounded"},
	{25, 12.0, 0, 0, "battery-ocv-rounded"},
}

// RestStates lists charge against rested volts, gravity and freezing point;
// the rounded table is for comparison (sources battery-ocv,
// battery-ocv-rounded).
func RestStates() []RestState { return slices.Clone(restStates[:]) }

// VoltsAtCharge is the rested voltage of a 12 V battery at a charge from 0 to
// 100 percent, straight between the points of the table; ok is false outside.
// A 24 V battery has twice that (source battery-ocv).
func VoltsAtCharge(percent float64) (volts float64, ok bool) {
	if !(percent >= 0 && percent <= 100) {
		return 0, false
	}
	for i := 1; i < len(restVolts); i++ {
		a, b := restVolts[i-1], restVolts[i]
		if percent <= b.percent {
			return a.volts + (b.volts-a.volts)*(percent-a.percent)/(b.percent-a.percent), true
		}
	}
	return 0, false
}

// DrainDays is how many days a steady drain of drainA takes to use up what
// may go before a start fails, with the working; +Inf without a drain. ok is
// false unless reserveMin is from 0 to 1e6 min and the drain from 0 to 1e6 A
// (sources reserve-capacity,
// battery-reserve-test, drain-limit, drain-practice).
func DrainDays(reserveMin, drainA float64) (days float64, why []Step, ok bool) {
	if !(reserveMin >= 0 && reserveMin <= mostA) || !(drainA >= 0 && drainA <= mostA) {
		return 0, nil, false
	}
	days = HoursToNoStart(reserveMin, drainA) / 24
	if math.IsNaN(days) {
		return 0, nil, false
	}
	limit := DrainLimitA(reserveMin)
	verdict := "within"
	if drainA > limit {
		verdict = "above"
	}
	return days, []Step{
		{fmt.Sprintf("reserve capacity of %.4g min", reserveMin), "0.6 RC", AmpHours(reserveMin), "Ah", "reserve-capacity"},
		{"may go before a start fails", "0.4 Ah", 0.4 * AmpHours(reserveMin), "Ah", "reserve-capacity"},
		{fmt.Sprintf("drain of %.4g A, %s the limit", drainA, verdict), "RC/4 mA", limit, "A", "drain-limit"},
		{"until it no longer starts", "Ah / I / 24", days, "d", "reserve-capacity"},
	}, true
}

// BankShortA is the short-circuit current of a bank of equal batteries, each
// giving eachA: strings in series give what one does, parallel strings add.
// ok is false unless count is a whole number of strings (source bank-short).
func BankShortA(eachA float64, count, inSeries int) (amps float64, ok bool) {
	if !(eachA >= 0 && eachA <= mostA) || inSeries < 1 || count < 1 || count > 1000 || count%inSeries != 0 {
		return 0, false
	}
	return eachA * float64(count/inSeries), true
}

// BankBreakA is what the first device after a bank has to break, from the
// bank's own short-circuit current, where it is beyond the table of
// [BreakingCapacity]: that current, or 20 kA at 125 V once it is above 10 kA
// (source breaking-capacity-bank).
func BankBreakA(shortA float64) (breakA float64, ok bool) {
	if !(shortA >= 0 && shortA <= 20e3) {
		return 0, false
	}
	if shortA > 10e3 {
		return 20e3, true
	}
	return shortA, true
}

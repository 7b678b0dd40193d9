package gauge

import (
	"fmt"
	"slices"
)

// Duty says how long a load runs while driving.
type Duty uint8

const (
	// Continuous loads run whenever the engine does.
	Continuous Duty = iota + 1
	// Prolonged loads run for long: lights, radio.
	Prolonged
	// Intermittent loads run now and then and count a tenth.
	Intermittent
)

// String gives the word printed for a duty.
func (d Duty) String() string {
	if d > Intermittent {
		d = 0
	}
	return [...]string{"invalid", "continuous", "prolonged", "intermittent"}[d]
}

// BudgetLoad is one load of a charge budget.
type BudgetLoad struct {
	Name  string
	Duty  Duty
	Amps  float64 // at charging volts
	Watts float64 // in the text-book's list only
}

// Budget is what an alternator has to give and what it gives.
type Budget struct {
	ContinuousA, ProlongedA, IntermittentA float64 // sums, before the tenth
	NeedA                                  float64
	HaveA                                  float64
	LeftA                                  float64 // HaveA - NeedA
	OK                                     bool
	Why                                    []Step
}

// ChargeBudget adds continuous and prolonged loads, a tenth of the
// intermittent ones and the charge of the battery, and holds them against
// haveA, the hot output at idle, not the label (see [HotOutputA]). ok is
// false for a current that is not from 0 to 1e6 A or a duty that is none
// (sources budget-factor, alternator-curve).
func ChargeBudget(loads []BudgetLoad, batteryA, haveA float64) (b Budget, ok bool) {
	if !(batteryA >= 0 && batteryA <= mostA) || !(haveA >= 0 && haveA <= mostA) {
		return Budget{}, false
	}
	for _, l := range loads {
		if !(l.Amps >= 0 && l.Amps <= mostA) {
			return Budget{}, false
		}
		switch l.Duty {
		case Continuous:
			b.ContinuousA += l.Amps
		case Prolonged:
			b.ProlongedA += l.Amps
		case Intermittent:
			b.IntermittentA += l.Amps
		default:
			return Budget{}, false
		}
	}
	b.NeedA = b.ContinuousA + b.ProlongedA + budgetTenth*b.IntermittentA + batteryA
	b.HaveA, b.LeftA = haveA, haveA-b.NeedA
	b.OK = b.LeftA >= 0
	b.Why = []Step{
		{"continuous loads", "sum(I)", b.ContinuousA, "A", "stated"},
		{"prolonged loads", "sum(I)", b.ProlongedA, "A", "stated"},
		{fmt.Sprintf("intermittent loads, %.4g A in all, count a tenth", b.IntermittentA), "0.1 sum(I)", budgetTenth * b.IntermittentA, "A", "budget-factor"},
		{"charge of the battery", "", batteryA, "A", "stated"},
		{"needed", "", b.NeedA, "A", "budget-factor"},
		{"given hot at idle", "", haveA, "A", "alternator-curve"},
	}
	return b, true
}

// textBook is a text-book's list of loads in watts, by duty.
var textBook = [...]struct {
	name       string
	watts      float64
	duty       Duty
	at14, at28 float64 // A
}{
	{"ignition", 30, Continuous, 2, 1},
	{"fuel injection", 70, Continuous, 5, 2.5},
	{"fuel pump", 70, Continuous, 5, 2.5},
	{"instruments", 10, Continuous, 0.5, 0.5},
	{"side and tail lamps", 30, Prolonged, 2, 1},
	{"license-plate lamp", 10, Prolonged, 0.5, 0.5},
	{"headlamps, high beam", 200, Prolonged, 14.5, 7},
	{"headlamps, low beam", 160, Prolonged, 11.5, 5.5},
	{"panel lamps", 25, Prolonged, 2, 1},
	{"radio", 15, Prolonged, 1, 0.5},
	{"heater", 50, Intermittent, 3.5, 2},
	{"turn signals", 50, Intermittent, 3.5, 2},
	{"stop lamps", 40, Intermittent, 3, 1.5},
	{"front wipers", 80, Intermittent, 5.5, 3},
	{"rear wiper", 50, Intermittent, 3.5, 2},
	{"electric windows", 150, Intermittent, 10.5, 5.5},
	{"radiator fan", 150, Intermittent, 10.5, 5.5},
	{"heater blower", 80, Intermittent, 5.5, 3},
	{"rear window", 120, Intermittent, 8.5, 4.5},
	{"horns", 40, Intermittent, 3, 1.5},
	{"reverse lamps", 40, Intermittent, 3, 1.5},
	{"auxiliary lamps", 110, Intermittent, 8, 4},
	{"seat heater", 200, Intermittent, 14.5, 7},
	{"seat motors", 150, Intermittent, 10.5, 5.5},
	{"sun-roof", 150, Intermittent, 10.5, 5.5},
	{"lighter", 100, Intermittent, 7, 3.5},
	{"interior lamps", 10, Intermittent, 0.5, 0.5},
	{"rear fog lamps", 10, Intermittent, 0.5, 0.5},
	{"headlamp wash", 100, Intermittent, 7, 3.5},
	{"mirrors", 10, Intermittent, 0.5, 0.5},
}

// BudgetLoads is a text-book's list of loads at 14 V, or at 28 V for a system
// above 18 V. It is from memory: for comparison (source budget-loads).
func BudgetLoads(systemV float64) []BudgetLoad {
	out := make([]BudgetLoad, 0, len(textBook))
	for _, r := range textBook {
		amps := r.at14
		if systemV > 18 {
			amps = r.at28
		}
		out = append(out, BudgetLoad{r.name, r.duty, amps, r.watts})
	}
	return slices.Clip(out)
}

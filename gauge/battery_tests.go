package gauge

import "slices"

// CrankTest is one definition of a cranking current for a 12 V battery.
type CrankTest struct {
	Name   string // SAE, EN, DIN, IEC, CA
	TempC  float64
	Secs   float64
	EndV   float64
	Note   string
	Source string
}

var crankTests = [...]CrankTest{
	{"SAE", -18, 30, 7.2, "fully charged; 1.2 V a cell", "battery-cca"},
	{"EN", -18, 10, 7.5, "and 6 V after 90 or 150 s", "battery-en"},
	{"DIN", -18, 30, 9.0, "and 6 V after 150 s", "battery-crank-lexicon"},
	{"IEC", -18, 60, 8.4, "", "battery-crank-lexicon"},
	{"CA", 0, 30, 7.2, "marine; no CCA", "battery-ca"},
}

// CrankTests lists the definitions of a cranking current: figures of one are
// not those of another (sources battery-cca, battery-en,
// battery-crank-lexicon, battery-ca).
func CrankTests() []CrankTest { return slices.Clone(crankTests[:]) }

// BatteryOhmBy is the resistance in ohm of a 12 V battery that just meets its
// rating in a test (SAE, EN, DIN, IEC, CA): (12.6 - end volts)/rating, at the
// temperature of that test. ok is false for another test or a rating that is
// not from 1 to 1e6 A (sources battery-cca, battery-en,
// battery-crank-lexicon, battery-ca, crank-emf).
func BatteryOhmBy(test string, ratedA float64) (ohm, tempC float64, c Confidence, ok bool) {
	i := slices.IndexFunc(crankTests[:], func(t CrankTest) bool { return t.Name == test })
	if i < 0 || !(ratedA >= 1 && ratedA <= mostA) {
		return 0, 0, 0, false
	}
	t := crankTests[i]
	return (CrankEMF - t.EndV) / ratedA, t.TempC, min(confidenceOf(t.Source), confidenceOf("crank-emf")), true
}

// loadTestVolts is what a 12 V battery has to hold in the 15 s test at half
// its CCA, by rising temperature.
var loadTestVolts = [...]struct{ tempC, volts float64 }{
	{-18, 8.5}, {-12, 8.7}, {-7, 8.9}, {-1, 9.1}, {4, 9.3}, {10, 9.4}, {16, 9.5}, {21, 9.6},
}

// LoadTestC is where the load test's 9.6 V hold, in C (source battery-load-test).
const LoadTestC = 21.0

// LoadTestLeastV is the least voltage of a 12 V battery in the 15 s test at
// half its CCA, at tempC: straight between the points of the table, 9.6 V
// above 21 C. ok is false below -18 C or for no number (sources
// battery-load-temperature, battery-load-test).
func LoadTestLeastV(tempC float64) (volts float64, ok bool) {
	if !(tempC >= loadTestVolts[0].tempC) {
		return 0, false
	}
	for i, b := range loadTestVolts {
		if tempC <= b.tempC {
			if i == 0 {
				return b.volts, true
			}
			a := loadTestVolts[i-1]
			return a.volts + (b.volts-a.volts)*(tempC-a.tempC)/(b.tempC-a.tempC), true
		}
	}
	return loadTestVolts[len(loadTestVolts)-1].volts, true
}

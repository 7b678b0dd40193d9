package part

import "legwork/gauge"

// Start says how cold it is in a cold start and what charge the battery has.
// The zero value is the usual one: -18 C and a charged battery.
type Start struct {
	Cooled  bool    // TempC was asked for
	TempC   float64 // of everything, -40 to 60 C
	Drained bool    // Percent was asked for
	Percent float64 // charge of the batteries, 0 to 100
}

// Temp is the temperature of everything in the cold start, in C.
func (s Start) Temp() float64 {
	if s.Cooled {
		return s.TempC
	}
	return gauge.ColdC
}

// rest is the e.m.f. of a rested 12 V battery (source battery-ocv).
func (s Start) rest() float64 {
	if s.Drained {
		if v, ok := gauge.VoltsAtCharge(s.Percent); ok {
			return v
		}
	}
	return gauge.RestEMF
}

// ohm is the resistance of a 12 V battery in the cold start: between its
// rating at -18 C and the load test at 21 C, or where a charge was asked for,
// that of one which just passes the load test at this temperature (sources
// battery-cca, battery-load-test, battery-load-temperature). Below -18 C the
// lines go on as they are there.
func (s Start) ohm(cca float64) float64 {
	warm, cold := gauge.BatteryOhm(cca)
	if s.Drained {
		return weakOhm(cca, s.Temp())
	}
	along := (s.Temp() - gauge.ColdC) / (gauge.LoadTestC - gauge.ColdC)
	return cold + (warm-cold)*min(along, 1)
}

// weakOhm is the resistance of a 12 V battery that just holds the volts of the
// load test: 12.6 V less these, over half the CCA.
func weakOhm(cca, tempC float64) float64 {
	least, ok := gauge.LoadTestLeastV(tempC)
	if !ok { // colder than the table
		at, _ := gauge.LoadTestLeastV(gauge.ColdC)
		next, _ := gauge.LoadTestLeastV(gauge.ColdC + 1)
		least = at - (next-at)*(gauge.ColdC-tempC)
	}
	return (gauge.CrankEMF - least) / (cca / 2)
}

// starter is what a starter draws that draws amps warm: at -18 C what the
// draft says, else double, and straight between that and amps at 20 C.
func (s Start) starter(amps float64, d *Device) float64 {
	cold := amps * gauge.ColdStarter
	if d.Said("cold") {
		cold = d.Num("cold")
	}
	along := (warmC - s.Temp()) / (warmC - gauge.ColdC)
	return amps + (cold-amps)*max(along, 0)
}

// warmC is where figures that the draft states hold.
const warmC = 20

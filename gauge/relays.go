package gauge

import "math"

const relayAlpha = 0.003929 // 1/K at 20 C (source relay-temperature)

// CoilAt brings a pull-in or release voltage, or a coil resistance, from 20 C
// to a winding at tempC: x (234.5 + T)/254.5. The pull-in current is
// constant, so the voltage follows the resistance (source relay-temperature).
func CoilAt(volts20, tempC float64) float64 { return CopperAt(volts20, tempC) }

// CoilFrom does the same from a reference of refC instead of 20 C; +Inf, a
// coil that never pulls in, unless refC is from -200 C on.
func CoilFrom(value, refC, tempC float64) float64 {
	if !(refC >= leastK) {
		return math.Inf(1)
	}
	return value * (CopperZeroC + tempC) / (CopperZeroC + refC)
}

// CoilLinear is the other published form, with a linear coefficient at 20 C:
// R = R20 (1 + 0.003929 (T - 20)) (source relay-temperature).
func CoilLinear(value20, tempC float64) float64 {
	return value20 * (1 + relayAlpha*(tempC-20))
}

// CoilRiseC is how much a coil warms over its place when it has been held at
// volts: 52 K x (V/12)^2 (source relay-coil-rise).
func CoilRiseC(volts float64) float64 {
	share := volts / 12
	return CoilRise12C * share * share
}

// SuppressPeakV is the kick of a coil with a resistor beside it, held at
// volts before it opened: V Rsup / Rcoil; +Inf unless the coil has ohms (source
// suppress-peak).
func SuppressPeakV(volts, coilOhm, resistorOhm float64) float64 {
	if !(coilOhm > 0) {
		return math.Inf(1)
	}
	return volts / coilOhm * resistorOhm
}

// inrush holds the current at the start over the steady current by load.
var inrush = [...]struct {
	load   string
	factor float64
	source string
}{
	{"heater", 1, "inrush-load-types"},
	{"lamp", 10, "inrush-load-types"},
	{"motor", 6, "inrush-load-types"},
	{"fan", 3, "inrush-practice"},
	{"pump", 4, "inrush-practice"},
	{"electronics", 40, "inrush-practice"},
	{"solenoid", 5, "inrush-practice"},
}

// Inrush is the first current of a load over its steady current: heater,
// lamp, motor, fan, pump, electronics, solenoid. Fan and those after it only
// hint (sources inrush-load-types, inrush-practice).
func Inrush(load string) (factor float64, c Confidence, ok bool) {
	for _, row := range inrush {
		if row.load == load {
			return row.factor, confidenceOf(row.source), true
		}
	}
	return 0, 0, false
}

// switchFactor is the rating of a switch over its steady load in aircraft
// practice, at 12 V and at 28 V d.c.
var switchFactor = [...]struct {
	load    string
	at12    float64
	at28    float64
	comment string
}{
	{"lamp", 5, 8, "incandescent"},
	{"inductive", 2, 4, "relay, solenoid"},
	{"motor", 2, 3, "also through a relay"},
	{"heater", 1, 2, "resistive"},
}

// SwitchRating is the nominal rating a switch needs for a continuous load in
// amperes: load x factor, at 12 V or (above 18 V) 28 V; load is lamp,
// inductive, motor or heater (source switch-factor).
func SwitchRating(load string, amps, systemV float64) (ratedA float64, ok bool) {
	for _, row := range switchFactor {
		if row.load != load {
			continue
		}
		if systemV > 18 {
			return amps * row.at28, true
		}
		return amps * row.at12, true
	}
	return 0, false
}

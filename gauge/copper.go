package gauge

import "math"

const (
	// RhoCopper20 is the resistivity of annealed copper at 20 C in ohm meter, 100 % IACS (source copper-iacs).
	RhoCopper20 = 17.241e-9
	// CopperZeroC is the temperature offset of copper: R(T) = R20 (234.5 + T) / (234.5 + 20) (source copper-temperature).
	CopperZeroC = 234.5
	// LayFactor is how much longer the strands of a cable are than the cable (source strand-lay). It is applied to AWG areas only.
	LayFactor = 1.02
	// MM2PerCmil turns circular mils into square millimeters, exact by definition of the inch.
	MM2PerCmil = math.Pi / 4 * 0.0254 * 0.0254
	// MeterPerFoot is exact by definition.
	MeterPerFoot = 0.3048
)

// CopperAt brings a copper resistance from 20 C to tempC:
// R = R20 (234.5 + T) / 254.5, T in Celsius (source copper-temperature).
func CopperAt(ohm20, tempC float64) float64 {
	return ohm20 * (CopperZeroC + tempC) / (CopperZeroC + 20)
}

// AWGDiameterMM is the diameter of a solid wire of gauge n in mm, from the
// geometric law d = 0.127 mm x 92^((36-n)/39) (source awg-law). 1/0 is 0,
// 2/0 is -1, 3/0 is -2 and 4/0 is -3.
func AWGDiameterMM(n int) float64 {
	return 0.127 * math.Pow(92, float64(36-n)/39)
}

// AWGAreaMM2 is the area of a solid wire of gauge n in mm2 (source awg-law).
func AWGAreaMM2(n int) float64 {
	d := AWGDiameterMM(n)
	return math.Pi / 4 * d * d
}

// AWGCmil is the area of a solid wire of gauge n in circular mils: the square
// of its diameter in thousandths of an inch (source awg-law).
func AWGCmil(n int) float64 { return AWGAreaMM2(n) / MM2PerCmil }

// OhmPerM is the resistance of one meter of the size at conductor
// temperature tempC: rho20 / A, brought to temperature with [CopperAt]. An
// area of zero gives +Inf, so that a size never set cannot pass for a good
// conductor.
func (s Size) OhmPerM(tempC float64) float64 {
	return CopperAt(RhoCopper20/(s.AreaMM2*1e-6), tempC)
}

// Cmil is the conducting area of the size in circular mils.
func (s Size) Cmil() float64 { return s.AreaMM2 / MM2PerCmil }

// GramPerM is the mass of copper in one meter of the size, at 8.89 g/cm3
// (source copper-density).
func (s Size) GramPerM() float64 { return CopperDensity * s.AreaMM2 }

// CopperDensity is the density of annealed copper in g/cm3 (source copper-density).
const CopperDensity = 8.89

const (
	// KRoom is the constant of the circular-mil rule at room temperature, ohm cmil/ft (source circular-mil).
	KRoom = 10.75
	// KHot is the constant for stranded copper at 75 C, computed: 10.371 x 1.216 x 1.02 (source circular-mil-hot).
	KHot = 12.87
	// KIACS is 100 % IACS copper at 20 C in ohm cmil/ft (source copper-iacs).
	KIACS = 10.371
)

// CmilNeeded is the circular-mil rule CM = K I L / E: amps over a round trip
// of roundTripFt feet within volts (source circular-mil).
func CmilNeeded(k, amps, roundTripFt, volts float64) float64 {
	return k * amps * roundTripFt / volts
}

// SmallestFor is the first size of an ascending ladder with at least cmil
// circular mils; ok is false when even the last is smaller.
func SmallestFor(ladder []Size, cmil float64) (s Size, ok bool) {
	for _, s := range ladder {
		if s.Cmil() >= cmil {
			return s, true
		}
	}
	return Size{}, false
}

// DropV is the voltage lost along lengthM of conductor: V = I R L, with L the
// whole length of conductor that carries the current, out and back.
func DropV(ohmPerM, lengthM, amps float64) float64 { return ohmPerM * lengthM * amps }

// LongestRunM is the longest length of conductor that loses no more than
// volts at amps: L = V / (I R). It is +Inf when nothing flows.
func LongestRunM(ohmPerM, amps, volts float64) float64 {
	return volts / (ohmPerM * amps)
}

// RunAtTemperatureM shortens a run that is allowed at 20 C for a conductor at
// tempC: L2 = 254.5 L1 / (234.5 + T2) (source ac4313-run).
func RunAtTemperatureM(run20M, tempC float64) float64 {
	return run20M * (CopperZeroC + 20) / (CopperZeroC + tempC)
}

package gauge

import "math"

const (
	adiabaticK    = 226.0 // A s^0.5/mm2, copper (source adiabatic-k)
	adiabaticS    = 5.0   // longest time for the adiabatic law
	slowestS      = 30.0  // longest opening that is still taken for a short
	copperMeltC   = 1083.0
	preeceInch    = 10244.0 // A/in^1.5, copper (source preece)
	iceaConst     = 0.0297
	iceaZeroC     = 234.0
	inchMM        = 25.4
	leastK        = -200.0 // C, coldest start of the adiabatic law
	mostK         = 2000.0 // C
	shortMultiple = 3.0    // wanted far-end short over rating (source ecss-capability)
)

// WantedShort is the far-end short over the fuse rating that a space standard
// asks for (source ecss-capability).
const WantedShort = shortMultiple

// K is the adiabatic constant of copper in A s^0.5/mm2 from startC to finalC:
// k = 226 sqrt(ln((T2 + 234.5)/(T1 + 234.5))); 0 unless finalC is above
// startC and both are from -200 to 2000 C (source adiabatic-k).
func K(startC, finalC float64) float64 {
	if !(startC >= leastK && finalC > startC && finalC <= mostK) {
		return 0
	}
	return adiabaticK * math.Sqrt(math.Log((finalC+CopperZeroC)/(startC+CopperZeroC)))
}

// WithstandA2S is the I^2 t in A2 s that a conductor of areaMM2 takes up from
// startC to finalC with no heat lost: (k S)^2; 0 unless the area is from 0 to
// 1e6 mm2 (source adiabatic-k).
func WithstandA2S(areaMM2, startC, finalC float64) float64 {
	if !(areaMM2 >= 0 && areaMM2 <= 1e6) {
		return 0
	}
	ks := K(startC, finalC) * areaMM2
	return ks * ks
}

// ShortAreaMM2 is the least area that takes amps for seconds: S = I sqrt(t)/k.
// It is +Inf, since no area is enough, unless k is above zero and the others
// are not below (source adiabatic-k).
func ShortAreaMM2(amps, seconds, k float64) float64 {
	if !(amps >= 0 && seconds >= 0 && k > 0) {
		return math.Inf(1)
	}
	return amps * math.Sqrt(seconds) / k
}

// ICEAK is the constant of the other published form,
// (I/A)^2 t = 0.0297 log10((T2+234)/(T1+234)) with A in circular mils, brought
// to A s^0.5/mm2; 0 as [K] (source icea-short).
func ICEAK(startC, finalC float64) float64 {
	if !(startC >= leastK && finalC > startC && finalC <= mostK) {
		return 0
	}
	perCmil := math.Sqrt(iceaConst * math.Log10((finalC+iceaZeroC)/(startC+iceaZeroC)))
	return perCmil / MM2PerCmil
}

// FarEndShortA is the current of a dead short at the far end of a path of
// ohms: I = V / sum(R); +Inf unless they sum to more than nothing (source
// far-end-short). [FarEndShort] shows the working.
func FarEndShortA(emf float64, ohms ...float64) float64 {
	var sum float64
	for _, r := range ohms {
		sum += r
	}
	if !(sum > 0) {
		return math.Inf(1)
	}
	return emf / sum
}

// PreeceA is the steady current at which a round copper wire of diameterMM
// melts in open air: I = 10244 d^1.5, d in inches; 0 unless the diameter is
// above zero (source preece).
func PreeceA(diameterMM float64) float64 {
	if !(diameterMM > 0) {
		return 0
	}
	return preeceInch * math.Pow(diameterMM/inchMM, 1.5)
}

// OnderdonkA is the current that melts copper of areaMM2 in seconds from
// ambientC: I = A sqrt(log10((Tm - Ta)/(234 + Ta) + 1)/(33 t)), A in circular
// mils; good to about 10 s. 0 unless area and time are above zero and the
// place is from -200 C to the melting point, 1083 C (source onderdonk).
func OnderdonkA(areaMM2, seconds, ambientC float64) float64 {
	if !(areaMM2 > 0 && seconds > 0 && ambientC >= leastK && ambientC <= copperMeltC) {
		return 0
	}
	heat := math.Log10((copperMeltC-ambientC)/(iceaZeroC+ambientC) + 1)
	return areaMM2 / MM2PerCmil * math.Sqrt(heat/(33*seconds))
}

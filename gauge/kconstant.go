package gauge

import "fmt"

// KMetric is the constant of the metric form E = 0.0164 I L / S of some
// handbooks, ohm mm2/m. It lies 5 % below copper at 20 C: it is told here and
// used nowhere (source metric-drop).
const KMetric = 0.0164

// KAt is the constant of the circular-mil rule for copper at a conductor
// temperature in Celsius, ohm cmil/ft; stranded copper has the strand lay in
// it (sources copper-iacs, copper-temperature, strand-lay).
func KAt(tempC float64, stranded bool) float64 {
	k := CopperAt(KIACS, tempC)
	if stranded {
		k *= LayFactor
	}
	return k
}

// KTempC is the temperature in Celsius at which copper has the constant k:
// 10.75 is solid copper at 29 C, or stranded copper at 24 C.
func KTempC(k float64, stranded bool) float64 {
	if stranded {
		k /= LayFactor
	}
	return k/KIACS*(CopperZeroC+20) - CopperZeroC
}

// KMeaning is the working behind a constant of the circular-mil rule: what
// copper it stands for.
func KMeaning(k float64) []Step {
	return []Step{
		{Text: "100 % IACS copper at 20 C", Equation: "rho20 in ohm cmil/ft", Value: KIACS, Unit: "ohm cmil/ft", Source: "copper-iacs"},
		{Text: fmt.Sprintf("solid copper has K = %.4g at", k), Equation: "K/10.371 x 254.5 - 234.5", Value: KTempC(k, false), Unit: "C", Source: "copper-temperature"},
		{Text: fmt.Sprintf("stranded copper has K = %.4g at", k), Equation: "K/(1.02 x 10.371) x 254.5 - 234.5", Value: KTempC(k, true), Unit: "C", Source: "strand-lay"},
	}
}

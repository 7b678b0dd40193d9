package gauge

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

package gauge

import "fmt"

// Ohms is one named resistance of a path.
type Ohms struct {
	Name string
	Ohm  float64
}

// FarEnd is a dead short at the far end of a path, seen by its fuse.
type FarEnd struct {
	SumOhm float64
	ShortA float64
	Times  float64 // short over rating
	// Wanted is Times at least 3, as a space standard asks; Fast at least 6,
	// the steepest gate of most styles.
	Wanted, Fast bool
	Gate         Gate // the steepest gate at or below the short; zero where the style has none
	Why          []Step
}

const fastMultiple = 6.0

// FarEndShort works out the short at the far end of a path behind a fuse:
// I = V / sum(R), wanted at least 3 and better 6 x the rating. ok is false
// unless emf is from 0 to 60 V, the rating from 0 to 1e6 A and the ohms sum
// to more than nothing (sources far-end-short, ecss-capability).
func FarEndShort(emf float64, style string, ratedA float64, path ...Ohms) (f FarEnd, ok bool) {
	for _, o := range path {
		if !(o.Ohm >= 0 && o.Ohm <= 1e9) {
			return FarEnd{}, false
		}
		f.SumOhm += o.Ohm
		f.Why = append(f.Why, Step{Text: o.Name, Equation: "R", Value: o.Ohm, Unit: "ohm", Source: "stated"})
	}
	if !(f.SumOhm >= 1e-6) || !(emf > 0 && emf <= MostSystemV) || !(ratedA >= 1e-3 && ratedA <= mostA) {
		return FarEnd{}, false
	}
	f.ShortA = emf / f.SumOhm
	f.Times = f.ShortA / ratedA
	f.Wanted, f.Fast = f.Times >= WantedShort, f.Times >= fastMultiple
	f.Why = append(f.Why,
		Step{fmt.Sprintf("%.4g V over the whole path", emf), "V / sum(R)", f.ShortA, "A", "far-end-short"},
		Step{fmt.Sprintf("over the rating of %.4g A; wanted at least %.4g", ratedA, WantedShort), "I / In", f.Times, "x", "ecss-capability"},
	)
	for _, g := range gatesOf(style) {
		if g.MaxS > 0 && f.Times >= g.Share {
			f.Gate = g
		}
	}
	if f.Gate.Share > 0 {
		f.Why = append(f.Why, Step{fmt.Sprintf("gate at %.3g x: opens within", f.Gate.Share), "", f.Gate.MaxS, "s", f.Gate.Source})
	}
	return f, true
}

package gauge

import "fmt"

// CoilCase is a relay that has to pull in: volts on its coil, in a place, and
// whether it was held before so that its winding is warm already.
type CoilCase struct {
	PullInV float64 // must have operated by, at 20 C
	PlaceC  float64
	HeldV   float64 // volts at which it was held before; 0: it was off
	CoilV   float64 // volts at its terminals now
}

// CoilVerdict says whether it pulls in.
type CoilVerdict struct {
	WindingC float64
	NeedV    float64 // pull-in volts of the warm winding
	WantedV  float64 // 110 % of them, as a state standard asks
	PullsIn  bool    // CoilV is at least NeedV
	Sound    bool    // CoilV is at least WantedV
	Why      []Step
}

// HotCoil judges the pull-in of a coil: its resistance rises with heat, its
// pull-in current does not, so the volts rise alike: V (234.5 + T)/254.5. ok
// is false unless volts are from 0 to 60 V and the place from -60 to 200 C
// (sources relay-temperature, relay-coil-rise, relay-drive).
func HotCoil(c CoilCase) (v CoilVerdict, ok bool) {
	for _, volts := range []float64{c.PullInV, c.HeldV, c.CoilV} {
		if !(volts >= 0 && volts <= MostSystemV) {
			return CoilVerdict{}, false
		}
	}
	if !(c.PlaceC >= -60 && c.PlaceC <= 200) {
		return CoilVerdict{}, false
	}
	rise := CoilRiseC(c.HeldV)
	v.WindingC = c.PlaceC + rise
	v.NeedV = CoilAt(c.PullInV, v.WindingC)
	v.WantedV = coilMargin * v.NeedV
	v.PullsIn, v.Sound = c.CoilV >= v.NeedV, c.CoilV >= v.WantedV
	v.Why = []Step{
		{fmt.Sprintf("held at %.4g V before", c.HeldV), "52 K (V/12)^2", rise, "K", "relay-coil-rise"},
		{fmt.Sprintf("winding in a place of %.4g C", c.PlaceC), "place + rise", v.WindingC, "C", "relay-temperature"},
		{fmt.Sprintf("pull-in of %.4g V at 20 C", c.PullInV), "V (234.5 + T)/254.5", v.NeedV, "V", "relay-temperature"},
		{"with a margin of a tenth", "1.10 V", v.WantedV, "V", "relay-drive"},
	}
	return v, true
}

const coilMargin = 1.10 // coil volts over must-operate volts (source relay-drive)

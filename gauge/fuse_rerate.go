package gauge

import "slices"

// ambientPoint is the share of its rating that a fuse carries in a place.
type ambientPoint struct{ tempC, share float64 }

// bladeAmbient is a usual curve of zinc blades, by rising temperature.
var bladeAmbient = [...]ambientPoint{{25, 1}, {65, 0.93}, {85, 0.88}, {105, 0.80}, {125, 0.70}}

// FuseAmbientShare is the share of its 25 C rating that a blade fuse carries
// in a place of tempC: 1 up to 25 C, straight between the points of a usual
// curve to 125 C; ok is false above, or for no number. It is from memory and
// only hints (source fuse-ambient-blade).
func FuseAmbientShare(tempC float64) (share float64, c Confidence, ok bool) {
	c = confidenceOf("fuse-ambient-blade")
	if !(tempC >= -60 && tempC <= bladeAmbient[len(bladeAmbient)-1].tempC) {
		return 0, c, false
	}
	i := slices.IndexFunc(bladeAmbient[:], func(p ambientPoint) bool { return tempC <= p.tempC })
	if i == 0 {
		return 1, c, true
	}
	a, b := bladeAmbient[i-1], bladeAmbient[i]
	return a.share + (b.share-a.share)*(tempC-a.tempC)/(b.tempC-a.tempC), c, true
}

// Rerating is one published rule on how much of its rating a fuse or breaker
// may carry.
type Rerating struct {
	Subject string
	Value   float64
	Unit    string
	Note    string
	Source  string
}

var reratings = [...]Rerating{
	{"continuous load, any fuse at 25 C", 0.75, "of rating", "a 7.5 A load needs a 10 A fuse", "fuse-margin"},
	{"fuse over continuous load", 1.25, "rating / load", "the wire stays the upper limit", "fuse-load-125"},
	{"margin, fuse", 25, "%", "", "breaker-margin"},
	{"margin, breaker", 17.5, "%", "15 to 20", "breaker-margin"},
	{"thermal breaker in a hot engine bay", 0.8, "of rating", "a 100 A breaker may trip at 80 A", "breaker-margin"},
	{"slope above 25 C, guide", 0.2, "% per K", "12 % down at 85 C", "fuse-ambient-slope"},
	{"slope above 25 C, strict", 0.5, "% per K", "30 % down at 85 C", "fuse-ambient-slope"},
	{"UL fuse in open air at 25 C", 1.1, "of rating", "is 1.0 in an enclosure at 40 C", "fuse-enclosure"},
	{"chip fuse, safety coefficient", 0.7, "of rating", "1.5 A with an ambient factor of 0.95 asks for 2.255 A", "chip-fuse-example"},
	{"cermet fuse, space practice", 0.65, "of rating", "not for zinc blades", "ecss-derating"},
	{"far-end short over rating", WantedShort, "x", "a 20 A fuse wants 60 A at the far end", "ecss-capability"},
	{"zinc blade at 65 C", 0.93, "of rating", "", "fuse-ambient-blade"},
	{"zinc blade at 85 C", 0.88, "of rating", "", "fuse-ambient-blade"},
	{"zinc blade at 105 C", 0.80, "of rating", "", "fuse-ambient-blade"},
	{"zinc blade at 125 C", 0.70, "of rating", "", "fuse-ambient-blade"},
}

// Reratings lists published rules on how much of its rating a device may
// carry; they disagree, so each names its document (sources fuse-margin,
// fuse-load-125, breaker-margin, fuse-ambient-slope, fuse-enclosure,
// chip-fuse-example, ecss-derating, ecss-capability, fuse-ambient-blade).
func Reratings() []Rerating { return slices.Clone(reratings[:]) }

// LeastFuseA is the smallest rating for a continuous load: I / (share x
// ambient), with share the part of a rating that a load may take and ambient
// the factor of the place, 1 at 25 C. ok is false unless both are in (0, 1]
// and the load is a current from 0 to 1e6 A (sources fuse-margin,
// chip-fuse-example).
func LeastFuseA(loadA, share, ambient float64) (ratedA float64, ok bool) {
	if !(loadA >= 0 && loadA <= mostA) || !(share >= leastShare && share <= 1) || !(ambient >= leastShare && ambient <= 1) {
		return 0, false
	}
	return loadA / (share * ambient), true
}

const (
	mostA      = 1e6 // no current above is taken for a figure of this trade
	leastShare = 0.01
)

package gauge

import "slices"

// Stud is one size of stud, with the hole of its ring and what is near it in
// the other system.
type Stud struct {
	Name   string
	StudMM float64
	HoleMM float64 // usual
	Near   string
	Use    string
	Source string
}

var studs = [...]Stud{
	{"#4", 2.84, 3.0, "M3", "instruments", "stud-memory"},
	{"#6", 3.51, 3.7, "M3.5", "signal grounds, gauges", "stud-sizes"},
	{"#8", 4.17, 4.3, "M4", "switches, gauges", "stud-sizes"},
	{"#10", 4.83, 5.0, "M5", "fuse blocks, relays, chassis grounds", "stud-sizes"},
	{"1/4", 6.35, 6.7, "M6", "alternator, distribution, chassis grounds", "stud-sizes"},
	{"5/16", 7.94, 8.3, "M8", "starter, battery, main fuse", "stud-sizes"},
	{"3/8", 9.53, 9.9, "M10", "battery, starter", "stud-memory"},
	{"1/2", 12.70, 13.1, "M12", "large batteries", "stud-memory"},
	{"M3", 3.0, 3.2, "#4", "", "stud-memory"},
	{"M3.5", 3.5, 3.7, "#6", "", "stud-memory"},
	{"M4", 4.0, 4.3, "#8", "", "stud-memory"},
	{"M5", 5.0, 5.3, "#10", "", "stud-memory"},
	{"M6", 6.0, 6.4, "1/4, loose", "", "stud-memory"},
	{"M8", 8.0, 8.4, "5/16", "", "stud-memory"},
	{"M10", 10.0, 10.5, "3/8", "", "stud-memory"},
	{"M12", 12.0, 13.0, "1/2", "", "stud-memory"},
}

// Studs lists studs and the holes of their rings; the holes are usual ones
// from memory (sources stud-sizes, stud-memory).
func Studs() []Stud { return slices.Clone(studs[:]) }

// StudOf finds a stud by its name: "1/4", "#10", "M8".
func StudOf(name string) (Stud, bool) {
	i := slices.IndexFunc(studs[:], func(s Stud) bool { return s.Name == name })
	if i < 0 {
		return Stud{}, false
	}
	return studs[i], true
}

// StudRating is the rated current of a military stud terminal, which loses
// at most DropMV there.
type StudRating struct {
	Thread string // inches and threads to the inch
	RatedA float64
	DropMV float64
	Source string
}

var studRatings = [...]StudRating{
	{".138-32", 25, 7.5, "ring-joint"},
	{".164-32", 30, 7.5, "ring-joint"},
	{".190-32", 35, 7.5, "ring-joint"},
	{".250-28", 43, 7.5, "ring-joint"},
}

// StudRatings lists them (source ring-joint).
func StudRatings() []StudRating { return slices.Clone(studRatings[:]) }

// MostOnStud is how many ring terminals one stud may hold: 4 on boats and
// aircraft, 3 in naval gear (sources stud-stack, stud-stack-naval,
// stud-stack-aircraft).
func MostOnStud(field string) (rings int, ok bool) {
	for _, r := range studStacks {
		if r.field == field {
			return r.rings, true
		}
	}
	return 0, false
}

var studStacks = [...]struct {
	field  string
	rings  int
	source string
}{{"boat", 4, "stud-stack"}, {"aircraft", 4, "stud-stack-aircraft"}, {"naval", 3, "stud-stack-naval"}}

// SleeveColor is the color of a pre-insulated terminal for a range of wire.
type SleeveColor struct {
	Color             string
	ThinAWG, ThickAWG int
	LeastMM2, MostMM2 float64
	Source            string
}

var sleeveColors = [...]SleeveColor{
	{"yellow (small)", 26, 24, 0, 0, "sleeve-memory"},
	{"red", 22, 16, 0.5, 1.5, "sleeve-colors"},
	{"blue", 16, 14, 1.5, 2.5, "sleeve-colors"},
	{"yellow", 12, 10, 4, 6, "sleeve-colors"},
	{"red (large)", 8, 8, 8, 10, "sleeve-memory"},
	{"blue (large)", 6, 6, 13, 16, "sleeve-memory"},
	{"yellow (large)", 4, 4, 21, 25, "sleeve-memory"},
}

// SleeveColors lists the colors of pre-insulated terminals (sources
// sleeve-colors, sleeve-memory).
func SleeveColors() []SleeveColor { return slices.Clone(sleeveColors[:]) }

// SleeveFor lists the sleeves that take a gauge. 16 AWG has two, red and
// blue: strands and insulation decide (sources as [SleeveColors]).
func SleeveFor(awg int) []SleeveColor {
	var out []SleeveColor
	for _, s := range sleeveColors {
		if awg <= s.ThinAWG && awg >= s.ThickAWG {
			out = append(out, s)
		}
	}
	return out
}

// StripLength is how much insulation comes off for a terminal.
type StripLength struct {
	Terminal string
	MM       float64
	Source   string
}

var stripLengths = [...]StripLength{
	{"crimp-and-seal splice sleeve, splice clip", 7.5, "strip-splice"},
	{"pre-insulated, red", 6, "strip-usual"},
	{"pre-insulated, blue", 6.5, "strip-usual"},
	{"pre-insulated, yellow", 8, "strip-usual"},
	{"open barrel, 0.5 to 2.5 mm2", 4.5, "strip-usual"},
}

// StripLengths lists strip lengths; all but the first are from memory: the
// terminal's own sheet rules (sources strip-splice, strip-usual).
func StripLengths() []StripLength { return slices.Clone(stripLengths[:]) }

package gauge

import (
	"fmt"
	"math"
	"strings"
)

// Ask is one wire to be sized at the bench. Begin with [NewAsk], which fills
// in what is usual, and change what differs.
type Ask struct {
	LoadA     float64 // continuous current, amperes
	OneWay    OneWayM // from the source to the load, along the wire
	Return    Return
	SystemV   float64 // nominal volts
	DropShare float64 // most of the system volts that may be lost out and back: 0.03
	DropBy    DropRule
	Family    Family  // zero: the usual one of each size, see [FamilyFor]
	AmbientC  float64 // hottest place on its way
	Loaded    int     // conductors loaded together in its bundle, itself and its return included
	Profile   Profile
	Area      AreaRule

	StartA    float64 // first current of the load, 0: none said
	StartS    float64 // how long it lasts, 0: not known
	FuseA     float64 // rating of the fuse that is already there, 0: one is chosen
	FuseStyle string  // see [FuseStyles]; "": the first of blade, maxi, bolt-down, 58 V blade and class T that is made for the volts and large enough
}

// NewAsk is a load over a one-way distance with all else as usual: there and
// back by wire, 12 V, the drop for controllers, pumps and ignition, a place of
// 30 C, nothing else bundled with it, areas, drop rule and insulation of the
// profile.
func NewAsk(loadA float64, l OneWayM, p Profile) Ask {
	a := Ask{
		LoadA: loadA, OneWay: l, SystemV: 12, DropShare: p.DropCritical, DropBy: p.DropBy,
		AmbientC: TableAmbientC, Loaded: 1, Profile: p, Area: p.Area,
	}
	if p.InsulationC > 0 {
		a.Family = RatedFamily(p.InsulationC)
	}
	return a
}

// RatedFamily is an insulation known only by its class temperature in
// Celsius, taken to end a short as low as PVC.
func RatedFamily(tempC float64) Family {
	return Family{
		Name: fmt.Sprintf("%g C", tempC), Title: "insulation by its class temperature",
		TempC: tempC, ShortC: max(finalPVC, tempC), Source: "asked",
	}
}

// AskRange is what a figure of an [Ask] may be.
type AskRange struct {
	Field       string // amps, length, volts, drop, insulation, ambient, bundle, start-current, start-time, fuse
	Least, Most float64
	Unit        string // A, m, V, %, C, s, or "" for a count
}

var askRanges = [...]AskRange{
	{"amps", 0.01, 600, "A"},
	{"length", 0.02, 200, "m"},
	{"volts", 5, MostSystemV, "V"},
	{"drop", 0.1, 50, "%"},
	{"insulation", 60, 260, "C"},
	{"ambient", -55, 200, "C"},
	{"bundle", 1, 500, ""},
	{"start-current", 0.01, 3000, "A"},
	{"start-time", 0.001, 60, "s"},
	{"fuse", 0.25, 1000, "A"},
}

// AskRanges lists what each figure of an [Ask] may be.
func AskRanges() []AskRange { return append([]AskRange(nil), askRanges[:]...) }

// AskRangeOf finds the range of a field by its name.
func AskRangeOf(field string) (r AskRange, ok bool) {
	for _, r := range askRanges {
		if r.Field == field {
			return r, true
		}
	}
	return AskRange{}, false
}

// Has reports whether a figure lies in the range; NaN does not.
func (r AskRange) Has(v float64) bool { return v >= r.Least && v <= r.Most }

// String gives the range in words: from 5 to 60 V.
func (r AskRange) String() string {
	if r.Unit == "m" {
		return fmt.Sprintf("from %g to %g m (%.3g to %.3g ft)", r.Least, r.Most, r.Least/MeterPerFoot, r.Most/MeterPerFoot)
	}
	return strings.TrimSpace(fmt.Sprintf("from %g to %g %s", r.Least, r.Most, r.Unit))
}

// Refusal is one figure or word of an [Ask] that cannot be worked with.
type Refusal struct {
	Field  string // as in [AskRange]
	Reason string
}

// Refusals are all mistakes of an [Ask]; it is an error.
type Refusals []Refusal

// Error lists the mistakes, one a line.
func (r Refusals) Error() string {
	lines := make([]string, len(r))
	for i, one := range r {
		lines[i] = one.Field + ": " + one.Reason
	}
	return strings.Join(lines, "\n")
}

// Check finds every mistake of an ask, nil when there is none.
func (a Ask) Check() Refusals {
	var out Refusals
	figure := func(field string, v float64, asked bool) {
		if r, _ := AskRangeOf(field); asked && !r.Has(v) {
			out = append(out, Refusal{field, fmt.Sprintf("%s is not %s", figureText(v, r.Unit), r)})
		}
	}
	figure("amps", a.LoadA, true)
	figure("length", float64(a.OneWay), true)
	figure("volts", a.SystemV, true)
	figure("drop", 100*a.DropShare, true)
	figure("insulation", a.Family.TempC, a.Family.Source != "" || a.Family.TempC != 0)
	figure("ambient", a.AmbientC, true)
	figure("bundle", float64(a.Loaded), true)
	figure("start-current", a.StartA, a.StartA != 0)
	figure("start-time", a.StartS, a.StartS != 0)
	figure("fuse", a.FuseA, a.FuseA != 0)
	return append(out, a.words()...)
}

// words finds what does not fit together.
func (a Ask) words() (out Refusals) {
	no := func(field, format string, args ...any) {
		out = append(out, Refusal{field, fmt.Sprintf(format, args...)})
	}
	if a.Return > ByMetal {
		no("return", "is wire or metal")
	}
	if a.Area.String() == "invalid" {
		no("area", "is sae, awg or iso")
	}
	if a.DropBy > DropChart {
		no("drop-by", "is copper or chart")
	}
	if a.Profile.Name == "" || !(a.Profile.ChooseAt > 0 && a.Profile.LoadOfFuse > 0 && a.Profile.FuseOverWire > 0) {
		no("profile", "no limits given")
	}
	if _, known := fuseStyleOf(a.FuseStyle); !known && a.FuseStyle != "" {
		no("fuse-style", "%q is not one of %s", a.FuseStyle, strings.Join(FuseFamilies(), ", "))
	}
	if a.StartA != 0 && a.StartA < a.LoadA {
		no("start-current", "%.4g A is below the %.4g A that it settles to", a.StartA, a.LoadA)
	}
	if rated := a.coolest(); a.AmbientC >= rated {
		no("ambient", "%.4g C is no place for insulation of %g C", a.AmbientC, rated)
	}
	return out
}

// coolest is the lowest class temperature that the wire may come out with.
func (a Ask) coolest() float64 {
	if a.Family.TempC != 0 {
		return a.Family.TempC
	}
	least := math.Inf(1)
	for _, s := range a.Area.Ladder() {
		least = min(least, FamilyFor(s).TempC)
	}
	return least
}

func figureText(v float64, unit string) string {
	return strings.TrimSpace(fmt.Sprintf("%.4g %s", v, unit))
}

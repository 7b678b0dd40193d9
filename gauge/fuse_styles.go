package gauge

import "slices"

// FuseStyle is one style of fuse: how it is built, the ratings in which it is
// made, and what it can break.
type FuseStyle struct {
	Name     string    // blade, mini, maxi ...: the word that [FuseSeries] and its neighbors take
	Title    string    // what it is, in words
	Standard string    // documents that describe it
	RatingsA []float64 // amperes, ascending
	RatedV   float64   // volts d.c.
	BreakA   float64   // largest current in amperes that it can break at RatedV; 0: no d.c. figure known
	Use      string
	Source   string
}

// fuseStyles is in the order of rising rating.
var fuseStyles = [...]FuseStyle{
	{"blade", "regular blade", "ISO 8820-3 type C, SAE J1284", []float64{1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40}, 32, 1000, "branch circuits", "fuse-series"},
	{"mini", "mini blade", "ISO 8820-3 type F, SAE J2077", []float64{2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30}, 32, 1000, "branch circuits", "fuse-series"},
	{"maxi", "maxi blade", "ISO 8820-3 type E, SAE J1888", []float64{20, 25, 30, 35, 40, 50, 60, 70, 80, 100}, 32, 1000, "time-lag feeds", "fuse-series"},
	{"micro", "micro blade, two tabs", "SAE J2781 group", []float64{5, 7.5, 10, 15, 20, 25, 30}, 32, 1000, "compact boxes", "fuse-series-micro"},
	{"blade58", "blade of 58 V, shaped so that a 32 V one does not replace it", "SAE J2576", []float64{1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30}, 58, 1000, "42 and 48 V", "fuse-series-58"},
	{"glass", "glass tube", "SAE J554, UL 248-14", []float64{0.25, 0.5, 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30}, 32, 0, "old vehicles", "fuse-series-glass"},
	{"glass-slow", "glass tube, time delay", "UL 248-14", []float64{0.25, 0.5, 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30}, 32, 0, "motors in old vehicles", "fuse-series-glass"},
	{"torpedo", "ceramic torpedo", "DIN 72581-1", []float64{5, 8, 16, 25, 40}, 32, 0, "old vehicles", "fuse-series-torpedo"},
	{"cartridge", "cartridge with female tabs, slow", "ISO 8820-4, SAE J2741", []float64{20, 25, 30, 40, 50, 60}, 32, 1000, "motors and feeds", "fuse-series-memory"},
	{"midi", "bolt-down, 30 mm between studs", "ISO 8820-5 SF30", []float64{30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200}, 32, 2000, "feeds, glow plugs, power steering", "fuse-series-memory"},
	{"mega", "bolt-down, 51 mm between studs", "ISO 8820-5 SF51", []float64{100, 125, 150, 175, 200, 225, 250, 300}, 32, 2000, "alternator and battery", "fuse-series-memory"},
	{"bolt-down", "bolt-down of either size", "ISO 8820-5", []float64{30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500}, 32, 2000, "feeds, alternator and battery", "fuse-series-memory"},
	{"stud", "block on the battery stud", "makers' series", []float64{30, 40, 50, 60, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300}, 58, 2000, "battery: 10 kA at 14 V, 5 kA at 32 V", "fuse-series-stud"},
	{"strip", "strip link", "makers' series", []float64{35, 40, 50, 60, 80, 100, 125, 150, 175, 200, 225, 250, 275, 300, 325, 350, 400, 450, 500, 600, 675, 750}, 32, 2700, "battery feed", "fuse-series-strip"},
	{"class-t", "class T", "UL 248-15", []float64{30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400}, 125, 20000, "large banks", "fuse-series-class-t"},
}

func fuseStyleOf(name string) (FuseStyle, bool) {
	i := slices.IndexFunc(fuseStyles[:], func(f FuseStyle) bool { return f.Name == name })
	if i < 0 {
		return FuseStyle{}, false
	}
	return fuseStyles[i], true
}

// FuseStyles lists every style of fuse that is known, with its series
// (sources fuse-series, fuse-series-micro, fuse-series-58, fuse-series-glass,
// fuse-series-torpedo, fuse-series-memory, fuse-series-stud,
// fuse-series-strip, fuse-series-class-t).
func FuseStyles() []FuseStyle {
	out := slices.Clone(fuseStyles[:])
	for i := range out {
		out[i].RatingsA = slices.Clone(out[i].RatingsA)
	}
	return out
}

// FuseFamilies lists the names of the styles of fuse that [FuseSeries] knows.
func FuseFamilies() []string {
	out := make([]string, 0, len(fuseStyles))
	for _, f := range fuseStyles {
		out = append(out, f.Name)
	}
	return out
}

// FuseSeries lists the ratings in amperes in which a style of fuse is made,
// ascending; nil for an unknown style (source as [FuseStyles]).
func FuseSeries(family string) []float64 {
	f, _ := fuseStyleOf(family)
	return slices.Clone(f.RatingsA)
}

// FuseLimits gives the rated volts (d.c.) of a style of fuse and the largest
// current in amperes that it can break there, 0 where no d.c. figure is known
// (source as [FuseStyles]); ok is false for an unknown style.
func FuseLimits(family string) (ratedV, breakA float64, c Confidence, ok bool) {
	f, ok := fuseStyleOf(family)
	if !ok {
		return 0, 0, 0, false
	}
	return f.RatedV, f.BreakA, confidenceOf(f.Source), true
}

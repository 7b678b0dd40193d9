package gauge

import "slices"

// profiles is in the order in which they are offered.
var profiles = [...]Profile{
	{
		Name: "road", Title: "Road vehicle",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-road",
	},
	{
		Name: "boat", Title: "Boat",
		LoadOfFuse: LoadOfFuse, ChooseAt: ChooseAt, FuseOverWire: 1.5,
		DropCritical: DropCritical, DropOther: DropOther,
		FirstFuseM: FirstFuseM, SheathedM: SheathedFeedM, NearMust: true,
		Dry: Smallest{18, 0.75}, Wet: Smallest{18, 0.75}, Alone: Smallest{16, 1},
		SizeSource: "cfr-183-425-smallest", Source: "profile-boat",
	},
	{
		Name: "aircraft", Title: "Aircraft practice, conservative",
		LoadOfFuse: ChooseAt, ChooseAt: ChooseAt, FuseOverWire: 1,
		DropCritical: DropCritical, DropOther: 0.5 / 14,
		FirstFuseM: FirstFuseM, SheathedM: FirstFuseM,
		Dry: Smallest{SmallestDryAWG, 0.5}, Wet: Smallest{SmallestWetAWG, 0.75}, Alone: Smallest{SmallestWetAWG, 0.75},
		SizeSource: "smallest-wire", Source: "profile-aircraft",
	},
}

// ProfileOf finds a set of limits by name.
func ProfileOf(name string) (Profile, bool) {
	i := slices.IndexFunc(profiles[:], func(p Profile) bool { return p.Name == name })
	if i < 0 {
		return Profile{}, false
	}
	return profiles[i], true
}

// Profiles lists the sets of limits; the first is the default.
func Profiles() []Profile { return slices.Clone(profiles[:]) }

// Placement is one published rule on where and how large the first protective
// device is.
type Placement struct {
	ID          string
	Subject     string
	Limit       float64
	Unit        string // m, or share of the wire's ampacity or of the machine's current
	Requirement string
	Source      string
}

var placements = [...]Placement{
	{"source", "place of the first device", FirstFuseM, "m", "within 7 in of the source of power, along the conductor", "cfr-183-455-place"},
	{"source-sheathed", "place of the first device", SheathedM, "m", "within 40 in where the wire is in a sheath or enclosure all the way", "cfr-183-455-place"},
	{"battery-sheathed", "battery conductor", SheathedFeedM, "m", "within 72 in where sheathed; engine starting circuits exempt", "abyc-feed"},
	{"rating-below-50v", "rating over ampacity", 1.5, "share", "at most 150 % of the table ampacity below 50 V", "cfr-183-455-rating"},
	{"rating-coast-guard", "rating over ampacity", 1.5, "share", "next larger device up to 150 % of the conductor's capacity", "cfr46-rating"},
	{"rating-state", "rating over ampacity", 1.25, "share", "next larger device up to 125 % of the conductor's capacity", "state-dot-rating"},
	{"alternator", "alternator output", 1.2, "share", "at most 120 % of the machine's rated current; self-limiting machines exempt", "cfr-183-460"},
	{"iso-source", "battery conductor", 0.2, "m", "within 200 mm of the source, 1.8 m sheathed; starter exempt", "iso10133-memory"},
}

// Placements lists published rules on place and rating of the first device.
func Placements() []Placement { return append([]Placement(nil), placements[:]...) }

// FuseCeilingA is the largest fuse that a conductor of a table ampacity may
// have below 50 V on a boat: 1.5 x ampacity (source cfr-183-455-rating).
func FuseCeilingA(ampacityA float64) float64 { return 1.5 * ampacityA }

// LinkAWG is the gauge of a fusible link for a wire: four numbers smaller
// (source fusible-link). The wire's gauge is 0 or below from 1/0 on.
func LinkAWG(wireAWG int) int { return wireAWG + 4 }

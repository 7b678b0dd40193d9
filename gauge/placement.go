package gauge

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

package gauge

import "slices"

// FuseColoring is the usual body color of one rating in a style of fuse.
type FuseColoring struct {
	Style  string
	RatedA float64
	Color  string
	Note   string
	Source string
}

// fuseColorings is by style, then by rating. Mini has the blade's list to 30 A.
var fuseColorings = [...]FuseColoring{
	{"blade", 1, "black", "some series only", "fuse-colors-disputed"},
	{"blade", 2, "gray", "", "fuse-colors"},
	{"blade", 3, "violet", "", "fuse-colors"},
	{"blade", 4, "pink", "", "fuse-colors"},
	{"blade", 5, "tan", "one chart prints orange: taken for a slip", "fuse-colors"},
	{"blade", 7.5, "brown", "", "fuse-colors"},
	{"blade", 10, "red", "", "fuse-colors"},
	{"blade", 15, "light blue", "", "fuse-colors"},
	{"blade", 20, "yellow", "", "fuse-colors"},
	{"blade", 25, "clear", "also called natural or white", "fuse-colors"},
	{"blade", 30, "green", "", "fuse-colors"},
	{"blade", 35, "blue-green", "charts disagree: dark blue, rose", "fuse-colors-disputed"},
	{"blade", 40, "orange", "outside the older standard", "fuse-colors"},
	{"maxi", 20, "yellow", "", "fuse-colors"},
	{"maxi", 25, "gray", "not in every series", "fuse-colors-disputed"},
	{"maxi", 30, "green", "", "fuse-colors"},
	{"maxi", 35, "brown", "not in every series", "fuse-colors-disputed"},
	{"maxi", 40, "orange", "", "fuse-colors"},
	{"maxi", 50, "red", "", "fuse-colors"},
	{"maxi", 60, "blue", "", "fuse-colors"},
	{"maxi", 70, "tan", "also called brown", "fuse-colors"},
	{"maxi", 80, "clear", "", "fuse-colors"},
	{"maxi", 100, "violet", "from memory", "fuse-colors-disputed"},
	{"cartridge", 20, "light blue", "", "fuse-colors-memory"},
	{"cartridge", 25, "white", "", "fuse-colors-memory"},
	{"cartridge", 30, "pink", "", "fuse-colors-memory"},
	{"cartridge", 40, "green", "", "fuse-colors-memory"},
	{"cartridge", 50, "red", "", "fuse-colors-memory"},
	{"cartridge", 60, "yellow", "", "fuse-colors-memory"},
	{"torpedo", 5, "yellow", "", "fuse-colors-memory"},
	{"torpedo", 8, "white", "", "fuse-colors-memory"},
	{"torpedo", 16, "red", "", "fuse-colors-memory"},
	{"torpedo", 25, "blue", "", "fuse-colors-memory"},
	{"torpedo", 40, "gray", "", "fuse-colors-memory"},
}

// FuseColorings lists the usual colors of every style, the disputed ones
// included (sources fuse-colors, fuse-colors-memory, fuse-colors-disputed).
func FuseColorings() []FuseColoring { return slices.Clone(fuseColorings[:]) }

// FuseColor is the usual body color of a fuse; ok is false where none is
// known or charts disagree (a 35 A blade). The printed figure rules: one
// color means different ratings in different styles (sources fuse-colors,
// fuse-colors-memory).
func FuseColor(family string, ratedA float64) (color string, c Confidence, ok bool) {
	if family == "mini" && ratedA <= 30 {
		family = "blade"
	}
	for _, row := range fuseColorings {
		if row.Style == family && row.RatedA == ratedA && confidenceOf(row.Source).MayDecide() {
			return row.Color, confidenceOf(row.Source), true
		}
	}
	return "", 0, false
}

package gauge

import "strings"

// Color is a wire color: its IEC 60757 letters, the letters US shops write,
// and its name.
type Color struct {
	Code   string // IEC 60757; "" where the standard has none
	Shop   string // US shop letters
	Name   string // US spelling
	Order  int    // place in the standard's table, 0 where it has none
	Source string
}

// colors is in the order of IEC 60757.
var colors = [...]Color{
	{"BK", "BLK", "black", 1, "iec-60757"},
	{"BN", "BRN", "brown", 2, "iec-60757"},
	{"RD", "RED", "red", 3, "iec-60757"},
	{"OG", "ORN", "orange", 4, "iec-60757"},
	{"YE", "YEL", "yellow", 5, "iec-60757"},
	{"GN", "GRN", "green", 6, "iec-60757"},
	{"BU", "BLU", "blue", 7, "iec-60757"},
	{"VT", "VIO", "violet", 8, "iec-60757"},
	{"GY", "GRY", "gray", 9, "iec-60757"},
	{"WH", "WHT", "white", 10, "iec-60757"},
	{"PK", "PNK", "pink", 11, "iec-60757"},
	{"GD", "GLD", "gold", 12, "iec-60757"},
	{"TQ", "TRQ", "turquoise", 13, "iec-60757"},
	{"SR", "SLV", "silver", 14, "iec-60757"},
	{"GNYE", "GRN/YEL", "green-yellow", 15, "iec-60757"},
}

// shopAliases are further ways in which US shops write a color. Two-letter
// ones of other schemes are left out: BL or GR mean different colors in
// different standards.
var shopAliases = [...][2]string{
	{"ORG", "OG"}, {"PPL", "VT"}, {"PUR", "VT"}, {"PURPLE", "VT"}, {"GREY", "GY"}, {"SLATE", "GY"},
}

// Colors lists the colors in the order of IEC 60757.
func Colors() []Color { return append([]Color(nil), colors[:]...) }

// ColorOf finds a color by its IEC 60757 letters, its US shop letters or its
// name, in upper or lower case (sources iec-60757, shop-colors).
func ColorOf(word string) (Color, bool) {
	up := strings.ToUpper(word)
	for _, alias := range shopAliases {
		if up == alias[0] {
			up = alias[1]
		}
	}
	for _, c := range colors {
		if up == c.Code || up == c.Shop || up == strings.ToUpper(c.Name) {
			return c, true
		}
	}
	return Color{}, false
}

// ShopColor writes IEC letters, base or base/tracer, as US shops do:
// "GN/WH" becomes "GRN/WHT". Unknown parts stay as they are.
func ShopColor(code string) string {
	parts := strings.Split(code, "/")
	for i, p := range parts {
		if c, ok := ColorOf(p); ok {
			parts[i] = c.Shop
		}
	}
	return strings.Join(parts, "/")
}

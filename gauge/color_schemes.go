package gauge

import (
	"slices"
	"strings"
)

// CircuitColor is what a color scheme gives a circuit: base, then tracer.
type CircuitColor struct {
	Scheme   string // bs-au7, din-72551, abyc
	Base     string
	Tracer   string // empty: plain; "any"
	Function string
	Terminal string // DIN 72552 number, where printed
	Source   string
}

// CircuitColors lists the colors of a scheme: bs-au7, din-72551, abyc; nil
// for another. Black is ground in two of them and ignition feed in the third:
// a drawing has to name its scheme (sources colors-bs, colors-bs-memory,
// colors-din, colors-din-memory, colors-abyc, colors-part, colors-single).
func CircuitColors(scheme string) []CircuitColor {
	switch scheme {
	case "bs-au7":
		return slices.Clone(britishColors)
	case "din-72551":
		return slices.Clone(germanColors)
	case "abyc":
		return slices.Clone(marineColors)
	}
	return nil
}

// CircuitColorOf finds what a scheme gives a base and tracer (source as
// [CircuitColors]).
func CircuitColorOf(scheme, base, tracer string) (CircuitColor, Confidence, bool) {
	for _, c := range CircuitColors(scheme) {
		if c.Base == base && c.Tracer == tracer {
			return c, confidenceOf(c.Source), true
		}
	}
	return CircuitColor{}, 0, false
}

// ColorLetters is how one color is written in each scheme; empty where it
// has no letters there, and Digit below zero where it has no digit.
type ColorLetters struct {
	Name                     string
	IEC, British, German, US string // US: ABYC letters
	Digit                    int    // aircraft and military
	Source                   string
}

var colorLetters = [...]ColorLetters{
	{"black", "BK", "B", "sw", "BK", 0, "color-letters"},
	{"brown", "BN", "N", "br", "BR", 1, "color-letters"},
	{"red", "RD", "R", "rt", "RD", 2, "color-letters"},
	{"orange", "OG", "O", "or", "OR", 3, "color-letters-part"},
	{"yellow", "YE", "Y", "ge", "YL", 4, "color-letters"},
	{"green", "GN", "G", "gn", "GN", 5, "color-letters"},
	{"blue", "BU", "U", "bl", "BL", 6, "color-letters-part"},
	{"violet", "VT", "P", "li", "VI", 7, "color-letters"},
	{"gray", "GY", "S", "gr", "GY", 8, "color-letters"},
	{"white", "WH", "W", "ws", "WH", 9, "color-letters"},
	{"pink", "PK", "K", "rs", "PK", -1, "color-letters-part"},
	{"light green", "", "LG", "", "LG", -1, "color-letters-part"},
	{"light blue", "BU", "", "hb", "LB", -1, "color-letters"},
	{"tan", "", "", "", "TN", -1, "color-letters"},
}

// AllColorLetters lists how each color is written in IEC 60757, BS AU 7, DIN
// 72551, ABYC and aircraft digits: GY is gray in one and green with yellow in
// another, so letters alone never tell the scheme (sources color-letters,
// color-letters-part).
func AllColorLetters() []ColorLetters { return slices.Clone(colorLetters[:]) }

// DigitColors reads aircraft color digits: base, first and second stripe.
// 948 is white, yellow, gray. ok is false for anything but one to three
// digits (source color-digits).
func DigitColors(digits string) (names []string, ok bool) {
	if len(digits) < 1 || len(digits) > 3 {
		return nil, false
	}
	for _, r := range digits {
		i := slices.IndexFunc(colorLetters[:], func(c ColorLetters) bool { return c.Digit == int(r-'0') })
		if r < '0' || r > '9' || i < 0 {
			return nil, false
		}
		names = append(names, colorLetters[i].Name)
	}
	return names, true
}

// IECColors writes the colors of one wire as IEC 60757 does: codes joined in
// the order of its table, so that base and tracer cannot be told apart. Green
// and yellow together are GNYE, which is for protective conductors only. ok
// is false for an unknown color, none, or more than four (source iec-60757).
func IECColors(codes ...string) (joined string, ok bool) {
	var found []Color
	for _, code := range codes {
		c, known := ColorOf(code)
		if !known {
			return "", false
		}
		found = append(found, c)
	}
	if len(found) == 0 || len(found) > 4 {
		return "", false
	}
	slices.SortStableFunc(found, func(a, b Color) int { return a.Order - b.Order })
	var s strings.Builder
	for _, c := range found {
		s.WriteString(c.Code)
	}
	if s.String() == "YEGN" {
		return "GNYE", true
	}
	return s.String(), true
}

// IECCable writes the cores of a cable as IEC 60757 does: items joined by a
// plus, in the order of the table: BK+BK+BN+BU+GNYE. ok as [IECColors] for
// each core, to 100 cores (source iec-60757).
func IECCable(cores ...string) (joined string, ok bool) {
	if len(cores) == 0 || len(cores) > 100 {
		return "", false
	}
	found := make([]Color, 0, len(cores))
	for _, core := range cores {
		c, known := ColorOf(core)
		if !known {
			return "", false
		}
		found = append(found, c)
	}
	slices.SortStableFunc(found, func(a, b Color) int { return a.Order - b.Order })
	names := make([]string, len(found))
	for i, c := range found {
		names[i] = c.Code
	}
	return strings.Join(names, "+"), true
}

// oldRelayLetters are the letters of round relays, with today's numbers.
var oldRelayLetters = [...][2]string{{"W1", "85"}, {"W2", "86"}, {"C1", "30"}, {"C2", "87"}}

// OldRelayTerminal gives the number on a common relay base for the letter of
// an old round relay: W1 and W2 the coil, C1 and C2 the contact (source
// relay-letters).
func OldRelayTerminal(letter string) (number string, ok bool) {
	for _, r := range oldRelayLetters {
		if r[0] == letter {
			return r[1], true
		}
	}
	return "", false
}

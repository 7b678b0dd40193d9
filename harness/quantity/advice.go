package quantity

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Error says why a text is no quantity. Suggest, if not empty, is the text
// that was probably meant and that [Parse] reads.
type Error struct {
	Raw     string
	Problem string
	Suggest string
	Near    string // nearest unit, "" if none is near; its scale may differ
}

// Error gives one line without a final period, at most 120 characters.
func (e *Error) Error() string {
	said := quote(e.Raw) + ": " + e.Problem
	switch {
	case e.Suggest != "":
		return said + ", write " + e.Suggest
	case e.Near != "":
		return said + ", the nearest is " + e.Near
	case e.Problem == notNumber:
		return said + ", expected a figure and its unit such as 15A"
	case strings.HasPrefix(e.Problem, unknownUnit):
		return said + ", expected one such as A V W ohm mm m in ft AWG mm2 C s"
	}
	return said
}

const (
	maxSuggest = 20 // characters of a figure worth repeating

	notNumber   = "not a number"
	unknownUnit = "no unit is called "
)

// explain finds out what was probably meant.
func explain(text, problem string) *Error {
	e := &Error{Raw: text, Problem: problem}
	if len(text) > maxText {
		return e
	}
	plain := lookAlikes.Replace(text)
	e.Suggest, e.Near = meant(plain)
	switch {
	case strings.HasPrefix(text, "#"):
		e.Problem = "this begins a comment"
	case strings.ContainsAny(text, " \t\u00a0\u202f"):
		e.Problem = "a quantity has no blank inside"
	case strings.Contains(text, ","):
		e.Problem = "no comma in a number, the decimal sign is a point"
	}
	return e
}

// lookAlikes turns signs that people paste or type into those of the draft.
// Blanks go too: what is left is tried as a quantity.
var lookAlikes = strings.NewReplacer(
	"\u03a9", "ohm", "\u2126", "ohm", // omega, ohm sign
	"\u00b5", "u", "\u03bc", "u", // micro sign, mu
	"\u00b2", "2", "^2", "2",
	"\u00b0", "", "\u00ba", "", // degree sign, ordinal
	"\u2212", "-", "\u2013", "-", // minus sign, en dash
	"\u2032", "ft", "'", "ft", "\u2033", "in", "\"", "in",
	"\u2044", "/", "\u00bc", "1/4", "\u00bd", "1/2", "\u00be", "3/4",
	" ", "", "\t", "", "\u00a0", "", "\u202f", "",
)

// meant gives a readable quantity close to plain, or else the nearest unit.
func meant(plain string) (suggest, near string) {
	if screw, ok := strings.CutPrefix(plain, "#"); ok {
		if run, rest := digits(screw); run != "" && len(run) < 3 && rest == "" {
			return "No" + run, ""
		}
	}
	figure, unitText := split(plain)
	if whole, part, ok := strings.Cut(figure, ","); ok {
		if len(part) == 3 { // a thousand, or a decimal: not ours to guess
			return "", ""
		}
		figure = whole + "." + part
	}
	if strings.HasPrefix(strings.TrimLeft(figure, "+-"), ".") {
		figure = strings.Replace(figure, ".", "0.", 1)
	}
	if aughts := strings.Trim(figure, "0"); aughts == "" && len(figure) > 1 && len(figure) < 5 {
		figure = strconv.Itoa(len(figure)) + "/0"
	}
	if thread, ok := threadMeant(plain); ok {
		return thread, ""
	}
	name, sameScale := nearUnit(unitText)
	if !sameScale {
		return "", name
	}
	if _, problem := read(figure + name); problem != "" || len(figure) > maxSuggest {
		return "", ""
	}
	return figure + name, name
}

// threadMeant answers m8 and M8x1.25.
func threadMeant(plain string) (string, bool) {
	if plain == "" || (plain[0] != 'M' && plain[0] != 'm') {
		return "", false
	}
	run, rest := digits(plain[1:])
	if run == "" || (rest != "" && rest[0] != 'x' && rest[0] != 'X') {
		return "", false
	}
	_, problem := read("M" + run)
	return "M" + run, problem == "" && len(run) <= maxSuggest
}

// split parts a text behind its last figure; the 2 of mm2 belongs to the unit,
// and feet with inches count as figures up to their last unit.
func split(plain string) (figure, unitText string) {
	figure = plain
	if n := len(plain); n > 1 && plain[n-1] == '2' && unicode.IsLetter(rune(plain[n-2])) {
		figure = plain[:n-1]
	}
	figure = strings.TrimRightFunc(figure, func(r rune) bool { return r < '0' || r > '9' })
	return figure, plain[len(figure):]
}

// otherNames holds what units are called elsewhere, in lower case. A name with
// another scale than the unit behind it stands in otherScale.
var otherNames = map[string]string{
	"amp": "A", "amps": "A", "ampere": "A", "amperes": "A", "adc": "A",
	"milliamp": "mA", "milliamps": "mA",
	"volt": "V", "volts": "V", "vdc": "V", "vcc": "V", "millivolt": "mV", "millivolts": "mV",
	"ohms": "ohm", "r": "ohm", "k": "kohm", "kohms": "kohm", "milliohm": "mohm", "milliohms": "mohm",
	"watt": "W", "watts": "W", "amphour": "Ah", "amphours": "Ah", "a-h": "Ah",
	"meter": "m", "meters": "m", "metre": "m", "metres": "m", "inch": "in", "inches": "in",
	"feet": "ft", "foot": "ft", "sqmm": "mm2", "qmm": "mm2", "mmsq": "mm2",
	"ga": "AWG", "gauge": "AWG", "g": "AWG", "degc": "C", "deg": "C", "celsius": "C", "degf": "F",
	"percent": "%", "pct": "%", "sec": "s", "secs": "s", "second": "s", "seconds": "s",
	"minute": "min", "minutes": "min", "mins": "min", "hour": "h", "hours": "h", "hr": "h", "hrs": "h",
	"hertz": "Hz", "ways": "way", "pin": "way", "pins": "way", "pos": "way",
}

var otherScale = map[string]string{
	"ua": "mA", "uv": "mV", "kv": "V", "ka": "A", "uohm": "mohm", "mah": "Ah", "us": "ms", "hp": "W",
	"km": "m", "yd": "ft", "cm2": "mm2", "mcm": "AWG", "kcmil": "AWG", "cmil": "mm2",
}

// UnitCalled gives the unit of the draft for what it is called elsewhere: A for
// amps, AWG for gauge. It is "" for any other word, and for those of one letter
// or of another meaning in a draft, such as pins.
func UnitCalled(word string) string {
	lower := strings.ToLower(word)
	if len(lower) < 2 || otherNames[lower] == "way" {
		return ""
	}
	return otherNames[lower]
}

// nearUnit finds the unit nearest to name; sameScale is false when the figure
// would have to change too, or when no unit is near (then name is "").
func nearUnit(name string) (near string, sameScale bool) {
	if _, ok := unitNamed(name); ok {
		return name, true
	}
	lower := strings.ToLower(name)
	if u, ok := otherScale[lower]; ok {
		return u, false
	}
	if u, ok := otherNames[lower]; ok {
		return u, true
	}
	for _, same := range []func(string) bool{
		func(u string) bool { return strings.EqualFold(u, name) && u[0] == name[0] },
		func(u string) bool { return strings.EqualFold(u, name) },
		func(u string) bool { return len(name) > 1 && allLetters(name) && oneOff(strings.ToLower(u), lower) },
	} {
		for _, u := range units {
			if u.name != "" && same(u.name) {
				return u.name, true
			}
		}
	}
	return "", false
}

func allLetters(s string) bool {
	return strings.IndexFunc(s, func(r rune) bool { return !unicode.IsLetter(r) }) < 0
}

// oneOff reports whether a becomes b by one letter added, dropped or changed.
func oneOff(a, b string) bool {
	if len(a) > len(b) {
		a, b = b, a
	}
	if len(b)-len(a) > 1 {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	if len(a) == len(b) {
		return i < len(a) && a[i+1:] == b[i+1:]
	}
	return a[i:] == b[i+1:]
}

// quote shows a text in double quotes, odd characters escaped, clipped so that
// a message stays within its length.
func quote(s string) string {
	const most = 22
	shown := strconv.Quote(s)
	if len(shown) <= most {
		return shown
	}
	r := []rune(s)
	r = r[:min(len(r), most)]
	for utf8.RuneCountInString(shown) > most {
		r = r[:len(r)-1]
		shown = strconv.Quote(string(r) + "...")
	}
	return shown
}

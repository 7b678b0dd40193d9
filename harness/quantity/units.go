package quantity

import "strings"

// unit is one row of the closed table of units. A figure times num/den is the
// value in the base unit; F alone is also shifted. A unit is printed for
// values from from (in the base unit) up, unless a later row of the same
// dimension wants them; from < 0 marks a unit that is read but never printed.
type unit struct {
	name     string
	dim      Dim
	num, den int64
	from     float64
}

// units holds every unit, for each dimension in order of rising from. Inch
// and foot are exact: 25.4 mm, international yard and pound agreement of 1959.
var units = []unit{
	{"mA", Current, 1, 1000, 0},
	{"A", Current, 1, 1, 0.1},
	{"mV", Voltage, 1, 1000, 0},
	{"V", Voltage, 1, 1, 1},
	{"mohm", Resistance, 1, 1000, 0},
	{"ohm", Resistance, 1, 1, 1},
	{"kohm", Resistance, 1000, 1, 1e3},
	{"Mohm", Resistance, 1_000_000, 1, 1e6},
	{"mW", Power, 1, 1000, 0},
	{"W", Power, 1, 1, 0.1},
	{"kW", Power, 1000, 1, 1e3},
	{"Ah", Charge, 1, 1, 0},
	{"mm", Length, 1, 1000, 0},
	{"m", Length, 1, 1, 0.1},
	{"cm", Length, 1, 100, -1},
	{"in", Length, 254, 10_000, -1},
	{"ft", Length, 3048, 10_000, -1},
	{"mm2", Area, 1, 1, 0},
	{"AWG", Gauge, 1, 1, 0},
	{"C", Temperature, 1, 1, 0},
	{"F", Temperature, 5, 9, -1},
	{"%", Percent, 1, 1, 0},
	{"ms", Time, 1, 1000, 0},
	{"s", Time, 1, 1, 1},
	{"min", Time, 60, 1, 120},
	{"h", Time, 3600, 1, 7200},
	{"Hz", Frequency, 1, 1, 0},
	{"kHz", Frequency, 1000, 1, 1e3},
	{"", Count, 1, 1, 0},
	{"way", Count, 1, 1, -1},
}

var dims = [...]struct{ name, example string }{
	None:        {"number", "12"},
	Current:     {"current", "15A"},
	Voltage:     {"voltage", "9.5V"},
	Resistance:  {"resistance", "85ohm"},
	Power:       {"power", "21W"},
	Charge:      {"charge", "60Ah"},
	Length:      {"length", "9ft6in"},
	Area:        {"area", "2.5mm2"},
	Gauge:       {"wire gauge", "14AWG"},
	Temperature: {"temperature", "85C"},
	Percent:     {"percentage", "3%"},
	Time:        {"time", "50ms"},
	Frequency:   {"frequency", "100Hz"},
	Count:       {"count", "6way"},
	Thread:      {"thread", "M8"},
}

// String names the dimension in the trade's words: current, length, thread.
func (d Dim) String() string {
	if d < 0 || int(d) >= len(dims) {
		return dims[None].name
	}
	return dims[d].name
}

// Named is the name of the dimension with its article: "a current", "an area".
func (d Dim) Named() string {
	name := d.String()
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// Want says what to write where a quantity of dimension d is expected, as
// "a current, such as 15A".
func Want(d Dim) string {
	if d < 0 || int(d) >= len(dims) {
		d = None
	}
	return d.Named() + ", such as " + dims[d].example
}

// UnitsOf lists the units that are read for d, smallest first where they
// scale. It is empty for a dimension without one (None, Thread).
func UnitsOf(d Dim) []string {
	var names []string
	for _, u := range units {
		if u.dim == d && u.name != "" {
			names = append(names, u.name)
		}
	}
	return names
}

// BaseUnit gives the unit in which values of d are held: A, V, ohm, W, Ah, m,
// mm2, AWG, C, %, s, Hz; mm for a thread, "" for a bare number.
func BaseUnit(d Dim) string {
	if d == Thread {
		return "mm"
	}
	for _, u := range units {
		if u.dim == d && u.num == u.den && u.from >= 0 {
			return u.name
		}
	}
	return ""
}

// unitNamed finds a unit by its exact spelling: m and M differ.
func unitNamed(name string) (unit, bool) {
	for _, u := range units {
		if u.name == name {
			return u, true
		}
	}
	return unit{}, false
}

package quantity

import (
	"math"
	"strconv"
)

// Format prints v, in the base unit of d, as a draft would write it: three
// significant digits, a unit that suits the size, no blank: 15A, 302mV,
// 2/0AWG, M8. [Parse] reads it back. Below 1e-9 it prints 0, never -0; a value
// that is not finite prints as "?".
func Format(v float64, d Dim) string { return join(v, d, "") }

// Text prints v, in the base unit of d, for people: as [Format] with a blank
// before the unit, 302 mV.
func Text(v float64, d Dim) string { return join(v, d, " ") }

func join(v float64, d Dim, blank string) string {
	if math.Abs(v) < minValue { // the noise of a solver, and -0
		v = 0
	}
	u := shown(v, d)
	figure := number(v*float64(u.den)/float64(u.num), d)
	switch {
	case d == Thread:
		return "M" + figure
	case u.name == "":
		return figure
	}
	return figure + blank + u.name
}

// shown picks the unit in which v is printed.
func shown(v float64, d Dim) unit {
	best := unit{dim: d, num: 1, den: 1}
	size := math.Abs(round(v))
	for _, u := range units {
		if u.dim != d || u.from < 0 {
			continue
		}
		if size >= u.from && (size > 0 || u.num == u.den) {
			best = u
		}
	}
	if best.name == "" { // zero, or not a number: the base unit
		for _, u := range units {
			if u.dim == d && u.num == u.den {
				return u
			}
		}
	}
	return best
}

func number(v float64, d Dim) string {
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return "?"
	case d == Gauge && v <= 0 && v == math.Trunc(v):
		return strconv.Itoa(1-int(v)) + "/0"
	case d == Count && v == math.Trunc(v):
		return plain(v)
	}
	return plain(round(v))
}

// round keeps three significant digits; -0 becomes 0.
func round(v float64) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'e', 2, 64), 64)
	if err != nil || r == 0 {
		return 0
	}
	return r
}

// Number prints a number without a unit to four significant digits, as the
// working of a result needs it; 0.00002081 becomes 2.081e-05. Never -0.
func Number(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "?"
	}
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'e', 3, 64), 64)
	if err != nil || math.Abs(r) < 1e-300 {
		return "0"
	}
	if a := math.Abs(r); a < 1e-4 || a >= 1e7 {
		return strconv.FormatFloat(r, 'g', -1, 64)
	}
	return plain(r)
}

// LengthText prints a length in meters as the draft's units ask. Metric: "2.9 m",
// "152 mm" below a meter. Otherwise feet and inches to the half inch,
// "9 ft 6 in", and below a foot inches to the tenth, "6 in".
func LengthText(m float64, metric bool) string {
	if math.IsNaN(m) || math.IsInf(m, 0) {
		return Text(m, Length)
	}
	sign := ""
	if m <= -0.0005 {
		sign = "-"
	}
	m = math.Abs(m)
	if metric {
		if mm := math.Round(m * 1000); mm < 1000 {
			return sign + plain(mm) + " mm"
		}
		return sign + plain(round(m)) + " m"
	}
	inches := m / 0.0254
	if tenths := math.Round(inches*10) / 10; tenths < 12 {
		return sign + plain(tenths) + " in"
	}
	halves := math.Round(inches * 2)
	feet := math.Floor(halves / 24)
	rest := halves/2 - feet*12
	if rest == 0 {
		return sign + plain(feet) + " ft"
	}
	return sign + plain(feet) + " ft " + plain(rest) + " in"
}

func plain(v float64) string {
	if v == 0 {
		return "0" // never -0
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

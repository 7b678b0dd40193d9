package diag

import (
	"math"
	"strconv"
)

// String gives the value against its limit: "drop 4.57 %, at most 3 %".
func (v Value) String() string {
	s := v.Name + " " + amount(v.Got, v.Unit)
	if v.Bound != NoBound {
		s += ", " + string(v.Bound) + " " + amount(v.Limit, v.Unit)
	}
	return s
}

// least is the smallest amount of anything that is printed as more than 0:
// below a billionth of a volt or an ampere stands only rounding.
const least = 1e-9

// small is below what figure an amount is printed in thousandths of its unit.
const small = 0.01

// amount is figure with a small amount in the smaller unit: 0.09888 mV.
func amount(v float64, unit string) string {
	switch unit {
	case "V", "A", "W", "ohm", "s":
		if n := math.Abs(v); n >= least && n < small {
			return figure(v*1000, "m"+unit)
		}
	}
	return figure(v, unit)
}

// figure prints four significant digits without an exponent, and never -0.
func figure(v float64, unit string) string {
	s := "unknown"
	if count := unit == "" && v == math.Trunc(v) && math.Abs(v) < 1e9; count {
		s = strconv.FormatFloat(v+0, 'f', -1, 64) // what is counted is not rounded; +0 turns -0 into 0
	} else if !math.IsNaN(v) && !math.IsInf(v, 0) {
		v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'e', 3, 64), 64)
		if math.Abs(v) < least {
			v = 0
		}
		s = strconv.FormatFloat(v, 'f', -1, 64)
	}
	if unit != "" {
		s += " " + unit
	}
	return s
}

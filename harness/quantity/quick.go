package quantity

import "math"

// exactInt is the largest whole number up to which a float64 holds every one.
const exactInt = 1 << 53

// quick brings a plain decimal figure to the base unit where it can be written
// as a fraction of two whole numbers that a float64 holds: their quotient is
// then rounded once, just as that of exact fractions. ok is false for all else.
func quick(figure string, u unit) (v float64, ok bool) {
	if u.dim == Gauge || u.name == "F" || u.num <= 0 || u.den <= 0 {
		return 0, false
	}
	top, bottom, point := int64(0), u.den, false
	for i := range len(figure) {
		c := figure[i]
		switch {
		case c == '.' && !point:
			point = true
			continue
		case !isDigit(c) || top > exactInt/10-1 || point && bottom > exactInt/10:
			return 0, false
		}
		top = 10*top + int64(c-'0')
		if point {
			bottom *= 10
		}
	}
	if bottom > exactInt || top > math.MaxInt64/u.num || top*u.num > exactInt {
		return 0, false
	}
	return float64(top*u.num) / float64(bottom), true
}

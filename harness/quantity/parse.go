package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// Limits of a figure, far outside anything a vehicle holds. They keep every
// value finite, every printed figure short, and work on hostile input small.
const (
	maxText   = 48
	maxDigits = 15
	minValue  = 1e-9 // smallest that is not zero, base units
	maxValue  = 1e12 // base units
)

// Looks reports whether text begins as a number would: with a digit, or with
// a sign and a digit. A thread such as M8 does not look like a number, for it
// may as well be a name.
func Looks(text string) bool {
	if text != "" && (text[0] == '+' || text[0] == '-') {
		text = text[1:]
	}
	return text != "" && isDigit(text[0])
}

// Parse reads one quantity written without a blank: 15A, 9ft6in, 3/8in,
// 1/0AWG, -18C, 6way, M8. A number without a unit is a Count. The value is
// worked out exactly and rounded once; it is finite and never -0. The error
// is an [*Error].
func Parse(text string) (Quantity, error) {
	q, problem := read(text)
	if problem != "" {
		return Quantity{}, explain(text, problem)
	}
	return q, nil
}

// read is Parse without advice: problem is "" when text is a quantity.
func read(text string) (q Quantity, problem string) {
	switch {
	case text == "":
		return q, "nothing is written here"
	case len(text) > maxText:
		return q, "too long for a quantity"
	case text[0] == 'M':
		return readThread(text)
	}
	negative, rest := false, text
	if text[0] == '+' || text[0] == '-' {
		negative, rest = text[0] == '-', text[1:]
	}
	whole, rest := digits(rest)
	if whole == "" {
		return q, noFigure(rest, text)
	}
	if strings.HasPrefix(rest, "/") {
		return readFraction(text, negative, whole, rest[1:])
	}
	if inches, ok := strings.CutPrefix(rest, "ft"); ok && inches != "" && isDigit(inches[0]) {
		return readFeet(text, whole, inches)
	}
	figure, rest, problem := decimals(whole, rest)
	if problem != "" {
		return q, problem
	}
	return finish(text, negative, figure, rest)
}

func noFigure(rest, text string) string {
	switch {
	case rest != text && rest != "" && (rest[0] == '+' || rest[0] == '-'):
		return "two signs before one number"
	case strings.HasPrefix(rest, "."):
		return "a figure is missing before the point"
	}
	return notNumber
}

// decimals adds the part after the point, if there is one.
func decimals(whole, rest string) (figure, unitText, problem string) {
	after, ok := strings.CutPrefix(rest, ".")
	if !ok {
		return whole, rest, ""
	}
	part, unitText := digits(after)
	if part == "" {
		return "", "", "a figure is missing after the point"
	}
	if len(part) > maxDigits {
		return "", "", "too many figures after the point"
	}
	return whole + "." + part, unitText, ""
}

// readFraction reads what follows the slash: 3/8in, and 1/0AWG, which is a
// name and no division.
func readFraction(text string, negative bool, top, rest string) (q Quantity, problem string) {
	bottom, unitText := digits(rest)
	switch {
	case bottom == "":
		return q, "a figure is missing after the slash"
	case unitText == "AWG":
		return readAught(text, negative, top, bottom)
	case len(bottom) > maxDigits:
		return q, "too many figures after the slash"
	case strings.Trim(bottom, "0") == "":
		return q, "a fraction can't have 0 below its line"
	}
	return finish(text, negative, top+"/"+bottom, unitText)
}

// readAught reads the sizes above 1 AWG: 1/0 to 4/0, held as 0 to -3.
func readAught(text string, negative bool, top, bottom string) (q Quantity, problem string) {
	if negative || bottom != "0" || len(top) != 1 || top < "1" || top > "4" {
		return q, "wire gauges with a slash run from 1/0AWG to 4/0AWG"
	}
	return Quantity{Value: float64('1') - float64(top[0]), Dim: Gauge, Unit: "AWG", Raw: text}, ""
}

// readFeet reads feet and inches, which carry no sign.
func readFeet(text, feet, rest string) (q Quantity, problem string) {
	if !isDigit(text[0]) {
		return q, "feet and inches take no sign"
	}
	whole, rest := digits(rest)
	figure, unitText, problem := decimals(whole, rest)
	if problem != "" {
		return q, problem
	}
	if unitText != "in" {
		return q, "inches after feet end in \"in\", as 9ft6.5in"
	}
	if len(feet) > maxDigits || len(whole) > maxDigits {
		return q, "too many figures"
	}
	inches, _ := new(big.Rat).SetString(figure)
	if inches.Cmp(big.NewRat(12, 1)) >= 0 {
		return q, "inches after feet stay below 12"
	}
	total, _ := new(big.Rat).SetString(feet)
	total.Mul(total, big.NewRat(12, 1)).Add(total, inches)
	in, _ := unitNamed("in")
	q, problem = convert(text, total, in)
	q.Unit = "ft in"
	return q, problem
}

func readThread(text string) (q Quantity, problem string) {
	whole, rest := digits(text[1:])
	if whole == "" {
		return q, notNumber
	}
	figure, rest, problem := decimals(whole, rest)
	if problem != "" {
		return q, problem
	}
	if rest != "" || len(whole) > maxDigits {
		return q, "a thread is M and its diameter in mm"
	}
	v, err := strconv.ParseFloat(figure, 64)
	if err != nil || !(v >= minValue && v <= maxValue) {
		return q, "a thread needs a diameter above 0"
	}
	return Quantity{Value: v, Dim: Thread, Unit: "M", Raw: text}, ""
}

// finish joins a figure (12, 12.5 or 3/8) and its unit.
func finish(text string, negative bool, figure, unitText string) (q Quantity, problem string) {
	u, ok := unitNamed(unitText)
	if !ok {
		return q, unknownUnit + quote(unitText)
	}
	if whole, _, _ := strings.Cut(figure, "."); len(whole) > 2*maxDigits+1 ||
		(!strings.Contains(figure, "/") && len(whole) > maxDigits) {
		return q, "too many figures"
	}
	if v, ok := quick(figure, u); ok {
		if negative && v != 0 {
			v = -v
		}
		return bounded(text, v, u)
	}
	value, ok := new(big.Rat).SetString(figure)
	if !ok {
		return q, notNumber
	}
	if negative {
		value.Neg(value)
	}
	if u.dim == Gauge && !gaugeOK(figure, value) {
		return q, "wire gauges run from 60AWG to 0AWG, then 1/0AWG to 4/0AWG"
	}
	return convert(text, value, u)
}

func gaugeOK(figure string, value *big.Rat) bool {
	return value.IsInt() && value.Sign() >= 0 && value.Cmp(big.NewRat(60, 1)) <= 0 &&
		(len(figure) == 1 || figure[0] != '0')
}

// convert brings an exact figure to the base unit and rounds it, once.
func convert(text string, figure *big.Rat, u unit) (q Quantity, problem string) {
	if u.name == "F" {
		figure.Sub(figure, big.NewRat(32, 1))
	}
	v, _ := figure.Mul(figure, big.NewRat(u.num, u.den)).Float64()
	if v == 0 && figure.Sign() != 0 {
		return q, tooSmall
	}
	return bounded(text, v, u)
}

const tooSmall = "too small to mean anything here"

// bounded gives a quantity whose value means something.
func bounded(text string, v float64, u unit) (q Quantity, problem string) {
	switch size := max(v, -v); {
	case v != 0 && size < minValue:
		return q, tooSmall
	case !(size <= maxValue):
		return q, "too large to mean anything here"
	}
	return Quantity{Value: v, Dim: u.dim, Unit: u.name, Raw: text}, ""
}

func digits(s string) (run, rest string) {
	i := 0
	for i < len(s) && isDigit(s[i]) {
		i++
	}
	return s[:i], s[i:]
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

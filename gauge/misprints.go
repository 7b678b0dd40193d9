package gauge

import "slices"

// Misprint is a published figure that is not followed, and why.
type Misprint struct {
	Where   string
	Printed string
	Holds   string
	Why     string
	Source  string
}

var misprints = [...]Misprint{
	{"FAA AC 43.13-1B table 11-8, second row", "0.366 V", "0.491 V", "19.5 ft x 0.00126 ohm/ft x 20 A", "ac4313-run"},
	{"FAA AC 43.13-1B table 11-7, third row", "3.60 V", "3.555 V", "88 ft x 0.00202 ohm/ft x 20 A, rounded in print", "ac4313-run"},
	{"forum example of Onderdonk's equation", "178 A", "168.9 A", "prints 234 - Ta for 234 + Ta; 2581 cmil, 5 s, 25 C", "onderdonk"},
	{"handbook form E = 0.0164 I L / S", "0.0164", "0.01724", "5 % better than pure copper at 20 C", "metric-drop"},
	{"trade page on cable walls", "TXL 0.64, GXL 0.76, SXL 0.91 mm", "0.40, 0.58, 0.76 mm", "outside diameters read for GXL leave no room for it", "sae-walls"},
	{"trade pages on GPT", "80 C", "85 C", "the standard says 85; the 80 C column of table 5 is used", "family-pvc"},
	{"12 V 3 % chart by SAE areas, 80 and 90 A over 50 ft", "3/0, 4/0", "2/0, 3/0", "the rule gives a size less: 119,444 and 134,375 cmil", "circular-mil"},
	{"12 V 3 % chart by SAE areas, 80 and 100 A over 30 ft", "2, 1", "1, 1/0", "the printed size is 13 % short in area", "circular-mil"},
	{"12 V 3 % chart by SAE areas, 70 A over 30 ft", "2", "1", "0.4 % short in SAE area; follows the AWG area", "circular-mil"},
	{"12 V 3 % chart by SAE areas, 25 A over 30 ft", "4", "6", "6 AWG has 9 % to spare", "circular-mil"},
	{"12 V 3 % chart by AWG areas, 15 A over 60 ft", "6", "4", "2.4 % short: taken as the border of 6 AWG", "circular-mil"},
	{"12 V 3 % chart by AWG areas, four border cells", "2, 1/0, 1/0, 2/0", "4, 1, 1, 1/0", "the size taken has 1 to 4 % to spare by AWG area and is short by SAE area", "circular-mil"},
	{"12 V 10 % chart by AWG areas, 50 A over 15 ft", "12", "10", "2.9 % short, and above the 45 A of 12 AWG", "circular-mil"},
}

// Misprints lists published figures that are not followed.
func Misprints() []Misprint { return slices.Concat(misprints[:], deviceMisprints[:]) }

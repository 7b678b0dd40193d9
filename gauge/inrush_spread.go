package gauge

import "slices"

// InrushFigure is one published first current of a load over its steady one.
type InrushFigure struct {
	Load        string
	Least, Most float64
	Lasts       string
	Note        string
	Source      string
}

// inrushFigures is by load; they differ up to three times, so the one that
// counts is named by [Inrush].
var inrushFigures = [...]InrushFigure{
	{"heater", 1, 1, "", "steady current decides", "inrush-load-types"},
	{"lamp", 10, 10, "to about 0.1 s", "x 10 has to fit a resistive-only rating", "inrush-load-types"},
	{"lamp", 12, 18, "cold filament", "text-book", "inrush-books"},
	{"lamp", 7.2, 7.2, "settles in 0.5 s", "500 W mains lamp, 41 A peak, 5.7 A steady", "inrush-books"},
	{"lamp", 5, 5, "", "switch guide", "inrush-tutorial"},
	{"motor", 6, 6, "start", "x 6 has to fit a resistive-only rating", "inrush-load-types"},
	{"motor", 5, 5, "start", "switch guide", "inrush-tutorial"},
	{"motor", 3.8, 3.8, "", "65 A for 17 A running on a 30 A relay", "inrush-books"},
	{"fan", 2, 3, "0.3 to 1 s", "20 to 30 A or more at the start", "inrush-practice"},
	{"pump", 2, 4, "50 to 200 ms", "no repeated near-melt pulses on the fuse", "inrush-practice"},
	{"electronics", 20, 40, "under 10 ms", "capacitors at the input", "inrush-practice"},
	{"solenoid", 5, 5, "until the contacts close", "30 to 60 A against 8 to 12 A", "inrush-practice"},
}

// InrushFigures lists the published first currents (sources
// inrush-load-types, inrush-books, inrush-tutorial, inrush-practice).
func InrushFigures() []InrushFigure { return slices.Clone(inrushFigures[:]) }

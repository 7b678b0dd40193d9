package harness

import (
	"strconv"

	"legwork/harness/diag"
	"legwork/harness/quantity"
)

func amps(a float64) string { return quantity.Text(a, quantity.Current) }

func lineText(at diag.Span) string { return strconv.Itoa(at.Line) }

// Text says in words how far a guess can move.
func (l Leeway) Text() string {
	switch {
	case !l.Tried:
		return "not tried"
	case !l.Changes:
		return "nothing changes from " + l.figure(l.Down) + " to " + l.figure(l.Up)
	}
	return l.side("below", l.Down, l.DownTo) + "; " + l.side("above", l.Up, l.UpTo)
}

func (l Leeway) side(which string, figure float64, change string) string {
	if change != "" {
		return which + " " + l.figure(figure) + ": " + change
	}
	if which == "below" {
		return "nothing changes down to " + l.figure(figure)
	}
	return "nothing changes up to " + l.figure(figure)
}

func (l Leeway) figure(v float64) string { return quantity.Text(v, l.Guess.Dim) }

// LeewayLine is the leeway of one guess in machine-readable form. Figures are
// in base units; what changes beyond them is empty where nothing was found to.
type LeewayLine struct {
	What  string  `json:"what"`
	Num   float64 `json:"figure"`
	Of    string  `json:"dimension"`
	Down  float64 `json:"down"`
	Below string  `json:"below,omitempty"`
	Up    float64 `json:"up"`
	Above string  `json:"above,omitempty"`
}

// LeewayLines gives the guesses that were moved.
func LeewayLines(list []Leeway) []LeewayLine {
	var lines []LeewayLine
	for _, l := range list {
		if l.Tried {
			lines = append(lines, LeewayLine{
				What: l.Guess.What, Num: round(l.Guess.Num, 6), Of: l.Guess.Dim.String(),
				Down: round(l.Down, 6), Below: l.DownTo, Up: round(l.Up, 6), Above: l.UpTo,
			})
		}
	}
	return lines
}

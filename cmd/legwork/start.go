package main

import (
	"fmt"

	"legwork/harness"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// start reads the flags of the cold start; both are looked at before the
// first mistake is told.
func (j judging) start() (part.Start, error) {
	var s part.Start
	var wrong mistakes
	s.Percent, s.Drained = within(&wrong, "battery", j.Battery, quantity.Percent, 0, 100)
	s.TempC, s.Cooled = within(&wrong, "temp", j.Temp, quantity.Temperature, -40, 60)
	return s, wrong.err()
}

// within reads a flag's figure, which has to lie in a range; ok is false
// where the flag was not given.
func within(wrong *mistakes, flag, text string, d quantity.Dim, low, high float64) (v float64, ok bool) {
	if text == "" {
		return 0, false
	}
	q, err := quantity.Parse(text)
	switch {
	case err != nil:
		wrong.say(flag, err.Error())
	case q.Dim != d || !(q.Value >= low && q.Value <= high):
		wrong.say(flag, fmt.Sprintf("%s is not from %s to %s", text, quantity.Format(low, d), quantity.Format(high, d)))
	}
	return q.Value, true
}

// coldStart says how the cold start was played where that was asked for.
func (p *printer) coldStart(r *harness.Result) {
	s := r.Start
	if !s.Cooled && !s.Drained {
		return
	}
	text := "Cold start at " + quantity.Text(s.Temp(), quantity.Temperature)
	if s.Drained {
		text += fmt.Sprintf(" with batteries at %s, which just pass a load test there", quantity.Format(s.Percent, quantity.Percent))
	}
	p.wrapped("  ", "  ", text)
}

package model

import (
	"errors"
	"math"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// maxVolts is the limit of what legwork is for, V d.c.
const maxVolts = 60

// figure is one number as read from the draft.
type figure struct {
	quantity.Quantity
	at    diag.Span
	plain bool // without a unit
	bad   bool // can't be read; reported
}

var dims = []quantity.Dim{quantity.Current, quantity.Voltage, quantity.Resistance, quantity.Power, quantity.Charge,
	quantity.Length, quantity.Area, quantity.Gauge, quantity.Temperature, quantity.Percent, quantity.Time,
	quantity.Frequency, quantity.Count, quantity.Thread}

// isUnit reports whether a word is a unit, as the A of "15 A".
func isUnit(word string) bool {
	for _, d := range dims {
		for _, u := range quantity.UnitsOf(d) {
			if u != "" && u == word {
				return true
			}
		}
	}
	return false
}

// unitOf gives the unit that a word behind a number is, or is called elsewhere,
// as the A of "10 amps"; "" where it is none.
func unitOf(word string) string {
	if isUnit(word) {
		return word
	}
	return quantity.UnitCalled(word)
}

// isFigure reports whether the next item begins as a number does.
func (c *cursor) isFigure() bool {
	if !c.more() || c.peek().Quoted {
		return false
	}
	return quantity.Looks(c.peek().Raw)
}

// isMeasured reports whether the next item is a figure with its unit, or a
// number that its unit follows; a number alone may be the name of a terminal.
func (c *cursor) isMeasured() bool {
	if !c.isFigure() || c.peek().IsList() {
		return false
	}
	_, text := c.joined()
	q, err := quantity.Parse(text)
	return err == nil && q.Unit != ""
}

// digitsOnly reports whether a word is a number without a unit.
func digitsOnly(word string) bool {
	return word != "" && strings.Trim(word, "0123456789.+-/") == ""
}

// joined gives how many items make up the next figure, and its text: "15 A"
// is two, "9 ft 6 in" is four, "9ft 6in" is two.
func (c *cursor) joined() (n int, text string) {
	text, n = c.word(), 1
	if digitsOnly(text) {
		if unit := unitOf(c.wordAt(1)); unit != "" {
			text, n = text+unit, 2
		}
	}
	if !strings.HasSuffix(text, "ft") {
		return n, text
	}
	if next := c.wordAt(n); digitsOnly(next) && c.wordAt(n+1) == "in" {
		return n + 2, text + next + "in"
	} else if inches, ok := strings.CutSuffix(next, "in"); ok && digitsOnly(inches) {
		return n + 1, text + next
	}
	return n, text
}

// takeFigure reads the next figure. The item has to look like one. A unit
// parted by a blank is answered, and read all the same.
func (b *builder) takeFigure(c *cursor) figure {
	it := c.peek()
	if it.IsList() {
		c.take()
		if b.sayDecimal(it.Raw, it.At) {
			return figure{at: it.At, bad: true}
		}
		b.say(unitRule, it.At, "figures stand without commas: %s", clip(strings.Join(strings.Fields(strings.ReplaceAll(it.Raw, ",", " ")), " ")))
		return figure{at: it.At, bad: true}
	}
	n, text := c.joined()
	at := it.At
	for range n {
		at = span(at, c.take().At)
	}
	q, err := quantity.Parse(text)
	if err != nil {
		if digitsOnly(text) {
			q, err = quantity.Parse(strings.TrimPrefix(text, "+"))
		}
		if err != nil && b.sayAlike(text, at) {
			return figure{at: at, bad: true}
		}
		if err != nil {
			b.sayUnread(err, at)
			return figure{at: at, bad: true}
		}
	}
	if n > 1 {
		f := b.say(unitRule, at, "write the unit without a blank: %s", text)
		f.Fix = &diag.Fix{Msg: "write " + text, Edits: []diag.Edit{{At: at, Text: text}}}
	}
	return figure{Quantity: q, at: at, plain: q.Unit == ""}
}

// sayUnread reports a figure that can't be read, with what was meant as a fix.
func (b *builder) sayUnread(err error, at diag.Span) {
	f := b.say(unitRule, at, "%s", strings.TrimSuffix(err.Error(), "."))
	var why *quantity.Error
	if errors.As(err, &why) && why.Suggest != "" && plainWord(why.Suggest) {
		f.Fix = &diag.Fix{Msg: "write " + why.Suggest, Edits: []diag.Edit{{At: at, Text: why.Suggest}}}
	}
}

// fits reports whether a figure may stand where the setting wants one.
func fits(want part.Figure, got figure) bool {
	return want.Dim == got.Dim || want.Dim == quantity.Count && got.plain || want.Dim == quantity.None && got.plain
}

// inRange checks a figure against its range; what is out of it is reported.
func (b *builder) inRange(owner string, want part.Figure, got figure) bool {
	v := got.Value
	if want.Dim == quantity.Voltage && math.Abs(v) > maxVolts && v > want.Max {
		b.overVolts(owner, got)
		return false
	}
	if want.Min == 0 && want.Max == 0 || v >= want.Min && v <= want.Max {
		return true
	}
	f := b.say(rangeRule, got.at, "%s is %s; allowed is %s to %s", owner, quantity.Text(v, want.Dim),
		quantity.Text(want.Min, want.Dim), quantity.Text(want.Max, want.Dim))
	bound, limit := diag.AtMost, want.Max
	if v < want.Min {
		bound, limit = diag.AtLeast, want.Min
	}
	f.Values = []diag.Value{{Name: owner, Got: v, Limit: limit, Unit: quantity.BaseUnit(want.Dim), Bound: bound}}
	return false
}

// overVolts refuses a voltage that is beyond this program.
func (b *builder) overVolts(owner string, got figure) {
	f := b.say(overVoltsRule, got.at, "%s is %s, above the 60 V that legwork is for", owner, quantity.Text(got.Value, quantity.Voltage))
	f.Severity = diag.Danger
	f.Detail = "Above 60 V d.c. a touch can kill, and other rules and other training apply. This program refuses such a draft."
	f.Values = []diag.Value{{Name: owner, Got: got.Value, Limit: maxVolts, Unit: "V", Bound: diag.AtMost}}
}

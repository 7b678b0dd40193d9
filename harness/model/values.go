package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// readFigures takes the figures of a setting greedily, in order. False means
// that something was reported and the value is of no use.
func (b *builder) readFigures(f *form, v *part.Value, c *cursor) bool {
	s, good := v.Setting, true
	for i, want := range s.Figures {
		if !c.isFigure() {
			if !want.Optional && (i == 0 || !want.HasDefault) {
				b.say(missingRule, v.At, "%s of %s needs %s", s.Name, f.owner, quantity.Want(want.Dim))
				return false
			}
			continue
		}
		start, n := c.i, len(b.found)
		fig := b.takeFigure(c)
		switch {
		case fig.bad:
			return false
		case fits(want, fig):
			v.At = span(v.At, fig.at)
			v.Nums[i], v.Set[i] = fig.Value, true
			good = b.inRange(figureName(s, i)+" of "+f.name, want, fig) && good
		case want.Optional && (i > 0 || firstFits(s, fig)):
			c.i, b.found = start, b.found[:n]
		default:
			b.sayWrongUnit(f, s, want, fig)
			return false
		}
	}
	return good
}

func (b *builder) sayWrongUnit(f *form, s *part.Setting, want part.Figure, fig figure) {
	if fig.plain {
		b.say(unitRule, fig.at, "%s of %s: %s has no unit; expected %s", s.Name, f.owner, clip(fig.Raw), quantity.Want(want.Dim))
		return
	}
	b.say(unitRule, fig.at, "%s of %s: %s is %s; expected %s", s.Name, f.owner, clip(fig.Raw), fig.Dim.Named(), quantity.Want(want.Dim))
}

// figureName names one figure of a setting for messages and guesses: "draws",
// "voltage for draws".
func figureName(s *part.Setting, i int) string {
	f := s.Figures[i]
	switch {
	case i == 0:
		return s.Name
	case f.Dim != s.Figures[0].Dim:
		return f.Dim.String() + " for " + s.Name
	}
	return s.Name + " " + f.Name
}

// orDefault gives every setting that was not given its default, in the order
// of the kind, lists guesses, and reports what has to be said.
func (b *builder) orDefault(f *form, at diag.Span) []part.Value {
	return b.settled(f, at, make([]part.Value, 0, len(f.settings)+len(f.values)), true)
}

// asSaid is orDefault without the defaults, which whoever asks a device finds
// with its kind: of thousands of devices they would be most of the model. One
// that was moved is there.
func (b *builder) asSaid(f *form, at diag.Span) []part.Value {
	var all []part.Value
	if len(f.values) > 0 {
		all = make([]part.Value, 0, len(f.values))
	}
	return b.settled(f, at, all, false)
}

func (b *builder) settled(f *form, at diag.Span, all []part.Value, whole bool) []part.Value {
	for i := range f.settings {
		s := &f.settings[i]
		said := false
		for _, v := range f.values {
			if v.Setting == s {
				all, said = append(all, v), true
				b.guessed(f, v)
			}
		}
		if said {
			continue
		}
		if _, tried := f.given.at(s); s.Must && !tried && !f.broken {
			b.say(missingRule, at, "%s needs its %s%s", f.owner, s.Name, asExample(s))
		}
		if whole || slices.ContainsFunc(s.Figures, guessable) {
			v := b.newValue(s, at)
			v.Said = false
			if flag(*s) {
				v.Word = ""
			}
			b.guessed(f, v)
			if whole || slices.Contains(v.Set, true) {
				all = append(all, v)
			}
		}
	}
	return all
}

// guessable reports whether a figure that is not given is a guess.
func guessable(f part.Figure) bool { return f.Guess && f.HasDefault }

// asExample shows how a setting is written.
func asExample(s *part.Setting) string {
	if len(s.Figures) > 0 {
		return ": " + quantity.Want(s.Figures[0].Dim)
	}
	return ": " + oneOf(s.Words)
}

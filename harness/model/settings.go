package model

import (
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// readNamed reads a setting whose name has been taken.
func (b *builder) readNamed(f *form, s *part.Setting, name draft.Item, c *cursor) {
	v := b.newValue(s, name.At)
	switch {
	case len(s.Words) > 0 && slices.Contains(s.Words, c.word()):
		it := c.take()
		v.Word, v.At = it.Raw, span(v.At, it.At)
	case s.Free:
		if !b.readFree(f, &v, c) {
			f.broken = true
			f.given.set(s, name.At)
			return
		}
	case len(s.Figures) > 0:
		if !b.readFigures(f, &v, c) {
			f.broken = true
			f.given.set(s, name.At)
			return
		}
	case len(s.Words) > 0:
		f.broken = true
		f.given.set(s, name.At)
		b.readWrongWord(f, s, name, c)
		return
	}
	b.keep(f, v)
}

// readFree takes the name behind a setting that names a metal, a place or a
// terminal of the device.
func (b *builder) readFree(f *form, v *part.Value, c *cursor) bool {
	if !c.more() || c.isFigure() || c.peek().IsList() {
		b.say(missingRule, v.At, "%s of %s needs a name behind it", v.Setting.Name, f.owner)
		return false
	}
	it := c.take()
	v.Word, v.At = it.Text, span(v.At, it.At)
	if f.names != nil && !strings.Contains(v.Word, ".") && !slices.Contains(f.names(), v.Word) {
		b.noName("metal, place or terminal", v.Word, it.At, f.names())
	}
	return true
}

// readWrongWord reports a named setting whose word is none of its set.
func (b *builder) readWrongWord(f *form, s *part.Setting, name draft.Item, c *cursor) {
	word := c.word()
	if word == "" || f.settingNamed(word) != nil || f.words[word] != nil {
		b.say(missingRule, name.At, "%s of %s needs a word: %s", s.Name, f.owner, oneOf(s.Words))
		return
	}
	it := c.take()
	b.sayUnknown(wordRule, it.At, word, s.Words, "%s of %s can't be %q", s.Name, f.owner, clip(word))
}

// readBareFigure reads a figure that stands without a setting's name: the
// first setting that takes such a figure and is not given yet has it.
func (b *builder) readBareFigure(f *form, c *cursor) {
	start := c.i
	n := len(b.found)
	fig := b.takeFigure(c)
	if fig.bad {
		f.broken = true
		return
	}
	var taken *part.Setting
	for i := range f.settings {
		s := &f.settings[i]
		if !s.Bare || !firstFits(s, fig) {
			continue
		}
		if _, twice := f.given.at(s); twice && !s.Repeats {
			taken = s
			continue
		}
		c.i, b.found = start, b.found[:n]
		v := b.newValue(s, fig.at)
		ok := b.readFigures(f, &v, c)
		if !ok {
			f.broken = true
			f.given.set(s, fig.at)
			return
		}
		b.keep(f, v)
		return
	}
	f.broken = true
	b.sayNoFigure(f, fig, taken)
}

// sayNoFigure reports a figure that no setting takes.
func (b *builder) sayNoFigure(f *form, fig figure, taken *part.Setting) {
	switch {
	case taken != nil:
		r := b.say(duplicateRule, fig.at, "%s has its %s twice: %s", f.owner, taken.Name, clip(fig.Raw))
		first, _ := f.given.at(taken)
		r.Related = []diag.Related{{At: first, Msg: "given here first"}}
	case fig.Dim == quantity.Voltage && fig.Value > maxVolts:
		b.overVolts("a figure of "+f.owner, fig)
	case fig.plain && f.bareUnits() != "":
		b.say(unitRule, fig.at, "%s of %s has no unit; expected %s", clip(fig.Raw), f.owner, f.bareUnits())
	case fig.plain:
		b.say(wordRule, fig.at, "%s has no setting for the number %s", f.owner, clip(fig.Raw))
	default:
		r := b.say(unitRule, fig.at, "%s takes no %s without a setting's name: %s", f.owner, fig.Dim, clip(fig.Raw))
		if names := f.namedWith(fig); len(names) > 0 {
			r.Detail = "A figure in this unit belongs behind " + oneOf(names) + "."
		} else if u := f.bareUnits(); u != "" {
			r.Detail = "Expected " + u + "."
		}
	}
	// What is missing may be this very figure.
	for i := range f.settings {
		if s := &f.settings[i]; s.Bare && fig.plain && len(s.Figures) > 0 {
			f.given.set(s, fig.at)
		}
	}
}

// firstFits reports whether a setting may begin with this figure.
func firstFits(s *part.Setting, fig figure) bool {
	for _, want := range s.Figures {
		if fits(want, fig) {
			return true
		}
		if !want.Optional {
			return false
		}
	}
	return false
}

func (f *form) bareUnits() string {
	var all []string
	for i := range f.settings {
		if s := &f.settings[i]; s.Bare && len(s.Figures) > 0 && !slices.Contains(all, quantity.Want(s.Figures[0].Dim)) {
			all = append(all, quantity.Want(s.Figures[0].Dim))
		}
	}
	return oneOf(all)
}

func (f *form) namedWith(fig figure) []string {
	var names []string
	for _, s := range f.settings {
		if !s.Bare && slices.ContainsFunc(s.Figures, func(w part.Figure) bool { return fits(w, fig) }) {
			names = append(names, s.Name)
		}
	}
	return names
}

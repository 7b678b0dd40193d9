package model

import (
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// marks say how sure the user is of the figures before them.
var marks = map[string]part.Mark{"sheet": part.Sheet, "measured": part.Measured, "guess": part.Guess}

// readMark puts a mark on the setting before it.
func (b *builder) readMark(f *form, it draft.Item, m part.Mark) bool {
	if n := len(f.values); n > 0 {
		f.values[n-1].Mark = m
		return true
	}
	if !f.broken {
		b.say(wordRule, it.At, "%s stands behind no figure", it.Raw)
		f.broken = true
	}
	return true
}

// readWhen reads the list behind "when" for the setting before it.
func (b *builder) readWhen(f *form, when draft.Item, c *cursor) {
	if !f.takesSteps() {
		b.say(wordRule, when.At, "%s takes no steps", f.owner)
		f.broken = true
		if c.more() {
			c.take()
		}
		return
	}
	if !c.more() || c.peek().Quoted || c.isFigure() {
		b.say(missingRule, when.At, "%s: when needs a list of steps, as: when run, crank", f.owner)
		return
	}
	list := c.take()
	set := part.NoSteps
	for _, r := range list.List {
		set |= b.stepsAt(r)
	}
	b.giveSteps(f, when, set, span(when.At, list.At))
}

// stepsAt reads one step word of a list.
func (b *builder) stepsAt(r draft.Ref) part.StepSet {
	set, ok := b.m.stepWords[r.Raw]
	if !ok {
		b.sayUnknown(wordRule, r.At, r.Raw, b.stepVocabulary(), "no step %q", clip(r.Raw))
		// Read as every step, so that nothing seems never to work.
		return b.m.stepWords["always"]
	}
	return set
}

// readStepWord reads a step word that stands alone, as always.
func (b *builder) readStepWord(f *form, it draft.Item) {
	n := len(f.values)
	if n > 0 && f.values[n-1].When != part.NoSteps && f.values[n-1].Setting.Steps {
		b.say(wordRule, it.At, "%s: steps of one list are joined by commas: when prime, crank", f.owner)
		f.values[n-1].When |= b.m.stepWords[it.Raw]
		return
	}
	b.giveSteps(f, it, b.m.stepWords[it.Raw], it.At)
}

// giveSteps puts steps on the setting they belong to: one that is called
// "when", else the last one that takes steps, else the first that could.
func (b *builder) giveSteps(f *form, word draft.Item, set part.StepSet, at diag.Span) {
	last := len(f.values) - 1
	for i := last; i >= 0; i-- {
		if f.values[i].Setting.Steps && (i == last || f.settingNamed("when") == nil) {
			if f.values[i].When != part.NoSteps {
				b.say(duplicateRule, word.At, "%s has its steps twice", f.owner)
			}
			f.values[i].When |= set
			return
		}
	}
	s := f.settingNamed("when")
	for i := 0; s == nil && i < len(f.settings); i++ {
		if f.settings[i].Steps {
			s = &f.settings[i]
		}
	}
	if s == nil {
		b.say(wordRule, word.At, "%s takes no steps", f.owner)
		return
	}
	v := b.newValue(s, at)
	v.When = set
	b.keep(f, v)
}

// guessed lists the figures of a setting that nobody stated.
func (b *builder) guessed(f *form, v part.Value) {
	if v.Mark == part.Guess {
		var texts []string
		for i := range v.Nums {
			if v.Set[i] {
				texts = append(texts, quantity.Text(v.Nums[i], v.Setting.Figures[i].Dim))
			}
		}
		g := b.guess(v.Setting.Name+" of "+f.name, strings.Join(texts, " "), "", v.At)
		if i := slices.Index(v.Set, true); i >= 0 {
			b.movable(g, v, i)
		}
	}
	for i, fig := range v.Setting.Figures {
		whole := v.Setting.Figures[0].HasDefault
		if guessable(fig) && !v.Set[i] && (v.Said || whole) {
			g := b.guess(figureName(v.Setting, i)+" of "+f.name, quantity.Text(fig.DefaultAt(b.m.SystemV), fig.Dim), fig.Source, v.At)
			b.movable(g, v, i)
		}
	}
}

// guess lists one assumed figure. The result may be added to until the next.
func (b *builder) guess(what, value, source string, at diag.Span) *Guess {
	b.guessCount++
	b.m.Guesses = append(b.m.Guesses, Guess{What: what, Value: value, Source: source, At: at, Key: b.guessCount})
	return &b.m.Guesses[len(b.m.Guesses)-1]
}

// movable notes the figure behind a guess, the i-th of a value, and moves it
// if that is asked for.
func (b *builder) movable(g *Guess, v part.Value, i int) {
	fig := v.Setting.Figures[i]
	g.Num, g.Dim, g.Least, g.Most = v.Nums[i], fig.Dim, fig.Min, fig.Max
	if !v.Set[i] {
		g.Num = fig.DefaultAt(b.m.SystemV)
	}
	if b.setup.Move.Key == g.Key {
		v.Nums[i], v.Set[i] = b.setup.Move.To, true
	}
}

// moveDraw moves what a device was assumed to draw: it is then said.
func (b *builder) moveDraw(d *Device, to float64) {
	i := slices.IndexFunc(d.Kind.Settings, func(s part.Setting) bool { return s.Name == part.DrawsSetting && len(s.Figures) > 0 })
	if i < 0 {
		return
	}
	at := slices.IndexFunc(d.Values, func(v part.Value) bool { return v.Setting == &d.Kind.Settings[i] })
	if at < 0 {
		at, d.Values = len(d.Values), append(d.Values, b.newValue(&d.Kind.Settings[i], d.At))
	}
	v := &d.Values[at]
	v.Said, v.Nums[0], v.Set[0] = true, to, true
}

// stepVocabulary lists the words of step lists.
func (b *builder) stepVocabulary() []string {
	words := make([]string, 0, len(b.m.stepWords))
	for w := range b.m.stepWords {
		words = append(words, w)
	}
	slices.Sort(words)
	return words
}

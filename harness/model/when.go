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
		b.guess(v.Setting.Name+" of "+f.name, strings.Join(texts, " "), "", v.At)
	}
	for i, fig := range v.Setting.Figures {
		whole := v.Setting.Figures[0].HasDefault
		if fig.Guess && fig.HasDefault && !v.Set[i] && (v.Said || whole) {
			b.guess(figureName(v.Setting, i)+" of "+f.name, quantity.Text(fig.DefaultAt(b.m.SystemV), fig.Dim), fig.Source, v.At)
		}
	}
}

// guess lists one assumed figure.
func (b *builder) guess(what, value, source string, at diag.Span) {
	b.m.Guesses = append(b.m.Guesses, Guess{What: what, Value: value, Source: source, At: at})
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

package model

import (
	"legwork/harness/diag"
	"legwork/harness/draft"
)

// Option is something that a vehicle may have or not. What belongs to one that
// is not fitted is read for mistakes, but is no part of the model.
type Option struct {
	Name   string
	Label  string
	Fitted bool
	At     diag.Span
}

func (b *builder) buildOptions() {
	for _, s := range b.options {
		c := newCursor(s)
		name, ok := b.firstName(s, c, "option")
		if !ok || !b.declare(b.optionSet, name, "option", s.Items[0].At) {
			continue
		}
		o := &Option{Name: name, At: s.Items[0].At}
		b.read(&form{owner: "option " + name, name: name, label: &o.Label}, c)
		for _, w := range b.setup.With {
			o.Fitted = o.Fitted || w == name
		}
		b.m.Options = append(b.m.Options, o)
		b.optionBy[name] = o
	}
}

// optionWord reads "option NAME" on what belongs to an option.
func (b *builder) optionWord(owner string, to **Option) func(*cursor, draft.Item) {
	return func(c *cursor, w draft.Item) { b.readOption(owner, to, c, w) }
}

func (b *builder) readOption(owner string, to **Option, c *cursor, w draft.Item) {
	it, ok := b.nameBehind(c, w, owner, "an option")
	switch {
	case !ok:
	case *to != nil:
		b.say(duplicateRule, w.At, "%s belongs to option %s already", owner, (*to).Name)
	case b.optionBy[it.Text] == nil:
		b.noName("option", it.Text, it.At, b.optionSet.order)
	default:
		*to = b.optionBy[it.Text]
	}
}

// OptionByName finds an option by its name.
func (m *Model) OptionByName(name string) (*Option, bool) {
	for _, o := range m.Options {
		if o.Name == name {
			return o, true
		}
	}
	return nil, false
}

// fitted reports whether something that belongs to an option, or to none, is there.
func (o *Option) fitted() bool { return o == nil || o.Fitted }

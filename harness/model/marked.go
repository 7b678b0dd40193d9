package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// printed is what one terminal is called on the device itself.
type printed struct {
	pin, name string
	at        diag.Span
}

// readMarked reads "marked COM 3 NO 5 COIL+ 1 COIL- 2": what the terminals are
// called on the device itself, where that is not their usual name. A number is
// never taken for a function.
func (b *builder) readMarked(r *reading, c *cursor, w draft.Item) {
	count := 0
	for c.more() && !c.peek().Quoted {
		pin, ok := fixedTerminal(r.d.Kind, c.word())
		if !ok {
			break
		}
		it := c.take()
		if !c.more() || c.peek().IsList() {
			b.say(missingRule, it.At, "%s: what is %s called on it? marked %s needs a name behind", r.form.owner, it.Raw, it.Raw)
			r.form.broken = true
			return
		}
		to := c.take()
		name, good := b.nameOf(to, "terminal")
		if good {
			r.marks = append(r.marks, printed{pin, name, span(it.At, to.At)})
		}
		count++
	}
	switch {
	case count == 0 && r.d.Kind.Lines != nil || r.d.Kind.Self:
		b.say(wordRule, w.At, "%s has no terminals of its kind to mark", r.form.owner)
		for n := 0; n < 2 && c.word() != "" && !c.isFigure() && r.form.words[c.word()] == nil || n < 2 && c.isFigure(); n++ {
			c.take()
		}
		r.form.broken = true
	case count == 0:
		b.say(missingRule, w.At, "%s: marked needs a terminal and what it is called, as: marked %s 3", r.form.owner, terminalWords(r.d.Kind)[0])
		r.form.broken = true
	}
}

// mark gives the terminals of a device the names that stand on it.
func (b *builder) mark(r *reading) {
	if len(r.marks) == 0 {
		return
	}
	names := map[string]string{} // printed name, by terminal
	for _, p := range r.marks {
		if was := names[p.pin]; was != "" {
			b.say(duplicateRule, p.at, "%s: %s is marked %s and %s", r.form.owner, p.pin, was, p.name)
			continue
		}
		names[p.pin] = p.name
	}
	taken := map[string]string{}
	for i := range r.d.Pins {
		pin := &r.d.Pins[i]
		shown := []string{names[pin.Name]}
		if shown[0] == "" {
			shown = append([]string{pin.Name}, pin.Aliases...)
		}
		pin.Printed = shown[0]
		pin.Aliases = slices.Clone(shown[1:])
		for _, name := range shown {
			if other := taken[name]; other != "" {
				b.say(duplicateRule, r.markAt(pin.Name), "%s: %s is the name of two of its terminals, %s and %s", r.form.owner, name, other, pin.Name)
				break
			}
			taken[name] = pin.Name
		}
	}
}

// markAt gives the place of the mark of a terminal, or of the first mark.
func (r *reading) markAt(pin string) diag.Span {
	for _, p := range r.marks {
		if p.pin == pin {
			return p.at
		}
	}
	return r.marks[0].at
}

// called finds a terminal by what a draft calls it: the names on the device
// where it is marked, else the kind's names and aliases.
func (d *Device) called(name string) *Terminal {
	if len(d.Pins) == 0 || !slices.ContainsFunc(d.Pins, func(p part.Pin) bool { return p.Printed != "" }) {
		return d.Terminal(name)
	}
	for i, t := range d.Terminals {
		if p := d.Pins[i]; p.Printed == name || p.Printed != "" && slices.Contains(p.Aliases, name) {
			return t
		}
	}
	return nil
}

package model

import (
	"slices"

	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// deviceForm is what every device may say besides the settings of its kind.
func (b *builder) deviceForm(r *reading) *form {
	d := r.d
	owner := d.Kind.Name + " " + d.Name
	f := &form{owner: owner, name: d.Name, settings: d.Kind.Settings, label: &d.Label}
	f.names = func() []string { return b.freeNames(d) }
	b.dev, f.words = r, b.deviceWords
	return f
}

// wordsOfDevices are the words that every device may say, read into the device
// at hand. One table serves all of them.
func (b *builder) wordsOfDevices() map[string]func(*cursor, draft.Item) {
	return map[string]func(*cursor, draft.Item){
		"marked":     func(c *cursor, w draft.Item) { b.readMarked(b.dev, c, w) },
		"cavities":   func(c *cursor, w draft.Item) { b.readCavities(b.dev, c, w) },
		"at":         func(c *cursor, w draft.Item) { b.deviceAt(b.dev, c, w) },
		"in":         func(c *cursor, w draft.Item) { b.deviceIn(b.dev, c, w) },
		"on":         func(c *cursor, w draft.Item) { b.deviceOn(b.dev, c, w) },
		"grounds-to": func(c *cursor, w draft.Item) { b.groundsTo(b.dev, c, w) },
		"from":       func(c *cursor, w draft.Item) { b.readFrom(b.dev, c, w) },
		"option":     func(c *cursor, w draft.Item) { b.readOption(b.dev.form.owner, &b.dev.d.Option, c, w) },
		"existing":   func(*cursor, draft.Item) { b.dev.d.Existing = true },
		"part":       func(c *cursor, w draft.Item) { b.readPart(b.dev, c, w) },
		"terminals":  func(c *cursor, w draft.Item) { b.readTerminals(b.dev.form.owner, &b.dev.finish, c, w) },
		"seals":      func(c *cursor, w draft.Item) { b.readSeals(b.dev.form.owner, &b.dev.finish, c, w) },
	}
}

func (b *builder) deviceIn(r *reading, c *cursor, w draft.Item) {
	if it, ok := b.nameBehind(c, w, r.form.owner, "a box"); ok {
		r.in, r.inSaid = it, true
	} else {
		r.form.broken = true
	}
}

func (b *builder) deviceOn(r *reading, c *cursor, w draft.Item) {
	if r.d.On != "" {
		b.say(duplicateRule, w.At, "%s is said to be bolted on twice", r.form.owner)
	}
	r.d.BoltedTo, r.d.On = b.metalBehind(c, w, r.form.owner)
}

func (b *builder) groundsTo(r *reading, c *cursor, w draft.Item) {
	d, owner := r.d, r.form.owner
	if d.Kind.Ground == "" {
		b.say(wordRule, w.At, "%s can't ground through metal; give it a wire", owner)
		b.nameBehind(c, w, owner, "a metal")
		return
	}
	if d.Grounded != "" {
		b.say(duplicateRule, w.At, "%s is said to ground through metal twice", owner)
	}
	d.Metal, d.Grounded = b.metalBehind(c, w, owner)
}

// freeNames lists what a free word of a device may name.
func (b *builder) freeNames(d *Device) []string {
	names := append(slices.Clone(b.metalSet.order), b.placeSet.order...)
	for _, t := range d.Kind.Terminals {
		names = append(append(names, t.Name), t.Aliases...)
	}
	return names
}

func (b *builder) deviceAt(r *reading, c *cursor, w draft.Item) {
	if r.atSaid {
		b.say(duplicateRule, w.At, "%s is said to be at two places", r.form.owner)
	}
	r.atSaid = true
	if spot, ok := b.readAt(c, w, r.form.owner); ok {
		r.d.Spot = spot
	}
}

// nameBehind takes the name behind a word such as in or on.
func (b *builder) nameBehind(c *cursor, w draft.Item, owner, what string) (draft.Item, bool) {
	if !c.more() || c.peek().IsList() {
		b.say(missingRule, w.At, "%s: %s needs the name of %s", owner, w.Raw, what)
		return draft.Item{}, false
	}
	return c.take(), true
}

func (b *builder) metalBehind(c *cursor, w draft.Item, owner string) (*Metal, string) {
	it, ok := b.nameBehind(c, w, owner, "a metal")
	if !ok {
		return nil, ""
	}
	m := b.metalNamed(it.Text)
	if m == nil {
		b.noName("metal", it.Text, it.At, b.metalSet.order)
		return b.anyMetal(), it.Text
	}
	return m, m.Name
}

// anyMetal is the first metal: what stands in for one that is not known, so
// that a device keeps its return; nil if the draft has none.
func (b *builder) anyMetal() *Metal {
	if len(b.m.Metals) == 0 {
		return nil
	}
	return b.m.Metals[0]
}

func (b *builder) readFrom(r *reading, c *cursor, w draft.Item) {
	it, ok := b.nameBehind(c, w, r.form.owner, "the source it is measured from")
	if !ok || len(refsOf(it)) == 0 {
		return
	}
	ref := refsOf(it)[0]
	r.from, r.d.FromAt = &ref, span(w.At, it.At)
	if !c.isFigure() {
		b.say(missingRule, w.At, "%s: from needs a length, as from %s 6in", r.form.owner, clip(it.Raw))
		return
	}
	fig := b.takeFigure(c)
	want := part.Figure{Dim: quantity.Length, Min: 0, Max: 100}
	switch {
	case fig.bad:
	case !fits(want, fig):
		b.say(unitRule, fig.at, "%s: from %s needs a length, not %s", r.form.owner, clip(it.Raw), clip(fig.Raw))
	case b.inRange("distance of "+r.d.Name, want, fig):
		r.d.FromM, r.d.FromAt = fig.Value, span(w.At, fig.at)
	}
}

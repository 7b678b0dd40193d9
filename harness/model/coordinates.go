package model

import (
	"slices"

	"legwork/harness/draft"
	"legwork/harness/part"
)

// readCavities reads "cavities A1, A2, B1, B2": what the cavities of each half
// are called, in the order of their places, where that is not 1, 2, 3.
func (b *builder) readCavities(r *reading, c *cursor, w draft.Item) {
	lines := r.d.Kind.Lines
	switch {
	case lines == nil || lines.Shape != part.HalfLines:
		b.say(wordRule, w.At, "%s has no cavities to name", r.form.owner)
		if c.more() && c.peek().IsList() {
			c.take()
		}
		return
	case !c.more() || c.isFigure():
		b.say(missingRule, w.At, "%s: cavities needs names joined by commas, as: cavities A1, A2, B1, B2", r.form.owner)
		return
	}
	r.cavitiesAt = w.At
	for _, ref := range refsOf(c.take()) {
		name := ref.Text()
		switch {
		case len(ref.Parts) != 1:
			b.say(nameRule, ref.At, "the cavity %s of %s can't hold a dot", clip(ref.Raw), r.form.owner)
		case slices.Contains(r.cavities, name):
			b.say(duplicateRule, ref.At, "%s names the cavity %s twice", r.form.owner, clip(name))
			r.form.broken = true
		default:
			r.cavities = append(r.cavities, name)
		}
	}
}

// nameCavities gives the halves of a connector their cavity names.
func (b *builder) nameCavities(r *reading, ways int) {
	if len(r.cavities) == 0 {
		return
	}
	if ways > 0 && len(r.cavities) != ways && !r.form.broken {
		b.say(rangeRule, r.cavitiesAt, "%s has %d cavities, and names for %d", r.form.owner, ways, len(r.cavities))
		b.lenient[r.d] = true
	}
	for i := range r.d.Lines {
		r.d.Lines[i].Cavities = r.cavities
	}
}

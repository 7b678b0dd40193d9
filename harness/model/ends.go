package model

import (
	"legwork/gauge"
	"legwork/harness/quantity"
)

// readEnds reads the two ends; false if one is missing or not known.
func (b *builder) readEnds(w *Wire, c *cursor, owner string, bad bool) bool {
	for n := range 2 {
		if b.endMissing(c) {
			if !bad {
				at := w.At
				if c.i > 0 {
					at = c.items[c.i-1].At
				}
				b.say(missingRule, at, "%s needs two ends, it has %d", owner, n)
			}
			return false
		}
		it := c.take()
		var t *Terminal
		if b.isOpen(it) {
			t = b.openEnd(w, it.At)
		} else if it.IsList() {
			b.say(nameRule, it.At, "an end of %s is one terminal, not the list %s", owner, clip(it.Raw))
		} else if refs := refsOf(it); len(refs) == 1 {
			t = b.resolve(refs[0])
		}
		if n == 0 {
			w.From, w.FromAt = t, it.At
		} else {
			w.To, w.ToAt = t, it.At
		}
	}
	return w.From != nil && w.To != nil
}

// endMissing reports whether what comes next is no end: nothing, a label, a
// figure or a word of a wire.
func (b *builder) endMissing(c *cursor) bool {
	if !c.more() {
		return true
	}
	it := c.peek()
	if it.IsList() {
		return false
	}
	if b.m.deviceNamed[refsOf(it)[0].Parts[0]] != nil {
		return false
	}
	if it.Quoted {
		return len(c.items) > c.i+1 || c.i > 1
	}
	if len(it.List[0].Parts) > 1 && b.ghosts[it.List[0].Parts[0]] {
		return false
	}
	word := it.Raw
	if _, err := quantity.Parse(word); err == nil {
		return true
	}
	_, color := readColor(word)
	_, family := gauge.FamilyOf(word)
	return color || family || word == "via"
}

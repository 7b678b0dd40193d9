package model

import (
	"fmt"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/quantity"
)

func (b *builder) buildLegs() {
	names := newNameSet()
	for _, s := range b.legs {
		c := newCursor(s)
		if c.i+2 > len(c.items) || c.items[0].IsList() || c.items[1].IsList() || c.items[1].Quoted && b.placeNamed(c.items[1].Text) == nil {
			b.say(missingRule, s.Head.At, "a leg needs the two places it runs between: leg bay dash 35in")
			continue
		}
		from, to := c.take(), c.take()
		l := &Leg{ID: len(b.m.Legs), A: b.placeAt(from), B: b.placeAt(to), At: span(from.At, to.At)}
		l.Name = from.Text + "-" + to.Text
		f := &form{owner: "leg " + l.Name, name: "leg " + l.Name, settings: legSettings}
		b.read(f, c)
		if l.A == nil || l.B == nil {
			b.ghosts[l.Name], b.ghosts[to.Text+"-"+from.Text] = true, true
			continue
		}
		if l.A == l.B {
			b.say(duplicateRule, to.At, "leg %s begins and ends at one place", l.Name)
			continue
		}
		if !b.declareLeg(names, l) {
			continue
		}
		if len(b.m.Legs) == maxLegs {
			b.tooMany(s, "leg", maxLegs)
			return
		}
		values := b.orDefault(f, l.At)
		l.LengthM, l.Known = values[0].Nums[0], values[0].Said && values[0].Set[0]
		l.Covering = values[1].Word
		b.m.Legs = append(b.m.Legs, l)
		b.legBy[l.Name], b.legBy[l.B.Name+"-"+l.A.Name] = l, l
	}
}

// declareLeg takes both names of a leg: bay-tank is tank-bay.
func (b *builder) declareLeg(names *nameSet, l *Leg) bool {
	if !b.declare(names, l.Name, "leg", l.At) {
		return false
	}
	return b.declare(names, l.B.Name+"-"+l.A.Name, "leg", l.At)
}

// legNamed finds a leg by its two places in either order; back says that it
// was named from its second place.
func (b *builder) legNamed(name string) (l *Leg, back bool) {
	l = b.legBy[name]
	return l, l != nil && l.Name != name
}

// readAt reads where something is: a place, or a leg and a length along it
// from the place that is written first.
func (b *builder) readAt(c *cursor, at draft.Item, owner string) (spot Spot, ok bool) {
	if !c.more() || c.isFigure() || c.peek().IsList() {
		b.say(missingRule, at.At, "%s: at needs a place, or a leg and a length along it", owner)
		return spot, false
	}
	it := c.take()
	if p := b.placeNamed(it.Text); p != nil {
		return Spot{Place: p}, true
	}
	l, back := b.legNamed(it.Text)
	if l == nil {
		if strings.Contains(it.Text, "-") {
			b.noName("leg", it.Text, it.At, b.legNames())
		} else {
			b.noName("place", it.Text, it.At, b.placeSet.order)
		}
		b.skipLength(c)
		return spot, false
	}
	if !c.isFigure() {
		b.say(missingRule, it.At, "%s is on leg %s: how far along, as at %s 16in", owner, it.Text, it.Text)
		return spot, false
	}
	fig := b.takeFigure(c)
	if fig.bad {
		return spot, false
	}
	if fig.Dim != quantity.Length {
		b.say(unitRule, fig.at, "at %s needs a length, not %s", it.Text, clip(fig.Raw))
		return spot, false
	}
	return b.spotOn(l, back, fig, owner)
}

func (b *builder) spotOn(l *Leg, back bool, fig figure, owner string) (Spot, bool) {
	offset := fig.Value
	if !(offset >= 0 && offset <= l.LengthM) {
		b.say(rangeRule, fig.at, "%s is %s along leg %s, which is %s long", owner, fig.Raw, l.Name, b.length(l.LengthM))
		return Spot{}, false
	}
	if back {
		offset = l.LengthM - offset
	}
	near := l.A
	if offset > l.LengthM/2 {
		near = l.B
	}
	return Spot{Place: near, Leg: l, OffsetM: offset}, true
}

func (b *builder) legNames() []string {
	var names []string
	for _, l := range b.m.Legs {
		names = append(names, l.Name)
	}
	return names
}

// skipLength passes over a length that belongs to a name that is not known.
func (b *builder) skipLength(c *cursor) {
	if c.isFigure() {
		n := len(b.found)
		b.takeFigure(c)
		b.found = b.found[:n]
	}
}

// length prints a length in the draft's units.
func (b *builder) length(m float64) string { return fmt.Sprint(quantity.LengthText(m, b.m.Metric)) }

package size

import (
	"legwork/gauge"
	"legwork/harness/model"
)

// menu is the sizes that a wire may have, thinnest first, each with what it
// carries. Wires of one insulation family share it; a wire whose size the
// draft gives has that one alone.
type menu []*gauge.Rating

// at gives what stands on a rung of the ladder; a given size stands on all.
func (m menu) at(rung int) *gauge.Rating {
	if len(m) == 1 {
		return m[0]
	}
	return m[rung]
}

// menus looks every size up once for each family that the draft uses.
type menus struct {
	ladder    []gauge.Size
	reference gauge.Size
	open      map[string]menu
	stand     map[string]*gauge.Rating
}

// set fills in what each wire may be, and what stands in for it while the
// design currents are found.
func (c *chooser) set() {
	reference, _ := gauge.MetricSize(referenceMM2)
	c.menus = menus{ladder: c.ladder, reference: reference, open: map[string]menu{}, stand: map[string]*gauge.Rating{}}
	c.menu = make([]menu, len(c.m.Wires))
	c.stand = make([]*gauge.Rating, len(c.m.Wires))
	for i, w := range c.m.Wires {
		if s, given := givenSize(w); given {
			c.stand[i] = gauge.RatingOf(s, familyOf(w, s))
			c.menu[i] = menu{c.stand[i]}
			continue
		}
		c.menu[i], c.stand[i] = c.menus.of(w)
	}
}

// ratingOf looks up what a wire carries at a size that it has, or that stands in for it.
func (c *chooser) ratingOf(w *model.Wire, s gauge.Size) *gauge.Rating {
	if stand := c.stand[w.ID]; stand.Size == s {
		return stand
	}
	for _, r := range c.menu[w.ID] {
		if r.Size == s {
			return r
		}
	}
	return gauge.RatingOf(s, familyOf(w, s))
}

// of gives the menu of a wire without a given size, and its stand-in.
func (k *menus) of(w *model.Wire) (menu, *gauge.Rating) {
	name := familyName(w)
	if m, known := k.open[name]; known {
		return m, k.stand[name]
	}
	m := make(menu, len(k.ladder))
	for i, s := range k.ladder {
		m[i] = gauge.RatingOf(s, familyOf(w, s))
	}
	k.open[name], k.stand[name] = m, gauge.RatingOf(k.reference, familyOf(w, k.reference))
	return m, k.stand[name]
}

// familyName is the insulation family that the draft names for a wire, of its
// own or through its circuit; "" where it names none that is known.
func familyName(w *model.Wire) string {
	for _, name := range []string{w.Family, circuitFamily(w)} {
		if _, known := gauge.FamilyOf(name); known {
			return name
		}
	}
	return ""
}

// familyOf gives the insulation family of a wire at a size: the one that the
// draft names, or the default for the size.
func familyOf(w *model.Wire, s gauge.Size) gauge.Family {
	if f, known := gauge.FamilyOf(familyName(w)); known {
		return f
	}
	return gauge.FamilyFor(s)
}

func circuitFamily(w *model.Wire) string {
	if w.Circuit == nil {
		return ""
	}
	return w.Circuit.Family
}

// givenSize is the size that the draft fixes for a wire, of its own or
// through its circuit.
func givenSize(w *model.Wire) (gauge.Size, bool) {
	if w.Sized {
		return w.Size, true
	}
	if w.Circuit != nil && w.Circuit.Sized {
		return w.Circuit.Size, true
	}
	return gauge.Size{}, false
}

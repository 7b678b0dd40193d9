package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// maxTerminals is how many terminals a draft may have in all: five for each
// wire that it may have.
const maxTerminals = 5 * maxWires

// buildPins gives a device all its terminals: those of its kind, then those
// of its lines.
func (b *builder) buildPins(r *reading) {
	d := r.d
	if b.full {
		b.lenient[d] = true
		return
	}
	ofKind := d.Kind.TerminalsOf(d.Device)
	d.Pins = make([]part.Pin, 0, len(ofKind)+len(d.Lines))
	for _, t := range ofKind {
		quiet := t.Quiet || d.Grounded != "" && t.Name == d.Kind.Ground
		d.Pins = append(d.Pins, part.Pin{Name: t.Name, Aliases: t.Aliases, Landing: t.Landing, Line: -1, At: d.At, Quiet: quiet})
	}
	if d.Kind.Lines != nil {
		b.linePins(r)
	}
	b.mark(r)
	if r.double {
		return
	}
	if len(b.m.Terminals)+len(d.Pins) > maxTerminals {
		if !b.full {
			b.say(limitRule, d.At, "%s %s has one terminal too many: at most %d in a draft", d.Kind.Name, clip(d.Name), maxTerminals)
		}
		b.full, b.lenient[d], d.Pins = true, true, nil
		return
	}
	terminals := make([]Terminal, len(d.Pins))
	d.Terminals = make([]*Terminal, 0, len(d.Pins))
	for i := range d.Pins {
		p, t := &d.Pins[i], &terminals[i]
		*t = Terminal{ID: len(b.m.Terminals), Device: d, Pin: i, Name: p.Name, Landing: p.Landing, At: p.At}
		if p.Line >= 0 {
			t.Cavity = d.Lines[p.Line].Cavity
		}
		t.Finish = r.finishAt(t)
		switch {
		case d.Metal != nil && p.Name == d.Kind.Ground:
			t.Metal = d.Metal
		case d.Kind.Self && d.BoltedTo != nil && p.Landing == part.Post:
			t.Metal = d.BoltedTo
		}
		b.m.Terminals = append(b.m.Terminals, t)
		d.Terminals = append(d.Terminals, t)
	}
	d.index()
}

func (b *builder) linePins(r *reading) {
	d := r.d
	add := func(name string, line int, at diag.Span) {
		d.Pins = append(d.Pins, part.Pin{Name: name, Landing: d.Kind.Lines.Landing, Line: line, At: at})
	}
	switch d.Kind.Lines.Shape {
	case part.TerminalLines, part.BusLines:
		for i, l := range d.Lines {
			add(l.Name, i, l.At)
		}
	case part.PositionLines:
		seen := map[string]bool{}
		for _, t := range d.Kind.Terminals {
			seen[t.Name] = true
		}
		for i, l := range d.Lines {
			for _, name := range l.Refs {
				if !seen[name] && len(d.Pins) < maxCavities {
					seen[name] = true
					add(name, i, l.At)
				}
			}
		}
	case part.HalfLines:
		n := b.ways(r)
		b.nameCavities(r, n)
		d.Pins = slices.Grow(d.Pins, min(len(d.Lines)*n, 2*maxCavities+n))
		for i, l := range d.Lines {
			if len(d.Pins) > 2*maxCavities {
				b.say(limitRule, l.At, "%s has more than %d terminals", r.form.owner, 2*maxCavities)
				break
			}
			for k := 1; k <= n; k++ {
				add(d.Lines[i].CavityName(k), i, l.At)
			}
		}
	}
}

// ways gives the number of cavities in each half of a connector.
func (b *builder) ways(r *reading) int {
	for _, v := range r.d.Values {
		if len(v.Setting.Figures) == 0 || v.Setting.Figures[0].Dim != quantity.Count {
			continue
		}
		n := v.Nums[0]
		if !(n >= 1 && n <= maxCavities) {
			if v.Said && !r.form.broken {
				b.say(limitRule, v.At, "%s has %g cavities; allowed are 1 to %d", r.form.owner, n, maxCavities)
			}
			b.lenient[r.d] = true
			return 0
		}
		return int(n)
	}
	b.lenient[r.d] = true
	return 0
}

// joinBuses ties the members of every bus of every box to it.
func (b *builder) joinBuses() {
	for _, bus := range b.buses {
		bar := bus.box.Terminal(bus.box.Lines[bus.line].Name)
		for _, ref := range bus.members {
			if t := b.resolve(ref); t != nil && bar != nil {
				b.joinBus(bus, bar, t, ref.At)
			}
		}
	}
}

func (b *builder) joinBus(bus busStmt, bar, t *Terminal, at diag.Span) {
	switch {
	case t == bar:
		b.say(duplicateRule, at, "bus %s names itself", fullName(bar))
		return
	case slices.Contains(bar.Bus, t):
		b.say(duplicateRule, at, "bus %s names %s twice", fullName(bar), fullName(t))
		return
	case len(t.Bus) > 0 && t.Device.Kind != bus.box.Kind:
		b.say(duplicateRule, at, "%s is on bus %s already", fullName(t), fullName(t.Bus[0]))
		return
	}
	bar.Bus, t.Bus = append(bar.Bus, t), append(t.Bus, bar)
	line := &bus.box.Lines[bus.line]
	line.Refs = append(line.Refs, fullName(t))
}

// fullName is a terminal's canonical full name: "K1.87", "E3".
func fullName(t *Terminal) string {
	if t.Device.Kind.Self {
		return t.Device.Name
	}
	if p := t.Device.Pins[t.Pin].Printed; p != "" {
		return t.Device.Name + "." + p
	}
	return t.Device.Name + "." + t.Name
}

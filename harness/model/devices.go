package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// reading is a device while it is read: the graph device, and the words that
// are settled when all devices are known.
type reading struct {
	d          *Device
	form       *form
	double     bool // its name is taken: read for mistakes only
	in         draft.Item
	inSaid     bool
	atSaid     bool
	from       *draft.Ref
	plugSet    *nameSet
	marks      []printed
	cavities   []string
	cavitiesAt diag.Span
	finish     Finish
	lineFinish map[string]*Finish // by line
	seats      []seat
	part       *shelfPart // what it is, of the shelf; nil when not said
	partAt     diag.Span  // where that is said
}

func (b *builder) buildDevices() {
	all := make([]*reading, 0, len(b.devices))
	for _, s := range b.devices {
		if r := b.readDevice(s); r != nil {
			all = append(all, r)
		}
	}
	for _, r := range all {
		b.findBox(r)
	}
	for _, r := range all {
		b.settle(r)
	}
	for _, r := range all {
		b.readLines(r)
		b.buildPins(r)
	}
	b.joinBuses()
	for _, r := range all {
		b.findFrom(r)
	}
}

// readDevice reads one device statement but for what names other devices.
func (b *builder) readDevice(s deviceStmt) *reading {
	c := newCursor(s.stmt)
	name, ok := b.firstName(s.stmt, c, s.kind.Name)
	if !ok {
		b.ghost(s.stmt)
		return nil
	}
	if c.items[0].Raw == name && b.looksForgotten(s.kind, c.items[0]) {
		return nil
	}
	r := &reading{d: &Device{
		Device: &part.Device{Name: name, Kind: s.kind, At: c.items[0].At, SystemV: b.m.SystemV},
		ID:     len(b.m.Devices), Stmt: s.stmt,
	}}
	if r.double = !b.declare(b.devSet, name, s.kind.Name, r.d.At); r.double {
		if first := b.m.deviceNamed[name]; first != nil {
			b.lenient[first] = true
		}
		b.ghosts[name] = true
	} else {
		b.m.Devices = append(b.m.Devices, r.d)
		b.m.deviceNamed[name] = r.d
	}
	r.form = b.deviceForm(r)
	b.read(r.form, c)
	r.d.Values = r.form.values
	r.d.Thread = b.threadOf(r.d)
	b.takePart(r)
	r.d.Values = b.orDefault(r.form, r.d.At)
	if r.form.broken {
		b.lenient[r.d] = true
	}
	b.sayLacking(r)
	return r
}

// sayLacking reports what the settings of a device together lack or contradict.
func (b *builder) sayLacking(r *reading) {
	d := r.d
	if r.form.broken {
		return
	}
	if d.Kind.Lacks != nil {
		if text := d.Kind.Lacks(d.Device); text != "" {
			b.say(missingRule, d.At, "%s %s", r.form.owner, text)
		}
	}
	if d.Grounded != "" && d.Kind.Fits != nil && !d.Kind.Fits(d.Device, d.Kind.Ground) {
		b.say(wordRule, d.At, "%s as said has no terminal %s to ground through metal", r.form.owner, d.Kind.Ground)
	}
}

// looksForgotten reports a figure or a setting's word where the name belongs.
func (b *builder) looksForgotten(kind *part.Kind, it draft.Item) bool {
	q, err := quantity.Parse(it.Raw)
	figure := err == nil && q.Unit != "" && slices.ContainsFunc(kind.Settings, func(s part.Setting) bool {
		return s.Bare && len(s.Figures) > 0 && s.Figures[0].Dim == q.Dim
	})
	if figure {
		b.say(missingRule, it.At, "%s needs a name before %s", article(kind.Name), clip(it.Raw))
	}
	return figure
}

// deviceForm is what every device may say besides the settings of its kind.
func (b *builder) deviceForm(r *reading) *form {
	d := r.d
	owner := d.Kind.Name + " " + d.Name
	f := &form{owner: owner, name: d.Name, settings: d.Kind.Settings, label: &d.Label}
	f.names = func() []string { return b.freeNames(d) }
	f.words = map[string]func(*cursor, draft.Item){
		"marked":   func(c *cursor, w draft.Item) { b.readMarked(r, c, w) },
		"cavities": func(c *cursor, w draft.Item) { b.readCavities(r, c, w) },
		"at":       func(c *cursor, w draft.Item) { b.deviceAt(r, c, w) },
		"in": func(c *cursor, w draft.Item) {
			if it, ok := b.nameBehind(c, w, owner, "a box"); ok {
				r.in, r.inSaid = it, true
			} else {
				r.form.broken = true
			}
		},
		"on": func(c *cursor, w draft.Item) {
			if d.On != "" {
				b.say(duplicateRule, w.At, "%s is said to be bolted on twice", owner)
			}
			d.BoltedTo, d.On = b.metalBehind(c, w, owner)
		},
		"grounds-to": func(c *cursor, w draft.Item) {
			if d.Kind.Ground == "" {
				b.say(wordRule, w.At, "%s can't ground through metal; give it a wire", owner)
				b.nameBehind(c, w, owner, "a metal")
				return
			}
			if d.Grounded != "" {
				b.say(duplicateRule, w.At, "%s is said to ground through metal twice", owner)
			}
			d.Metal, d.Grounded = b.metalBehind(c, w, owner)
		},
		"from":     func(c *cursor, w draft.Item) { b.readFrom(r, c, w) },
		"option":   b.optionWord(owner, &d.Option),
		"existing": func(*cursor, draft.Item) { d.Existing = true },
		"part":     func(c *cursor, w draft.Item) { b.readPart(r, c, w) },
	}
	b.finishWords(f.words, owner, &r.finish)
	return f
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

// sayNoPlace reports a device that is nowhere, where the draft has several
// places.
func (b *builder) sayNoPlace(d *Device) {
	if len(b.m.Places) > 1 {
		f := b.say(missingRule, d.At, "%s %s has no place; say at and one of %s", d.Kind.Name, d.Name, oneOf(b.placeSet.order))
		f.Related = []diag.Related{{At: b.m.Places[0].At, Msg: "the places are given here"}}
	}
}

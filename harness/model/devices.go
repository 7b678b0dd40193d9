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
	b.devSet.grow(len(b.devices))
	b.m.Devices = slices.Grow(b.m.Devices, len(b.devices))
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
	r.d.Values = b.asSaid(r.form, r.d.At)
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

// sayNoPlace reports a device that is nowhere, where the draft has several
// places.
func (b *builder) sayNoPlace(d *Device) {
	if len(b.m.Places) > 1 {
		f := b.say(missingRule, d.At, "%s %s has no place; say at and one of %s", d.Kind.Name, d.Name, oneOf(b.placeSet.order))
		f.Related = []diag.Related{{At: b.m.Places[0].At, Msg: "the places are given here"}}
	}
}

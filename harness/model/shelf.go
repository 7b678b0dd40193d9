package model

import (
	"slices"

	"legwork/harness/draft"
	"legwork/harness/part"
)

// shelfPart is one part of the shelf: a kind with settings and lines, defined
// once and used by name. It is read like a device that stands nowhere.
type shelfPart struct {
	name string
	kind *part.Kind
	stmt *draft.Stmt
	read *reading // with its values in form, its lines in d
}

// buildParts reads the shelf. Mistakes are reported here, once, and not where
// a part is used.
func (b *builder) buildParts() {
	goods := func(s *draft.Stmt) bool { _, ok := part.GoodOf(s.Item(0).Word()); return ok }
	for _, s := range b.parts {
		if goods(s) {
			b.buildPart(s)
		}
	}
	for _, s := range b.parts {
		if !goods(s) { // they may name goods
			b.buildPart(s)
		}
	}
}

func (b *builder) buildPart(s *draft.Stmt) {
	c := newCursor(s)
	word := c.word()
	if word == "" {
		if !s.Bad {
			b.say(missingRule, s.Head.At, "part needs its kind and a name: part relay small-relay coil 85ohm")
		}
		b.ghost(s)
		return
	}
	it := c.take()
	if good, ok := part.GoodOf(word); ok {
		b.buildGood(s, good, c)
		return
	}
	kind, ok := part.Of(word)
	if !ok {
		b.sayUnknown(wordRule, it.At, word, kindNames(), "part: no kind %q", clip(word))
		b.ghost(s)
		return
	}
	if !c.more() {
		b.say(missingRule, it.At, "part %s needs a name", word)
		return
	}
	at := c.peek().At
	name, ok := b.nameOf(c.take(), "part")
	if !ok || !b.declare(b.partSet, name, "part", at) {
		return
	}
	p := &shelfPart{name: name, kind: kind, stmt: s}
	b.partBy[name] = p
	guesses := len(b.m.Guesses)
	d := &Device{Device: &part.Device{Name: name, Kind: kind, At: at, SystemV: b.m.SystemV}, Stmt: s}
	p.read = &reading{d: d, double: true}
	p.read.form = b.partForm(p.read)
	b.read(p.read.form, c)
	p.read.form.values, p.read.form.given = slices.Clone(p.read.form.values), slices.Clone(p.read.form.given)
	d.Values = p.read.form.values
	d.Thread = b.threadOf(d)
	b.readLines(p.read)
	b.m.Guesses = b.m.Guesses[:guesses] // listed for each device that it is
	b.strayLines(p)
}

// strayLines reports lines under a part whose kind has none.
func (b *builder) strayLines(p *shelfPart) {
	for _, child := range p.stmt.Children {
		switch head := headOf(child); {
		case head == "note":
		case head == "accept":
			b.say(wordRule, child.Head.At, "accept stands under the device, not under part %s", clip(p.name))
		case p.kind.Lines == nil || misplaced(child, p.kind):
			b.sortChild(child, p.stmt, nil)
		}
	}
}

// partForm is what a part may say: the settings of its kind and what belongs
// to the thing itself, not where it sits.
func (b *builder) partForm(r *reading) *form {
	d := r.d
	f := &form{owner: "part " + d.Name, name: d.Name, settings: d.Kind.Settings, label: &d.Label}
	f.names = func() []string { return b.freeNames(d) }
	f.words = b.placeWords(f.owner)
	b.finishWords(f.words, f.owner, &r.finish)
	f.words["marked"] = func(c *cursor, w draft.Item) { b.readMarked(r, c, w) }
	f.words["cavities"] = func(c *cursor, w draft.Item) { b.readCavities(r, c, w) }
	return f
}

// placeWords answers the words that say where a device sits: a part has no
// place of its own.
func (b *builder) placeWords(owner string) map[string]func(*cursor, draft.Item) {
	words := map[string]func(*cursor, draft.Item){}
	for _, word := range []string{"at", "in", "on", "grounds-to", "from", "option", "existing"} {
		words[word] = func(c *cursor, w draft.Item) {
			b.say(wordRule, w.At, "%s stands nowhere; say %s on the device", owner, word)
			if c.more() {
				c.take()
			}
		}
	}
	return words
}

// readPart reads "part NAME" on a device.
func (b *builder) readPart(r *reading, c *cursor, w draft.Item) {
	it, ok := b.nameBehind(c, w, r.form.owner, "a part")
	if !ok {
		r.form.broken = true
		return
	}
	p := b.partBy[it.Text]
	switch {
	case r.part != nil:
		b.say(duplicateRule, w.At, "%s is said to be two parts", r.form.owner)
	case p == nil:
		b.noName("part", it.Text, it.At, b.partSet.order)
		r.form.broken = true
	case p.kind != r.d.Kind:
		f := b.say(nameRule, it.At, "%s can't be part %s, which is %s", r.form.owner, clip(p.name), article(p.kind.Name))
		f.Related = relatedTo(p.read.d.At, "the part is defined here")
		r.form.broken = true
	default:
		r.part, r.partAt = p, span(w.At, it.At)
	}
}

// takePart gives a device what its part says and its own line does not. What
// is found out about it later points to the device, not into the shelf.
func (b *builder) takePart(r *reading) {
	if r.part == nil {
		return
	}
	from := r.part.read
	if from.form.broken || b.lenient[from.d] {
		r.form.broken = true
	}
	for _, v := range from.form.values {
		if _, said := r.form.given.at(v.Setting); said {
			continue
		}
		v.Nums, v.Set, v.At = slices.Clone(v.Nums), slices.Clone(v.Set), r.partAt
		r.form.values = append(r.form.values, v)
	}
	for _, g := range from.form.given {
		if _, said := r.form.given.at(g.setting); !said {
			r.form.given.set(g.setting, g.at)
		}
	}
	if r.d.Label == "" {
		r.d.Label = from.d.Label
	}
	if r.d.Thread == "" {
		r.d.Thread = from.d.Thread
	}
	if len(r.marks) == 0 {
		r.marks = from.marks
	}
	if len(r.cavities) == 0 {
		r.cavities, r.cavitiesAt = from.cavities, r.partAt
	}
	r.finish = r.finish.or(from.finish)
	r.d.Part = r.part.name
}

// readPartLines gives a device the lines of its part that it has not itself.
// What is wrong with them was reported when the part was read.
func (b *builder) readPartLines(r *reading, names *nameSet) {
	if r.part == nil {
		return
	}
	own := map[string]bool{}
	for _, s := range r.d.Stmt.Children {
		own[lineName(r.d.Kind, s)] = true
	}
	found := len(b.found)
	for _, s := range r.part.stmt.Children {
		head := headOf(s)
		if head == "accept" || head == "note" || misplaced(s, r.d.Kind) || own[lineName(r.d.Kind, s)] {
			continue
		}
		b.readLine(r, s, head, names)
	}
	b.found = b.found[:found]
	for i := range r.d.Lines {
		l := &r.d.Lines[i]
		l.At = r.partAt
		for k := range l.Values {
			l.Values[k].At = r.partAt
		}
	}
}

// lineName is the name that a line under a device gives: its head, or what
// stands behind a fixed head.
func lineName(k *part.Kind, s *draft.Stmt) string {
	if k.Lines.Head == "" {
		return s.Head.Text()
	}
	return s.Item(0).Text
}

func kindNames() []string {
	var names []string
	for _, k := range part.Kinds() {
		names = append(names, k.Name)
	}
	for _, g := range part.Goods() {
		names = append(names, g.Name)
	}
	return names
}

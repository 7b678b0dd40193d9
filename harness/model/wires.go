package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// maxWires is how many conductors a draft may have.
const maxWires = 200_000

var roleNames = map[Role]string{Built: "wire", Lead: "lead", Strap: "strap"}

func (b *builder) buildWires() {
	b.numSet.grow(len(b.wires))
	b.m.Wires = slices.Grow(b.m.Wires, len(b.wires))
	for i, s := range b.wires {
		if i == maxWires {
			b.say(limitRule, s.stmt.Head.At, "more than %d wires", maxWires)
			return
		}
		b.buildWire(s)
	}
}

// buildWire reads one conductor. It comes into the model if both its ends
// are known.
func (b *builder) buildWire(s wireStmt) {
	what := roleNames[s.role]
	c := newCursor(s.stmt)
	number, ok := b.firstName(s.stmt, c, what)
	if !ok {
		return
	}
	w := &Wire{ID: len(b.m.Wires), Number: number, Role: s.role, At: c.items[0].At, Stmt: s.stmt}
	known := b.declare(b.numSet, number, what, w.At)
	owner := what + " " + number
	var cable *Cable
	if s.cable != nil {
		cable = b.cable[s.cable]
		w.Drain = headOf(s.stmt) == "drain"
		owner = headOf(s.stmt) + " " + number
	}
	ends := b.readEnds(w, c, owner, s.stmt.Bad)
	f := b.readWireSettings(w, c, owner)
	w.Size, w.Sized, w.SizeAt = b.sizeOf(f)
	if length := b.said(f, lengthSetting); length != nil {
		w.LengthM, w.LengthAt = length.Nums[0], length.At
	}
	b.measured(w, f)
	if cable != nil {
		b.asCore(w, cable, owner, f.broken)
	}
	if !f.broken && !w.ToAt.IsZero() { // else the line ends before its ends do
		b.needed(w, owner)
	}
	if ends && b.endsFit(w, owner) {
		b.addWire(w, s)
		if known {
			b.m.wireNumbered[number] = w
		}
	}
}

func (b *builder) addWire(w *Wire, s wireStmt) {
	w.Circuit = b.circuit[s.circuit]
	if w.Circuit == nil {
		w.Circuit = b.loose()
	}
	w.Circuit.Wires = append(w.Circuit.Wires, w)
	if w.Cable != nil {
		w.Cable.Cores = append(w.Cable.Cores, w)
	}
	b.keepOpen(w)
	b.assumeSize(w)
	if !w.Sized && w.Role == Built && w.Circuit.Sized {
		w.Size, w.Sized, w.SizeAt = w.Circuit.Size, true, w.Circuit.At
	}
	if w.Family == "" && w.Role != Strap {
		w.Family = w.Circuit.Family
	}
	w.From.Ends = append(w.From.Ends, End{w, true})
	w.To.Ends = append(w.To.Ends, End{w, false})
	b.m.Wires = append(b.m.Wires, w)
	if w.LengthM == 0 && len(b.m.Legs) == 0 && len(b.legs) == 0 {
		g := b.guess("length of "+roleNames[w.Role]+" "+w.Number, b.length(DefaultLengthM), "", w.At)
		g.Num, g.Dim, g.Least, g.Most = DefaultLengthM, quantity.Length, 0.05, 100
		if b.setup.Move.Key == g.Key {
			w.LengthM = b.setup.Move.To
		}
	}
}

// endsFit reports ends that can't belong to such a conductor.
func (b *builder) endsFit(w *Wire, owner string) bool {
	if w.From.Device.open && w.To.Device.open {
		b.say(missingRule, w.At, "both ends of %s are open; one has to land somewhere", owner)
		return false
	}
	if w.From == w.To {
		b.say(duplicateRule, w.ToAt, "%s begins and ends at %s", owner, fullName(w.From))
		return false
	}
	if w.Role != Strap {
		return true
	}
	for _, end := range []struct {
		t  *Terminal
		at diag.Span
	}{{w.From, w.FromAt}, {w.To, w.ToAt}} {
		if end.t.Landing != part.Post {
			b.say(nameRule, end.at, "%s joins studs; %s is no stud or post", owner, fullName(end.t))
			return false
		}
	}
	return true
}

// needed reports what a lead or strap has to say of itself.
func (b *builder) needed(w *Wire, owner string) {
	if w.Role == Built {
		return
	}
	if w.LengthM == 0 {
		b.say(missingRule, w.At, "%s needs its length, such as 18in", owner)
	}
	if w.Role == Lead && !w.Sized {
		b.say(missingRule, w.At, "%s needs its size, such as 16AWG", owner)
	}
}

func (b *builder) readWireSettings(w *Wire, c *cursor, owner string) *form {
	f := &form{owner: owner, name: owner, settings: wireSettings, label: &w.Label}
	f.bare, f.expected = b.bareOfWires, familiesAndColors
	b.wire, b.owner, f.words = w, owner, b.wireWords
	b.read(f, c)
	return f
}

// wordsOfWires are the words of every wire, read into the one at hand. One
// table serves all of them.
func (b *builder) wordsOfWires() map[string]func(*cursor, draft.Item) {
	return map[string]func(*cursor, draft.Item){
		"via":      func(c *cursor, v draft.Item) { b.readVia(b.wire, c, v, b.owner) },
		"option":   func(c *cursor, v draft.Item) { b.readOption(b.owner, &b.wire.Option, c, v) },
		"existing": func(*cursor, draft.Item) { b.wire.Existing = true },
	}
}

// bareWord reads the insulation or color of the wire at hand.
func (b *builder) bareWord(it draft.Item, word string) bool {
	if familyWord(&b.wire.Family)(it, word) {
		return true
	}
	color, ok := readColor(word)
	if !ok {
		return false
	}
	if b.wire.Color.Base != "" {
		b.say(duplicateRule, it.At, "%s has two colors: %s and %s", b.owner, b.wire.Color.Shown, word)
	}
	b.wire.Color = color
	return true
}

func familiesAndColors() []string { return slices.Concat(familyNames(), colorWords()) }

// readVia reads the places that a wire has to pass, in order.
func (b *builder) readVia(w *Wire, c *cursor, via draft.Item, owner string) {
	if !c.more() || c.peek().Quoted || c.isFigure() {
		b.say(missingRule, via.At, "%s: via needs a place, or several joined by commas", owner)
		return
	}
	for _, r := range c.take().List {
		if p := b.placeNamed(r.Raw); p != nil {
			w.Via = append(w.Via, p)
		} else {
			b.noName("place", r.Raw, r.At, b.placeSet.order)
		}
	}
}

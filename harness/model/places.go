package model

import (
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// defaultPlaceC is taken for a place whose temperature is not said, C (common
// practice: inside the cab, behind a trim panel in summer).
const defaultPlaceC = 50

var placeSettings = []part.Setting{
	{Name: "temperature", Bare: true, Doc: "how hot it gets around the wires, in the worst hour", Figures: []part.Figure{{
		Name: "temperature", Dim: quantity.Temperature, Min: -60, Max: 200, Default: defaultPlaceC, HasDefault: true, Guess: true, Doc: "temperature"}}},
	{Name: "weather", Bare: true, Words: []string{"wet", "dry"}, Default: "dry", Doc: "whether water or spray gets there"},
}

var legSettings = []part.Setting{
	{Name: "length", Bare: true, Doc: "how long the way is, measured along it", Figures: []part.Figure{{
		Name: "length", Dim: quantity.Length, Min: 0.01, Max: 100, Default: DefaultLengthM, HasDefault: true, Guess: true, Doc: "length"}}},
	{Name: "covering", Bare: true, Doc: "what the bundle is wrapped in", Words: []string{"tape", "split-loom", "sleeve", "conduit", "braid", "heat-shrink", "bare"}},
}

var metalSettings = []part.Setting{
	{Name: "resistance", Bare: true, Doc: "from one end to the other; none when not said", Figures: []part.Figure{{
		Name: "resistance", Dim: quantity.Resistance, Min: 0, Max: 1, Doc: "resistance"}}},
}

// DefaultLengthM is the length taken for a wire or leg whose length is not
// known: 10 ft. It is always listed as a guess.
const DefaultLengthM = 3.048

// Places and legs that a draft may have: far beyond any vehicle, and few
// enough that the ways between all of them are soon found.
const (
	maxPlaces = 1000
	maxLegs   = 4000
)

// tooMany reports the statement that goes beyond a limit.
func (b *builder) tooMany(s *draft.Stmt, what string, most int) {
	b.say(limitRule, s.Head.At, "%s is one too many; at most %d in a draft", article(what), most)
}

// top is the first line of the draft, for what is assumed of the whole of it.
func (b *builder) top() diag.Span {
	if len(b.f.Stmts) > 0 {
		return b.f.Stmts[0].Head.At
	}
	return diag.Span{File: b.f.Name}
}

// firstName reads the first item of a statement as its name.
func (b *builder) firstName(s *draft.Stmt, c *cursor, what string) (string, bool) {
	if !c.more() {
		if !s.Bad {
			b.say(missingRule, s.Head.At, "%s needs a name", article(what))
		}
		return "", false
	}
	return b.nameOf(c.take(), what)
}

func (b *builder) buildMetals() {
	for _, s := range b.metals {
		c := newCursor(s)
		name, ok := b.firstName(s, c, "metal")
		if !ok || !b.declare(b.metalSet, name, "metal", s.Items[0].At) {
			continue
		}
		m := &Metal{ID: len(b.m.Metals), Name: name, At: s.Items[0].At}
		f := &form{owner: "metal " + name, name: name, settings: metalSettings, label: &m.Label}
		b.read(f, c)
		m.Ohm = b.orDefault(f, m.At)[0].Nums[0]
		b.m.Metals = append(b.m.Metals, m)
		b.metalBy[name] = m
	}
	if len(b.m.Metals) == 0 && len(b.metals) == 0 {
		b.declare(b.metalSet, "frame", "metal", diag.Span{})
		b.m.Metals = []*Metal{{Name: "frame"}}
		b.metalBy["frame"] = b.m.Metals[0]
		b.guess("metal", "frame, ideal", "", b.top())
	}
}

func (b *builder) buildPlaces() {
	for i, s := range b.places {
		c := newCursor(s)
		name, ok := b.firstName(s, c, "place")
		if !ok {
			continue
		}
		at := s.Items[0].At
		if strings.Contains(name, "-") {
			b.say(nameRule, at, "place %s can't hold a hyphen: legs are called by two places", clip(name))
			b.ghosts[name] = true
			continue
		}
		if !b.declare(b.placeSet, name, "place", at) {
			continue
		}
		if len(b.m.Places) == maxPlaces {
			b.tooMany(s, "place", maxPlaces)
			b.ghostPlaces(b.places[i:])
			break
		}
		p := &Place{ID: len(b.m.Places), Name: name, At: at}
		f := &form{owner: "place " + name, name: name, settings: placeSettings, label: &p.Label}
		b.read(f, c)
		values := b.orDefault(f, at)
		p.AmbientC, p.Wet = values[0].Nums[0], values[1].Word == "wet"
		b.m.Places = append(b.m.Places, p)
		b.placeBy[name] = p
	}
	if len(b.m.Places) == 0 {
		b.m.Places = []*Place{{Name: "vehicle", AmbientC: defaultPlaceC}}
		if len(b.places) == 0 {
			b.declare(b.placeSet, "vehicle", "place", diag.Span{})
			b.placeBy["vehicle"] = b.m.Places[0]
			b.guess("place", "vehicle, 50 C, dry", "", b.top())
		}
	}
}

// ghostPlaces makes the names of places that are not taken no second fault.
func (b *builder) ghostPlaces(stmts []*draft.Stmt) {
	for _, s := range stmts {
		b.ghost(s)
	}
}

// placeNamed and metalNamed give nil for a name that nothing bears.
func (b *builder) placeNamed(name string) *Place { return b.placeBy[name] }

func (b *builder) metalNamed(name string) *Metal { return b.metalBy[name] }

// placeAt gives the place that an item names, nil if there is none.
func (b *builder) placeAt(it draft.Item) *Place {
	p := b.placeNamed(it.Text)
	if p == nil {
		b.noName("place", it.Text, it.At, b.placeSet.order)
	}
	return p
}

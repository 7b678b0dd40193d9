package model

import (
	"slices"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/part"
)

// readPosition reads one position of a key: its name and the terminals that
// it joins.
func (b *builder) readPosition(r *reading, s *draft.Stmt) {
	d := r.d
	position := s.Head.Parts[0]
	if !slices.Contains(b.positions(), s.Head.Raw) {
		b.sayUnknown(wordRule, s.Head.At, s.Head.Raw, b.positions(), "%s has no position %q", r.form.owner, clip(s.Head.Raw))
		near := nearestOf(s.Head.Raw, b.positions())
		if word := headOf(s); near == "" && word != "" {
			b.found[len(b.found)-1].Detail = "A position besides off, acc, run, gap and crank wants a step in which the key stands there: step " +
				clip(word) + " key " + clip(word) + " after acc."
		}
		if near == "" {
			b.lenient[d] = true
			return
		}
		position = near
	}
	line := part.Line{Name: position, At: s.Head.At}
	c := newCursor(s)
	f := b.lineForm(r, d.Kind.Lines.Settings, d.Name+" "+position)
	for c.more() && !c.peek().Quoted && f.settingNamed(c.word()) == nil && !c.isMeasured() {
		for _, ref := range c.take().List {
			b.joinAt(r, &line, ref)
		}
	}
	b.read(f, c)
	line.Values = b.asSaid(f, s.Head.At)
	// While the key travels, a terminal that joins nothing is how it is said
	// that everything is let go.
	if len(line.Refs) == 1 && position != "gap" {
		b.say(missingRule, s.Head.At, "%s: position %s joins %s with nothing", r.form.owner, position, line.Refs[0])
	}
	d.Lines = append(d.Lines, line)
	if !r.double {
		b.gapLasts(&line)
	}
}

// positions lists the key positions of all steps.
func (b *builder) positions() []string {
	words := slices.Clone(keyPositions)
	for _, s := range b.m.Steps {
		if !slices.Contains(words, s.Key) {
			words = append(words, s.Key)
		}
	}
	return words
}

// keyWords lists where a key may stand: the usual positions, and those that
// a key of the draft has besides.
func (b *builder) keyWords() []string {
	words := slices.Clone(keyPositions)
	add := func(s *draft.Stmt, k *part.Kind) {
		if k == nil || k.Lines == nil || k.Lines.Shape != part.PositionLines {
			return
		}
		for _, line := range s.Children {
			if w := headOf(line); w != "" && w != "accept" && w != "note" && !slices.Contains(words, w) && len(words) < maxSteps {
				words = append(words, w)
			}
		}
	}
	for _, d := range b.devices {
		add(d.stmt, d.kind)
	}
	for _, s := range b.parts {
		if len(s.Items) > 0 {
			k, _ := part.Of(s.Items[0].Raw)
			add(s, k)
		}
	}
	return words
}

// joinAt adds one terminal to a position.
func (b *builder) joinAt(r *reading, line *part.Line, ref draft.Ref) {
	name, ok := r.markedTerminal(ref.Raw)
	if !ok {
		name, ok = fixedTerminal(r.d.Kind, ref.Raw)
	}
	if !ok {
		known := terminalWords(r.d.Kind)
		numbered := strings.TrimRight(ref.Raw, "0123456789") != ref.Raw
		if near := nearestOf(ref.Raw, known); near != "" && !numbered || len(ref.Parts) > 1 {
			b.sayUnknown(nameRule, ref.At, ref.Raw, known, "%s has no terminal %q", r.form.owner, clip(ref.Raw))
			b.lenient[r.d] = true
			return
		}
		name = ref.Raw
	}
	if slices.Contains(line.Refs, name) {
		b.say(duplicateRule, ref.At, "%s: position %s names %s twice", r.form.owner, line.Name, name)
		return
	}
	line.Refs = append(line.Refs, name)
}

// markedTerminal gives the terminal that is called so on the device itself.
func (r *reading) markedTerminal(word string) (string, bool) {
	for _, p := range r.marks {
		if p.name == word {
			return p.pin, true
		}
	}
	return "", false
}

// fixedTerminal gives the canonical name of a kind's own terminal.
func fixedTerminal(k *part.Kind, word string) (string, bool) {
	for _, t := range k.Terminals {
		if t.Name == word || slices.Contains(t.Aliases, word) {
			return t.Name, true
		}
	}
	return "", false
}

func terminalWords(k *part.Kind) []string {
	var words []string
	for _, t := range k.Terminals {
		words = append(append(words, t.Name), t.Aliases...)
	}
	return words
}

// gapLasts takes over how long the key travels between its contacts.
func (b *builder) gapLasts(line *part.Line) {
	if line.Name != "gap" {
		return
	}
	for _, v := range line.Values {
		if v.Setting.Name != "lasts" || !v.Said {
			continue
		}
		for i := range b.m.Steps {
			if s := &b.m.Steps[i]; s.Key == "gap" && (!b.gapSaid || v.Nums[0] > s.LastS) {
				s.LastS = v.Nums[0]
			}
		}
		b.gapSaid = true
	}
}

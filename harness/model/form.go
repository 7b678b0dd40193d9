package model

import (
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// form is what a statement may say after its fixed places: settings, a label,
// and words with a reader of their own. Reading fills values.
type form struct {
	owner    string // "relay K4", for messages
	name     string // "K4", for guesses
	settings []part.Setting
	label    *string                              // nil: it takes no label
	words    map[string]func(*cursor, draft.Item) // named words besides the settings; the cursor stands behind the word
	bare     func(draft.Item, string) bool        // other bare words: colors, families
	expected func() []string                      // what bare takes, for the nearest word
	names    func() []string                      // names that a free word may be
	values   []part.Value
	given    givens
	labeled  bool
	broken   bool // a mistake was reported: what is missing may be behind it
}

// maxOfLine is after how many mistakes the rest of a line is not read.
const maxOfLine = 10

// read takes all items that are left. The values and places that the form then
// has stand until the next form is read.
func (b *builder) read(f *form, c *cursor) {
	f.values, f.given = b.room.values[:0], b.room.given[:0]
	defer func() { b.room = formRoom{f.values, f.given} }()
	if b.watch != nil {
		b.watch(f)
	}
	for before := len(b.found); c.more(); {
		if said := len(b.found) - before; said >= maxOfLine {
			f.broken = true
			b.say(wordRule, c.peek().At, "%s has %d mistakes in one line: from here on it is not read", f.owner, said)
			return
		}
		switch word := c.word(); {
		case c.peek().Quoted:
			b.readLabel(f, c.take())
		case c.isFigure():
			b.readBareFigure(f, c)
		case word == "":
			f.broken = true
			it := c.take()
			b.say(wordRule, it.At, "%s: no list is expected here: %s", f.owner, clip(it.Raw))
		default:
			b.readWord(f, c, word)
		}
	}
}

func (b *builder) readLabel(f *form, it draft.Item) {
	switch {
	case f.label == nil:
		b.say(wordRule, it.At, "%s takes no label: %s", f.owner, clip(it.Raw))
	case f.labeled:
		b.say(duplicateRule, it.At, "%s has a label already: %s", f.owner, clip(it.Raw))
	default:
		*f.label, f.labeled = it.Text, true
	}
}

// readWord reads what a bare word begins.
func (b *builder) readWord(f *form, c *cursor, word string) {
	it := c.take()
	if read := f.words[word]; read != nil {
		read(c, it)
		return
	}
	if word == "when" {
		b.readWhen(f, it, c)
		return
	}
	if s := f.settingNamed(word); s != nil {
		b.readNamed(f, s, it, c)
		return
	}
	if s := f.settingWith(word); s != nil {
		v := b.newValue(s, it.At)
		v.Word = word
		b.keep(f, v)
		return
	}
	if b.readThread(f, it, word) {
		return
	}
	if f.takesSteps() && b.m.stepWords[word] != part.NoSteps {
		b.readStepWord(f, it)
		return
	}
	if mark, ok := marks[word]; ok && b.readMark(f, it, mark) {
		return
	}
	if f.bare != nil && f.bare(it, word) {
		return
	}
	f.broken = true
	b.sayUnknown(wordRule, it.At, word, f.vocabulary(), "%s has no setting %q", f.owner, clip(word))
	c.skip()
}

// skip passes over the figures and marks that belonged to a word that was
// not read, so that they are not reported a second time.
func (c *cursor) skip() {
	for c.more() && !c.peek().Quoted {
		if _, isMark := marks[c.word()]; !c.isFigure() && !isMark {
			break
		}
		c.take()
	}
}

// settingNamed gives the setting that is written with this name.
func (f *form) settingNamed(word string) *part.Setting {
	for i := range f.settings {
		s := &f.settings[i]
		if s.Name == word && (!s.Bare || flag(*s)) {
			return s
		}
	}
	return nil
}

// settingWith gives the bare setting that one of its words stands for.
func (f *form) settingWith(word string) *part.Setting {
	for i := range f.settings {
		if s := &f.settings[i]; s.Bare && slices.Contains(s.Words, word) {
			return s
		}
	}
	return nil
}

// takesSteps reports whether some setting may be followed by steps.
func (f *form) takesSteps() bool {
	return slices.ContainsFunc(f.settings, func(s part.Setting) bool { return s.Steps })
}

// vocabulary lists every word that may stand here.
func (f *form) vocabulary() []string {
	var words []string
	for _, s := range f.settings {
		switch {
		case s.Name == "when":
		case !s.Bare || flag(s):
			words = append(words, s.Name)
		default:
			words = append(words, s.Words...)
		}
	}
	rest := make([]string, 0, len(f.words))
	for w := range f.words {
		rest = append(rest, w)
	}
	slices.Sort(rest)
	if f.takesSteps() {
		rest = append(rest, "when")
	}
	words = append(words, rest...)
	if f.expected != nil {
		words = append(words, f.expected()...)
	}
	return words
}

// newValue is a setting with nothing given yet.
func (b *builder) newValue(s *part.Setting, at diag.Span) part.Value {
	v := s.Defaulted(b.m.SystemV)
	v.At, v.Said = at, true
	if flag(*s) {
		v.Word = s.Name
	}
	return v
}

// flag reports whether a setting is said by its name alone.
func flag(s part.Setting) bool { return len(s.Figures) == 0 && len(s.Words) == 0 && !s.Free }

// keep adds a value; a second one of a setting that is given once is
// reported, and the first stands.
func (b *builder) keep(f *form, v part.Value) {
	if first, twice := f.given.at(v.Setting); twice && !v.Setting.Repeats {
		r := b.say(duplicateRule, v.At, "%s has its %s twice", f.owner, v.Setting.Name)
		r.Related = []diag.Related{{At: first, Msg: "given here first"}}
		return
	}
	f.given.set(v.Setting, v.At)
	f.values = append(f.values, v)
}

package words

import (
	"slices"
	"strings"
	"unicode/utf8"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Candidate is a word that may stand where the cursor is.
type Candidate struct {
	Text string    // what to write
	Sort string    // statement, kind, setting, word, step, color, place, terminal ...
	Doc  string    // what it means, "" where the word says it
	At   diag.Span // what it replaces: the part of a word before the cursor
}

// Complete lists what may stand at a line and column, which count from 1,
// columns in characters. It reads the draft up to there, so that the line may
// be as unfinished as lines are while one writes. It gives nothing inside a
// string or a comment, and where only the user can know.
func (v View) Complete(lineNo, col int) []Candidate {
	before, text, ok := v.cut(lineNo, col)
	if !ok || inStringOrComment(text) {
		return nil
	}
	typed, end := typedWord(text), len(before)
	if typed == "" || strings.HasSuffix(typed, ".") {
		before += "x" // a word to find the place of
	}
	f, _ := draft.Parse(v.File.Name, []byte(before))
	s := f.Lines[len(f.Lines)-1].Stmt
	if s == nil {
		return nil
	}
	c := &completer{View: v, typed: typed, at: diag.Span{
		File: v.File.Name, Line: lineNo, Col: col - utf8.RuneCountInString(typed), End: col,
		Off: end - len(typed), EndOff: end,
	}}
	if len(s.Items) == 0 {
		c.heads(s)
	} else {
		c.items(s)
	}
	return c.list
}

type completer struct {
	View
	typed string
	at    diag.Span
	list  []Candidate
}

// add takes a candidate that begins as what is typed, whatever its case.
func (c *completer) add(text, sort, doc string) {
	if len(text) < len(c.typed) || !strings.EqualFold(text[:len(c.typed)], c.typed) ||
		slices.ContainsFunc(c.list, func(o Candidate) bool { return o.Text == text }) {
		return
	}
	c.list = append(c.list, Candidate{Text: text, Sort: sort, Doc: doc, At: c.at})
}

// heads lists what a line may begin with.
func (c *completer) heads(s *draft.Stmt) {
	owner, k := ownerOf(s)
	switch {
	case owner != nil:
		c.headsBelow(k)
	case s.Parent == nil:
		c.statements(func(st model.Statement) bool { return st.Under == "" })
		c.kinds(func(*part.Kind) bool { return true })
	case s.ParentWord() == "circuit":
		c.statements(func(st model.Statement) bool { return st.Circuit && st.Under == "" })
		c.kinds(func(k *part.Kind) bool { return k.Self })
	default:
		under := s.ParentWord()
		c.statements(func(st model.Statement) bool { return st.Under == under || st.Word == "accept" || st.Word == "note" })
	}
}

func (c *completer) headsBelow(k *part.Kind) {
	if k.Lines.Shape == part.PositionLines {
		for _, p := range c.Model.Positions() {
			c.add(p, "position", "")
		}
	}
	if k.Lines.Head != "" {
		c.add(k.Lines.Head, "statement", lineShape(k.Lines))
	}
	c.statements(func(st model.Statement) bool { return st.Under == k.Name || belowAny(st.Word, k) })
}

func (c *completer) statements(may func(model.Statement) bool) {
	for _, st := range model.Statements() {
		if may(st) {
			c.add(st.Word, "statement", st.Shape()+"\n"+st.Doc)
		}
	}
}

func (c *completer) kinds(may func(*part.Kind) bool) {
	for _, k := range part.Kinds() {
		if may(k) {
			c.add(k.Name, "kind", k.Title)
		}
	}
}

// items lists what the last item of a statement may be.
func (c *completer) items(s *draft.Stmt) {
	w := newWalk(lineOf(s))
	last := len(s.Items) - 1
	for _, it := range s.Items[:last] {
		w.take(it)
	}
	if w.at < len(w.slots) {
		slot := w.slots[w.at]
		c.slot(w, slot)
		if !slot.Several {
			return
		}
	}
	if c.behind(w) {
		return
	}
	c.settings(w)
}

// behind lists what has to stand behind the word or setting before; true if
// nothing else can.
func (c *completer) behind(w *walk) bool {
	switch {
	case w.when:
		c.stepWords()
		return true
	case w.word != nil && w.inWord < len(w.word.Slots):
		c.slot(w, w.word.Slots[w.inWord])
		return true
	case w.along:
		c.units(quantity.Length)
	case w.setting == nil || w.figure > 0 && len(w.setting.Figures) == w.figure:
	case w.setting.Free:
		c.free(w)
		return true
	case len(w.setting.Words) > 0:
		for _, word := range w.setting.Words {
			c.add(word, "word", w.setting.Doc)
		}
		return true
	default:
		rest := w.setting.Figures[w.figure:]
		for _, f := range rest {
			c.units(f.Dim)
		}
		return len(rest) > 0 && !rest[0].Optional
	}
	return false
}

// settings lists the settings and words that are not given yet, and what may
// stand with them.
func (c *completer) settings(w *walk) {
	for i := range w.settings {
		s := &w.settings[i]
		switch {
		case s.Name == "when" || w.given[s.Name] && !s.Repeats:
		case namedSetting(s):
			c.add(s.Name, "setting", s.Describe())
		case len(s.Words) > 0:
			for _, word := range s.Words {
				c.add(word, "word", s.Doc)
			}
		default:
			for _, f := range s.Figures[:min(1, len(s.Figures))] {
				c.units(f.Dim)
			}
		}
	}
	for _, d := range w.words {
		if !w.given[d.Word] {
			c.add(d.Word, "word", d.Shape()+": "+d.Doc)
		}
	}
	if w.takesSteps() {
		c.add("when", "word", "when STEP, STEP: the steps that the setting before it is for")
		c.add("always", "step", c.steps("always"))
	}
	for _, m := range model.Marks() {
		if w.setting != nil && w.figure > 0 {
			c.add(m.Word, "mark", m.Doc)
		}
	}
	c.looks(w.colors, w.families)
}

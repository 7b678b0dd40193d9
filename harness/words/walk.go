package words

import (
	"slices"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// walk reads the items of a statement as the builder does, one by one, but
// only to say what each is: it has no finding and needs no whole line.
type walk struct {
	line
	at      int           // next fixed place
	word    *model.Word   // word whose places are being filled
	inWord  int           // next of them
	along   bool          // the place before was a leg: a length follows
	setting *part.Setting // setting whose figures, word or name are being read
	figure  int           // next of its figures
	when    bool          // a list of steps follows
	given   map[string]bool
}

// sense is what one item of a statement is.
type sense struct {
	sort    sort
	slot    model.Slot
	word    *model.Word
	setting *part.Setting
	figure  int // of the setting, for a figure
	role    *part.Role
}

// sort is the sort of thing that an item is.
type sort uint8

const (
	strange   sort = iota // nothing that the builder would read
	placed                // at a fixed place, or behind a word
	wordName              // a word with a reader of its own
	setName               // the name of a setting
	valued                // the word of a setting, or a free name behind it
	figured               // a figure of a setting
	labeled               // the label
	mark                  // sheet, measured, guess
	whenWord              // when
	stepWords             // a list of steps, or a step word that stands alone
	colored               // a color
	insulated             // an insulation
)

func newWalk(l line) *walk { return &walk{line: l, given: map[string]bool{}} }

// senses gives what each item of a statement is.
func senses(s *draft.Stmt) []sense {
	w := newWalk(lineOf(s))
	out := make([]sense, len(s.Items))
	for i, it := range s.Items {
		out[i] = w.take(it)
	}
	return out
}

// take reads one item.
func (w *walk) take(it draft.Item) sense {
	word := it.Word()
	if it.Quoted {
		word = ""
	}
	if s, ok := w.fixed(it, word); ok {
		return s
	}
	if s, ok := w.pending(it, word); ok {
		return s
	}
	w.word, w.setting, w.along, w.when = nil, nil, false, false
	if it.Quoted {
		return sense{sort: labeled}
	}
	if quantity.Looks(it.Raw) {
		return w.bareFigure(it)
	}
	return w.bareWord(it, word)
}

// fixed reads what stands at a fixed place.
func (w *walk) fixed(it draft.Item, word string) (sense, bool) {
	if w.at >= len(w.slots) {
		return sense{}, false
	}
	slot := w.slots[w.at]
	if slot.Several {
		if w.known(word) {
			w.at++
			return sense{}, false
		}
		return sense{sort: placed, slot: slot}, true
	}
	w.at++
	s := sense{sort: placed, slot: slot}
	for i := range w.roles {
		if r := &w.roles[i]; slot.Takes == model.AWord && r.Word == word {
			w.settings, s.role = r.Settings, r
		}
	}
	return s, true
}

// pending reads what has to stand behind the word or setting before it.
func (w *walk) pending(it draft.Item, word string) (sense, bool) {
	looks := quantity.Looks(it.Raw) && !it.Quoted
	switch {
	case w.when:
		w.when = false
		return sense{sort: stepWords}, true
	case w.word != nil && w.inWord < len(w.word.Slots):
		slot := w.word.Slots[w.inWord]
		if slot.Takes == model.AFigure && !looks {
			return sense{}, false
		}
		w.inWord++
		w.along = slot.Takes == model.ASpot && strings.Contains(it.Text, "-")
		return sense{sort: placed, slot: slot, word: w.word}, true
	case w.along && looks:
		w.along = false
		return sense{sort: placed, slot: alongSlot, word: w.word}, true
	case w.setting == nil:
	case looks:
		if i := w.nextFigure(it); i >= 0 {
			w.figure = i + 1
			return sense{sort: figured, setting: w.setting, figure: i}, true
		}
	case w.figure == 0 && (w.setting.Free && !it.IsList() || slices.Contains(w.setting.Words, word)):
		s := sense{sort: valued, setting: w.setting}
		w.setting = nil
		return s, true
	}
	return sense{}, false
}

var alongSlot = model.Slot{Name: "LENGTH", Takes: model.AFigure, Dim: quantity.Length}

// nextFigure gives the figure of the open setting that an item can be, -1 for
// none; those that may be left out are passed over.
func (w *walk) nextFigure(it draft.Item) int {
	q, err := quantity.Parse(it.Raw)
	if err != nil {
		return -1
	}
	for i := w.figure; i < len(w.setting.Figures); i++ {
		if f := w.setting.Figures[i]; f.Dim == q.Dim {
			return i
		} else if !f.Optional {
			return -1
		}
	}
	return -1
}

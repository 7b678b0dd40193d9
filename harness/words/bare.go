package words

import (
	"slices"

	"legwork/gauge"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
)

// bareFigure reads a figure that stands without a name before it.
func (w *walk) bareFigure(it draft.Item) sense {
	for i := range w.settings {
		s := &w.settings[i]
		if !s.Bare || len(s.Figures) == 0 || w.given[s.Name] && !s.Repeats {
			continue
		}
		w.setting, w.figure = s, 0
		if n := w.nextFigure(it); n >= 0 {
			w.figure, w.given[s.Name] = n+1, true
			return sense{sort: figured, setting: s, figure: n}
		}
	}
	w.setting = nil
	return sense{}
}

// bareWord reads a word that nothing before it waits for.
func (w *walk) bareWord(it draft.Item, word string) sense {
	for i := range w.words {
		if d := &w.words[i]; d.Word == word && word != "" {
			w.word, w.inWord, w.given[word] = d, 0, true
			return sense{sort: wordName, word: d}
		}
	}
	for i := range w.settings {
		s := &w.settings[i]
		switch {
		case s.Name == "when" || word == "":
		case s.Name == word && namedSetting(s):
			w.setting, w.figure, w.given[s.Name] = s, 0, true
			return sense{sort: setName, setting: s}
		case s.Bare && slices.Contains(s.Words, word):
			w.given[s.Name] = true
			return sense{sort: valued, setting: s}
		case s.Bare && threaded(*s) && model.IsThread(word):
			w.given[s.Name] = true
			return sense{sort: figured, setting: s}
		}
	}
	return w.commonWord(word)
}

// commonWord reads the words that many statements have.
func (w *walk) commonWord(word string) sense {
	_, insulation := gauge.FamilyOf(word)
	switch {
	case word == "when" && w.takesSteps():
		w.when = true
		return sense{sort: whenWord}
	case slices.Contains(markWords(), word):
		return sense{sort: mark}
	case w.families && insulation:
		return sense{sort: insulated}
	case w.colors && model.IsColor(word):
		return sense{sort: colored}
	case w.takesSteps() && word != "":
		return sense{sort: stepWords}
	}
	return sense{}
}

// known reports whether a word is a setting or a word of the statement.
func (w *walk) known(word string) bool {
	return slices.ContainsFunc(w.settings, func(s part.Setting) bool { return s.Name == word && namedSetting(&s) }) ||
		slices.ContainsFunc(w.words, func(d model.Word) bool { return d.Word == word })
}

func (w *walk) takesSteps() bool {
	return slices.ContainsFunc(w.settings, func(s part.Setting) bool { return s.Steps })
}

// namedSetting reports whether a setting is written by its name.
func namedSetting(s *part.Setting) bool {
	return !s.Bare || len(s.Figures)+len(s.Words) == 0 && !s.Free
}

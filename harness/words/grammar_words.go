package words

import (
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// ofWords are the rules of words with what stands behind them.
func ofWords(all []model.Word) []rule {
	var rules []rule
	for _, w := range all {
		r := rule{Match: before + "(" + w.Word + ")" + after, Captures: map[string]capture{"1": named(settingScope)}}
		if len(w.Slots) > 0 && takenScope(w.Slots[0].Takes) != "" {
			text := item
			if w.Slots[0].Several {
				text = list
			}
			r.Match += `(?:[ \t]+(` + text + `))?`
			r.Captures["2"] = named(takenScope(w.Slots[0].Takes))
		}
		rules = append(rules, r)
	}
	return rules
}

// ofSettings are the rules of settings; figures have theirs in common.
func ofSettings(all []part.Setting) []rule {
	var rules []rule
	var names, words []string
	steps, thread := false, false
	for _, s := range all {
		switch {
		case s.Free:
			rules = append(rules, rule{Match: before + "(" + s.Name + ")" + after + `(?:[ \t]+(` + item + `))?`,
				Captures: map[string]capture{"1": named(settingScope), "2": named(useScope)}})
		case !s.Bare || len(s.Figures)+len(s.Words) == 0:
			names = append(names, s.Name)
		}
		words = append(words, s.Words...)
		steps = steps || s.Steps
		thread = thread || threaded(s)
	}
	if steps {
		rules = append(rules, include("steps"))
	}
	if thread {
		rules = append(rules, include("thread"))
	}
	if len(names) > 0 {
		rules = append(rules, whole(settingScope, names))
	}
	if len(words) > 0 {
		rules = append(rules, whole(wordScope, words))
	}
	return rules
}

// ofDevices are the rules of the words that devices may say: all of them, and
// those that can return through metal.
func ofDevices() (every, grounded rule) {
	for _, w := range model.DeviceWords() {
		if w.Word == "grounds-to" {
			grounded.Patterns = append(grounded.Patterns, ofWords([]model.Word{w})...)
		} else {
			every.Patterns = append(every.Patterns, ofWords([]model.Word{w})...)
		}
	}
	return every, grounded
}

// shared are the rules that several statements have.
func shared() map[string]rule {
	letters, _ := model.ColorLetters()
	color := alternatives(letters)
	var units []string
	for _, d := range dims {
		units = append(units, quantity.UnitsOf(d)...)
	}
	usual := stepNames()
	for _, w := range model.GroupWords() {
		usual = append(usual, w.Word)
	}
	figure := map[string]capture{"1": named(unitScope)}
	return map[string]rule{
		"comment": {Match: `(?:^|(?<=[ \t]))#.*$`, Name: "comment.line.number-sign.draft"},
		"string": {Begin: `"`, End: `"(?!")|$`, Name: "string.quoted.double.draft",
			Patterns: []rule{{Match: `""`, Name: "constant.character.escape.draft"}}},
		"steps": {Patterns: []rule{
			{Match: before + `(when)` + after + `(?:[ \t]+(` + list + `))?`, Captures: map[string]capture{"1": named(settingScope), "2": named(stepScope)}},
			whole(stepScope, usual),
		}},
		"mark":       whole(markScope, markWords()),
		"insulation": whole(familyScope, model.FamilyNames()),
		"color":      {Match: before + color + `(?:/` + color + `)?` + after, Name: colorScope + ".draft"},
		"thread":     {Match: before + `(?:M[0-9]+(?:\.[0-9]+)?|No[0-9]+)` + after, Name: figureScope + ".draft"},
		"quantity": {Patterns: []rule{
			{Match: before + `[0-9]+(ft)[0-9]+(?:\.[0-9]+)?(in)` + after, Name: figureScope + ".draft", Captures: map[string]capture{"1": named(unitScope), "2": named(unitScope)}},
			{Match: before + `[+-]?(?:[0-9]+/[0-9]+|[0-9]+(?:\.[0-9]+)?)(` + alternatives(units) + `)?` + after, Name: figureScope + ".draft", Captures: figure},
		}},
		"terminal": {Match: before + wchar + `+(?:\.` + wchar + `+)+` + `(?!` + wchar + `)`, Name: terminalScope + ".draft"},
		"name":     {Match: before + wchar + `+` + after, Name: terminalScope + ".draft"},
	}
}

func markWords() []string {
	var out []string
	for _, w := range model.Marks() {
		out = append(out, w.Word)
	}
	return out
}

func stepNames() []string {
	var out []string
	for _, s := range model.UsualSteps() {
		out = append(out, s.Name)
	}
	return out
}

// threaded reports whether a setting is a stud's thread.
func threaded(s part.Setting) bool {
	return len(s.Figures) > 0 && s.Figures[0].Dim == quantity.Thread
}

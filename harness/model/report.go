package model

import (
	"fmt"
	"strings"

	"legwork/harness/diag"
)

// Rule ids of the findings that building a model makes.
const (
	wordRule      = "draft-word"      // a word that has no meaning where it stands
	nameRule      = "draft-name"      // a name that nothing in the draft bears, or that can't be one
	unitRule      = "draft-unit"      // a figure without its unit, or with another's
	rangeRule     = "draft-range"     // a figure outside what is allowed
	duplicateRule = "draft-duplicate" // the same thing said or named twice
	missingRule   = "draft-missing"   // something that has to be said
	limitRule     = "draft-limit"     // more than this version takes
	includeRule   = "draft-include"   // a file that the draft includes and that is not read
	overVoltsRule = "over-60-volts"   // beyond what legwork is for
)

// maxFindings is how many mistakes of one draft are reported.
const maxFindings = 200

// maxNearest is up to how many findings, and among how many words, the nearest
// word is looked for: a hostile draft must not take minutes.
const maxNearest = 5000

// say reports a fault at a word. The result may be added to until the next
// report.
func (b *builder) say(rule string, at diag.Span, format string, args ...any) *diag.Finding {
	b.found.Add(diag.Finding{Rule: rule, Severity: diag.Fault, At: at, Msg: short(fmt.Sprintf(format, args...))})
	return &b.found[len(b.found)-1]
}

// sayUnknown reports a word that is none of those expected, with the nearest
// of them, and what is expected as detail.
func (b *builder) sayUnknown(rule string, at diag.Span, word string, expected []string, format string, args ...any) {
	b.sayUnknownIn(func(near string) string { return near }, rule, at, word, expected, format, args...)
}

// sayUnknownIn is sayUnknown for a word that is part of what stands at the
// place: whole gives all of it with the nearest word put in.
func (b *builder) sayUnknownIn(whole func(near string) string, rule string, at diag.Span, word string, expected []string, format string, args ...any) {
	near := ""
	if len(b.found) <= maxNearest && len(expected) <= maxNearest {
		near = nearestOf(word, expected)
	}
	msg := fmt.Sprintf(format, args...)
	if near != "" {
		msg += fmt.Sprintf("; did you mean %s?", near)
	}
	f := b.say(rule, at, "%s", msg)
	if len(expected) > 0 {
		f.Detail = b.newDetail("Expected " + oneOf(expected) + ".")
	}
	if near != "" && plainWord(near) {
		f.Fix = &diag.Fix{Msg: "write " + whole(near), Edits: []diag.Edit{{At: at, Text: whole(near)}}}
	}
}

// newDetail gives a list of words for the first few findings that have it; it
// helps nobody below every row of a table.
func (b *builder) newDetail(text string) string {
	const few = 3
	if b.details == nil {
		b.details = map[string]int{}
	}
	if b.details[text]++; b.details[text] > few {
		return ""
	}
	return text
}

// plainWord reports whether a word can stand in a draft without quotes.
func plainWord(word string) bool { return !strings.ContainsAny(word, " \t\"#,") }

// nearestOf gives the expected word that was most likely meant: the same but
// for case, else the nearest in spelling.
func nearestOf(word string, expected []string) string {
	for _, e := range expected {
		if strings.EqualFold(e, word) {
			return e
		}
	}
	for _, e := range expected {
		if alike.Replace(e) == alike.Replace(word) {
			return e
		}
	}
	return diag.Nearest(word, expected)
}

// oneOf lists words for a sentence: "a, b or c". A long list is cut.
func oneOf(words []string) string {
	const most = 48
	if len(words) > most {
		return strings.Join(words[:most], ", ") + " and more"
	}
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}

// clip shortens a word of the draft so that a message stays one line.
func clip(word string) string {
	const most = 40
	r := []rune(word)
	if len(r) <= most {
		return word
	}
	return string(r[:most-3]) + "..."
}

// short holds a message to 120 characters.
func short(msg string) string {
	const most = 120
	r := []rune(msg)
	if len(r) <= most {
		return msg
	}
	return string(r[:most-3]) + "..."
}

// relatedTo is one related place.
func relatedTo(at diag.Span, msg string) []diag.Related { return []diag.Related{{At: at, Msg: msg}} }

// findings gives everything found, sorted, at most maxFindings of it.
func (b *builder) findings() diag.List {
	b.dropSeconds()
	b.found.Sort()
	if extra := len(b.found) - maxFindings; extra > 0 {
		last := b.found[maxFindings-1].At
		b.found = append(b.found[:maxFindings-1:maxFindings-1], diag.Finding{
			Rule: limitRule, Severity: diag.Fault, At: last,
			Msg: fmt.Sprintf("%d more mistakes are not shown", extra+1+b.unsaid),
		})
	}
	return b.found
}

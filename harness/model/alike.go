package model

import (
	"strings"

	"legwork/harness/diag"
	"legwork/harness/quantity"
)

// alike writes letters that look like digits as digits.
var alike = strings.NewReplacer("O", "0", "o", "0", "l", "1", "I", "1")

// digitsMeant gives a figure in which a letter stands for a digit (1OA, l5A)
// as it was meant, "" where that is no figure either.
func digitsMeant(text string) string {
	i := strings.LastIndexAny(text, "0123456789OoIl")
	if i < 0 {
		return ""
	}
	meant := alike.Replace(text[:i+1]) + text[i+1:]
	if q, err := quantity.Parse(meant); err != nil || meant == text || q.Unit == "" {
		return ""
	}
	return meant
}

// sayAlike answers a figure in which a letter stands for a digit.
func (b *builder) sayAlike(text string, at diag.Span) bool {
	meant := digitsMeant(text)
	if meant == "" {
		return false
	}
	f := b.say(unitRule, at, "%s has a letter where a digit belongs: write %s", clip(text), meant)
	f.Fix = &diag.Fix{Msg: "write " + meant, Edits: []diag.Edit{{At: at, Text: meant}}}
	return true
}

// sayDecimal answers a figure with a decimal comma.
func (b *builder) sayDecimal(raw string, at diag.Span) bool {
	meant := strings.Replace(strings.ReplaceAll(raw, " ", ""), ",", ".", 1)
	q, err := quantity.Parse(meant)
	whole, _, _ := strings.Cut(raw, ",")
	if err != nil || q.Unit == "" || !digitsOnly(strings.TrimSpace(whole)) {
		return false
	}
	f := b.say(unitRule, at, "a figure has a point, not a comma: write %s", meant)
	f.Fix = &diag.Fix{Msg: "write " + meant, Edits: []diag.Edit{{At: at, Text: meant}}}
	return true
}

package harness

import (
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/words"
)

// Hover tells in plain text what the word at a line and column of the draft
// means, and where that word stands. Lines and columns count from 1, columns
// in characters. ok is false where there is nothing to tell: on a blank, in a
// comment, on a word that legwork does not know.
func Hover(d *Draft, line, col int) (text string, at diag.Span, ok bool) {
	return d.view().Hover(line, col)
}

// Candidate is a word that may stand where the cursor is, with what it means
// and the span that it replaces.
type Candidate = words.Candidate

// Complete lists what may stand at a line and column of the draft, in the
// order of the declarations; what is not finished, that line or the rest of
// the draft, is read as far as it goes. It is empty inside strings and
// comments, and where only the user can know: a new name, a number.
func Complete(d *Draft, line, col int) []Candidate {
	return d.view().Complete(line, col)
}

// view is the draft as an editor has it. Trees that were let go of are read
// again.
func (d *Draft) view() words.View {
	v := words.View{File: whole(d.File), Model: d.Model, Rules: map[string]string{}}
	v.Included = append([]*draft.File(nil), d.Included...)
	for i, f := range v.Included {
		v.Included[i] = whole(f)
	}
	for _, r := range check.Rules() {
		v.Rules[r.ID] = r.Title
	}
	return v
}

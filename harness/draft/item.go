package draft

import "legwork/harness/diag"

// head answers a first word that the grammar does not allow.
func (l *line) head(r Ref) {
	if len(r.Parts) > 1 {
		from := r.At.Off - l.base
		l.fault(from, from+len(r.Raw), "a line begins with one word that says what it is, such as wire: "+
			quoted(r.Raw)+" has a period")
	}
}

// add makes a reference the next member of the open list, or a new item.
func (l *line) add(r Ref, bad bool) {
	one := [1]Ref{r}
	if !l.afterComma || len(l.items) == 0 {
		l.items = append(l.items, Item{
			Raw: r.Raw, Quoted: r.Quoted(), Text: r.Text(), List: l.refSlab.copyOf(one[:]), At: r.At, Bad: bad,
		})
		return
	}
	it := &l.items[len(l.items)-1]
	it.List = append(it.List, r)
	it.At.End, it.At.EndOff = r.At.End, r.At.EndOff
	it.Raw = l.s[it.At.Off-l.base : it.At.EndOff-l.base]
	it.Text, it.Quoted = it.Raw, false
	it.Bad = it.Bad || bad
	l.afterComma = false
}

// at is the span of a reference that ends at pos.
func (l *line) at(from, col int) diag.Span {
	return diag.Span{
		File: l.name, Line: l.num, Col: col, End: l.col(l.pos),
		Off: l.base + from, EndOff: l.base + l.pos,
	}
}

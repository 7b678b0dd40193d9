package model

import (
	"legwork/harness/diag"
	"legwork/harness/draft"
)

// cursor walks the items of one statement.
type cursor struct {
	items []draft.Item
	i     int
	end   diag.Span // an empty span after the last item, for what is missing
}

func newCursor(s *draft.Stmt) *cursor {
	end := s.Head.At
	if n := len(s.Items); n > 0 {
		end = s.Items[n-1].At
	}
	return &cursor{items: s.Items, end: end}
}

func (c *cursor) more() bool { return c.i < len(c.items) }

// peek gives the next item; there has to be one.
func (c *cursor) peek() draft.Item { return c.items[c.i] }

func (c *cursor) take() draft.Item {
	c.i++
	return c.items[c.i-1]
}

// word gives the text of the next item if it is one plain word.
func (c *cursor) word() string { return c.wordAt(0) }

// wordAt gives the text of the item n places on if it is one plain word.
func (c *cursor) wordAt(n int) string {
	if c.i+n >= len(c.items) {
		return ""
	}
	it := c.items[c.i+n]
	if it.Quoted || it.IsList() || len(it.List) == 0 {
		return ""
	}
	return it.List[0].Raw
}

// span joins two spans of one line.
func span(from, to diag.Span) diag.Span {
	if from.Line != to.Line || to.EndOff < from.EndOff {
		return from
	}
	from.End, from.EndOff = to.End, to.EndOff
	return from
}

// refsOf gives the references of an item; a string is one of one part.
func refsOf(it draft.Item) []draft.Ref {
	if it.Quoted {
		return []draft.Ref{{Raw: it.Text, Parts: []string{it.Text}, At: it.At}}
	}
	return it.List
}

package diag

import (
	"bytes"
	"strings"
)

// line gives line n (from 1) of src without its end, and its byte offset.
func line(src []byte, n int) (text []byte, start int, ok bool) {
	for ; n > 1; n-- {
		i := bytes.IndexByte(src[start:], '\n')
		if i < 0 {
			return nil, 0, false
		}
		start += i + 1
	}
	text, _, _ = bytes.Cut(src[start:], []byte{'\n'})
	return bytes.TrimSuffix(text, []byte{'\r'}), start, n == 1
}

// marked finds the cells that a span covers: from cell i to before cell j.
// Byte offsets are trusted where they fall into the line; a span made without
// them goes by its columns.
func marked(c []cell, s Span, start, length int) (i, j int) {
	from, to := s.Off-start, s.EndOff-start
	byOffset := from >= 0 && from <= length && (from == 0) == (s.Col == 1) &&
		(to > from || s.End <= s.Col)
	if !byOffset { // a cell is a character, and so is a column
		i = min(max(s.Col-1, 0), len(c))
		return i, min(max(s.End-1, i+1), len(c))
	}
	for i < len(c) && c[i].off < from {
		i++
	}
	for j = i; j < len(c) && c[j].off < to; {
		j++
	}
	return i, j
}

// excerpt gives the source line as shown and the line of carets under it,
// both at most width columns: of a longer line the part around the mark.
func excerpt(text []byte, start int, s Span, width int) (shown, carets string) {
	c := cells(text)
	i, j := marked(c, s, start, len(text))
	from, to := window(c, i, j, width)
	var left, mark int
	var b strings.Builder
	if from > 0 {
		b.WriteString(cut)
		left = len(cut)
	}
	for k := from; k < to; k++ {
		b.WriteString(c[k].text)
		switch {
		case k < i:
			left += c[k].width
		case k < j:
			mark += c[k].width
		}
	}
	if to < len(c) {
		b.WriteString(cut)
	}
	return b.String(), strings.Repeat(" ", left) + strings.Repeat("^", max(mark, 1))
}

const cut = "..."

// window picks the cells to show so that they take at most width columns and
// hold the beginning of the mark, and of the rest as much as there is room for.
func window(c []cell, i, j, width int) (from, to int) {
	total := 0
	for _, one := range c {
		total += one.width
	}
	if total < width { // one column stays free for a caret past the end
		return 0, len(c)
	}
	room := width - 2*len(cut) - 1
	from, to = i, i
	for used := 0; ; {
		switch {
		case to < j && used+c[to].width <= room: // the mark first
			used += c[to].width
			to++
		case to >= j && from > 0 && i-from <= to-j && used+c[from-1].width <= room:
			from--
			used += c[from].width
		case to >= j && to < len(c) && used+c[to].width <= room:
			used += c[to].width
			to++
		case to >= j && from > 0 && used+c[from-1].width <= room:
			from--
			used += c[from].width
		default:
			return from, to
		}
	}
}

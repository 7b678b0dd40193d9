package diag

import (
	"bytes"
	"strings"
	"unicode/utf8"
)

// lineIndex finds the lines of a file without reading it again for each.
type lineIndex struct {
	src    []byte
	starts []int // byte offsets of the lines
}

// index gives the lines of a file, found when they are first asked for.
func (p *printer) index(file string, src []byte) *lineIndex {
	x := p.lines[file]
	if x == nil || len(x.src) != len(src) {
		x = newLineIndex(src)
		if p.lines == nil {
			p.lines = map[string]*lineIndex{}
		}
		p.lines[file] = x
	}
	return x
}

func newLineIndex(src []byte) *lineIndex {
	x := &lineIndex{src: src, starts: make([]int, 1, bytes.Count(src, []byte{'\n'})+1)}
	for at := 0; ; {
		i := bytes.IndexByte(src[at:], '\n')
		if i < 0 {
			return x
		}
		at += i + 1
		x.starts = append(x.starts, at)
	}
}

// line gives line n (from 1) without its end, and its byte offset.
func (x *lineIndex) line(n int) (text []byte, start int, ok bool) {
	if n < 1 || n > len(x.starts) {
		return nil, 0, false
	}
	start = x.starts[n-1]
	text, _, _ = bytes.Cut(x.src[start:], []byte{'\n'})
	return bytes.TrimSuffix(text, []byte{'\r'}), start, true
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
	text, start = nearby(text, start, s.Off)
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

// nearby cuts a very long line down to what lies around a byte offset, far
// more than is shown of it.
func nearby(text []byte, start, off int) ([]byte, int) {
	const side = 2 << 10
	from, at := 0, off-start
	if len(text) <= 2*side || at < 0 || at > len(text) {
		return text, start
	}
	for from = max(0, at-side); from > 0 && from < at && !utf8.RuneStart(text[from]); {
		from++
	}
	return text[from:min(len(text), at+side)], start + from
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

package draft

import (
	"strconv"
	"strings"

	"legwork/harness/diag"
)

// maxLevel is the deepest level of indent; 0 is the top.
const maxLevel = 4

// levels knows the open statements, one a level, and the depth at which each
// level stands. A depth is a count of blanks or of tabs, -1 while only a line
// with a fault has shown the level.
type levels struct {
	kind    byte // ' ' or '\t' once an indented line has shown it
	open    []*Stmt
	depth   []int
	odd     int // depth of the last statement when it fitted no level, else 0
	foreign []diag.Span
	first   int // index of the finding on lines of the other kind
	unit    int // blanks a level in a file of tabs, from the first such line
}

// place puts a statement into the tree by the indent before it, which is the
// first n bytes of the line.
func (p *parser) place(s *Stmt, n int) {
	level, ok := p.level(p.line.s[:n])
	if !ok {
		p.file.oddIndent = true
	}
	p.attach(s, level)
}

// attach makes the statement the last one of its level.
func (p *parser) attach(s *Stmt, level int) {
	v := &p.levels
	s.Level = level
	v.open = append(v.open[:min(level, len(v.open))], s)
	if level == 0 {
		p.file.Stmts = append(p.file.Stmts, s)
		return
	}
	s.Parent = v.open[level-1]
	s.Parent.Children = append(s.Parent.Children, s)
}

// level finds the level that an indent means; ok is false when the indent has
// a fault and the level is the nearest reading.
func (p *parser) level(indent string) (level int, ok bool) {
	v := &p.levels
	tabs := strings.Count(indent, "\t")
	width := p.line.col(len(indent)) - 1
	kind := byte(' ')
	if tabs > 0 {
		kind = '\t'
	}
	switch {
	case tabs > 0 && tabs < width:
		p.line.fault(0, len(indent), "tabs and blanks are mixed in this indent: use one of them in the whole file")
		return v.guess(indent), false
	case width > 0 && v.kind == 0:
		v.kind = kind
	case width > 0 && v.kind != kind:
		p.otherKind(len(indent))
		return v.guess(indent), false
	}
	return p.byDepth(width)
}

// byDepth finds the level of a depth of the file's own kind of indent.
func (p *parser) byDepth(width int) (level int, ok bool) {
	v := &p.levels
	top := len(v.open) - 1
	if top < 0 || width < v.depth[0] {
		v.set(0, width)
		if width > 0 {
			p.line.fault(0, p.line.indent, "the first statement of a draft is not indented")
		}
		return 0, width == 0
	}
	for top > 0 && (v.depth[top] > width || v.depth[top] < 0 && width <= v.known(top)) {
		top--
	}
	unsure := v.depth[top] < 0
	switch {
	case unsure || v.depth[top] == width:
		v.set(top, width)
		return top, true
	case top < len(v.open)-1 || v.odd == width:
		return p.unseen(top, width)
	case top == maxLevel:
		p.line.fault(0, p.line.indent, "this indent is too deep: a draft has 4 levels of indent")
		return top, false
	}
	v.set(top+1, width)
	return top + 1, true
}

// unseen answers a depth at which no open level stands.
func (p *parser) unseen(top, width int) (level int, ok bool) {
	v := &p.levels
	seen := make([]string, 0, maxLevel+1)
	for _, d := range v.depth[:len(v.open)] {
		if d >= 0 {
			seen = append(seen, strconv.Itoa(d))
		}
	}
	p.line.fault(0, p.line.indent, "an indent of "+strconv.Itoa(width)+
		" lines up with nothing above: expected "+strings.Join(seen, " or "))
	v.depth = v.depth[:top+1]
	v.odd = width
	return top, false
}

// known gives the nearest known depth left of a level.
func (v *levels) known(level int) int {
	for level--; level > 0 && v.depth[level] < 0; level-- {
	}
	return v.depth[level]
}

// set notes the depth of a level and forgets the deeper ones.
func (v *levels) set(level, width int) {
	v.depth = append(v.depth[:level], width)
	v.odd = 0
}

// guess gives the level of an indent with tabs in a file of blanks, or the
// other way about. A tab goes to the next level; blanks are counted by the
// unit that the file shows.
func (v *levels) guess(indent string) int {
	tabs := strings.Count(indent, "\t")
	if tabs == 0 && v.unit == 0 {
		v.unit = len(indent)
	}
	unit := max(v.unit, 1)
	if v.kind == ' ' && len(v.depth) > 1 && v.depth[1] > v.depth[0] {
		unit = v.depth[1] - v.depth[0]
	}
	width := 0
	for _, c := range indent {
		width++
		if c == '\t' {
			width = (width + unit - 1) / unit * unit
		}
	}
	level := width / unit
	if v.kind == '\t' && tabs > 0 {
		level = tabs
	}
	level = min(max(level, 1), len(v.open), maxLevel)
	if level == len(v.depth) {
		v.set(level, -1)
	}
	v.depth = v.depth[:level+1]
	v.odd = 0
	return level
}

// otherKind gathers the lines that are indented unlike the first one; they
// are one mistake with a count, made in one setting of an editor.
func (p *parser) otherKind(n int) {
	v := &p.levels
	if len(v.foreign) == 0 {
		v.first = len(p.report.list)
		p.line.fault(0, n, "")
		if len(p.report.list) == v.first { // not listed: the next such line is the first
			return
		}
	} else {
		p.line.faults++
	}
	v.foreign = append(v.foreign, p.line.span(0, n))
}

// finish words the finding on mixed indents and puts all in order.
func (p *parser) finish() {
	v := &p.levels
	if n := len(v.foreign); n > 0 && v.first < min(maxFindings, len(p.report.list)) {
		is, file := "tabs", "blanks"
		if v.kind == '\t' {
			is, file = file, is
		}
		f := &p.report.list[v.first]
		f.Msg = "this line is indented with " + is + ", the file with " + file
		if n > 1 {
			f.Msg += " (" + strconv.Itoa(n) + " such lines)"
		}
		for _, at := range v.foreign[1:min(n, 6)] {
			f.Related = append(f.Related, diag.Related{At: at, Msg: "also here"})
		}
	}
	over := len(p.report.list)
	if p.report.over {
		over--
	}
	p.report.list[:over].Sort()
}

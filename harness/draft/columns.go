package draft

import "bytes"

const (
	maxWidth = 100 // of a line in a block, in columns
	colGap   = 2   // blanks between columns, and before a comment
	maxTries = 4   // to find a block without the lines that are too long for it
)

// layOut cuts every statement into cells and finds the columns of each block.
func (t *printer) layOut() {
	lines := t.file.Lines
	t.rows = make([]row, len(lines))
	for n := range lines {
		if s := lines[n].Stmt; s != nil && !lines[n].Bad {
			t.rows[n] = cut(s)
		}
	}
	t.block(t.file.Stmts)
	t.section(t.file.Stmts)
	for s := range t.file.All() {
		if len(s.Children) > 0 {
			t.block(s.Children)
			t.section(s.Children)
		}
	}
}

// block finds the runs of siblings with one head in directly following lines
// and gives each its columns.
func (t *printer) block(stmts []*Stmt) {
	for from := 0; from < len(stmts); {
		to := from + 1
		for to < len(stmts) && stmts[to].Line == stmts[to-1].Line+1 &&
			stmts[to].Head.Raw == stmts[from].Head.Raw && !t.bad(stmts[to]) && !t.bad(stmts[from]) {
			to++
		}
		t.columns(stmts[from:to])
		from = to
	}
}

func (t *printer) bad(s *Stmt) bool { return t.file.Lines[s.Line-1].Bad }

// columns gives the statements of a block common widths. A line that would be
// too long stays out, and the others are measured again without it.
func (t *printer) columns(stmts []*Stmt) {
	if len(stmts) < 2 {
		return
	}
	in := make([]*row, 0, len(stmts))
	for _, s := range stmts {
		if r := &t.rows[s.Line-1]; r.length()+len(t.indent(&t.file.Lines[s.Line-1])) <= maxWidth {
			in = append(in, r)
		}
	}
	indent := len(t.indent(&t.file.Lines[stmts[0].Line-1]))
	for range maxTries {
		widths := columnWidths(in)
		fits := in[:0:0]
		for _, r := range in {
			r.widths = widths
			if r.length()+indent <= maxWidth {
				fits = append(fits, r)
			} else {
				r.widths = nil
			}
		}
		if len(fits) == len(in) {
			t.commentColumn(in)
			return
		}
		in = fits
	}
	for _, r := range in {
		r.widths = nil
	}
}

// columnWidths gives the width of each column over all rows. The last cell of
// a row has nothing to its right to line up and widens no column.
func columnWidths(rows []*row) []int {
	var widths []int
	for _, r := range rows {
		for i, c := range r.cells[:len(r.cells)-1] {
			if i == len(widths) {
				widths = append(widths, 0)
			}
			widths[i] = max(widths[i], displayWidth(c))
		}
	}
	return widths
}

// commentColumn puts the comments of a block under each other.
func (t *printer) commentColumn(rows []*row) {
	most := 0
	for _, r := range rows {
		most = max(most, r.length())
	}
	for _, r := range rows {
		r.comment = most + colGap
	}
}

// length gives the columns that a row takes without its indent and comment.
func (r *row) length() int {
	n := 0
	for i, c := range r.cells {
		w := displayWidth(c)
		if i < len(r.cells)-1 {
			w = r.padded(i, w) + r.gapAfter(i)
		}
		n += w
	}
	return n
}

// padded gives the width of cell i, itself w wide, in its column.
func (r *row) padded(i, w int) int {
	if i == 0 {
		w = max(w, r.head)
	}
	if i < len(r.widths) {
		w = max(w, r.widths[i])
	}
	return w
}

func (r *row) gapAfter(i int) int {
	if i == 0 {
		return r.gap
	}
	return colGap
}

// write prints the cells and gives the columns used.
func (r *row) write(out *bytes.Buffer) int {
	used := 0
	for i, c := range r.cells {
		out.WriteString(c)
		w := displayWidth(c)
		used += w
		if i < len(r.cells)-1 {
			n := r.padded(i, w) - w + r.gapAfter(i)
			pad(out, n)
			used += n
		}
	}
	return used
}

package draft

import "strings"

// section lines up the heads of sibling statements up to a blank or comment
// line, so that the names of devices stand under each other. Statements with a
// number for a name are tables of their own: wire, strap, circuit.
func (t *printer) section(stmts []*Stmt) {
	var run []*row
	most, last := 0, 0
	flush := func() {
		for _, r := range run {
			r.head = most
		}
		run, most = run[:0], 0
	}
	for _, s := range stmts {
		if t.bad(s) || t.apart(last, s.Line) {
			flush()
		}
		last = s.Line
		r := &t.rows[s.Line-1]
		if t.bad(s) || len(r.cells) < 2 || numbered(r) {
			continue
		}
		run = append(run, r)
		most = max(most, displayWidth(r.cells[0]))
	}
	flush()
}

// apart reports whether a blank or a comment line stands between two lines.
func (t *printer) apart(from, to int) bool {
	for n := from; n < to-1; n++ {
		if ln := &t.file.Lines[n]; ln.Stmt == nil || ln.Bad {
			return true
		}
	}
	return false
}

func numbered(r *row) bool {
	return strings.Trim(r.cells[1], "0123456789") == ""
}

package draft

// commentIndent gives the blanks before a comment that has a line to itself:
// it stays at the level of the statement that it stood at.
func (t *printer) commentIndent(n int) string {
	ln := &t.file.Lines[n]
	was := indentOf(ln.Text)
	if t.keepIndent || was == "" {
		return was
	}
	before, after := t.neighbor(n, -1), t.neighbor(n, 1)
	if before == nil {
		return ""
	}
	width := len(was)
	if after != nil && len(t.textIndent(after)) == width {
		return levelIndent(after.Level)
	}
	if width > len(t.textIndent(before)) {
		return levelIndent(before.Level + 1)
	}
	for before.Parent != nil && len(t.textIndent(before)) > width {
		before = before.Parent
	}
	return levelIndent(before.Level)
}

// neighbor finds the next line with a statement in a direction.
func (t *printer) neighbor(n, step int) *Stmt {
	for n += step; n >= 0 && n < len(t.file.Lines); n += step {
		if s := t.file.Lines[n].Stmt; s != nil {
			return s
		}
	}
	return nil
}

// textIndent gives the indent of a statement as it was written.
func (t *printer) textIndent(s *Stmt) string {
	return indentOf(t.file.Lines[s.Line-1].Text)
}

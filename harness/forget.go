package harness

// Forget lets go of the syntax trees, a quarter of what a large draft takes in
// memory: they serve to tidy and to edit a draft, not to check it. The texts
// stay, for findings show lines of them.
func (d *Draft) Forget() {
	for _, f := range append(d.Included, d.File) {
		f.Stmts, f.Lines = nil, nil
	}
	for _, v := range d.Model.Devices {
		v.Stmt = nil
	}
	for _, w := range d.Model.Wires {
		w.Stmt = nil
	}
}

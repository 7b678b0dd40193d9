package harness

import (
	"cmp"
	"context"
	"slices"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

// Mended is a draft with offered fixes carried out.
type Mended struct {
	Text  []byte    // of the draft
	Done  diag.List // findings whose fix is in Text
	Left  diag.List // findings whose fix is not: it makes another one, lies in an included file, or has to wait
	After *Result   // the check of Text
}

// mostTries bounds how many fixes of one severity are tried one by one.
const mostTries = 100

// Mend carries out the fixes that the findings of a result offer, and checks
// the draft again. A fix stays only if its finding is gone by it and nothing
// at warning or above has come. Those of one severity are tried together, and
// one by one where that fails, the worst first. What a note advises has to
// wait until no fault is left: with a load that is dead by mistake a fuse looks
// too large. The error is the one of [Draft.Check].
func (r *Result) Mend(ctx context.Context, o Options) (*Mended, error) {
	out := &Mended{Text: r.Draft.File.Src, After: r}
	for least := diag.Danger; least >= diag.Note; least-- {
		var offered diag.List
		for _, f := range r.Findings {
			if f.Fix != nil && f.Severity == least {
				offered.Add(f)
			}
		}
		if least == diag.Note && out.After.Findings.Worst() >= diag.Fault {
			out.Left.Add(offered...)
			break
		}
		if err := out.each(ctx, r, offered, o); err != nil {
			return nil, err
		}
	}
	return out, nil
}

// each tries fixes of one severity on top of what is done.
func (m *Mended) each(ctx context.Context, r *Result, offered diag.List, o Options) error {
	if len(offered) > 1 {
		if ok, err := m.try(ctx, r, append(slices.Clip(m.Done), offered...), o); err != nil || ok {
			return err
		}
	}
	for i, f := range offered {
		if !m.still(f) {
			continue // gone by another fix
		}
		ok, err := i < mostTries, error(nil)
		if ok {
			ok, err = m.try(ctx, r, append(slices.Clip(m.Done), f), o)
		}
		if err != nil {
			return err
		}
		if !ok {
			m.Left.Add(f)
		}
	}
	return nil
}

// still reports whether a finding is there after what is done: edits stay on
// their line, so it is known by that.
func (m *Mended) still(f diag.Finding) bool {
	return slices.ContainsFunc(m.After.Findings, func(g diag.Finding) bool {
		return g.Rule == f.Rule && g.At.File == f.At.File && g.At.Line == f.At.Line
	})
}

// try carries out the fixes of some findings of a result, and keeps the
// outcome if it is good.
func (m *Mended) try(ctx context.Context, r *Result, fixes diag.List, o Options) (ok bool, err error) {
	if slices.ContainsFunc(fixes, func(f diag.Finding) bool { return !r.Draft.owns(f.Fix) }) {
		return false, nil
	}
	text, ok := edited(r.Draft.File.Src, fixes)
	if !ok {
		return false, nil
	}
	d := r.Draft.rewritten(text)
	o.With = r.With()
	after, err := d.Check(ctx, o)
	if err != nil || !better(r, after, fixes) {
		return false, err
	}
	m.Text, m.Done, m.After = text, fixes, after
	return true, nil
}

// owns reports whether all edits of a fix lie in the draft's own text.
func (d *Draft) owns(f *diag.Fix) bool {
	return !slices.ContainsFunc(f.Edits, func(e diag.Edit) bool { return e.At.File != d.Name })
}

// edited carries out edits; ok is false where two of them touch.
func edited(src []byte, fixes diag.List) (text []byte, ok bool) {
	var edits []diag.Edit
	for _, f := range fixes {
		edits = append(edits, f.Fix.Edits...)
	}
	slices.SortStableFunc(edits, func(a, b diag.Edit) int { return cmp.Compare(a.At.Off, b.At.Off) })
	from := 0
	for i, e := range edits {
		if i > 0 && e == edits[i-1] {
			continue // asked for twice
		}
		if e.At.Off < from || e.At.EndOff < e.At.Off || e.At.EndOff > len(src) {
			return nil, false
		}
		text = append(append(text, src[from:e.At.Off]...), e.Text...)
		from = e.At.EndOff
	}
	return append(text, src[from:]...), true
}

// rewritten is the draft with another text and the files that it includes.
// Edits stay on their line, so an include is found again by its line.
func (d *Draft) rewritten(text []byte) *Draft {
	file, found := draft.Parse(d.Name, text)
	setup := d.setup
	setup.Included = nil
	if d.setup.Included != nil {
		setup.Included = map[diag.Span]*draft.File{}
	}
	for at, f := range d.setup.Included {
		if at.File == d.Name {
			for _, s := range file.Stmts {
				if s.Line == at.Line {
					at = s.Head.At
				}
			}
		}
		setup.Included[at] = whole(f)
	}
	return build(file, found, setup, d.Included)
}

// better reports whether the findings that were mended are gone and nothing at
// warning or above has come. Where mistakes in the text kept the rules from
// running, only what is wrong with the text counts.
func better(before, after *Result, mended diag.List) bool {
	if before.Sizes == nil && after.Sizes != nil {
		return true
	}
	had := map[string]int{}
	for _, f := range before.Findings {
		had[f.Rule]++
	}
	for _, f := range mended {
		had[f.Rule]-- // has to be gone
	}
	for _, f := range after.Findings {
		if f.Severity < diag.Warning && !mends(mended, f.Rule) {
			continue
		}
		if had[f.Rule]--; had[f.Rule] < 0 {
			return false
		}
	}
	return true
}

func mends(list diag.List, rule string) bool {
	return slices.ContainsFunc(list, func(f diag.Finding) bool { return f.Rule == rule })
}

package words

import (
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// View is a draft as an editor has it: the trees of its text and of what it
// includes, the model as far as it could be read, and the titles of the rules
// by their names.
type View struct {
	File     *draft.File
	Included []*draft.File
	Model    *model.Model
	Rules    map[string]string
}

// Hover tells what the word at a line and column means, and where it stands.
// Both count from 1, columns in characters. Where nothing can be said ok is
// false: on a blank, in a comment, on a word that legwork does not know.
func (v View) Hover(lineNo, col int) (text string, at diag.Span, ok bool) {
	if lineNo < 1 || lineNo > len(v.File.Lines) || v.File.Lines[lineNo-1].Stmt == nil {
		return "", at, false
	}
	s := v.File.Lines[lineNo-1].Stmt
	if within(s.Head.At, col) {
		text = v.head(s)
		return text, s.Head.At, text != ""
	}
	all := senses(s)
	for i, it := range s.Items {
		if !within(it.At, col) {
			continue
		}
		at = it.At
		ref := it.Ref()
		for _, r := range it.List {
			if within(r.At, col) {
				ref, at = r, r.At
			}
		}
		text = v.item(s, all[i], it, ref)
		return text, at, text != ""
	}
	return "", at, false
}

func within(at diag.Span, col int) bool { return at.Col <= col && col < at.End }

// head tells what a statement is.
func (v View) head(s *draft.Stmt) string {
	l := lineOf(s)
	if l.shape == "" {
		return ""
	}
	if l.owner != nil {
		return v.ownLine(s, l)
	}
	return lines(l.shape, l.doc, settingNames(l))
}

// ownLine tells what the first word of a line below a device is.
func (v View) ownLine(s *draft.Stmt, l line) string {
	text := l.shape + "\n" + l.doc
	if l.kind.Lines.Head == "" && l.kind.Lines.Shape == part.TerminalLines {
		if t := v.terminal(l.owner.Item(0).Text+"."+s.Word(), false); t != "" {
			text = t + "\n" + text
		}
	}
	return text
}

// settingNames lists what a statement may say, for those who look for a word.
func settingNames(l line) string {
	var names []string
	for i := range l.settings {
		if s := &l.settings[i]; namedSetting(s) {
			names = append(names, s.Name)
		} else if len(s.Words) > 0 {
			names = append(names, strings.Join(s.Words, " or "))
		}
	}
	for _, w := range l.words {
		names = append(names, w.Word)
	}
	if len(names) == 0 {
		return ""
	}
	return "takes: " + strings.Join(names, ", ")
}

// item tells what one item of a statement means.
func (v View) item(s *draft.Stmt, m sense, it draft.Item, ref draft.Ref) string {
	switch m.sort {
	case placed:
		return v.placed(s, m, it, ref)
	case wordName:
		return m.word.Shape() + ": " + m.word.Doc
	case setName, valued:
		return lines(m.setting.Describe(), v.named(m.setting, it))
	case figured:
		return figure(m, it)
	case labeled:
		return "label, printed beside the name"
	case mark:
		for _, w := range model.Marks() {
			if w.Word == it.Text {
				return w.Word + ": " + w.Doc
			}
		}
	case whenWord:
		return "when STEP, STEP: the steps that the setting before it is for"
	case stepWords:
		return v.steps(ref.Text())
	case colored:
		return color(it.Text)
	case insulated:
		return insulationOf(it.Text)
	}
	return ""
}

// figure tells which figure of a setting a number is.
func figure(m sense, it draft.Item) string {
	text := m.setting.Describe()
	f := m.setting.Figures[m.figure]
	if len(m.setting.Figures) > 1 {
		text = it.Raw + ": " + f.Doc + "\n" + text
	}
	if q, err := quantity.Parse(it.Raw); err == nil && q.Dim == quantity.Gauge {
		if size, ok := gauge.AWGSize(int(q.Value)); ok {
			text += "\n" + size.Name + " has " + quantity.Text(size.AreaMM2, quantity.Area) + " of copper"
		}
	}
	return text
}

// steps tells which steps a word of a list stands for.
func (v View) steps(word string) string {
	set, unknown := v.Model.StepsOf([]string{word})
	if len(unknown) > 0 {
		return ""
	}
	var names []string
	for i, s := range v.Model.Steps {
		if set.Has(i) {
			names = append(names, s.Name)
		}
	}
	return "step " + word + ": " + strings.Join(names, ", ")
}

func color(word string) string {
	if !model.IsColor(word) {
		return ""
	}
	base, tracer, striped := strings.Cut(word, "/")
	_, letters := model.ColorLetters()
	text := "color " + letters(base)
	if striped {
		text += " with a tracer " + letters(tracer)
	}
	return text + " (IEC 60757)"
}

func insulationOf(word string) string {
	f, ok := gauge.FamilyOf(word)
	if !ok {
		return ""
	}
	return f.Name + ": " + f.Title + ", " + quantity.Text(f.TempC, quantity.Temperature)
}

// lines joins what is not empty.
func lines(all ...string) string {
	var out []string
	for _, s := range all {
		if s != "" {
			out = append(out, s)
		}
	}
	return strings.Join(out, "\n")
}

package proof

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"legwork/harness"
	"legwork/harness/diag"
	"legwork/harness/model"
)

// A mutant is a base with one mistake: lines that read otherwise, and the names
// of what was touched. New lines stand at the end, so that lines keep their number.
type mutant struct {
	what  string         // the mistake, in words
	edits map[int]string // line, from 1, and its new text
	added []string
	names []string // wires, devices and terminals of which an answer names one
	sound bool     // by figures of the base alone it does no harm: nothing has to answer
}

// An operator makes one sort of mistake wherever a draft has room for it.
type operator struct {
	name  string
	does  string
	notes bool // a note answers: what it brings about works, and is only not as good
	sites func(*base) []mutant
}

func (m mutant) lines(b *base) []string {
	lines := slices.Clone(b.lines)
	for at, text := range m.edits {
		lines[at-1] = text
	}
	return append(lines, m.added...)
}

// answer gives a finding that the base lacks and that names what was touched;
// ok is false where none does. The least severity is warning, or note.
func (m mutant) answer(b *base, r *harness.Result, least diag.Severity) (f diag.Finding, ok bool) {
	for f := range r.Findings.AtLeast(least) {
		if !b.known[f.String()] && !drafted(f) && m.named(f) {
			return f, true
		}
	}
	return f, false
}

func (m mutant) named(f diag.Finding) bool {
	if m.touches(f.At.Line) || m.says(f.Msg) || m.says(f.Detail) {
		return true
	}
	return slices.ContainsFunc(f.Related, func(r diag.Related) bool { return m.touches(r.At.Line) || m.says(r.Msg) })
}

func (m mutant) touches(line int) bool { _, ok := m.edits[line]; return ok }

// says reports whether a text holds one of the names as a word of its own.
func (m mutant) says(text string) bool {
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,;:()", r) }) {
		device, _, _ := strings.Cut(word, ".")
		if slices.Contains(m.names, strings.TrimSuffix(word, ".")) || slices.Contains(m.names, device) {
			return true
		}
	}
	return slices.ContainsFunc(m.names, func(n string) bool { return strings.HasPrefix(n, "wire ") && strings.Contains(text+" ", n+" ") })
}

// words parts a line into what a draft's line is made of, texts in quotes whole.
func words(line string) []string {
	var list []string
	rest := line
	for rest = strings.TrimLeft(rest, " "); rest != ""; rest = strings.TrimLeft(rest, " ") {
		n := strings.IndexByte(rest, ' ')
		if rest[0] == '"' {
			n = 2 + strings.IndexByte(rest[1:], '"')
		}
		if n < 0 || n > len(rest) {
			n = len(rest)
		}
		list = append(list, rest[:n])
		rest = rest[n:]
	}
	return list
}

// swapped gives a line with words exchanged for others, its indent kept.
func swapped(line string, by map[string]string) string {
	list := words(line)
	for i, w := range list {
		if to, ok := by[strings.TrimSuffix(w, ",")]; ok {
			list[i] = to + w[len(strings.TrimSuffix(w, ",")):]
		}
	}
	return indent(line) + strings.Join(slices.DeleteFunc(list, func(w string) bool { return w == "" }), " ")
}

func (b *base) line(n int) string { return b.lines[n-1] }

// rewired is a mutant in which words of a wire's line are others.
func (b *base) rewired(w *model.Wire, what string, by map[string]string) mutant {
	m := mutant{what: what, edits: map[int]string{w.Stmt.Line: swapped(b.line(w.Stmt.Line), by)}, names: wireNames(w)}
	for _, to := range slices.Sorted(maps.Values(by)) {
		if to != "" {
			m.names = append(m.names, to)
		}
	}
	for from := range by {
		b.forget(&m, w.Number, from)
	}
	return m
}

// wireNames are what an answer about a wire may name: it, its two terminals.
func wireNames(w *model.Wire) []string {
	return []string{"wire " + w.Number, w.From.Shown, w.To.Shown}
}

// own gives the wires of the draft itself that stand on lines of their own.
func (b *base) own() (list []*model.Wire) {
	for _, w := range b.result.Model.Wires {
		if w.Stmt.At.File == "x.draft" {
			list = append(list, w)
		}
	}
	return list
}

// without takes a wire out, with the lines below it, and forgets it where the
// draft says which wires share a terminal.
func (b *base) without(w *model.Wire, what string) mutant {
	m := mutant{what: what, edits: map[int]string{w.Stmt.Line: ""}, names: wireNames(w)}
	for _, end := range []*model.Terminal{w.From, w.To} {
		m.names = append(m.names, end.Device.Name)
		if w.Role == model.Strap && end.Device.BoltedTo != nil {
			m.names = append(m.names, end.Device.BoltedTo.Name)
		}
	}
	for _, c := range w.Stmt.Children {
		m.edits[c.Line] = ""
	}
	b.forget(&m, w.Number, w.From.Shown)
	b.forget(&m, w.Number, w.To.Shown)
	return m
}

// forget takes a wire's number out of the line that says which wires share a
// terminal.
func (b *base) forget(m *mutant, wire, terminal string) {
	for i, line := range b.lines {
		list := words(line)
		if len(list) < 3 || list[0] != "together" || list[1] != terminal || !slices.Contains(list[2:], wire) {
			continue
		}
		list = slices.DeleteFunc(list, func(w string) bool { return w == wire })
		m.edits[i+1] = ""
		if len(list) > 3 {
			m.edits[i+1] = indent(line) + strings.Join(list, " ")
		}
	}
}

func indent(line string) string { return line[:len(line)-len(strings.TrimLeft(line, " "))] }

func number(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

func wireText(w *model.Wire) string {
	kind := [...]string{"wire", "lead", "strap"}[w.Role]
	return fmt.Sprintf("%s %s, %s to %s", kind, w.Number, w.From.Shown, w.To.Shown)
}

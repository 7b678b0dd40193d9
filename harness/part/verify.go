package part

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/quantity"
)

// verifySettings wants complete docs, sane ranges and settings that can be
// told apart while reading.
func verifySettings(settings []Setting) error {
	names, bareDims, words := map[string]bool{}, map[quantity.Dim]bool{}, map[string]bool{}
	for _, s := range settings {
		if s.Name == "" || s.Doc == "" || names[s.Name] {
			return fmt.Errorf("setting %q lacks a name or a doc, or is not unique", s.Name)
		}
		names[s.Name] = true
		if len(s.Figures) > 0 && len(s.Words) > 0 {
			return fmt.Errorf("setting %s takes figures and words", s.Name)
		}
		for i, f := range s.Figures {
			if err := f.verify(i); err != nil {
				return fmt.Errorf("setting %s: %w", s.Name, err)
			}
		}
		if s.Bare && len(s.Figures) > 0 {
			if d := s.Figures[0].Dim; bareDims[d] {
				return fmt.Errorf("two bare settings begin with the same unit: %s", s.Name)
			}
			bareDims[s.Figures[0].Dim] = true
		}
		for _, w := range s.Words {
			if s.Bare && words[w] {
				return fmt.Errorf("word %s belongs to two bare settings", w)
			}
			words[w] = true
		}
	}
	return nil
}

// verify checks one figure, the i-th of its setting.
func (f Figure) verify(i int) error {
	switch {
	case f.Name == "" || f.Doc == "":
		return fmt.Errorf("figure %q lacks a name or a doc", f.Name)
	case f.Dim == quantity.None:
		return fmt.Errorf("figure %s has no dimension", f.Name)
	case !(f.Min <= f.Max) || math.IsInf(f.Max, 0) || math.IsInf(f.Min, 0):
		return fmt.Errorf("figure %s has no sane range: %g to %g", f.Name, f.Min, f.Max)
	case f.HasDefault && !(f.Default >= f.Min && f.Default <= f.Max):
		return fmt.Errorf("figure %s: default %g outside %g to %g", f.Name, f.Default, f.Min, f.Max)
	case f.HasDefault && f.DefaultAt(24) > f.Max:
		return fmt.Errorf("figure %s: default at 24 V outside its range", f.Name)
	case f.HasDefault && !known(f.Source):
		return fmt.Errorf("figure %s: its default has no source %q", f.Name, f.Source)
	case f.Optional && i == 0:
		return fmt.Errorf("figure %s is the first and cannot be left out", f.Name)
	}
	return nil
}

// known reports whether gauge cites that source.
func known(source string) bool {
	_, ok := gauge.SourceOf(source)
	return ok
}

// verifySymbols wants every fixed terminal on the symbol and no pin that the
// kind lacks.
func (k *Kind) verifySymbols() error {
	pins := map[string]bool{}
	for _, s := range append([]Symbol{k.Symbol}, k.Others...) {
		for _, name := range s.pinNames() {
			if k.Lines == nil && !k.hasTerminal(name) {
				return fmt.Errorf("symbol pin %s is not a terminal", name)
			}
			pins[name] = true
		}
	}
	for _, t := range k.Terminals {
		if !pins[t.Name] && !k.Self {
			return fmt.Errorf("terminal %s is not on the symbol", t.Name)
		}
	}
	return nil
}

// pinNames lists the pins of a symbol and of its parts.
func (s Symbol) pinNames() []string {
	var out []string
	for _, p := range s.Pins {
		out = append(out, p.Name)
	}
	for _, p := range s.Parts {
		out = append(out, p.pinNames()...)
	}
	return out
}

package part

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/quantity"
)

// Page prints a kind as a page of Markdown; it also reads well as plain text
// on a terminal.
func (k *Kind) Page() string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n%s Reference letter %s.\n\n## How it behaves\n\n%s\n", k.Name, k.Title, k.Letter, k.Law)
	k.terminals(&b)
	settings(&b, "## Settings", k.Settings)
	if k.Lines != nil {
		k.lines(&b)
	}
	fmt.Fprintf(&b, "\n## Abilities\n\n%s\n", k.abilities())
	return b.String()
}

func (k *Kind) terminals(b *strings.Builder) {
	if len(k.Terminals) == 0 {
		return
	}
	b.WriteString("\n## Terminals\n\n")
	if k.Self {
		b.WriteString("It has one terminal, called by its own name.\n\n")
	}
	b.WriteString("| terminal | also called | a wire ends in | what it is |\n|---|---|---|---|\n")
	for _, t := range k.Terminals {
		name := t.Name
		if k.Self {
			name = "(its name)"
		}
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", name, strings.Join(t.Aliases, ", "), t.Landing, t.Doc)
	}
}

// String names what a wire ends in.
func (l Landing) String() string {
	return [...]string{"a cavity", "a ring", "a joint"}[min(int(l), 2)]
}

func (k *Kind) lines(b *strings.Builder) {
	b.WriteString("\n## Lines below it\n\n")
	switch k.Lines.Shape {
	case TerminalLines:
		b.WriteString("A line is a terminal, its role, then settings.\n")
	case PositionLines:
		b.WriteString("A line is a position, then the terminals that it joins.\n")
	case HalfLines:
		b.WriteString("`half NAME`, then settings; its cavities are NAME.1, NAME.2 and so on.\n")
	case BusLines:
		b.WriteString("`bus NAME`, then the terminals that the bar joins.\n")
	}
	settings(b, "### Settings of a line", k.Lines.Settings)
	for _, r := range k.Lines.Roles {
		fmt.Fprintf(b, "\n### Role `%s`\n\n%s%s.\n", r.Word, strings.ToUpper(r.Doc[:1]), r.Doc[1:])
		settings(b, "", r.Settings)
	}
}

func settings(b *strings.Builder, heading string, all []Setting) {
	if len(all) == 0 {
		return
	}
	if heading != "" {
		b.WriteString("\n" + heading + "\n")
	}
	b.WriteString("\n| written | meaning | when not said | allowed | source |\n|---|---|---|---|---|\n")
	for _, s := range all {
		fmt.Fprintf(b, "| %s | %s | %s | %s | %s |\n", s.written(), s.Doc, s.unsaid(), s.allowed(), s.sources())
	}
}

// written shows how a setting stands in a draft.
func (s Setting) written() string {
	var words []string
	if !s.Bare {
		words = append(words, s.Name)
	}
	for i, f := range s.Figures {
		w := f.shown()
		if f.Optional && i > 0 {
			w = "[" + w + "]"
		}
		words = append(words, w)
	}
	if len(s.Words) > 0 {
		words = append(words, strings.Join(s.Words, " or "))
	}
	if s.Free {
		words = append(words, "NAME")
	}
	if s.Steps {
		words = append(words, "[when STEPS]")
	}
	return "`" + strings.Join(words, " ") + "`"
}

// shown shows a figure by its unit: 5A.
func (f Figure) shown() string {
	switch d := f.Dim; d {
	case quantity.Thread:
		return "M8"
	case quantity.Count:
		return "6way"
	case quantity.Length:
		if f.Max < 0.1524 {
			return "5mm"
		}
		return "6in"
	case quantity.Gauge:
		return "14AWG"
	case quantity.Area:
		return "2.5mm2"
	}
	return quantity.Format(5, f.Dim)
}

// unsaid says what is taken when the setting, or a figure of it, is not given.
func (s Setting) unsaid() string {
	if s.Must {
		return "has to be said"
	}
	if s.Default != "" {
		return s.Default
	}
	var out []string
	for _, f := range s.Figures {
		if !f.HasDefault {
			continue
		}
		text := quantity.Text(f.Default, f.Dim)
		if f.Scale != Fixed {
			text += " at 12 V"
		}
		if f.Guess {
			text += " (a guess)"
		}
		out = append(out, text)
	}
	return strings.Join(out, "; ")
}

// allowed prints the ranges of the figures.
func (s Setting) allowed() string {
	var out []string
	for _, f := range s.Figures {
		out = append(out, quantity.Text(f.Min, f.Dim)+" to "+quantity.Text(f.Max, f.Dim))
	}
	return strings.Join(out, "; ")
}

// sources prints where the defaults come from, each document once.
func (s Setting) sources() string {
	var out []string
	for _, f := range s.Figures {
		src, ok := gauge.SourceOf(f.Source)
		if text := src.Title + " (" + src.Confidence.String() + ")"; ok && f.HasDefault && (len(out) == 0 || out[len(out)-1] != text) {
			out = append(out, text)
		}
	}
	return strings.Join(out, "; ")
}

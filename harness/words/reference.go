// Package words tells what a draft may say, from the declarations of model
// and part, so that nothing here has to be kept up by hand: the reference of
// the language, the grammar for editors, hover texts and completions.
package words

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Reference prints the reference of the draft language as Markdown, from
// headings of level 2 down. Pages of device kinds are linked in devices.
func Reference(devices string) string {
	var b strings.Builder
	b.WriteString("## Statements\n\nWhat stands in capitals is yours to choose; brackets hold what may be left out. Behind the fixed places, words and settings come in any order.\n")
	for _, s := range model.Statements() {
		statement(&b, s)
	}
	b.WriteString("\n## What every device may say\n\nBehind its kind, its name and a label in quotes; `grounds-to` only where the kind has a terminal that can be metal.\n")
	words(&b, model.DeviceWords())
	b.WriteString("\n## Marks\n")
	words(&b, model.Marks())
	steps(&b)
	figures(&b)
	insulation(&b)
	limits(&b)
	b.WriteString("\n## Devices\n")
	for _, k := range part.Kinds() {
		device(&b, k, devices)
	}
	goods(&b)
	return b.String()
}

// goods prints what the shelf holds besides devices.
func goods(b *strings.Builder) {
	b.WriteString("\n## What wires are finished with\n\nParts of the shelf that are no devices; plugs, halves and devices name them behind `terminals` and `seals`, and their fit to each wire is judged.\n")
	for _, g := range part.Goods() {
		fmt.Fprintf(b, "\n### `part %s`\n\n%s\n\n    %s\n", g.Name, g.Title, g.Example)
		b.WriteString(part.Table(g.Settings))
	}
}

func statement(b *strings.Builder, s model.Statement) {
	fmt.Fprintf(b, "\n### `%s`\n\n`%s`\n\n%s", s.Word, s.Shape(), s.Doc)
	if s.Under != "" {
		fmt.Fprintf(b, " It stands below a `%s`.", s.Under)
	} else if s.Circuit {
		b.WriteString(" It stands at the margin or in a circuit.")
	}
	if bare := alsoTakes(s); bare != "" {
		b.WriteString(" It also takes " + bare + ".")
	}
	fmt.Fprintf(b, "\n\n    %s\n", s.Example)
	words(b, s.Words)
	if t := part.Table(s.Settings); t != "" {
		b.WriteString(t)
	}
}

func alsoTakes(s model.Statement) string {
	var out []string
	if s.Colors {
		out = append(out, "a color (`RD`, `GN/WH`)")
	}
	if s.Families {
		out = append(out, "an insulation (`TXL`)")
	}
	return strings.Join(out, " and ")
}

func words(b *strings.Builder, all []model.Word) {
	if len(all) == 0 {
		return
	}
	b.WriteString("\n| word | meaning |\n|---|---|\n")
	for _, w := range all {
		fmt.Fprintf(b, "| `%s` | %s |\n", w.Shape(), w.Doc)
	}
}

func steps(b *strings.Builder) {
	b.WriteString("\n## Steps of use\n\n| step | key | engine |\n|---|---|---|\n")
	for _, s := range model.UsualSteps() {
		fmt.Fprintf(b, "| `%s` | %s | %s |\n", s.Name, s.Key, s.Engine)
	}
	b.WriteString("\nA list of steps (`when prime, crank`) takes their names, and words for several:\n")
	words(b, model.GroupWords())
}

// dims are the dimensions that a figure may have.
var dims = []quantity.Dim{quantity.Current, quantity.Voltage, quantity.Resistance, quantity.Power, quantity.Charge, quantity.Length,
	quantity.Area, quantity.Gauge, quantity.Temperature, quantity.Percent, quantity.Time, quantity.Frequency, quantity.Count, quantity.Thread}

func figures(b *strings.Builder) {
	b.WriteString("\n## Figures\n\nA figure and its unit, without a blank.\n\n| for a | units | as in |\n|---|---|---|\n")
	for _, d := range dims {
		units := strings.Join(quantity.UnitsOf(d), ", ")
		if d == quantity.Thread {
			units = "M8, No10; 1/4in is a length"
		}
		_, example, _ := strings.Cut(quantity.Want(d), "such as ")
		fmt.Fprintf(b, "| %s | %s | `%s` |\n", d, units, example)
	}
}

func insulation(b *strings.Builder) {
	b.WriteString("\n## Insulation and colors\n\n| written | what it is | class temperature | source |\n|---|---|---|---|\n")
	for _, f := range gauge.Families() {
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", f.Name, f.Title, quantity.Text(f.TempC, quantity.Temperature), source(f.Source))
	}
	letters, base := model.ColorLetters()
	b.WriteString("\nColors are written in IEC 60757 letters or in those of US shops; a tracer follows a slash: `GN/WH`.\n\n| written | also |\n|---|---|\n")
	for _, l := range letters {
		if base(l) == l {
			var also []string
			for _, o := range letters {
				if o != l && base(o) == l {
					also = append(also, o)
				}
			}
			fmt.Fprintf(b, "| `%s` | %s |\n", l, strings.Join(also, ", "))
		}
	}
}

func limits(b *strings.Builder) {
	b.WriteString("\n## Profiles\n\n| written | what it holds | source |\n|---|---|---|\n")
	for _, p := range gauge.Profiles() {
		fmt.Fprintf(b, "| `%s` | %s | %s |\n", p.Name, p.Title, source(p.Source))
	}
}

// source names the document behind a key of gauge's sources.
func source(key string) string {
	s, ok := gauge.SourceOf(key)
	if !ok {
		return ""
	}
	return s.Title + " (" + s.Confidence.String() + ")"
}

func device(b *strings.Builder, k *part.Kind, devices string) {
	fmt.Fprintf(b, "\n### `%s`\n\n%s How it behaves: [%s](%s/%s.md).\n", k.Name, k.Title, k.Name, devices, k.Name)
	if names := terminals(k); names != "" {
		fmt.Fprintf(b, "\nTerminals: %s.\n", names)
	}
	b.WriteString(part.Table(k.Settings))
	if k.Lines == nil {
		return
	}
	fmt.Fprintf(b, "\nLines below it: %s\n", lineShape(k.Lines))
	words(b, model.LineWords(k.Lines.Shape))
	b.WriteString(part.Table(k.Lines.Settings))
	for _, r := range k.Lines.Roles {
		fmt.Fprintf(b, "\nRole `%s`: %s.\n", r.Word, r.Doc)
		b.WriteString(part.Table(r.Settings))
	}
}

func terminals(k *part.Kind) string {
	if k.Self {
		return "one, called by its own name"
	}
	var out []string
	for _, t := range k.Terminals {
		text := "`" + t.Name + "`"
		if len(t.Aliases) > 0 {
			text += " (" + strings.Join(t.Aliases, ", ") + ")"
		}
		out = append(out, text)
	}
	return strings.Join(out, ", ")
}

func lineShape(l *part.Lines) string {
	switch l.Shape {
	case part.TerminalLines:
		return "`TERMINAL ROLE`, then settings."
	case part.PositionLines:
		return "`POSITION TERMINAL ...`: the terminals that the position joins."
	case part.HalfLines:
		return "`" + l.Head + " NAME`, then settings."
	}
	return "`" + l.Head + " NAME TERMINAL ...`: what the bar joins."
}

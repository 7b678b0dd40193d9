package check

import (
	"fmt"
	"strings"

	"legwork/gauge"
)

// Page prints a rule as a page of Markdown; it also reads well as plain text
// on a terminal. Output is what the program prints for the rule's failing
// draft, "" to leave that out.
func (r *Rule) Page(output string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n%s (%s)\n\n## Why\n\n%s\n", r.ID, r.Title, r.Severity, r.Why)
	if r.Stage != Checked {
		fmt.Fprintf(&b, "\nIt is reported while %s.\n", r.Stage)
	}
	if r.Equation != "" {
		fmt.Fprintf(&b, "\n## What is compared\n\n    %s\n", r.Equation)
	}
	r.figures(&b)
	block(&b, "A draft that breaks it", r.Bad)
	if output != "" {
		block(&b, "What legwork says", output)
	}
	block(&b, "The same draft put right", r.Good)
	fmt.Fprintf(&b, "\n## What it misses\n\n%s\n", r.Misses)
	if r.Stage != Drafted {
		fmt.Fprintf(&b, "\n## To accept it\n\nPut `accept %s \"your reason\"` under the statement it points at, one step deeper.\n", r.ID)
	}
	return b.String()
}

func (r *Rule) figures(b *strings.Builder) {
	if len(r.Figures) == 0 {
		return
	}
	b.WriteString("\n## Figures\n\n")
	for _, key := range r.Figures {
		s, _ := gauge.SourceOf(key)
		fmt.Fprintf(b, "- %s: %s (%s)\n", key, s.Title, s.Where)
	}
}

func block(b *strings.Builder, title, text string) {
	if text == "" {
		return
	}
	fmt.Fprintf(b, "\n## %s\n\n", title)
	for line := range strings.Lines(strings.TrimRight(text, "\n") + "\n") {
		if line == "\n" {
			b.WriteString("\n")
			continue
		}
		b.WriteString("    " + line)
	}
}

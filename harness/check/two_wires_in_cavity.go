package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "two-wires-in-cavity",
	Severity: diag.Warning,
	Title:    "Two wires share one crimped terminal, and nobody said so.",
	Why: "A crimp barrel is made for one wire. A second one leaves both badly held unless the barrel is chosen for the two together, " +
		"and through the seal of a wet plug it leaks. Splice them before the plug, use a second cavity, or say that it is meant: together TERMINAL WIRES. " +
		"In a dry place it is a note: good shops do it with the right barrel.",
	Equation: "wires in a cavity <= 1, unless listed by a together line",
	Misses:   "Whether barrel and seal fit the two wires that are meant to share them.",
	Needs:    Model,
	Bad: `place   bay  85C  wet
battery G1  at bay  grounds-to frame
fuse    F1  10A  at bay  from G1 6in
lamp    P1  21W  at bay  grounds-to frame
lamp    P2  21W  at bay  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  2ft
wire 3  F1.2  P2.1  2ft
`,
	Good: `place    bay  85C  wet
battery  G1  at bay  grounds-to frame
fuse     F1  10A  at bay  from G1 6in
lamp     P1  21W  at bay  grounds-to frame
lamp     P2  21W  at bay  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  2ft
wire 3  F1.2  P2.1  2ft
together F1.2  2 3
`,
	Run: twoWiresInCavity,
})

func twoWiresInCavity(p *Pass) {
	meant := map[*model.Terminal][]*model.Wire{}
	for _, t := range p.Model.Together {
		meant[t.Terminal] = append(meant[t.Terminal], t.Wires...)
	}
	for _, t := range p.Model.Terminals {
		if t.Landing != part.Cavity || len(t.Ends) < 2 {
			continue
		}
		var numbers []string
		listed := true
		for _, e := range t.Ends {
			numbers = append(numbers, e.Wire.Number)
			listed = listed && slices.Contains(meant[t], e.Wire)
		}
		if listed {
			continue
		}
		last := t.Ends[len(t.Ends)-1]
		f := diag.Finding{
			At:      last.Wire.ToAt,
			Msg:     fmt.Sprintf("%d wires share the terminal %s: %s", len(t.Ends), t.Shown, strings.Join(numbers, ", ")),
			Detail:  fmt.Sprintf("Splice them, use another cavity, or say: together %s %s.", t.Shown, strings.Join(numbers, " ")),
			Related: feedingWires(t.Device, t.Name),
		}
		if last.From {
			f.At = last.Wire.FromAt
		}
		if !t.Device.Wet && len(t.Ends) == 2 {
			f.Severity = diag.Note
		}
		p.Report(f)
	}
}

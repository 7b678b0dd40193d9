package check

import (
	"fmt"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "relay-chatter",
	Severity: diag.Fault,
	Title:    "Relays pull in and let go for ever.",
	Why: "When a relay closes, its own load takes so much of the volts that its coil lets go; the volts come back, and it closes again: the clicking starter. " +
		"The same happens to a coil that is fed through its own rest contact. The contact welds or burns in minutes. " +
		"Feed the coil from a stronger place than the load, or mend the weak one.",
	Equation: "with its contact closed, the coil keeps more than its release volts",
	Figures:  []string{"relay-release", "relay-times"},
	Misses:   "Chatter of worn contacts and of springs, which no d.c. model shows.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
relay   K1  change-over  suppress resistor
stud    E1  on frame  M6
wire 1  G1.+    F1.1   6in
wire 2  F1.2    K1.30  2ft
wire 3  K1.87a  K1.86  1ft
wire 4  K1.85   E1     1ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
switch  S1  closed when running
relay   K1  change-over  suppress resistor
stud    E1  on frame  M6
wire 1  G1.+   F1.1   6in
wire 2  F1.2   S1.1   2ft
wire 3  S1.2   K1.86  1ft
wire 4  K1.85  E1     1ft
`,
	Run: relayChatter,
})

func relayChatter(p *Pass) {
	told := map[int]bool{}
	for _, s := range states(p.Sizes.Hot) {
		for _, c := range s.Cycles {
			if len(c.Relays) > 0 && !told[c.Relays[0]] {
				told[c.Relays[0]] = true
				p.reportCycle(s, c)
			}
		}
	}
}

func (p *Pass) reportCycle(s *solve.State, c solve.Cycle) {
	h := p.Sizes.Hot
	first := h.Relays[c.Relays[0]]
	var names []string
	for _, r := range c.Relays {
		names = append(names, h.Relays[r].Device.Name)
	}
	f := diag.Finding{
		At:     first.Device.At,
		Msg:    fmt.Sprintf("%s never settles in %s: it pulls in and lets go for ever", strings.Join(names, " with "), s.Step.Name),
		Detail: "Feed its coil from a place that its own contact doesn't pull down or cut off.",
	}
	if len(c.PullV) > 0 && len(c.DropV) > 0 {
		f.Detail = fmt.Sprintf("Its coil has %s when it pulls in and %s when it lets go. ", quantity.Text(c.PullV[0], quantity.Voltage),
			quantity.Text(c.DropV[0], quantity.Voltage)) + f.Detail
	}
	p.Report(f)
}

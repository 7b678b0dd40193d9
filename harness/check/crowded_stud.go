package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/part"
)

// mostRings is how many rings one nut holds well: common practice, and what
// the boat rules allow.
const mostRings = 4

var _ = define(Rule{
	ID:       "crowded-stud",
	Severity: diag.Warning,
	Title:    "More than four rings lie under one nut.",
	Why: "Every ring under a nut is one more joint that can settle and come loose, and the current of the outer rings passes all the inner ones. " +
		"Common practice stops at four, straps and battery cables counted, the largest nearest the metal. Fit a second stud or a bus bar.",
	Equation: "rings on a stud or post <= 4",
	Misses:   "Thickness of the rings against the length of the thread, and their order.",
	Needs:    Model,
	Bad: `battery G1
stud    E1  on frame  M8
fuse    F1  10A  from G1 6in
lamp    P1  5W
lamp    P2  5W
lamp    P3  5W
lamp    P4  5W
splice  J1
wire 1   G1.+  F1.1  6in
wire 2   F1.2  J1    1ft
wire 3   J1    P1.1  1ft
wire 4   J1    P2.1  1ft
wire 5   J1    P3.1  1ft
wire 6   J1    P4.1  1ft
wire 7   G1.-  E1    1ft
wire 8   P1.2  E1    1ft
wire 9   P2.2  E1    1ft
wire 10  P3.2  E1    1ft
wire 11  P4.2  E1    1ft
`,
	Good: `battery G1
stud    E1  on frame  M8
stud    E2  on frame  M6
fuse    F1  10A  from G1 6in
lamp    P1  5W
lamp    P2  5W
lamp    P3  5W
lamp    P4  5W
splice  J1
wire 1   G1.+  F1.1  6in
wire 2   F1.2  J1    1ft
wire 3   J1    P1.1  1ft
wire 4   J1    P2.1  1ft
wire 5   J1    P3.1  1ft
wire 6   J1    P4.1  1ft
wire 7   G1.-  E1    1ft
wire 8   P1.2  E1    1ft
wire 9   P2.2  E1    1ft
wire 10  P3.2  E2    1ft
wire 11  P4.2  E2    1ft
`,
	Run: crowdedStud,
})

func crowdedStud(p *Pass) {
	for _, t := range p.Model.Terminals {
		if t.Landing != part.Post || len(t.Bus) > 0 || len(t.Ends) <= mostRings {
			continue
		}
		p.Report(diag.Finding{
			At:     t.At,
			Msg:    fmt.Sprintf("%d rings lie on %s; one nut holds %d well", len(t.Ends), t.Shown, mostRings),
			Detail: "Fit a second stud beside it, or a bus bar.",
			Values: []diag.Value{{Name: "rings", Got: float64(len(t.Ends)), Limit: mostRings, Bound: diag.AtMost}},
		})
	}
}

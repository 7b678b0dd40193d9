package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "fuse-heavily-loaded",
	Severity: diag.Warning,
	Title:    "A load is too close to the rating of its fuse.",
	Why: "A fuse warms with its load and ages when it is hot; held near its rating it opens one day for no reason, usually far from home. " +
		"Keep the steady load at four fifths of the rating or less. A load above the rating is a fault: the fuse will open.",
	Equation: "steady load <= 80 % of the rating (road)",
	Figures:  []string{"load-on-fuse"},
	Misses:   "Inrush, and a fuse box hotter than its place: a fuse at 85 C carries about an eighth less.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
heater  R1  draws 4.5A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  R1.1  14AWG  4ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  7.5A  from G1 6in
heater  R1  draws 4.5A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  R1.1  14AWG  4ft
`,
	Run: fuseHeavilyLoaded,
})

func fuseHeavilyLoaded(p *Pass) {
	for _, f := range p.Sizes.Fuses {
		limit := p.Profile.LoadOfFuse * f.RatedA
		if f.RatedA <= 0 || f.LoadA <= limit {
			continue
		}
		out := diag.Finding{
			At: f.Device.Protects()[f.Index].At,
			Msg: fmt.Sprintf("%s is rated %s and carries %s in %s, %.0f %% of it", f.Device.Name,
				quantity.Text(f.RatedA, quantity.Current), quantity.Text(f.LoadA, quantity.Current), f.At, 100*f.LoadA/f.RatedA),
			Detail: "Fit a larger fuse if every wire behind it carries that, or part the load over two fuses.",
			Values: []diag.Value{{Name: "load", Got: f.LoadA, Limit: limit, Unit: "A", Bound: diag.AtMost}},
		}
		if f.LoadA > f.RatedA {
			out.Severity = diag.Fault
		}
		p.Report(out)
	}
}

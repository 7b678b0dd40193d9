package check

import (
	"fmt"

	"legwork/harness/diag"
)

var _ = define(Rule{
	ID:       "load-without-feed",
	Severity: diag.Fault,
	Title:    "No source can reach a load or a coil.",
	Why: "Whatever is switched on, no way leads from a battery or an alternator to it. " +
		"Usually a wire is missing, ends at the wrong terminal, or a plug half is not wired through.",
	Equation: "from a source there is a way, through any contact or output as if closed and through loads in series, to the load's feed",
	Misses:   "A way that exists but is closed in no step: load-never-on tells of that. What is in the vehicle already (existing) and has no wire drawn there.",
	Needs:    Model,
	Polar:    true,
	Bad: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W  grounds-to frame
lamp    P2  21W  grounds-to frame
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
`,
	Good: `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W  grounds-to frame
lamp    P2  21W  grounds-to frame
splice  J1
wire 1  G1.+  F1.1  6in
wire 2  F1.2  J1    4ft
wire 3  J1    P1.1  1ft
wire 4  J1    P2.1  1ft
`,
	Run: loadWithoutFeed,
})

func loadWithoutFeed(p *Pass) {
	wrong := p.mismatched()
	for _, l := range p.lays() {
		t := pinOf(l.device, l.plus)
		if l.fed || l.reversed || wrong[l.device] || leftOut(t) {
			continue
		}
		p.Report(diag.Finding{
			At:      l.at,
			Msg:     fmt.Sprintf("no battery and no alternator reaches %s", shown(l.device, l.plus)),
			Detail:  landing(t),
			Related: append(feedingWires(l.device, l.plus), p.deadEnds(l.device, l.plus, p.graph().back)...),
		})
	}
}

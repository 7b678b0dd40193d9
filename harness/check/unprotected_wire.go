package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "unprotected-wire",
	Severity: diag.Danger,
	Title:    "A wire can be fed without any fuse between it and the battery.",
	Why: "A battery gives hundreds of amperes into a chafed wire, and without a fuse nothing stops them: the loom burns. " +
		"Only the starter's own cable goes without, since it carries as much as any fuse would have to, and the link between batteries in series. " +
		"The short wire from the battery to the first fuse is allowed as far as the profile says, through buses, splices and plugs alike. " +
		"A longer one is a fault on a boat and on the track; on the road it is a note, and a warning once it leaves the battery's place or passes 72 in. " +
		"What hangs on a wire without a fuse is told with that wire. Contacts of the key and of relays count in the steps in which they are closed. A charge cable without a fuse is common on the road and a warning.",
	Equation: "on every way from a battery to the wire there is a fuse; length ahead of the first one <= 7 in (road, boat)",
	Figures:  []string{"abyc-feed", "cfr-183-455-place"},
	Misses:   "Sheathing, which allows a longer unprotected length in some rule-books.",
	Needs:    States,
	Bad: `battery G1  cca 540A  grounds-to frame
lamp    P1  21W  grounds-to frame
wire 1  G1.+  P1.1  18AWG  4ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
lamp    P1  21W  grounds-to frame
wire 1  G1.+  F1.1  18AWG  6in
wire 2  F1.2  P1.1  18AWG  4ft
`,
	Run: unprotectedWire,
})

func unprotectedWire(p *Pass) {
	open := p.openCircuit()
	past := p.pastFuses(open)
	var bare []*model.Wire
	for _, w := range p.Sizes.Wires {
		if !open.wire[w.Wire.ID] || w.Wire.Role == model.Strap || open.starter[w.Wire.ID] || past[w.Wire] != nil {
			continue
		}
		far := open.farEnd(w.Wire)
		switch {
		case open.bare(far, p.Profile.FirstFuseM):
			bare = append(bare, w.Wire)
		case isSupply(far) && !isBattery(far):
			p.Report(diag.Finding{
				Severity: diag.Warning, At: w.Wire.At,
				Msg:    fmt.Sprintf("charge cable %s has no fuse between it and the battery", w.Wire.Number),
				Detail: "Many road vehicles run it so; a bolt-down fuse at the battery end protects it against a chafed cable.",
			})
		}
	}
	for _, b := range p.branches(open, bare, past) {
		p.reportBranch(open, b)
	}
	p.firstFuses(open, past)
}

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
		"Only the starter's own cable goes without, since it carries as much as any fuse would have to. " +
		"The short wire from the battery to the first fuse is allowed as far as the profile says, through buses, splices and plugs alike. " +
		"A longer one is a fault on a boat and on the track; on the road it is a note, and a warning once it leaves the battery's place or passes 72 in. " +
		"A wire that leads past a fuse leaves all behind it without. A charge cable without a fuse is common on the road and a warning.",
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
	for _, w := range p.Sizes.Wires {
		if !open.wire[w.Wire.ID] || w.Wire.Role == model.Strap || open.starter[w.Wire.ID] || past[w.Wire] {
			continue
		}
		far := open.farEnd(w.Wire)
		switch {
		case open.leads[far.ID]&toUse != 0, open.leads[far.ID] == 0: // to a load, or to nothing at all
			g := p.Sizes.Guards[w.Wire.ID]
			p.Report(diag.Finding{
				At:     w.Wire.At,
				Msg:    fmt.Sprintf("wire %s, %s to %s, can be fed from %s without a fuse", w.Wire.Number, w.Wire.From.Shown, w.Wire.To.Shown, g.Source.Name),
				Detail: "Put a fuse where its current leaves the battery, no larger than the wire carries.",
			})
		case isSupply(far) && !isBattery(far):
			p.Report(diag.Finding{
				Severity: diag.Warning, At: w.Wire.At,
				Msg:    fmt.Sprintf("charge cable %s has no fuse between it and the battery", w.Wire.Number),
				Detail: "Many road vehicles run it so; a bolt-down fuse at the battery end protects it against a chafed cable.",
			})
		}
	}
	p.firstFuses(open, past)
}

package check

import (
	"fmt"
	"math"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
)

var _ = define(Rule{
	ID:       "seal-does-not-fit",
	Severity: diag.Warning,
	Title:    "A wire fits none of the seals that its end may go through.",
	Why: "A seal closes around insulation within the range that its maker names: a thinner wire lets water in, a thicker one tears it or does not go in. " +
		"The draft says by parts of the shelf which seals this end may have, and none of them suits the wire's outside. " +
		"Where the outside is computed from usual walls, and not read in a list, this is a note: measure the wire.",
	Equation: "least <= outside of the insulation <= most",
	Figures:  []string{"gxl-diameter", "thin-wall-list", "sae-walls"},
	Misses:   "Ends whose seals are not said; cores of a cable, whose insulation is not known; existing wires and leads; two wires through one seal.",
	Needs:    States,
	Bad: `part    seal  seal-small  insulation 1.2mm 1.7mm
battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
lamp    P1  60W  grounds-to frame  seals seal-small
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  14AWG  GXL  3ft
`,
	Good: `part    seal  seal-large  insulation 2.4mm 3.6mm
battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
lamp    P1  60W  grounds-to frame  seals seal-large
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  14AWG  GXL  3ft
`,
	Run: sealDoesNotFit,
})

func sealDoesNotFit(p *Pass) {
	for _, t := range p.Model.Terminals {
		if len(t.Finish.Seals) == 0 {
			continue
		}
		for _, e := range t.Ends {
			if finished(e.Wire) && e.Wire.Cable == nil {
				p.judgeSeal(t, e)
			}
		}
	}
}

func (p *Pass) judgeSeal(t *model.Terminal, e model.End) {
	w := p.Sizes.Wires[e.Wire.ID]
	over := gauge.DiameterOf(w.Conductor.Size, w.Conductor.Family)
	outM := over.OutsideMM / 1000
	near, off := t.Finish.Seals[0], math.Inf(1)
	var takes []string
	for _, s := range t.Finish.Seals {
		takes = append(takes, fmt.Sprintf("%s closes around %s to %s", s.Name, mm(s.LeastOverM), mm(s.MostOverM)))
		d := math.Max(s.LeastOverM-outM, outM-s.MostOverM)
		if d <= 0 {
			return
		}
		if d < off {
			off, near = d, s
		}
	}
	v := diag.Value{Name: "outside", Got: outM * 1000, Limit: near.MostOverM * 1000, Unit: "mm", Bound: diag.AtMost}
	if outM < near.LeastOverM {
		v.Limit, v.Bound = near.LeastOverM*1000, diag.AtLeast
	}
	f := diag.Finding{
		At:      endSpan(e),
		Msg:     fmt.Sprintf("wire %s, %s %s, is %s over its insulation and fits no seal of %s", w.Wire.Number, w.Conductor.Size.Name, w.Conductor.Family.Name, mm(outM), t.Shown),
		Detail:  strings.Join(takes, "; ") + ".",
		Values:  []diag.Value{v},
		Related: []diag.Related{{At: near.At, Msg: "this one comes nearest"}},
	}
	if !over.Confidence().MayDecide() {
		f.Severity = diag.Note
		f.Detail += " The outside is computed from usual walls: measure it."
	}
	p.Report(f)
}

func mm(m float64) string { return quantity.Text(m, quantity.Length) }
